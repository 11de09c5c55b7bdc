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

export const seam = z.strictObject({
  name: z.string(),
  a: edges,
  b: edges,
  lengthA: z.number(),
  lengthB: z.number(),
  ease: z.number(),
  gatherRatio: z.number(),
  mismatch: z.number().describe('The worse of the whole seam and its stretches between notches.'),
});

export const join = z.strictObject({
  name: z.string(),
  pieces: z.array(z.string()),
  angle: z.number().describe('The corner left when sewn; 0 runs on perfectly.'),
});

export const girth = z.strictObject({
  level: z.string(),
  body: z.number(),
  ease: z.number(),
  target: z.number(),
  finished: z.number(),
  error: z.number(),
});

export const shape = z.strictObject({
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

export const taken = z.strictObject({
  name: z.string(),
  value: z.number(),
  unit: z.enum(['mm', 'degrees']),
  from: z.enum(['measured', 'reconciled', 'derived', 'estimated']),
});

export const pinned = z.strictObject({ change: z.string(), mm: z.number() });

/** What every check found; also what `report.json` holds of a garment. */
export const report = z.strictObject({
  ok: z.boolean(),
  garment: z.string(),
  body: z.string(),
  styling,
  measurements: z.array(taken).nullable().describe('Null where a sheet was read.'),
  fitting: z.array(pinned).nullable().describe('The same.'),
  seams: z.array(seam),
  joins: z.array(join),
  girths: z.array(girth),
  shapes: z.array(shape),
  notches: z.int().nonnegative().describe('How many were looked at.'),
  issues,
});

export type ReportResult = Printed<typeof report>;

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
  girths: z.record(z.string(), z.number()).optional().describe('Finished, by level; only with --lengths.'),
  edges: z
    .record(z.string(), z.record(z.string(), z.number()))
    .optional()
    .describe('Their lengths, by piece; only with --lengths.'),
});

export type WalkedLineResult = Printed<typeof walkedLine>;
