import * as z from 'zod';
import { issues } from './issue.ts';
import { cutList, materials } from './materials.ts';
import type { Printed } from './printed.ts';

/** Seams at which stripes meet, at which they meet at one place only, or not. */
const stripes = z.strictObject({
  matched: z.array(z.string()),
  matchedOnce: z.array(z.string()).describe('Eased or gathered: at one notch or end.'),
  unmatched: z.array(z.string()),
});

/** What `bodkin lay` prints of a garment. */
export const laid = z.strictObject({
  ok: z.boolean(),
  lays: z.array(
    z.strictObject({
      cloth: z.string(),
      width: z.number(),
      folded: z.boolean(),
      length: z.number(),
      needed: z.number().describe('The length with what the cloth shrinks by.'),
      buy: z.string().describe('As cloth is sold, in words.'),
      used: z.number().describe('Share of the cloth.'),
      leastLength: z.number().describe('No lay can be shorter.'),
      stripes: stripes
        .optional()
        .describe('With --stripe: the seams along the grain at which they meet, or cannot.'),
      stripesAlong: stripes
        .optional()
        .describe('With --stripe-along: the seams at which stripes along the cloth meet, or do not.'),
      pieces: z.array(
        z.strictObject({ piece: z.string(), copy: z.number(), gives: z.number(), onFold: z.boolean() }),
      ),
    }),
  ),
  cutList,
  materials: materials.describe('For cloth without nap or stripes, in the widths that are sold.'),
  issues,
});

export type LaidResult = Printed<typeof laid>;

/** What `bodkin lay --shapes` prints; lengths in the unit of the file. */
export const laidShapes = z.strictObject({
  density: z.number().describe('Share of the strip that is used.'),
  length: z.number(),
  leastLength: z.number().describe('No lay can be shorter.'),
  width: z.number(),
  placements: z.array(
    z.strictObject({
      shape: z.string(),
      copy: z.number(),
      turn: z.number().describe('Degrees.'),
      mirrored: z.boolean(),
      x: z.number(),
      y: z.number(),
    }),
  ),
});

export type LaidShapesResult = Printed<typeof laidShapes>;
