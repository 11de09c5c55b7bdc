import type { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { atLeastRound, sewnEqual } from '../../engine/constraints/statements.ts';
import { bodiceRules as rules } from './rules.ts';
import { turnable } from './turnable.ts';

/** Up the side front panel from the waist: below the under-bust seam, to the bust level, to the top. */
export type SidePrincess = readonly [lower: string, middle: string, upper: string];

/** Down the centre front panel: from its top over the bust, where it goes so far up, and from the under-bust level. */
export interface CentrePrincess {
  readonly overBust: readonly [toBust: string, toUnderBust: string] | undefined;
  readonly below: string;
}

/** The headings of an edge that runs down (1) or up (-1) and nowhere near level: a seam under the bust must climb to it. */
export function climbing(down: 1 | -1): { readonly min: number; readonly max: number } {
  const least = (rules.princessClimbs.value * Math.PI) / 180;
  return down === 1 ? { min: least, max: Math.PI - least } : { min: least - Math.PI, max: -least };
}

/** A princess edge bends round enough to be sewn to its neighbour, and to have its allowance (mm) cut beside it. */
export const canBeSewn = (curve: string, allowance: number) =>
  atLeastRound(
    `${curve} can be sewn round`,
    curve,
    Math.max(rules.princessRadius.value, turnable(allowance)),
  );

/** Both edges are equally long from level to level. */
export function sewTogether(
  sketch: SketchBuilder,
  [lower, middle, upper]: SidePrincess,
  { overBust, below }: CentrePrincess,
): void {
  sketch.relation(sewnEqual('front princess edges equal below the under-bust seam', [lower], [below]));
  if (!overBust) return;
  const [toBust, toUnderBust] = overBust;
  sketch.relation(
    sewnEqual('front princess edges equal above the bust level', [upper], [toBust]),
    sewnEqual('front princess edges equal from bust to under-bust level', [middle], [toUnderBust]),
  );
}
