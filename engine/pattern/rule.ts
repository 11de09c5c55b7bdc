import { type Quantity, quantity } from './quantity.ts';

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

type RuleRow = readonly [value: number, unit: Rule['unit'], says: string, source: string];

/** Numbers a table of rules in order: the letter of the draft, then 1, 2, 3. */
export function ruleTable<Name extends string>(
  letter: string,
  rows: Readonly<Record<Name, RuleRow>>,
): Readonly<Record<Name, Rule>> {
  const entries = Object.entries<RuleRow>(rows).map(([name, [value, unit, says, source]], index) => {
    const id = `${letter}${index + 1}`;
    const rule: Rule = {
      id,
      value,
      unit,
      says,
      source,
      quantity: quantity(value, unit, says, { kind: 'rule', id, source }),
    };
    return [name, rule];
  });
  return Object.fromEntries(entries) as Record<Name, Rule>;
}
