import type { Unknowns } from '../unknowns.ts';

/** z of front and back of the torso along the centre, mm, where it is known: hip, waist, ribs and chest. */
export interface Depths {
  readonly plumb: number;
  readonly hipFront: number;
  readonly waistBack: number;
  readonly waistFront: number;
  readonly ribBack: number;
  readonly ribFront: number;
  readonly blades: number;
  readonly chestFront: number;
}

/** Seen from the side: a plumb line touches the seat, and blades and waist lie off it by what is sought. */
export function depthsOf(u: Unknowns): Depths {
  const plumb = -u.hipDepth / 2;
  const waistBack = plumb + u.backHollow;
  const blades = plumb + u.lean;
  const ribBack = blades + 0.3 * (waistBack - blades);
  return {
    plumb,
    hipFront: plumb + u.hipDepth,
    waistBack,
    waistFront: waistBack + u.waistDepth,
    ribBack,
    ribFront: ribBack + u.ribDepth,
    blades,
    chestFront: blades + u.chestDepth,
  };
}
