import { randomUUID } from 'node:crypto';
import { appendFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Issue } from '../../engine/issue.ts';
import { writeWhole } from '../files/whole-file.ts';
import { longestLine } from '../input/json-line.ts';
import { lines } from '../input/lines.ts';
import { partsOf } from '../input/parts-of.ts';
import { reason } from '../input/reason.ts';
import { unusable } from '../input/unusable.ts';
import { issuesResult } from '../output/walk-result.ts';
import { chunkName, type Manifest, setName } from './manifest.ts';
import { type Order, readOrder } from './order.ts';
import { SeenIds } from './seen-ids.ts';
import { chunkFile, refusedFile, type Store, writeManifest } from './store.ts';

/** A line that is an order, or why it is none. */
export type OrderedLine =
  | { readonly order: Order; readonly text: string; readonly end: number }
  | { readonly issue: Issue; readonly end: number };

/** The orders of a file (`-` is standard input) as they come in, empty lines left out; an id that comes again is refused. */
export async function* orderedLines(file: string): AsyncGenerator<OrderedLine> {
  const seen = new SeenIds();
  try {
    const parts = partsOf(file);
    for await (const { number, text, end } of lines(parts, longestLine)) {
      if (text?.trim() === '') continue;
      const read = readOrder(number, text);
      if ('issue' in read) yield { ...read, end };
      else if (seen.add(read.order.id)) yield { ...read, text: (text ?? '').trim(), end };
      else yield { issue: twice(number, read.order.id), end };
    }
  } catch (error) {
    if (error instanceof Error && 'syscall' in error)
      throw unusable('cannot-read', file, `Cannot read ${file}: ${reason(error)}`);
    throw error;
  }
}

const twice = (number: number, id: string): Issue => ({
  code: 'order-id-twice',
  severity: 'error',
  path: `line ${number}`,
  message: `Line ${number}: there was an order “${id}” before, capitals aside. Its files would lie on those of the other.`,
});

/** Orders as they lie in a store. */
export interface CutOrders {
  readonly set: string;
  readonly manifest: Manifest;
  /** The first lines that were refused. */
  readonly firstRefused: readonly Issue[];
}

/** So many refused lines are told; all of them stand in a file of the store. */
const mostTold = 10;

/**
 * Cuts the orders of a file into chunks of `each`, and writes these into the store, the manifest last: what was killed on the way
 * is done over. Lines that are no orders are listed beside the manifest.
 */
export async function cutOrders(
  store: Store,
  file: string,
  { code, each, reached }: { code: string; each: number; reached: (bytes: number) => void },
): Promise<CutOrders> {
  const chunks: { name: string; orders: number }[] = [];
  const firstRefused: Issue[] = [];
  const refusals = join(store.folder, 'sets', `.refused.${randomUUID()}.part`);
  let refused = 0;
  let texts: string[] = [];
  const cut = async (): Promise<void> => {
    if (texts.length === 0) return;
    const bytes = Buffer.from(`${texts.join('\n')}\n`);
    const name = chunkName(bytes);
    await writeWhole(chunkFile(store, name), [bytes]);
    chunks.push({ name, orders: texts.length });
    texts = [];
  };
  try {
    await writeFile(refusals, '');
    for await (const line of orderedLines(file)) {
      reached(line.end);
      if ('issue' in line) {
        refused += 1;
        if (firstRefused.length < mostTold) firstRefused.push(line.issue);
        await appendFile(refusals, `${JSON.stringify(issuesResult([line.issue])[0])}\n`);
      } else if (texts.push(line.text) >= each) await cut();
    }
    await cut();
    const orders = chunks.reduce((sum, chunk) => sum + chunk.orders, 0);
    if (orders + refused === 0) throw unusable('no-orders', file, `There are no orders in ${file}.`);
    const manifest: Manifest = { version: 1, code, orders, refused, chunks };
    const set = setName(manifest);
    await rename(refusals, refusedFile(store, set));
    await writeManifest(store, set, manifest);
    return { set, manifest, firstRefused };
  } catch (error) {
    await rm(refusals, { force: true }).catch(() => undefined);
    if (error instanceof Error && 'syscall' in error)
      throw unusable('cannot-write', store.folder, `Cannot write into ${store.folder}: ${reason(error)}`);
    throw error;
  }
}
