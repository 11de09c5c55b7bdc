/** A number of the trade that a draft uses: numbered, said in words, and with its source. */
export interface Rule {
  readonly id: string;
  readonly value: number;
  readonly unit: 'mm' | 'share' | 'degrees' | 'ratio' | 'count';
  readonly says: string;
  readonly source: string;
}

/** Where a rule is everybody's and nobody's. */
export const commonPractice = 'common practice, no source';

type RuleRow = readonly [value: number, unit: Rule['unit'], says: string, source: string];

/** Numbers a table of rules in order: the letter of the draft, then 1, 2, 3. */
export function ruleTable<Name extends string>(
  letter: string,
  rows: Readonly<Record<Name, RuleRow>>,
): Readonly<Record<Name, Rule>> {
  const entries = Object.entries<RuleRow>(rows).map(([name, [value, unit, says, source]], index) => [
    name,
    { id: `${letter}${index + 1}`, value, unit, says, source },
  ]);
  return Object.fromEntries(entries) as Record<Name, Rule>;
}
