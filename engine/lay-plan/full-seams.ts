import type { Tape } from '../checks/tape.ts';
import type { Walk } from '../checks/walk.ts';
import { edgeStart, pointAlong } from '../geometry/edge.ts';
import { distance } from '../geometry/point.ts';
import type { Piece } from '../pattern/piece.ts';
import type { Seam } from '../pattern/seam.ts';
import { unseen } from './hung.ts';
import { alongX } from './laid-piece.ts';
import { notchPairs, type PairOfPlaces, type PlaceOnSeam, pairAt } from './seam-places.ts';

/** Whether a seam is eased or gathered: its two sides agree at its notches and its ends, and nowhere between them. */
export const isFull = ({ ease, gatherRatio }: Seam): boolean => ease !== 0 || gatherRatio !== 1;

/**
 * The one place at which a cutter matches a seam that is eased or gathered: a notch that both sides have, or an end, where a plain
 * stretch goes on, at which both sides run along the grain (`along`), or both across it. The notch of the front comes first, for
 * there a sleeve is matched; then what lies nearest to the bust level, or to the middle of a seam on pieces without one (common
 * practice, no source). Nothing where the sides run otherwise at all of them.
 */
export function placeWhereFull(
  seam: Seam,
  walked: Walk,
  tape: Tape,
  along: boolean,
): PairOfPlaces | undefined {
  const { lengthA, lengthB } = walked.seam;
  const ranked = [[0, 0] as const, ...notchPairs(walked), [lengthA, lengthB] as const].flatMap(
    ([onA, onB]) => {
      const pair = pairAt(seam, tape, onA, onB);
      if (!pair || pair.a.isAlong !== along || pair.b.isAlong !== along) return [];
      const sides = [pair.a, pair.b];
      const fromBust = Math.min(...sides.map((place) => fromBustLevel(place, tape)));
      return [
        {
          pair,
          front: sides.some((place) => isAtFrontNotch(place, tape)),
          from: Number.isFinite(fromBust) ? fromBust : Math.abs(onA - lengthA / 2),
        },
      ];
    },
  );
  return ranked.toSorted((p, q) => Number(q.front) - Number(p.front) || p.from - q.from)[0]?.pair;
}

/** How far above or below the bust level of its piece a place lies, mm. */
function fromBustLevel({ piece: name, x }: PlaceOnSeam, tape: Tape): number {
  const piece = tape.piece(name);
  const level = piece?.lines.find(({ name: line }) => line === 'bust level');
  return piece && level ? Math.abs(alongX(piece)(edgeStart(level)).x - x) : Number.POSITIVE_INFINITY;
}

/** Whether a single notch, the mark of the front, stands at a place, on whichever edge of the piece. */
function isAtFrontNotch({ piece: name, x, y }: PlaceOnSeam, tape: Tape): boolean {
  const piece = tape.piece(name);
  return (
    piece?.notches.some(
      (notch) => notch.mark === 'single' && distance(placeOf(notch, piece), { x, y }) < unseen,
    ) ?? false
  );
}

function placeOf({ edge: name, at }: Piece['notches'][number], piece: Piece) {
  const edge = piece.edges.find((each) => each.name === name);
  return edge ? alongX(piece)(pointAlong(edge, at).point) : { x: Number.NaN, y: Number.NaN };
}
