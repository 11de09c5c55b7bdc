import type { Cubic } from '../../engine/geometry/curve.ts';
import { distance, moved, type Point, point, vectorBetween } from '../../engine/geometry/point.ts';
import { reversed } from '../../engine/geometry/split.ts';
import { scaled, unit, type Vector } from '../../engine/geometry/vector.ts';
import type { PieceEdge } from '../../engine/pattern/piece.ts';
import type { BodiceAllowances } from '../allowances.ts';
import { easedLine } from '../bodice/eased-line.ts';
import { seamEdge } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { Arm } from './arm.ts';
import type { PlainSleeveTable } from './choices.ts';
import { sleeveRules as rules } from './rules.ts';
import { type BelowCap, sleeveHem, sleeveSeamEdge } from './sleeve-piece.ts';

/** The edges of a plain sleeve below its cap. It tapers; one to the wrist is a little longer behind, over the elbow. */
export function belowPlainCap(
  { styling }: PlainSleeveTable,
  arm: Arm,
  allowance: BodiceAllowances,
): BelowCap {
  const half = arm.width.value / 2;
  const underarm = point(half, 0);
  const end = point(arm.hem.value / 2, arm.length.value);
  const turnUp = styling.sleeveHemAllowance === 'auto' ? rules.plainHem.value : styling.sleeveHemAllowance;
  if (!arm.elbow) {
    const front = seamDown('front seam', underarm, end, allowance);
    const back = seamUp('back seam', mirrored(end), mirrored(underarm), allowance);
    const hem = sleeveHem([hemBetween(underarm, end, mirrored(end), mirrored(underarm))], turnUp);
    return { length: arm.length.value, edges: [front, hem, back], lines: [] };
  }
  const { below, width } = arm.elbow;
  const x = (y: number): number =>
    y <= below.value
      ? half + ((width.value / 2 - half) * y) / below.value
      : width.value / 2 + ((end.x - width.value / 2) * (y - below.value)) / (end.y - below.value);
  const at = (y: number): Point => point(x(y), y);
  const stretch = rules.elbowStretch.value;
  const [above, under] = [at(below.value - stretch), at(below.value + stretch)];
  const lower = (p: Point): Point => point(-p.x, p.y + rules.elbowHold.value);
  return {
    length: arm.length.value,
    edges: [
      seamDown('front seam', underarm, above, allowance),
      sleeveSeamEdge('front seam elbow', above, under, allowance),
      sleeveSeamEdge('front seam lower', under, end, allowance),
      sleeveHem([hemBetween(under, end, lower(end), lower(under))], turnUp),
      sleeveSeamEdge('back seam lower', lower(end), lower(under), allowance),
      sleeveSeamEdge('back seam elbow', lower(under), mirrored(above), allowance),
      seamUp('back seam', mirrored(above), mirrored(underarm), allowance),
    ],
    lines: [],
  };
}

const mirrored = (p: Point): Point => point(-p.x, p.y);

/** From the underarm, where it is square to the cap, down to a narrower place. */
const seamDown = (name: string, from: Point, to: Point, { seam }: BodiceAllowances): PieceEdge =>
  seamEdge(name, [easedLine(from, to, Math.PI / 2)], seam, sewingRank.sleeveSeam);

const seamUp = (name: string, from: Point, to: Point, { seam }: BodiceAllowances): PieceEdge =>
  seamEdge(name, [reversed(easedLine(to, from, Math.PI / 2))], seam, sewingRank.sleeveSeam);

/** A hem from the front seam to the back, square to both, so that it runs on when they are sewn together. */
function hemBetween(aboveFront: Point, front: Point, back: Point, aboveBack: Point): Cubic {
  const square = (down: Vector): Vector => ({ x: -down.y, y: down.x });
  const leaves = square(unit(vectorBetween(aboveFront, front)));
  const arrives = square(unit(vectorBetween(aboveBack, back)));
  const third = distance(front, back) / 3;
  return {
    kind: 'cubic',
    from: front,
    handle1: moved(front, scaled(leaves, third)),
    handle2: moved(back, scaled(arrives, -third)),
    to: back,
  };
}
