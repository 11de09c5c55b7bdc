import type { Solution } from '../../engine/constraints/solution.ts';
import type { Curve } from '../../engine/geometry/curve.ts';
import { edgeLength } from '../../engine/geometry/edge.ts';
import { type Point, point } from '../../engine/geometry/point.ts';
import { reversed } from '../../engine/geometry/split.ts';
import { movedBy, transformedCurve } from '../../engine/geometry/transform.ts';
import { vector } from '../../engine/geometry/vector.ts';
import type { Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import type { BodiceAllowances } from '../allowances.ts';
import { easedLine } from '../bodice/eased-line.ts';
import { gatheringRows } from '../gathering-rows.ts';
import { grainline } from '../grainline.ts';
import { cutPair, levelLine, seamEdge, solvedCurves, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { Arm } from './arm.ts';
import type { CapLines } from './cap-lines.ts';
import type { SleeveStyling } from './choices.ts';
import { sleeveRules as rules } from './rules.ts';

/** What a sleeve is cut from. */
export interface SleeveCut {
  readonly lines: CapLines;
  readonly solution: Solution;
  readonly arm: Arm;
  readonly styling: SleeveStyling;
  readonly allowance: BodiceAllowances;
  /** Along the crown from the back notch to the shoulder, mm. */
  readonly toShoulder: number;
  readonly armText: string;
  /** What is written on the casing of a puff. */
  readonly elasticText: string;
}

/** Cuts the sleeve: the cap, spread where it is a puff, and below it what goes round the arm. */
export function sleevePiece(cut: SleeveCut): Piece {
  const { lines, solution, arm, styling, allowance } = cut;
  const spread = solution.scalars[lines.spread] ?? 0;
  const half = (arm.width.value + spread) / 2;
  const apart = (name: string, x: number): readonly Curve[] =>
    solvedCurves(solution, [name]).map((curve) => transformedCurve(curve, movedBy(vector(x, 0))));
  const cap = (name: string, curves: readonly Curve[], inflections: number): PieceEdge =>
    seamEdge(name, curves, allowance.armhole, sewingRank.armhole, inflections);
  const backFlat = cap('cap back underarm', apart(lines.backFlat, -spread / 2), 2);
  const frontFlat = cap('cap front underarm', apart(lines.frontFlat, spread / 2), 2);
  const crown = cap('crown', solvedCurves(solution, lines.crown), 2);
  const top = crown.curves[0]?.to ?? point(0, 0);
  const below = styling.sleeve === 'plain' ? plainArm(cut) : puffedArm(cut, half);
  return {
    name: 'sleeve',
    number: 7,
    edges: [backFlat, crown, frontFlat, ...below.edges],
    grain: grainline(top, point(top.x, arm.length.value)),
    notches: [
      { name: 'back armhole notch', edge: backFlat.name, at: edgeLength(backFlat), mark: 'double' },
      { name: 'front armhole notch', edge: frontFlat.name, at: 0, mark: 'single' },
      { name: 'shoulder', edge: 'crown', at: cut.toShoulder, mark: 'level' },
    ],
    lines: [
      ...(styling.sleeve === 'plain' ? [] : gatheringRows('crown', crown.curves)),
      { ...levelLine('upper arm level', point(-half, 0), point(half, 0), cut.armText), fullness: spread },
      ...below.lines,
    ],
    marks: [],
    cut: cutPair('self'),
  };
}

type Below = Pick<Piece, 'edges' | 'lines'>;

/** A puff: straight down to a hem that is a casing. */
function puffedArm({ arm, styling, allowance, elasticText }: SleeveCut, half: number): Below {
  const hem = arm.length.value;
  const casing = styling.elasticWidth + rules.casingRoom.value;
  const asked = styling.sleeveHemAllowance === 'auto' ? 0 : styling.sleeveHemAllowance;
  const corner = (x: number, y: number): Point => point(x, y);
  return {
    edges: [
      sleeveSeamEdge('front seam', corner(half, 0), corner(half, hem), allowance),
      hemEdge(corner(half, hem), corner(-half, hem), Math.max(asked, casing + rules.turnUnder.value)),
      sleeveSeamEdge('back seam', corner(-half, hem), corner(-half, 0), allowance),
    ],
    lines: [
      {
        name: 'casing',
        kind: 'casing',
        text: elasticText,
        curves: straight(corner(-half, hem - casing), corner(half, hem - casing)),
      },
    ],
  };
}

/** A plain sleeve: it tapers to its hem; one to the wrist bends at the elbow, where the back is a little longer. */
function plainArm({ arm, styling, allowance }: SleeveCut): Below {
  const half = arm.width.value / 2;
  const hem = point(arm.hem.value / 2, arm.length.value);
  const turnUp = styling.sleeveHemAllowance === 'auto' ? rules.plainHem.value : styling.sleeveHemAllowance;
  const mirror = (p: Point): Point => point(-p.x, p.y);
  if (!arm.elbow)
    return {
      edges: [
        seamDown('front seam', point(half, 0), hem, allowance),
        hemEdge(hem, mirror(hem), turnUp),
        seamUp('back seam', mirror(hem), point(-half, 0), allowance),
      ],
      lines: [],
    };
  const { below, width } = arm.elbow;
  const stretch = rules.elbowStretch.value;
  const hold = rules.elbowHold.value;
  const x = (y: number): number =>
    y <= below.value
      ? half + ((width.value / 2 - half) * y) / below.value
      : width.value / 2 + ((hem.x - width.value / 2) * (y - below.value)) / (hem.y - below.value);
  const at = (y: number): Point => point(x(y), y);
  const [above, under] = [at(below.value - stretch), at(below.value + stretch)];
  const lower = (p: Point): Point => point(-p.x, p.y + hold);
  return {
    edges: [
      seamDown('front seam', point(half, 0), above, allowance),
      sleeveSeamEdge('front seam elbow', above, under, allowance),
      sleeveSeamEdge('front seam lower', under, hem, allowance),
      hemEdge(hem, lower(hem), turnUp),
      sleeveSeamEdge('back seam lower', lower(hem), lower(under), allowance),
      sleeveSeamEdge('back seam elbow', lower(under), mirror(above), allowance),
      seamUp('back seam', mirror(above), point(-half, 0), allowance),
    ],
    lines: [],
  };
}

const sleeveSeamEdge = (name: string, from: Point, to: Point, allowance: BodiceAllowances): PieceEdge =>
  seamEdge(name, straight(from, to), allowance.seam, sewingRank.sleeveSeam);

/** From the underarm, where it is square to the cap, down to a narrower place. */
const seamDown = (name: string, from: Point, to: Point, allowance: BodiceAllowances): PieceEdge =>
  seamEdge(name, [easedLine(from, to, Math.PI / 2)], allowance.seam, sewingRank.sleeveSeam);

const seamUp = (name: string, from: Point, to: Point, allowance: BodiceAllowances): PieceEdge =>
  seamEdge(name, [reversed(easedLine(to, from, Math.PI / 2))], allowance.seam, sewingRank.sleeveSeam);

const hemEdge = (from: Point, to: Point, allowance: number): PieceEdge => ({
  name: 'hem',
  curves: straight(from, to),
  turn: 'hem',
  allowance,
  rank: sewingRank.hem,
  inflections: 0,
});
