import { exactly, type Given, type Quantity, type Unit, written, writtenValue } from './quantity.ts';
import type { Sentence } from './sentence/sentence.ts';
import type { Parts } from './sentence/tokens.ts';

/** A stretch of a sentence as a dressmaker reads it. */
export const said = (parts: Parts, given: readonly Given[]): string => filled(parts, given, written);

/** A stretch of a formula as another program reads it. */
export const saidExactly = (parts: Parts, given: readonly Given[]): string =>
  filled(parts, given, ({ value, unit }) => exactly(value, unit));

/** The sentence with its numbers, what it comes to, and the words behind it; a value without unit is not said. */
export function sentenceText(
  { cut, bare }: Sentence,
  given: readonly Given[],
  value: number | undefined,
  unit: Unit | undefined,
): string {
  let text = said(cut.body, given);
  if (value !== undefined && unit) text += bare ? suffix[unit] : ` = ${outcome(value, unit)}`;
  return cut.behind.length > 0 ? `${text}; ${said(cut.behind, given)}` : text;
}

/** What a step comes to, as it says it. */
export function outcome(value: number, unit: Unit): string {
  const parts = unit === 'mm' || unit === 'rad' ? 10 : 1000;
  const figure = Math.round(writtenValue({ value, unit }) * parts) / parts;
  return `${figure}${unit === 'rad' ? '°' : suffix[unit]}`;
}

/** An angle is written with its sign already, wherever it is put in. */
const suffix: Readonly<Record<Unit, string>> = { mm: ' mm', rad: '', ratio: '', 'per mm': ' for each mm' };

const filled = (parts: Parts, given: readonly Given[], write: (quantity: Quantity) => string): string => {
  let text = '';
  for (const part of parts) {
    const value = typeof part === 'number' ? given[part] : part;
    if (value !== undefined) text += typeof value === 'string' ? value : write(value);
  }
  return text;
};
