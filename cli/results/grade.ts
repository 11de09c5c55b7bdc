import * as z from 'zod';
import { fittedSeams, plainChangeNames } from '../../engine/body/fitting.ts';
import { issues } from './issue.ts';
import { cuttingFiles } from './made.ts';
import type { Printed } from './printed.ts';

const lengths = z.array(z.number()).describe('One a size.');
const steps = z.array(z.number()).describe('From each size to the next.');

/** Why a step changes at a size. */
const cause = z.strictObject({
  kind: z.enum(['chart', 'styling', 'estimate', 'construction', 'limit', 'turn', 'branch', 'found']),
  measurement: z.string().optional(),
  choice: z.string().optional(),
  step: z.string().optional().describe('The title of the sentence in the construction.'),
  limits: z
    .array(z.string())
    .optional()
    .describe(
      'What lines that are found together may not do, and do not quite do in some of the sizes there.',
    ),
  change: z.number().optional(),
  others: z.array(z.string()).optional().describe('Estimates that move the piece at least half as far.'),
  by: z.number().optional().describe('By how much an angle grows each time, radians.'),
  between: z
    .array(z.string())
    .optional()
    .describe('The two sizes between which the lines turn from one answer to another.'),
  mm: z.number().optional().describe('How far they turn in a hundredth of the way, mm.'),
  words: z.string(),
});

const uneven = z.strictObject({
  name: z.string().describe('The size or cup at which the step changes.'),
  piece: z.string(),
  kind: z.enum(['edge', 'corner', 'notch']),
  what: z.string(),
  quantity: z.enum(['length', 'dx', 'dy']),
  before: z.number(),
  after: z.number(),
  allowed: z.number().describe('By how much the step may change there.'),
  cause,
});

const piece = z.strictObject({
  piece: z.string(),
  number: z.int(),
  anchor: z.string().describe('What lies at 0, 0 in all sizes.'),
  edges: z.array(z.strictObject({ edge: z.string(), lengths, steps })),
  points: z.array(
    z.strictObject({
      kind: z.enum(['corner', 'notch']),
      point: z.string(),
      places: z
        .array(z.strictObject({ x: z.number(), y: z.number() }))
        .describe('x to the wearer’s side, y down the grain.'),
      steps: z.array(z.strictObject({ dx: z.number(), dy: z.number() })),
    }),
  ),
});

/** What `bodkin grade --json` prints and `grade.json` holds. */
export const graded = z.strictObject({
  ok: z.boolean().describe('Every size is true, and all are alike.'),
  garment: z.string(),
  chart: z.strictObject({
    name: z.string(),
    source: z.string(),
    sizes: z.array(z.string()),
    cups: z.array(z.string()),
  }),
  sizes: z.array(
    z.strictObject({
      name: z.string(),
      size: z.string(),
      cup: z.string().nullable(),
      alone: z.boolean().describe('Stands beside the run: a body of its own, or a blend.'),
      ok: z.boolean(),
      given: z.array(z.string()).describe('The measurements that the chart says.'),
      girths: z.array(
        z.strictObject({ level: z.string(), body: z.number(), ease: z.number(), finished: z.number() }),
      ),
      issues,
    }),
  ),
  cuttingFiles,
  axes: z.array(
    z.strictObject({
      along: z.enum(['sizes', 'cups']),
      at: z.string().nullable().describe('What is held: the cup along the sizes, the size along the cups.'),
      names: z.array(z.string()),
      pieces: z.array(piece),
      looked: z.int().describe('How many steps were looked at.'),
      greatest: z
        .number()
        .nullable()
        .describe(
          'How much a step changes at the most where the chart’s do not; null where these change everywhere.',
        ),
      uneven: z.array(uneven),
    }),
  ),
  issues,
});

export type GradeResult = Printed<typeof graded>;

const off = z.strictObject({
  measurement: z.string(),
  hers: z.number(),
  size: z.number(),
  off: z.number().describe('The size less hers.'),
  given: z.boolean().describe('Whether the chart says the size’s number; else it was estimated.'),
});

const sized = { name: z.string(), apart: z.number().describe('In sizes of the chart.') };

/** What `bodkin grade --nearest --json` prints. */
export const nearest = z.strictObject({
  ok: z.literal(true),
  body: z.string(),
  chart: z.string(),
  nearest: z.strictObject({ ...sized, size: z.string(), cup: z.string().nullable() }),
  next: z.array(z.strictObject(sized)),
  off: z.array(off),
  girths: z
    .array(z.strictObject({ level: z.string(), hers: z.number(), size: z.number(), altered: z.number() }))
    .describe('Finished: from her own measurements, of the size, and of the size altered.'),
  alterations: z.array(
    z.union([
      z.strictObject({
        kind: z.enum(['take in', 'let out']),
        seam: z.enum(fittedSeams),
        level: z.enum(['bust', 'under-bust', 'waist', 'hip']),
        mm: z.number(),
      }),
      z.strictObject({
        kind: z.enum(plainChangeNames),
        mm: z.number(),
        side: z.enum(['right', 'left']).optional(),
      }),
    ]),
  ),
  left: z.array(off).describe('What no alteration brings home.'),
  issues,
});

export type NearestResult = Printed<typeof nearest>;
