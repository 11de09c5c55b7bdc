import { rounded, significant } from './figure.ts';
import { lengthFigure, partsFor } from './length.ts';
import { millimetres, numberIn, type Unit } from './units.ts';

/*
 * How a sentence of the engine holds its lengths: as figures in mm with the unit behind them, one unit for both ends of a
 * range: `12.5 mm`, `0 to 9 mm`, `210 × 297 mm`, `between 1200 and 3600 mm`; areas as `35 square mm`, what is reckoned by
 * length as `0.006 per mm` or `for each mm`. What is only called after its size is hyphened and stays: a 50-mm square.
 */
const number = String.raw`-?\d+(?:\.\d+)?`;
const lengths = new RegExp(
  String.raw`(?<![\w.,/-])(?:(?<between>between )(?<low>${number})(?<and> and )|(?<first>${number})(?<to> to | × ))?` +
    String.raw`(?<last>${number})(?<gap>[ \u00a0])mm\b(?!²)`,
  'g',
);
const areas = new RegExp(String.raw`(?<![\w.,/-])(${number}) square mm\b`, 'g');
const rates = new RegExp(String.raw`(?<![\w.,/-])(${number}) per mm\b`, 'g');

/** One of a unit, in words. */
const one: Readonly<Record<Unit, string>> = { mm: 'mm', cm: 'cm', in: 'inch' };

/** Figures behind the point with which lengths are told apart that would read alike in fractions. */
const finer = [3, 4, 5];

/**
 * A sentence of the engine as someone reads it who measures in `unit`: every length in it in that unit, inches in
 * fractions. Two lengths that differ never read alike: where they would, that sentence has decimals.
 */
export function withLengthsIn(sentence: string, unit: Unit): string {
  if (unit === 'mm' || !sentence.includes('mm')) return sentence;
  const write = writerFor(lengthsOf(sentence), unit);
  return sentence
    .replace(lengths, (...match) => {
      const found = match.at(-1) as FoundLength;
      const { between = '', and = '', to = '', gap } = found;
      const [begins, ends] = endsIn(found);
      return `${begins ? `${between}${write(begins)}${and}${to}` : ''}${write(ends)}${gap}${unit}`;
    })
    .replace(
      areas,
      (_, area: string) => `${significant(Number(area) / millimetres[unit] ** 2, 3)} square ${plural[unit]}`,
    )
    .replace(
      rates,
      (_, rate: string) => `${significant(Number(rate) * millimetres[unit], 3)} per ${one[unit]}`,
    )
    .replace(/\beach mm\b/g, `each ${one[unit]}`);
}

type FoundLength = Readonly<Record<'last' | 'gap', string>> &
  Readonly<Partial<Record<'between' | 'low' | 'and' | 'first' | 'to', string>>>;

const plural: Readonly<Record<Unit, string>> = { mm: 'mm', cm: 'cm', in: 'inches' };

/** A length of a sentence, mm; of a range, which of its ends it is. */
interface Said {
  readonly mm: number;
  readonly end?: 'low' | 'high';
}

/** The lengths that stand before one unit: a range's two ends, two that are no range, or one. */
function endsIn({ low, first, to, last }: FoundLength): readonly [Said | undefined, Said] {
  const begins = low ?? first;
  if (begins === undefined) return [undefined, { mm: Number(last) }];
  const isRange = (low !== undefined || to === ' to ') && Number(begins) <= Number(last);
  return isRange
    ? [
        { mm: Number(begins), end: 'low' },
        { mm: Number(last), end: 'high' },
      ]
    : [{ mm: Number(begins) }, { mm: Number(last) }];
}

const lengthsOf = (sentence: string): readonly Said[] =>
  [...sentence.matchAll(lengths)]
    .flatMap(({ groups }) => endsIn(groups as FoundLength))
    .filter((said) => said !== undefined);

/** Figures behind the point that are the same but for rounding. */
const AS_WRITTEN = 1e-6;

/** A length that lies on a mark, so many to the inch: of a range the next mark within, so that whoever writes it is not refused. */
function onMark({ mm, end }: Said, marks: number): number {
  const at = (mm / millimetres.in) * marks;
  const within = { low: Math.ceil(at - AS_WRITTEN), high: Math.floor(at + AS_WRITTEN) };
  return end === undefined ? mm : (within[end] / marks) * millimetres.in;
}

/** Whether one figure as it is written is less than another. */
function rises(one: string, other: string): boolean {
  const [a, b] = [one, other].map((text) => {
    const size = numberIn(text.replace('-', '')) ?? Number.NaN;
    return text.startsWith('-') ? -size : size;
  });
  return a !== undefined && b !== undefined && a < b;
}

/** How the lengths of one sentence are written, so that different ones do not read alike, nor a range the wrong way round. */
function writerFor(found: readonly Said[], unit: Unit): (said: Said) => string {
  const decimals = (places: number) => (said: Said) =>
    `${rounded((unit === 'in' ? onMark(said, 10 ** places) : said.mm) / millimetres[unit], places)}`;
  const fractions = (said: Said): string => {
    const parts = partsFor(said.mm);
    return lengthFigure(unit === 'in' ? onMark(said, parts) : said.mm, unit, parts);
  };
  const ways = [fractions, ...finer.map(decimals)];
  const inOrder = found.toSorted((a, b) => a.mm - b.mm);
  const apart = (write: (said: Said) => string): boolean =>
    inOrder.every((said, i) => {
      const [now, before] = [write(said), inOrder[i - 1]];
      return before === undefined || before.mm === said.mm || rises(write(before), now);
    });
  return ways.find(apart) ?? decimals(finer.at(-1) ?? 0);
}
