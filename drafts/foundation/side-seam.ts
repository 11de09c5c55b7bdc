import { type Point, point } from '../../engine/geometry/point.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import { straight } from '../piece-edges.ts';
import type { Levels } from './levels.ts';
import type { FoundationTable } from './table.ts';
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

/** Draws the side seam through `atBust`, so far from the centre, at bust level. */
export function drawSide(
  table: FoundationTable,
  part: 'front' | 'back',
  atBust: Mm,
  levels: Levels,
  widths: Widths,
): SideSeam {
  const [underarm, bust, underBust, waist, sideWaist] = [
    levels.underarm,
    levels.bust,
    levels.underBust,
    levels.waist,
    levels.sideWaist,
  ].map(({ value }) => value) as [number, number, number, number, number];
  const perMm = widths.sideAtWaist.value / (sideWaist - bust);
  const x = (level: number): number => atBust.value - perMm * (level - bust);
  const side = {
    underarm: point(x(underarm), underarm),
    bust: point(atBust.value, bust),
    underBust: point(x(underBust) - widths.sideUnderBust.value, underBust),
    waist: point(x(sideWaist), sideWaist),
    bent: widths.sideUnderBust.value > 0,
  };
  const title = part === 'front' ? 'Front side seam' : 'Back side seam';
  table.say`${title}: straight; at bust level from the centre ${atBust} mm, at the waist further in by ${widths.sideAtWaist} mm, up to the underarm level and down to the waist level at the side seam ${levels.sideWaist}`;
  table.line(part, 'bust level', straight(point(0, bust), side.bust));
  table.line(part, 'waist level', straight(point(0, waist), point(x(waist), waist)));
  table.point(part, 'side at bust level', side.bust);
  table.point(part, 'underarm', side.underarm);
  table.point(part, 'side at waist', side.waist);
  table.dimension(part, atBust, point(0, bust), side.bust);
  table.dimension(part, widths.sideAtWaist, side.waist, point(atBust.value, sideWaist));
  table.dimension(part, levels.sideWaist, point(side.waist.x, 0), side.waist);
  table.line(part, 'side', straight(side.underarm, side.bent ? side.bust : side.waist));
  return side;
}
