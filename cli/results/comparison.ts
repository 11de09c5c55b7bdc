import * as z from 'zod';
import { girth, join, pinned, seam, shape, taken } from './report.ts';

/** Something before and after. */
const change = <T extends z.ZodType>(of: T) => z.strictObject({ before: of, after: of });

/** What became of something that has a name. */
const fate = <T extends z.ZodType>(of: T) =>
  z.union([
    z.strictObject({ kind: z.literal('kept'), name: z.string(), before: of, after: of }),
    z.strictObject({ kind: z.enum(['new', 'gone']), name: z.string(), only: of }),
  ]);

const newOrGone = z.enum(['new', 'gone']);

const cut = z.array(
  z.strictObject({
    cloth: z.enum(['self', 'lining', 'interfacing']),
    count: z.number(),
    onFold: z.boolean(),
    pair: z.boolean(),
    printedSide: z.enum(['up', 'down']).exactOptional(),
  }),
);

const edge = z.union([
  z.strictObject({
    kind: z.literal('redrawn'),
    edge: z.string(),
    was: z.string().exactOptional().describe('Its name before, where it has another one now.'),
    before: z.number(),
    after: z.number(),
    moved: z.number().describe('The farthest that any place of it moved.'),
    allowance: change(z.number()),
    turn: change(z.enum(['seam', 'fold', 'hem', 'finished', 'dart'])),
  }),
  z.strictObject({ kind: newOrGone, edge: z.string(), length: z.number() }),
]);

const notch = z.union([
  z.strictObject({
    kind: z.literal('redrawn'),
    notch: z.string(),
    edge: z.string(),
    before: z.number(),
    after: z.number(),
    mark: change(z.enum(['single', 'double', 'fold', 'level', 'gather', 'dart'])),
  }),
  z.strictObject({ kind: newOrGone, notch: z.string(), edge: z.string(), at: z.number() }),
]);

const inside = z.union([
  z.strictObject({ kind: z.literal('redrawn'), what: z.string(), name: z.string(), moved: z.number() }),
  z.strictObject({ kind: newOrGone, what: z.string(), name: z.string() }),
]);

const piece = z.union([
  z.strictObject({
    kind: z.literal('redrawn'),
    piece: z.string(),
    laidBy: z.enum(['edges', 'fold', 'grain']),
    number: change(z.number()),
    cut: change(cut),
    stitchingLine: z.number(),
    cuttingLine: z.number().exactOptional(),
    grain: z.number().describe('How far it was turned, degrees.'),
    edges: z.array(edge),
    notches: z.array(notch),
    inside: z.array(inside),
  }),
  z.strictObject({ kind: newOrGone, piece: z.string() }),
]);

const named = z.strictObject({ garment: z.string(), body: z.string() });

/** What changed since the draft that --before names. */
export const comparison = z.strictObject({
  before: named,
  after: named,
  measurements: z.array(
    fate(taken.extend({ from: taken.shape.from.exactOptional().describe('Not said by a sheet.') })),
  ),
  fitting: z.array(fate(pinned)),
  styling: z.array(fate(z.strictObject({ name: z.string(), value: z.union([z.number(), z.string()]) }))),
  pieces: z.array(piece),
  seams: z.array(fate(seam.omit({ mismatch: true }))),
  joins: z.array(fate(join.pick({ name: true, angle: true }))),
  girths: z.array(fate(girth.pick({ level: true, body: true, ease: true, finished: true }))),
  shapes: z.array(fate(shape.pick({ name: true, piece: true, value: true, unit: true }))),
  notions: z.array(
    fate(z.strictObject({ name: z.string(), count: z.number(), length: z.number(), note: z.string() })),
  ),
  notCompared: z
    .array(z.strictObject({ what: z.string(), why: z.string() }))
    .describe('What was left out of the comparison.'),
});
