import { type Point, point } from '../../engine/geometry/point.ts';
import { straight } from '../piece-edges.ts';
import type { Levels } from './levels.ts';
import { type BackNeck, type Shoulder, shoulderPoint } from './neck-and-shoulder.ts';
import { foundationRules as rules } from './rules.ts';
import type { FoundationTable } from './table.ts';

/** What lies behind the front's shoulder. */
export interface Behind {
  readonly neck: BackNeck;
  readonly shoulder: Shoulder;
}

/** Draws the fold of the arm in front, as far below the shoulder point as behind. */
export function drawAcrossFront(
  table: FoundationTable,
  levels: Levels,
  { neck, shoulder: backShoulder }: Behind,
  shoulder: Shoulder,
): Point {
  const acrossFront = table.mm`Half across front: across front width ${table.size.acrossFrontWidth} / 2 + ${rules.acrossFrontEase}`;
  const roundBack = table.fitted('round back');
  const behind = table.mm`Across-back level below the shoulder point: across-back level ${levels.across} + side neck above the back neck point ${neck.rise} - sine of back shoulder slope ${backShoulder.slope} x shoulder length ${backShoulder.length}; behind`;
  const falls =
    roundBack.value === 0
      ? behind
      : table.mm`Fitting, across-front level below the shoulder point: ${behind} - round back ${roundBack}; which the front does not share`;
  table.say`Across front: ${acrossFront} from centre front, ${falls} below the front shoulder point, as behind`;
  const across = table.point(
    'front',
    'across front',
    point(acrossFront.value, shoulderPoint(shoulder).y + falls.value),
  );
  table.line('front', 'across front', straight(point(0, across.y), across));
  table.dimension('front', acrossFront, point(0, across.y), across);
  table.dimension('front', falls, point(across.x, shoulderPoint(shoulder).y), across);
  return across;
}
