import { type Point, point } from '../../engine/geometry/point.ts';
import { straight } from '../piece-edges.ts';
import type { FoundationTable } from './foundation.ts';
import type { Levels } from './levels.ts';
import type { Widths } from './take-in.ts';

/** The side seam of the back or of the front: straight from underarm to waist, but for what it gives in under the bust. */
export interface SideSeam {
  readonly underarm: Point;
  /** Where it crosses the levels. */
  readonly bust: Point;
  readonly underBust: Point;
  readonly waist: Point;
  /** Whether it has a bend there. */
  readonly bent: boolean;
}

/** Draws the side seam through `atBust` (mm from the centre) at bust level. */
export function drawSide(
  table: FoundationTable,
  part: 'front' | 'back',
  atBust: number,
  levels: Levels,
  widths: Widths,
): SideSeam {
  const [underarm, bust, underBust, waist] = [
    levels.underarm,
    levels.bust,
    levels.underBust,
    levels.waist,
  ].map(({ value }) => value) as [number, number, number, number];
  const perMm = widths.sideAtWaist.value / (waist - bust);
  const x = (level: number): number => atBust - perMm * (level - bust);
  const side = {
    underarm: point(x(underarm), underarm),
    bust: point(atBust, bust),
    underBust: point(x(underBust) - widths.sideUnderBust.value, underBust),
    waist: point(x(waist), waist),
    bent: widths.sideUnderBust.value > 0,
  };
  const title = part === 'front' ? 'Front side seam' : 'Back side seam';
  const wide = table.measured(
    `${title} at bust level`,
    'from the centre',
    atBust,
    part === 'front' ? widths.front : widths.back,
  );
  table.say`${title}: through ${wide} at bust level to ${widths.sideAtWaist} further in at the waist`;
  table.point(part, 'underarm', side.underarm);
  table.point(part, 'side at waist', side.waist);
  table.line(part, 'side', straight(side.underarm, side.waist));
  return side;
}
