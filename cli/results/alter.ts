import * as z from 'zod';
import { issues } from './issue.ts';
import type { Printed } from './printed.ts';

const beforeAfter = z.strictObject({ before: z.number(), after: z.number() });

const seam = z.strictObject({
  edge: z.string(),
  partner: z.string(),
  before: z.number(),
  after: z.number(),
  partnerLength: z.number(),
  gathers: z.number().describe('Less than nothing where the partner is longer.'),
  ratio: z.number().describe('Altered edge over partner.'),
  verdict: z.enum(['plain', 'gather', 'partner longer']),
  stretches: z
    .array(
      z.strictObject({
        from: z.string(),
        to: z.string(),
        lengthA: z.number(),
        lengthB: z.number(),
        excess: z.number(),
      }),
    )
    .describe('From notch to notch.'),
});

/** What `bodkin alter` prints, and its `report.json` holds. */
export const altered = z.strictObject({
  ok: z.boolean(),
  piece: z.string(),
  done: z.array(z.string()).describe('Each alteration, in words.'),
  scale: z.strictObject({ mmPerUnit: z.number(), from: z.enum(['given', 'square', 'drawing']) }),
  edges: z.array(
    z.strictObject({
      name: z.string(),
      before: z.number().nullable().describe('Null for an edge that was not there.'),
      after: z.number().nullable().describe('Null for an edge that is gone.'),
    }),
  ),
  notches: z.array(
    z.strictObject({
      name: z.string(),
      edge: z.string(),
      at: z.number().describe('From the start of the edge.'),
      mark: z.enum(['single', 'double', 'fold', 'level', 'gather', 'dart']),
    }),
  ),
  darts: z.array(z.strictObject({ legs: z.array(z.string()), mouth: z.number(), pressedOver: z.string() })),
  guide: beforeAfter.describe('Width across the guide line.'),
  area: beforeAfter.describe('Square mm.'),
  blended: z.number().describe('How far the cut edges were moved to run smoothly, at most.'),
  seam: seam.nullable().describe('Walked along its partner; null without --partner.'),
  issues,
});

export type AlteredResult = Printed<typeof altered>;
