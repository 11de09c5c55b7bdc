import type { Mm } from '../../engine/pattern/quantity.ts';
import type { SkirtTable } from './choices.ts';
import { skirtRules as rules } from './rules.ts';

/** How wide a skirt is at the hip and at the hem, all round. */
export interface HipAndHem {
  readonly ease: Mm;
  readonly hip: Mm;
  readonly sweep: Mm;
  /** The hem of a skirt that grows by so much (mm) from hip to hem, for this hip girth and this way to choose it. */
  readonly sweepGrowing: (by: number) => number;
}

/**
 * Hip and hem of a skirt. The ease at the hip is as chosen, or grows with the fullness: a flared skirt comes in above the hip as
 * steeply as it goes out below, and where it is caught there the waist rides up.
 */
export function hipAndHem({ choice, mm, ratio, size }: SkirtTable): HipAndHem {
  const { straightEase, flareEase } = rules;
  const hipOf = (ease: Mm): Mm => mm`Finished hip: hip girth ${size.hipGirth} + ease ${ease}`;
  const sweepOf = (hip: Mm): Mm =>
    choice.hemSweep === 'auto'
      ? mm`Hem sweep: ${choice.skirtFullness} x finished hip ${hip}`
      : mm`Hem sweep: ${choice.hemSweep}; as chosen`;
  if (choice.hipEase !== 'auto') {
    const hip = hipOf(choice.hipEase);
    return { ease: choice.hipEase, hip, sweep: sweepOf(hip), sweepGrowing: (by) => hip.value + by };
  }
  const fullness =
    choice.hemSweep === 'auto'
      ? ratio`Fullness of the skirt: ${choice.skirtFullness}; as chosen`
      : ratio`Fullness of the skirt: ${choice.hemSweep} / (hip girth ${size.hipGirth} + ${straightEase}), at least 1`;
  const ease = mm`Ease at the hip: ${straightEase} + ${flareEase} x (fullness ${fullness} - 1)`;
  const hip = hipOf(ease);
  const [straight, more] = [size.hipGirth.value + straightEase.value, flareEase.value];
  const growing = (by: number): number =>
    choice.hemSweep === 'auto'
      ? by + straight / 2 + Math.hypot(straight / 2, Math.sqrt(more * by))
      : straight + by / (1 - more / straight);
  return { ease, hip, sweep: sweepOf(hip), sweepGrowing: (by) => (by < 0 ? straight + by : growing(by)) };
}
