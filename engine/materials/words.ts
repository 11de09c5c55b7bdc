import type { Garment, Notion } from '../pattern/garment.ts';
import type { CutCount } from '../pattern/piece.ts';
import { stitchTypes } from '../pattern/stitches.ts';
import { lengthIn } from '../text/length.ts';
import { lengthAtLeast, lengthToBuy, threadToBuy } from '../text/length-to-buy.ts';
import type { Unit } from '../text/units.ts';
import { withLengthsIn } from '../text/with-lengths-in.ts';
import type { ClothNeed, WidthNeed } from './cloth-needed.ts';
import type { Materials } from './materials.ts';
import type { ThreadNeed } from './thread.ts';
import { threadSource } from './thread.ts';

/** Words in rows, each with its heading: the first column names what the row is about. */
export interface WordTable {
  readonly titles: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The cut list: every piece, and how often and how it is cut of each cloth. */
export function cutTable({ pieces }: Garment): WordTable {
  const cloths = [...new Set(pieces.flatMap(({ cut }) => cut.map(({ cloth }) => cloth)))];
  return {
    titles: ['to cut', ...cloths],
    rows: pieces.map(({ number, name, cut }) => [
      `${number} ${name}`,
      ...cloths.map((cloth) =>
        cut
          .filter((one) => one.cloth === cloth)
          .map(countWords)
          .join('; '),
      ),
    ]),
  };
}

function countWords({ count, onFold, pair, printedSide }: CutCount): string {
  const how = [
    ...(onFold ? ['on the fold'] : []),
    ...(pair ? [count === 2 ? 'a pair' : 'in pairs'] : []),
    ...(printedSide ? [`printed side ${printedSide}`] : []),
  ];
  return [String(count), ...how].join(', ').replace(', on the fold', ' on the fold');
}

/** What cloth to buy by width; below each what no lay goes under. Only the latter where nothing was planned. */
export function clothTable(needs: readonly ClothNeed[], units: Unit): WordTable {
  const widths = needs[0]?.widths.map(({ called }) => called) ?? [];
  const planned = needs.some((need) => need.widths.some(({ needed }) => needed !== undefined));
  const least = needs.map((need) => [need.cloth, ...need.widths.map((width) => leastWords(width, units))]);
  return planned
    ? {
        titles: ['cloth', ...widths],
        rows: needs.flatMap((need, i) => [
          [need.cloth, ...need.widths.map((width) => neededWords(width, units))],
          ['no lay under', ...(least[i] ?? []).slice(1)],
        ]),
      }
    : { titles: ['no lay under', ...widths], rows: least };
}

function neededWords({ needed, laid }: WidthNeed, units: Unit): string {
  if (needed === undefined) return 'too narrow';
  return `${lengthToBuy(needed, units)}${laid === 'open' ? ' open' : ''}`;
}

const leastWords = ({ least, laid }: WidthNeed, units: Unit): string =>
  least === undefined ? '-' : `${lengthAtLeast(least, units)}${laid === 'open' ? ' open' : ''}`;

/** What a table of cloth to buy rests on. */
export const clothNote =
  'Cloth without nap or stripes, folded lengthwise, or open where it says so; lengths of a quick plan. “bodkin lay” seeks a shorter one.';

/** What is bought besides cloth: notions, each with what it is for, and thread. */
export const besidesTable = ({ notions, thread }: Materials, units: Unit): WordTable => ({
  titles: ['to buy', '', ''],
  rows: [
    ...notions.map((notion) => [notion.name, notionToBuy(notion, units), withLengthsIn(notion.note, units)]),
    ...threadRows(thread, units),
  ],
});

/**
 * How much of a notion is bought: its length in all where it is sold off a reel, each with its own where it is not, or what it is
 * cut off.
 */
export function notionToBuy({ count, length, got }: Notion, units: Unit): string {
  if (length === 0) return String(count);
  if (got === 'singly') return `${count} × ${lengthIn(units === 'in' ? length : Math.round(length), units)}`;
  if (got === 'off interfacing') return `${lengthToBuy(length, units)} of interfacing`;
  return lengthToBuy(count * length, units);
}

/** The thread to buy: what sews, and what overcasts where anything is overcast; nothing where no sewing order is known. */
export function threadRows(
  needs: readonly ThreadNeed[],
  units: Unit,
): readonly (readonly [string, string, string])[] {
  const row = (what: string, own: readonly ThreadNeed[]): readonly [string, string, string][] => {
    const total = own.reduce((sum, { thread }) => sum + thread, 0);
    if (total === 0) return [];
    const seams = own.map(
      ({ stitch, stitched }) => `${lengthToBuy(stitched, units)} of stitch ${stitch}, ${stitchTypes[stitch]}`,
    );
    return [[what, threadToBuy(total, units), `for ${seams.join('; ')}`]];
  };
  return [
    ...row(
      'thread',
      needs.filter(({ stitch }) => !isOvercast(stitch)),
    ),
    ...row(
      'thread to overcast with',
      needs.filter(({ stitch }) => isOvercast(stitch)),
    ),
  ];
}

const isOvercast = (stitch: ThreadNeed['stitch']): boolean => stitch === '304' || stitch === '504';

/** What the lengths of thread rest on, in the reader's unit. */
export const threadNote = (units: Unit): string => `Thread: ${withLengthsIn(threadSource, units)}.`;

/** All of it as it stands on a sewing sheet. */
export const toBuyWords = ({ cloths, notions, thread }: Materials, units: Unit) => ({
  cloth: { ...clothTable(cloths, units), note: clothNote },
  notions: new Map(
    notions.flatMap((notion): [string, string][] =>
      notion.got === 'singly' ? [] : [[notion.name, notionToBuy(notion, units)]],
    ),
  ),
  thread: threadRows(thread, units),
  threadNote: threadNote(units),
});
