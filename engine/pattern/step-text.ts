import { lengthFigure, SIXTEENTHS } from '../text/length.ts';
import { millimetres, type Unit } from '../text/units.ts';
import { withLengthsIn } from '../text/with-lengths-in.ts';
import type { Step } from './garment.ts';
import { exactly, type Given, type Ground, type Quantity, type QuantityUnit, written } from './quantity.ts';
import type { SentenceParts } from './sentence/tokens.ts';

/** A stretch of a sentence as a dressmaker reads it, lengths in mm. */
export const said = (parts: SentenceParts, given: readonly Given[]): string => filled(parts, given, written);

/** A stretch of a formula as another program reads it. */
export const saidExactly = (parts: SentenceParts, given: readonly Given[]): string =>
  filled(parts, given, ({ value, unit }) => exactly(value, unit));

const filled = (
  parts: SentenceParts,
  given: readonly Given[],
  write: (quantity: Quantity) => string,
): string => {
  let text = '';
  for (const part of parts) {
    const value = typeof part === 'number' ? given[part] : part;
    if (value !== undefined) text += typeof value === 'string' ? value : write(value);
  }
  return text;
};

/** A stretch of a step as it is read: words, a number with its place in `from`, or what the step comes to. */
export interface StepWord {
  readonly text: string;
  readonly is: 'words' | 'outcome' | { readonly from: number };
}

/**
 * A step as a dressmaker reads it who measures in `lengths`: its sentence with the numbers of this body, what it comes
 * to, and the words behind it. Inches are in sixteenths; each number is rounded by itself, after everything was reckoned.
 */
export const stepText = (step: StepSaid, lengths: Unit): string => textOf(stepWords(step, lengths));

type StepSaid = Omit<Step, 'title' | 'source' | 'number'>;

/** The same stretch by stretch, so that each number can be asked where it came from. */
export function stepWords(step: StepSaid, lengths: Unit): readonly StepWord[] {
  const { says, from, value, unit } = step;
  const end = says.indexOf(BEHIND);
  const body = worded(end < 0 ? says : says.slice(0, end), from, lengths);
  const behind = end < 0 ? [] : [words(BEHIND), ...worded(says.slice(end + 1), from, lengths)];
  if (value === undefined || unit === undefined) return [...body, ...behind];
  const outcome = isBare(step, textOf(body))
    ? [words(suffix(unit, lengths))]
    : [words(' = '), { text: outcomeIn(value, unit, lengths), is: 'outcome' } as const];
  return [...body, ...outcome, ...behind];
}

const words = (text: string): StepWord => ({ text, is: 'words' });

const textOf = (said: readonly StepWord[]): string => said.map(({ text }) => text).join('');

/** What stands between a formula and the words behind it. */
export const BEHIND = '; ';

/** Whether a formula is nothing but one value, which the sentence says already. */
const isBare = ({ says, formula }: Pick<Step, 'says' | 'formula'>, body: string): boolean =>
  formula !== undefined &&
  !formula.includes(' ') &&
  (says.some((part) => typeof part === 'number') || body.endsWith(formula));

function worded(says: SentenceParts, from: readonly Ground[], lengths: Unit): readonly StepWord[] {
  let before: Ground | undefined;
  return says.flatMap((part): readonly StepWord[] => {
    const ground = typeof part === 'number' ? from[part] : undefined;
    const behind = before;
    before = ground;
    if (typeof part === 'string') return [words(wordsBehind(behind, part, lengths))];
    return ground ? [{ text: groundText(ground, lengths), is: { from: part } }] : [];
  });
}

/** Words of a sentence, that may begin with the unit of the length before them. */
const wordsBehind = (before: Ground | undefined, words: string, lengths: Unit): string =>
  withLengthsIn(before?.unit === 'mm' ? words.replace(/^ mm\b/, ` ${lengths}`) : words, lengths);

/** A number that a step was found from, without its unit; an angle carries its sign. */
export function groundText({ value, unit, origin }: Ground, lengths: Unit): string {
  if (value === undefined || unit === undefined) return '';
  if (lengths === 'mm') return written({ value, unit, origin });
  if (unit === 'mm') return lengthFigure(value, lengths, SIXTEENTHS);
  return written({ value: unit === 'per mm' ? value * millimetres[lengths] : value, unit, origin });
}

/** What a step comes to, as it says it. */
function outcomeIn(value: number, unit: QuantityUnit, lengths: Unit): string {
  const origin = { kind: 'step', number: 0 } as const;
  return groundText({ name: '', value, unit, origin }, lengths) + suffix(unit, lengths);
}

/** The unit behind a number; an angle has its sign already. */
export function suffix(unit: QuantityUnit, lengths: Unit): string {
  if (unit === 'mm') return ` ${lengths}`;
  return unit === 'per mm' ? withLengthsIn(' for each mm', lengths) : '';
}
