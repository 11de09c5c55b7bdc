import { DraftMistake } from '../draft-mistake.ts';
import type { Given, Ground } from './quantity.ts';

/**
 * Looks at what is put into one step after the other. Throws a `DraftMistake` for a rule that has the number of another: each is
 * told by its number, and tried with other values by it.
 */
export function rulesToldApart(): (put: readonly (Given | Ground)[]) => void {
  const known = new Map<string, string>();
  return (put) => {
    for (const each of put) {
      if (typeof each !== 'object' || each.origin.kind !== 'rule') continue;
      const { name, origin } = each;
      const other = known.get(origin.id) ?? name;
      known.set(origin.id, other);
      if (other !== name)
        throw new DraftMistake(
          `Two rules have the number ${origin.id}: “${other}” and “${name}”. Give each ruleTable a letter of its own.`,
          [name],
        );
    }
  };
}
