import { type ResidualUnit, SCALE } from './constraints/compile/equations.ts';
import { RELATION } from './geometry/tolerance.ts';

/** What a relation or a bound was found from, by its name. */
export interface FoundFrom {
  /** `drawing`: a length on what was drawn before, such as the armhole that a sleeve is fitted into. */
  readonly kind: 'measurement' | 'choice' | 'drawing';
  readonly name: string;
  /** The word that was chosen, of a choice among words. */
  readonly word?: string;
}

/** One of a few things asked of a drawing that exclude each other. */
export interface ExcludedRelation {
  /** As the draft calls it; bounds of a length or an angle are `bounds of <its name>`. */
  readonly name: string;
  /** How far it misses where all of them together miss least. */
  readonly value: number;
  readonly unit: ResidualUnit;
  /** Within this it would hold. */
  readonly limits: { readonly min: number; readonly max: number; readonly unit: ResidualUnit };
  /** Whose it is: that of what it depends on most, or the draft's own; none where that was not looked for. */
  readonly whose?: FoundFrom['kind'] | 'draft';
  /** All that it depends on, what moves it most first; last the words but for which it would not be asked so. */
  readonly from: readonly FoundFrom[];
}

/** What a relation in a unit must keep within to hold. */
export function limitsOf(unit: ResidualUnit): ExcludedRelation['limits'] {
  const max = RELATION / SCALE[unit];
  return { min: -max, max, unit };
}

/** How far a relation misses, in what it may miss by. */
export const inTolerances = ({ value, unit }: Pick<ExcludedRelation, 'value' | 'unit'>): number =>
  Math.abs(value) / limitsOf(unit).max;
