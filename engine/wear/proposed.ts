import { type FittingChange, isOpposite, mostOf, placeOf, sideOf } from '../body/fitting.ts';
import type { Judged } from './judged.ts';

/** What there is no doubt about, as changes of a fitting. */
export const proposed = (findings: readonly Judged[]): readonly FittingChange[] =>
  findings.flatMap(({ verdict, change }) => (verdict === 'off' && change ? [change] : []));

/**
 * A fitting with more found: what was found on both sides already is added to, what undoes it is taken from it, and nothing
 * goes beyond the most there may be of a change.
 */
export const fittedFurther = (
  before: readonly FittingChange[],
  more: readonly FittingChange[],
): readonly FittingChange[] => more.reduce(added, before);

function added(fitting: readonly FittingChange[], change: FittingChange): readonly FittingChange[] {
  const known = fitting.find(
    (each) => !sideOf(each) && each.kind === change.kind && placeOf(each) === placeOf(change),
  );
  const opposite = fitting.find(
    (each) => !sideOf(each) && (isOpposite(each, change) || isOpposite(change, each)),
  );
  if (known) return replaced(fitting, known, Math.min(mostOf(known), known.mm + change.mm));
  if (!opposite) return [...fitting, change];
  if (opposite.mm > change.mm) return replaced(fitting, opposite, opposite.mm - change.mm);
  const without = fitting.filter((each) => each !== opposite);
  const rest = change.mm - opposite.mm;
  return rest > 0 ? [...without, { ...change, mm: rest }] : without;
}

const replaced = (
  fitting: readonly FittingChange[],
  old: FittingChange,
  mm: number,
): readonly FittingChange[] => fitting.map((each) => (each === old ? { ...each, mm } : each));
