import { vectorBetween } from '../../geometry/point.ts';
import { cross } from '../../geometry/vector.ts';
import type { CornerFromLevel } from '../../pattern/shape.ts';
import { cornerPoint } from './corner-point.ts';
import { levelOf } from './level.ts';
import type { Measured, MeasureOf } from './measured.ts';

/** How much farther one corner lies from a level of its piece than another does from a level of its own, and `plus`, mm. */
export function dip({ at, than, plus = 0 }: MeasureOf<'dip'>, on: Measured): number | undefined {
  const [one, other] = [fromLevel(at, on), fromLevel(than, on)];
  return one === undefined || other === undefined ? undefined : one - other + plus;
}

function fromLevel({ corner, level }: CornerFromLevel, { tape }: Measured): number | undefined {
  const found = cornerPoint(corner, tape);
  const line = levelOf(corner.piece, level, tape);
  return found && line && Math.abs(cross(line.heading, vectorBetween(line.through, found.point)));
}
