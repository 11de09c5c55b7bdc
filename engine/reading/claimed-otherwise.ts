import { CLAIM } from '../geometry/tolerance.ts';
import type { Issue } from '../issue.ts';
import type { Metadata } from '../render/metadata.ts';
import { counted } from '../text/counted.ts';
import { plainFigure } from '../text/figure.ts';

/**
 * Whatever a sheet claims otherwise than the same garment, drafted again for the same body and choices: a girth's body or
 * ease, a seam's fullness, a band, an allowance, a count, a word. Both are data as they are written in a sheet; numbers may
 * differ by `CLAIM`. One issue, with the first that differs and how many more do.
 */
export function claimedOtherwise(said: Metadata, again: Metadata): readonly Issue[] {
  const all = claimed.flatMap((kind) => differences(said[kind], again[kind], [kind]));
  const [first] = all;
  if (!first) return [];
  const more = all.length < 2 ? '' : ` So it is with ${counted(all.length - 1, 'other claim')}.`;
  return [
    {
      code: 'claim-otherwise',
      severity: 'error',
      path: first.at.join('/'),
      message:
        `At “${first.at.join(', ')}” the sheet says ${wordsOf(first.said)}; the ${said.garment} drafted again for the same ` +
        `measurements and choices has ${wordsOf(first.again)} there.${more} It was changed, or another version or draft wrote it. Write it again.`,
    },
  ];
}

/** All that a draft claims, but for what the body is called and how the sheet was to be read. */
const claimed = ['wearer', 'girths', 'seams', 'joins', 'shapes', 'notions', 'pieces'] as const;

interface Difference {
  readonly at: readonly string[];
  readonly said: unknown;
  readonly again: unknown;
}

function differences(said: unknown, again: unknown, at: readonly string[]): readonly Difference[] {
  if (isRecord(said) && isRecord(again)) {
    const [one, other] = [entriesOf(said), entriesOf(again)];
    return [...new Set([...one.keys(), ...other.keys()])].flatMap((key) =>
      differences(one.get(key), other.get(key), [...at, key]),
    );
  }
  const isSame =
    typeof said === 'number' && typeof again === 'number' ? Math.abs(said - again) <= CLAIM : said === again;
  return isSame ? [] : [{ at, said, again }];
}

const isRecord = (value: unknown): value is object => typeof value === 'object' && value !== null;

/** The parts of a thing by name; of a list by what tells its items apart, else by their place. */
function entriesOf(value: object): ReadonlyMap<string, unknown> {
  if (!Array.isArray(value)) return new Map(Object.entries(value));
  const keys = value.map((item: unknown, i) => keyOf(item) ?? `${i + 1}`);
  const areOwn = new Set(keys).size === keys.length;
  return new Map(value.map((item: unknown, i) => [(areOwn && keys[i]) || `${i + 1}`, item]));
}

/** A notch is told apart by its edge too. */
function keyOf(item: unknown): string | undefined {
  if (!isRecord(item)) return undefined;
  const { name, edge, level, cloth } = item as Readonly<Record<string, unknown>>;
  const words = [name ?? level ?? cloth, name === undefined ? undefined : edge].filter(
    (word) => typeof word === 'string',
  );
  return words.length === 0 ? undefined : words.join(', ');
}

/** A value as it is said; a whole thing that only one of them has is not told in full. */
const wordsOf = (value: unknown): string =>
  value === undefined
    ? 'nothing'
    : typeof value === 'number'
      ? plainFigure(value, DIGITS)
      : isRecord(value)
        ? 'something'
        : `“${String(value).slice(0, 60)}”`;

const DIGITS = 2;
