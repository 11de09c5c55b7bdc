import * as z from 'zod';
import { issues } from './issue.ts';
import type { Printed } from './printed.ts';

const edges = z
  .array(
    z.strictObject({
      piece: z.string(),
      edge: z.string(),
      reversed: z.literal(true).optional().describe('Walked from the end of the edge.'),
    }),
  )
  .meta({ id: 'edges', description: 'Whole edges, in the order in which they are walked.' });

const seam = z.strictObject({
  name: z.string(),
  a: edges,
  b: edges,
  lengthA: z.number(),
  lengthB: z.number(),
  ease: z.number(),
  gatherRatio: z.number(),
  mismatch: z.number().describe('The worse of the whole seam and its stretches between notches.'),
});

const join = z.strictObject({
  name: z.string(),
  pieces: z.array(z.string()),
  angle: z.number().describe('The corner left when sewn; 0 runs on perfectly.'),
});

const girth = z.strictObject({
  level: z.string(),
  body: z.number(),
  ease: z.number(),
  target: z.number(),
  finished: z.number(),
  error: z.number(),
});

const shape = z.strictObject({
  name: z.string(),
  piece: z.string(),
  value: z.number().nullable().describe('Null where there is none, such as the bend of a straight line.'),
  low: z.number().nullable().describe('Null where the band has no limit on this side.'),
  high: z.number().nullable(),
  unit: z.enum(['mm', 'degrees', 'share', 'ratio']),
  ok: z.boolean(),
  bound: z.boolean().describe('Whether the draft fails outside the band.'),
});

export const styling = z.record(z.string(), z.union([z.number(), z.string()]));

/** What every check found; also what `report.json` holds of a garment. */
export const report = z.strictObject({
  ok: z.boolean(),
  garment: z.string(),
  body: z.string(),
  styling,
  seams: z.array(seam),
  joins: z.array(join),
  girths: z.array(girth),
  shapes: z.array(shape),
  notches: z.int().nonnegative().describe('How many were looked at.'),
  issues,
});

export type ReportResult = Printed<typeof report>;

const move = z.union([
  z.strictObject({
    kind: z.literal('redrawn'),
    piece: z.string(),
    edges: z.array(
      z.strictObject({ edge: z.string(), before: z.number(), after: z.number(), moved: z.number() }),
    ),
    notches: z.array(
      z.strictObject({ notch: z.string(), edge: z.string(), before: z.number(), after: z.number() }),
    ),
  }),
  z.strictObject({ kind: z.enum(['new', 'gone']), piece: z.string() }),
]);

/** What `bodkin walk` prints of one garment or sheet. */
export const walked = report.extend({
  moves: z.array(move).optional().describe('What moved since --before, piece by piece.'),
});

export type WalkedResult = Printed<typeof walked>;

/** What `bodkin walk --bodies` prints on each line. */
export const walkedLine = z.strictObject({
  id: z
    .union([z.string(), z.number()])
    .describe('The body’s own id, or its name, or the number of its line.'),
  ok: z.boolean(),
  issues,
  issuesLeftOut: z.int().nonnegative().describe('How many more there are; the gravest are told.'),
  worst: z
    .strictObject({
      seam: z.number().nullable(),
      join: z.number().nullable(),
      girth: z.number().nullable(),
    })
    .describe('Null where there is nothing to compare.'),
  milliseconds: z.number(),
});

export type WalkedLineResult = Printed<typeof walkedLine>;
