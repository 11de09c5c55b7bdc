import { DraftMistake } from '../draft-mistake.ts';
import { isWrittenUnit, type Quantity, quantity } from './quantity.ts';

/** A number of the trade that a draft uses: numbered, said in words, and with its source. */
export interface Rule {
  readonly id: string;
  /** As it is written: an angle in degrees. */
  readonly value: number;
  readonly unit: 'mm' | 'share' | 'degrees' | 'ratio' | 'count' | 'per mm';
  readonly says: string;
  readonly source: string;
  /** The same as a quantity: an angle in radians. */
  readonly quantity: Quantity;
}

/** Values that rules have for the time being, as they are written (an angle in degrees), by the rules' numbers. */
export type TurnedRules = Readonly<Record<string, number>>;

let turned: TurnedRules | undefined;

/**
 * What comes of a drawing in which some rules have other values than the draft gives them. Only a rule that is read while
 * `draw` runs is turned; what a file worked out of one when it was loaded stays.
 */
export function withRulesTurned<T>(values: TurnedRules, draw: () => T): T {
  const before = turned;
  turned = values;
  try {
    return draw();
  } finally {
    turned = before;
  }
}

type RuleRow = readonly [value: number, unit: Rule['unit'], says: string, source: string];

/**
 * Numbers a table of rules in order: the letter of the draft, then 1, 2, 3. Throws a `DraftMistake` for one that lacks its
 * number, its unit, what it says or its source.
 */
export function ruleTable<Name extends string>(
  letter: string,
  rows: Readonly<Record<Name, RuleRow>>,
): Readonly<Record<Name, Rule>> {
  const entries = Object.entries<RuleRow>(rows).map(([name, [value, unit, says, source]], index) => {
    const id = `${letter}${index + 1}`;
    const lacks = lacking(value, unit, says, source);
    if (lacks) throw new DraftMistake(`The rule “${name}” (${id}) ${lacks}.`, [name]);
    return [name, ruleOf(id, value, unit, says, source)];
  });
  return Object.fromEntries(entries) as Record<Name, Rule>;
}

/** A rule whose value is asked for again whenever it is used, for it may be turned. */
function ruleOf(id: string, value: number, unit: Rule['unit'], says: string, source: string): Rule {
  const quantityOf = (written: number): Quantity =>
    quantity(written, unit, says, { kind: 'rule', id, source });
  const own = quantityOf(value);
  // One quantity as long as the value is the same: a sentence tells by it what is put in twice.
  let latest = { written: value, quantity: own };
  return {
    id,
    unit,
    says,
    source,
    get value() {
      return turned?.[id] ?? value;
    },
    get quantity() {
      const written = turned?.[id];
      if (written === undefined) return own;
      if (latest.written !== written) latest = { written, quantity: quantityOf(written) };
      return latest.quantity;
    },
  };
}

/** What a row of a table lacks, where it lacks anything: plain JavaScript tells nobody. */
function lacking(value: unknown, unit: unknown, says: unknown, source: unknown): string | undefined {
  if (typeof value !== 'number' || !Number.isFinite(value)) return `has no number, but ${String(value)}`;
  if (!isWrittenUnit(unit)) return `has the unit “${String(unit)}”, which there is not`;
  if (typeof says !== 'string' || says.trim() === '') return 'does not say what it is for';
  if (typeof source !== 'string' || source.trim() === '')
    return 'has no source: name who says so, or write commonPractice';
  return undefined;
}
