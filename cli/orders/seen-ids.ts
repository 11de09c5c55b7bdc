import { createHash } from 'node:crypto';
import { foldedId } from './order-id.ts';

/** Words of 32 bits kept of each id: of ten million ids, two share 96 bits by chance once in some 10^15 files. */
const words = 3;

/** The table is doubled when so much of it is taken. */
const fullest = 0.7;

/**
 * The ids of a file so far, as digests in one flat table: 12 bytes a place, 17 to 34 for each id, where a set of strings takes more
 * than 100 and ends at 2^24. Probing is linear.
 */
export class SeenIds {
  #table = new Uint32Array(1024 * words);
  #count = 0;

  /** Notes an id; false when it, or one that differs in capitals only, was there already. */
  add(id: string): boolean {
    if ((this.#count + 1) * words > this.#table.length * fullest) this.#grow();
    const isNew = put(this.#table, digestOf(id));
    if (isNew) this.#count += 1;
    return isNew;
  }

  #grow(): void {
    const larger = new Uint32Array(this.#table.length * 2);
    for (let at = 0; at < this.#table.length; at += words)
      if (this.#table[at] !== 0) put(larger, this.#table.subarray(at, at + words));
    this.#table = larger;
  }
}

/** Its first word is never zero: that is a free place. */
function digestOf(id: string): Uint32Array {
  const bytes = createHash('sha256').update(foldedId(id)).digest();
  const digest = new Uint32Array(words);
  for (let i = 0; i < words; i++) digest[i] = bytes.readUInt32LE(4 * i);
  digest[0] = (digest[0] ?? 0) | 1;
  return digest;
}

/** Puts a digest into a table that has room; false when it is there. */
function put(table: Uint32Array, [a = 0, b = 0, c = 0]: Uint32Array): boolean {
  const places = table.length / words;
  for (let place = b % places; ; place = (place + 1) % places) {
    const at = place * words;
    if (table[at] === 0) {
      table.set([a, b, c], at);
      return true;
    }
    if (table[at] === a && table[at + 1] === b && table[at + 2] === c) return false;
  }
}
