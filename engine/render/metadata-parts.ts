import * as z from 'zod';

/** The words that the metadata of a written SVG is made of. */
export const name = z.string().min(1).max(200);
export const text = z.string().max(2000);
export const mm = z.number();

/** At most so many that no file can make the reader run for ever. */
export const list = <T extends z.ZodType>(item: T, atLeast = 0) =>
  z.array(item).min(atLeast).max(1000).readonly();

export const edgeRef = z.strictObject({ piece: name, edge: name, reversed: z.literal(true).exactOptional() });

export const corner = z.strictObject({ piece: name, edge: name, seam: name });

export const girthParts = [
  z.strictObject({ kind: z.literal('line'), piece: name, line: name, times: z.number() }),
  z.strictObject({ kind: z.literal('edge'), piece: name, edge: name, times: z.number() }),
] as const;
