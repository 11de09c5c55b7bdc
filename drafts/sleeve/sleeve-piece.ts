import type { Curve } from '../../engine/geometry/curve.ts';
import { edgeLength } from '../../engine/geometry/edge.ts';
import { type Point, point } from '../../engine/geometry/point.ts';
import { COINCIDENCE } from '../../engine/geometry/tolerance.ts';
import { movedBy, transformedCurve } from '../../engine/geometry/transform.ts';
import { vector } from '../../engine/geometry/vector.ts';
import type { Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { figure } from '../../engine/text/figure.ts';
import type { BodiceAllowances } from '../allowances.ts';
import { gatheringRows } from '../gathering-rows.ts';
import { grainline } from '../grainline.ts';
import { cutPair, levelLine, seamEdge, solvedCurves, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { FittedCap } from './fitted-cap.ts';

/** A sleeve below its cap: its seams and its hem, which lies so far (mm) below the underarm. */
export interface BelowCap {
  readonly edges: readonly PieceEdge[];
  readonly lines: Piece['lines'];
  readonly length: number;
}

/** Cuts a sleeve: the cap, moved apart by its spread, and below it what goes round the arm. */
export function sleevePiece(cap: FittedCap, below: BelowCap, { armhole }: BodiceAllowances): Piece {
  const { lines, solution, spread } = cap;
  const half = (cap.width.value + spread) / 2;
  const apart = (name: string, x: number): readonly Curve[] =>
    solvedCurves(solution, [name]).map((curve) => transformedCurve(curve, movedBy(vector(x, 0))));
  const capEdge = (name: string, curves: readonly Curve[]): PieceEdge =>
    seamEdge(name, curves, armhole, sewingRank.armhole, 2);
  const backFlat = capEdge('cap back underarm', apart(lines.backFlat, -spread / 2));
  const frontFlat = capEdge('cap front underarm', apart(lines.frontFlat, spread / 2));
  const crown = capEdge('crown', solvedCurves(solution, lines.crown));
  const top = crown.curves[0]?.to ?? point(0, 0);
  const text = `upper arm: finished girth ${figure(cap.width.value)} mm`;
  return {
    name: 'sleeve',
    number: 7,
    edges: [backFlat, crown, frontFlat, ...below.edges],
    grain: grainline(top, point(top.x, below.length)),
    notches: [
      { name: 'back armhole notch', edge: backFlat.name, at: edgeLength(backFlat), mark: 'double' },
      { name: 'front armhole notch', edge: frontFlat.name, at: 0, mark: 'single' },
      { name: 'shoulder', edge: 'crown', at: cap.toShoulder, mark: 'level' },
    ],
    lines: [
      ...(spread > COINCIDENCE ? gatheringRows('crown', crown.curves) : []),
      { ...levelLine('upper arm', point(-half, 0), point(half, 0), text), fullness: spread },
      ...below.lines,
    ],
    marks: [],
    cut: cutPair('self'),
  };
}

/** Whether an edge of a sleeve belongs to its cap. */
export const isCapEdge = (name: string): boolean => name === 'crown' || name.startsWith('cap ');

/** A straight edge of the sleeve seam. */
export const sleeveSeamEdge = (name: string, from: Point, to: Point, { seam }: BodiceAllowances): PieceEdge =>
  seamEdge(name, straight(from, to), seam, sewingRank.sleeveSeam);

/** The hem of a sleeve, turned up by its allowance (mm). */
export const sleeveHem = (curves: readonly Curve[], allowance: number): PieceEdge => ({
  name: 'hem',
  curves,
  turn: 'hem',
  allowance,
  rank: sewingRank.hem,
  inflections: 0,
});
