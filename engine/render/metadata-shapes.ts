import * as z from 'zod';
import { corner, edgeRef, girthParts, list, mm, name, text } from './metadata-parts.ts';

const chain = z.strictObject({
  edges: list(edgeRef, 1),
  from: name.exactOptional(),
  to: name.exactOptional(),
});

const lengthPart = z.discriminatedUnion('kind', [
  ...girthParts,
  z.strictObject({ kind: z.literal('chain'), chain, times: z.number() }),
]);

const fromLevel = z.strictObject({
  corner,
  level: z.strictObject({ kind: z.enum(['line', 'edge']), name }),
});

const band = {
  name,
  low: z.number().exactOptional(),
  high: z.number().exactOptional(),
  bound: z.literal(true).exactOptional(),
  outside: text,
};

/** A shape that is claimed of the pieces in the file, to be measured again on their paths. */
export const shape = z.discriminatedUnion('kind', [
  z.strictObject({ ...band, kind: z.literal('laid on'), a: chain, b: chain }),
  z.strictObject({ ...band, kind: z.literal('tightest bend'), of: chain }),
  z.strictObject({ ...band, kind: z.literal('length'), parts: list(lengthPart), plus: mm.exactOptional() }),
  z.strictObject({ ...band, kind: z.literal('notch height'), of: chain, notch: name }),
  z.strictObject({
    ...band,
    kind: z.literal('cap top'),
    of: chain,
    notch: name,
    say: z.enum(['top', 'grain']),
  }),
  z.strictObject({
    ...band,
    kind: z.literal('dip'),
    at: fromLevel,
    than: fromLevel,
    plus: mm.exactOptional(),
  }),
  z.strictObject({ ...band, kind: z.literal('lean'), at: corner }),
  z.strictObject({ ...band, kind: z.literal('grain'), piece: name, line: name }),
  z.strictObject({
    ...band,
    kind: z.literal('taper'),
    upper: list(lengthPart),
    middle: list(lengthPart),
    lower: list(lengthPart),
    down: edgeRef,
    notches: z.tuple([name, name]).readonly(),
  }),
  z.strictObject({
    ...band,
    kind: z.literal('fullest'),
    of: chain,
    line: name,
    say: z.enum(['past level', 'beyond chord']),
  }),
  z.strictObject({ ...band, kind: z.literal('sewn-in angle'), a: chain, b: chain }),
  z.strictObject({
    ...band,
    kind: z.literal('across'),
    armhole: chain,
    share: z.number(),
    side: chain,
    centre: chain,
    middle: edgeRef,
    plus: mm.exactOptional(),
  }),
  z.strictObject({ ...band, kind: z.literal('notch depth'), say: z.enum(['mm', 'share']) }),
]);
