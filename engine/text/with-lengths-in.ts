import { rounded, significant } from './figure.ts';
import { lengthFigure, partsFor } from './length.ts';
import { millimetres, type Unit } from './units.ts';

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
      const { between = '', low, and = '', first, to = '', last, gap } = match.at(-1) as FoundLength;
      const begins = low ?? first;
      const beginning = begins === undefined ? '' : `${between}${write(Number(begins))}${and}${to}`;
      return `${beginning}${write(Number(last))}${gap}${unit}`;
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

/** All lengths of a sentence, mm, each once. */
function lengthsOf(sentence: string): readonly number[] {
  const found = [...sentence.matchAll(lengths)].flatMap(({ groups: { low, first, last } = {} }) =>
    [low, first, last].flatMap((figure) => (figure === undefined ? [] : Number(figure))),
  );
  return [...new Set(found)];
}

/** How the lengths of one sentence are written, so that different ones do not read alike. */
function writerFor(found: readonly number[], unit: Unit): (mm: number) => string {
  const decimals = (places: number) => (mm: number) => `${rounded(mm / millimetres[unit], places)}`;
  const ways = [(mm: number) => lengthFigure(mm, unit, partsFor(mm)), ...finer.map(decimals)];
  const apart = (write: (mm: number) => string): boolean => new Set(found.map(write)).size === found.length;
  return ways.find(apart) ?? decimals(finer.at(-1) ?? 0);
}
