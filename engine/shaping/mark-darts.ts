import { edgeLength } from '../geometry/edge.ts';
import { moved } from '../geometry/point.ts';
import { scaled, unit } from '../geometry/vector.ts';
import { sewnDarts } from '../pattern/dart.ts';
import type { Mark, Notch, Piece, PieceEdge } from '../pattern/piece.ts';
import { dartsOf } from './darts.ts';

/** The drill hole lies so far short of a dart's point, mm, that its stitching hides it; common practice, no source. */
const DRILL = 12;

/** At most this share of a dart's depth, in short ones. */
const DRILL_SHARE = 0.25;

const POINT = 'dart point';

/** Legs farther apart than this are taken for a neckline, unless they are said to be a dart's, radians. */
const WIDEST = Math.PI / 3;

/**
 * A piece with its darts marked as they are sewn: legs of turn `dart` without allowance, a notch at either side of
 * each mouth, a drill hole near each point. Marks of darts that are there no more are taken away. Edges that are
 * hemmed, faced or on a fold are no legs, so a pointed neck is left alone where it is said to be one of these.
 */
export function withDartsMarked(piece: Piece): Piece {
  const legs = new Set(
    dartsOf(piece.edges)
      .filter(({ legs: pair, angle }) =>
        pair.every(({ turn }) => turn === 'dart' || (turn === 'seam' && angle < WIDEST)),
      )
      .flatMap(({ legs: pair }) => pair),
  );
  const edges = piece.edges.map(
    (edge): PieceEdge => (legs.has(edge) ? { ...edge, turn: 'dart', allowance: 0 } : edge),
  );
  const darts = sewnDarts(edges);
  const notches = darts.flatMap(({ legs: [first, second], before, after }): readonly Notch[] => [
    { name: first.name, edge: before.name, at: edgeLength(before), mark: 'dart' },
    { name: second.name, edge: after.name, at: 0, mark: 'dart' },
  ]);
  const marks = darts.map(({ legs: [first], apex, middle: { heading } }): Mark => {
    const short = Math.min(DRILL, DRILL_SHARE * edgeLength(first));
    const at = moved(apex, scaled(unit(heading), short));
    return { name: `${first.name} ${POINT}`, kind: 'drill', at, angle: 0, length: 0 };
  });
  return {
    ...piece,
    edges,
    notches: [...piece.notches.filter(({ mark }) => mark !== 'dart'), ...notches],
    marks: [...piece.marks.filter(({ name }) => !name.endsWith(POINT)), ...marks],
  };
}
