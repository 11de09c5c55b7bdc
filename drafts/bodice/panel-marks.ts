import type { Curve } from '../../engine/geometry/curve.ts';
import { edgeLength, splitEdgeAt } from '../../engine/geometry/edge.ts';
import { between, distance, moved, type Point, vectorBetween } from '../../engine/geometry/point.ts';
import { outward, scaled, unit } from '../../engine/geometry/vector.ts';
import type { Notch, Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { grainline } from '../grainline.ts';
import { seamEdge } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { Levels } from './levels.ts';

/** Notches where a princess edge of several curves passes from one to the next, named in that order. */
export function jointNotches(
  edge: PieceEdge,
  names: readonly { readonly name: string; readonly mark: Notch['mark'] }[],
): readonly Notch[] {
  let at = 0;
  return names.flatMap(({ name, mark }, i) => {
    const curve = edge.curves[i];
    if (!curve) return [];
    at += edgeLength({ name, curves: [curve] });
    return [{ name, edge: edge.name, at, mark }];
  });
}

/** The side seam where it crosses a level: it is straight from underarm to waist. */
export const sideAtLevel = (underarm: Point, waist: Point, levels: Levels, level: number): Point =>
  between(underarm, waist, (level - levels.underarm) / (levels.waist - levels.underarm));

/** Level notches down a straight side seam. */
export function sideNotches(underarm: Point, waist: Point, levels: Levels): readonly Notch[] {
  const notch = (name: string, level: number): Notch => ({
    name,
    edge: 'side',
    at: distance(underarm, sideAtLevel(underarm, waist, levels, level)),
    mark: 'level',
  });
  return [notch('bust level', levels.bust), notch('under-bust level', levels.underBust)];
}

/** An armhole as two edges, in the outline's direction: gathered to the sleeve, then sewn flat to the underarm. */
export function armholeEdges(
  curves: readonly Curve[],
  flat: number,
  allowance: number,
): readonly [upper: PieceEdge, underarm: PieceEdge] {
  const armhole = { name: 'armhole', curves };
  const [upper, underarm] = splitEdgeAt(armhole, edgeLength(armhole) * (1 - flat), [
    'armhole upper',
    'armhole underarm',
  ]);
  const edge = ({ name, curves: part }: typeof upper): PieceEdge =>
    seamEdge(name, part, allowance, sewingRank.armhole);
  return [edge(upper), edge(underarm)];
}

/** A grainline square to the middle of a side panel's waist, up to the bust level. */
export function grainSquareToWaist(waistIn: Point, waistOut: Point, levels: Levels): Piece['grain'] {
  const middle = between(waistIn, waistOut, 0.5);
  const up = unit(outward(vectorBetween(waistIn, waistOut)));
  return grainline(moved(middle, scaled(up, levels.waist - levels.bust)), middle);
}
