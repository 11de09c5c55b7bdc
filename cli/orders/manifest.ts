import { createHash } from 'node:crypto';
import * as z from 'zod';

/** So many bytes of a digest make a name: 128 bits never meet by chance. */
const nameBytes = 16;

/** A digest of parts in their order, as it names files. */
export function digestName(...parts: readonly (string | Uint8Array)[]): string {
  const hash = createHash('sha256');
  for (const part of parts) hash.update(part);
  return hash.digest('hex').slice(0, 2 * nameBytes);
}

/** What a digest that names files looks like. */
export const digestPattern = /^[0-9a-f]{32}$/;

const digest = z.string().regex(digestPattern);

/** One set of orders in a store: which chunks it was cut into, for which code of the program. */
export const manifestSchema = z.strictObject({
  version: z.literal(1),
  code: digest,
  orders: z.int().nonnegative(),
  refused: z.int().nonnegative(),
  chunks: z.array(z.strictObject({ name: digest, orders: z.int().positive() })),
});

export type Manifest = Readonly<z.output<typeof manifestSchema>>;

/** The name of a chunk: the digest of its bytes. */
export const chunkName = (bytes: Uint8Array): string => digestName(bytes);

/** The name of a chunk's answers: of the chunk and the code, so that the same work has the same name wherever it is done. */
export const answersName = (chunk: string, code: string): string => digestName(chunk, ' ', code);

/** The name of a set: the same orders for the same code are the same set. */
export const setName = (manifest: Manifest): string =>
  digestName(manifest.code, ...manifest.chunks.map(({ name }) => name)).slice(0, 12);
