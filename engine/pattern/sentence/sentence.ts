import { DraftMistake } from '../../draft-mistake.ts';
import type { Given, QuantityUnit } from '../quantity.ts';
import { type Computation, computation } from './compute.ts';
import { type CutSentence, cutSentence } from './cut.ts';
import { checkUnits } from './dimensions.ts';
import { formulaText } from './formula-text.ts';
import { parseFormula } from './parse.ts';
import { type SentenceParts, tokensOf } from './tokens.ts';

/**
 * A step of a draft, written once: a sentence that is its own formula.
 *
 *     Underarm level: scye depth ${size.scyeDepth} + ${rules.underarmDrop}, at most bust level ${bust} - ${rules.underarmAboveBust}
 *
 * The grammar, where `value` is a quantity or rule put in by `${...}`:
 *
 *     sentence = title ":" formula [ ";" free words ] [ "[" source "]" ]
 *     formula  = sum { "," [ "but" | "and" ] ( "at least" | "at most" ) sum }     in the order they stand
 *     sum      = product { ( "+" | "-" ) product }
 *     product  = factor { ( "x" | "/" | "of" ) factor }                           "of" is "x", as in a share of
 *     factor   = "-" factor | function factor | number | name value | "(" formula ")"
 *     function = "root of" | "square of" | "sine of" | "cosine of" | "tangent of" | "arc sine of" | "arc cosine of"
 *              | "arc tangent of" | "angle of arc" | "arc of angle" | "whole part of"
 *     number   = digits, with a "°" behind them where they are degrees
 *     name     = any words that name the value behind them, or none
 *
 * A number typed out is a plain number or an angle, never a length: lengths have an origin, and so are put in. Words
 * put in by `${...}` are words of the name. "angle of arc" is the angle whose arc divided by its radius is the value,
 * "arc of angle" the reverse. A source is given where no rule inside has one.
 */
export interface Sentence {
  readonly cut: CutSentence;
  /** Formula and words behind it, with places for what is put in. */
  readonly says: SentenceParts;
  readonly compute: Computation;
  /** The formula with places for its numbers, as another program would read it. */
  readonly exact: SentenceParts;
  /** What it was read for: the units of what is put in, nothing where that is words, and of what it comes to. */
  readonly units: Units;
  readonly promised: QuantityUnit | undefined;
}

type Units = readonly (QuantityUnit | undefined)[];

/** Each template is read once, unless it is met again with values of other units. */
const read = new WeakMap<readonly string[], Sentence>();

/**
 * The sentence of a template, read when it is first met with what is put in; `promised` is the unit of what it comes
 * to, or nothing where it is only said. Throws an error that shows the place where a sentence cannot be read or joins
 * units that do not go together.
 */
export function sentenceOf(
  strings: readonly string[],
  given: readonly Given[],
  promised: QuantityUnit | undefined,
): Sentence {
  const known = read.get(strings);
  if (known && known.promised === promised && fits(known.units, given)) return known;
  const sentence = readSentence(strings, given.map(unitOf), promised);
  read.set(strings, sentence);
  return sentence;
}

function readSentence(
  strings: readonly string[],
  units: Units,
  promised: QuantityUnit | undefined,
): Sentence {
  const refuse = (at: number, why: string): never => {
    const text = strings.join('◦');
    throw new DraftMistake(`${why}: "${text.slice(0, at).trim()} >>> ${text.slice(at).trim()}"`, []);
  };
  const cut = cutSentence(strings, refuse);
  const says = cut.behind.length > 0 ? [...cut.body, '; ', ...cut.behind] : cut.body;
  if (!promised) return { cut, says, compute: () => Number.NaN, exact: [], units, promised };
  const tokens = tokensOf(cut.body, cut.bodyAt, (given) => units[given] === undefined, refuse);
  const formula = parseFormula(tokens, refuse);
  checkUnits(formula, units, promised, refuse);
  return {
    cut,
    says,
    compute: computation(formula),
    exact: formulaText(formula),
    units,
    promised,
  };
}

const unitOf = (given: Given): QuantityUnit | undefined =>
  typeof given === 'string' ? undefined : given.unit;

function fits(units: Units, given: readonly Given[]): boolean {
  for (let i = 0; i < units.length; i++) {
    const put = given[i];
    if ((typeof put === 'object' ? put.unit : undefined) !== units[i]) return false;
  }
  return true;
}
