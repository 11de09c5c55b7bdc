import * as z from 'zod';
import { edgeRef, girthParts, list, mm, name, text } from './metadata-words.ts';

const chain = z.strictObject({
  edges: list(edgeRef, 1),
  from: name.exactOptional(),
  to: name.exactOptional(),
});

const lengthPart = z.discriminatedUnion('kind', [
  ...girthParts,
  z.strictObject({ kind: z.literal('chain'), chain, times: z.number() }),
]);

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
]);
