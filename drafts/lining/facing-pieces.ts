import type { Curve } from '../../engine/geometry/curve.ts';
import {
  edgeLength,
  edgeStart,
  joinedEdges,
  pointAlong,
  reversedEdge,
  startDirection,
} from '../../engine/geometry/edge.ts';
import { between, moved } from '../../engine/geometry/point.ts';
import { outward, scaled, unit } from '../../engine/geometry/vector.ts';
import type { Notch, Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { grainThrough } from '../grainline.ts';
import { cutOnFold, cutPair, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { Finished, Run } from './finished-runs.ts';
import { felled } from './lining-pieces.ts';
import type { BodiceHalf } from './panels.ts';
import { edgesSetBack, stretch } from './set-back.ts';

/** How far facings reach into the panels, and what they are cut with; mm. */
export interface FacingCut {
  readonly turnOfCloth: number;
  /** From the finished edge of the panel to the inner edge of the facing. */
  readonly reach: number;
  /** The same along a shoulder. */
  readonly onShoulder: number;
  /** By how much a free edge is turned under. */
  readonly facingEdge: number;
  /** Of an end that is felled at the zip. */
  readonly allowance: number;
  readonly opening: 'back' | 'side';
}

/** What the inner edge of a facing is called. */
export const innerEdgeOf = { neck: 'lower', armhole: 'inner' } as const satisfies Record<Finished, string>;

/** What a facing is called. */
export const facingOf = (part: BodiceHalf, finished: Finished): string => `${part} ${finished} facing`;

/** Changes from hollow to round that the inner edge of a facing may have, which follows edges that are all but straight here and there. */
const INNER_TURNS = 4;

/** Where along its first edge the grainline crosses a facing. */
const GRAIN_AT = 0.2;

/**
 * Cuts a facing: a band along the finished edges, set back by the turn of the cloth, whose inner edge is those edges
 * once more, further in. A strap end it covers whole.
 */
export function facingPiece(run: Run, cut: FacingCut): Omit<Piece, 'number'> {
  const { after, edges } = run;
  const before = run.before.name.startsWith('princess') ? squareEnd(run, cut.reach) : run.before;
  const isSet = (edge: PieceEdge): boolean => edge !== before && edge !== after;
  const slides = (stays: PieceEdge): number => {
    if (stays.name === 'strap') return edgeLength(stays);
    return stays.name === 'shoulder' ? Math.min(cut.onShoulder, edgeLength(stays)) : cut.reach;
  };
  const finished = edgesSetBack([before, ...edges, after], { isSet, by: cut.turnOfCloth });
  const further = edgesSetBack([before, ...edges.map(bent), after], {
    isSet,
    by: cut.reach,
    slides,
    rounded: true,
  });
  const length = edgeLength(before);
  const innerEdge = neatenedBy(cut.facingEdge)(inner(further, innerEdgeOf[run.finished]));
  const outline = [
    ...finished,
    endOf(stretch(after, cut.turnOfCloth, slides(after)), cut),
    innerEdge,
    endOf(stretch(before, length - slides(before), length - cut.turnOfCloth), cut),
  ];
  const onFold = before.turn === 'fold';
  return {
    name: facingOf(run.part, run.finished),
    edges: outline,
    grain: grainThrough(outline, beside(finished, further), unit(run.grain)),
    notches: [...run.notches, ...(onFold ? [foldNotch(before, innerEdge)] : [])],
    lines: [],
    marks: [],
    cut: (['self', 'interfacing'] as const).flatMap((cloth) => (onFold ? cutOnFold(cloth) : cutPair(cloth))),
  };
}

/** Beside an insert, where the princess edge goes on down from the neckline, a facing ends square to its edge. */
function squareEnd({ before, edges: [first] }: Run, length: number): PieceEdge {
  if (!first) throw new Error('A facing has no edge to finish.');
  const corner = edgeStart(first);
  const inside = moved(corner, scaled(outward(startDirection(first)), -length));
  return { ...before, name: 'end', curves: straight(inside, corner) };
}

/** A place inside the band, near its start. */
function beside([outer]: readonly PieceEdge[], [inside]: readonly PieceEdge[]) {
  if (!outer || !inside) throw new Error('A facing has no edge to finish.');
  const at = (edge: PieceEdge) => pointAlong(edge, GRAIN_AT * edgeLength(edge)).point;
  return between(at(outer), at(inside), 0.5);
}

/** The fold is marked where the inner edge crosses it at right angles. */
const foldNotch = (fold: PieceEdge, edge: PieceEdge): Notch => ({
  name: fold.name,
  edge: edge.name,
  at: edgeLength(edge),
  mark: 'fold',
});

/** The inner edge, walked back: the finished edges once more, in one. */
function inner(further: readonly PieceEdge[], name: string): PieceEdge {
  const [first] = further;
  if (!first) throw new Error('A facing has no edge to finish.');
  return reversedEdge({ ...first, ...joinedEdges(name, further), inflections: INNER_TURNS });
}

/** An end of a facing: sewn to the next one, on the fold, felled at the zip or over a strap; else free. */
function endOf(edge: PieceEdge, { opening, allowance, facingEdge }: FacingCut): PieceEdge {
  if (edge.name.startsWith('princess') || edge.name === 'end') return neatenedBy(facingEdge)(edge);
  if (edge.name === 'strap') return felled(edge);
  if (edge.name !== 'centre back' || opening === 'side') return edge;
  return { ...felled({ ...edge, allowance }), turn: 'finished' };
}

/** A free edge, turned under and stitched. */
const neatenedBy =
  (allowance: number) =>
  (edge: PieceEdge): PieceEdge => ({ ...edge, rank: sewingRank.facingEdge, turn: 'finished', allowance });

/** An edge whose straight lines may bend, so that they keep their headings when their ends are moved apart. */
const bent = (edge: PieceEdge): PieceEdge => ({
  ...edge,
  curves: edge.curves.map(
    (curve): Curve =>
      curve.kind === 'cubic'
        ? curve
        : {
            ...curve,
            kind: 'cubic',
            handle1: between(curve.from, curve.to, 1 / 3),
            handle2: between(curve.from, curve.to, 2 / 3),
          },
  ),
});
