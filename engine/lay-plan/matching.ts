import { type Tape, tapeFor } from '../checks/tape.ts';
import { type Walk, walkSeam } from '../checks/walk.ts';
import { edgeEnd, edgeStart } from '../geometry/edge.ts';
import type { Point } from '../geometry/point.ts';
import type { Garment } from '../pattern/garment.ts';
import type { EdgeRef, Seam } from '../pattern/seam.ts';
import { isFull, placeWhereFull } from './full-seams.ts';
import { hung, type Matching, type Meeting } from './hung.ts';
import { alongX } from './laid-piece.ts';
import { canMatch, notchPairs, type PairOfPlaces, pairAt } from './seam-places.ts';

/** Shorter seams, such as those under an arm, are not looked at, mm (common practice, no source). */
const leastSeam = 100;

/** A seam runs along the grain where it turns from it by less than half a right angle on both pieces. */
const along = Math.SQRT1_2;

/**
 * Matches stripes at the seams that run along the grain: side seams, princess seams, centre seams. On each the place of a notch
 * that both sides have, the one nearest to the middle of the seam, must lie at the same place of the repeat; where there is
 * no notch, the lower end of the seam. The longest seams first, until all pieces hang together; a seam that closes a ring is
 * matched if it happens to be. The first piece of each such group begins a repeat. What is eased or gathered is matched at one
 * place (`placeWhereFull`), a sleeve so at its front notch; it is unmatched where nothing of it runs along the grain. Short seams, and
 * what is sewn to another cloth, are not looked at. A seam of a piece to its own like, a left to its right, is matched as they are
 * cut at the same place.
 */
export function matching(garment: Garment, repeat: number): Matching {
  const tape = tapeFor(garment);
  const seams = garment.seams
    .flatMap((seam) => placeOf(seam, tape) ?? [])
    // In whole mm: seams that were drawn equally long stay in the order in which they are sewn.
    .toSorted((a, b) => Math.round(b.length) - Math.round(a.length));
  return hung(
    garment.pieces.map(({ name }) => name),
    seams,
    repeat,
  );
}

/** A seam, where its sides are to meet, and its length. */
interface MeetingPlace extends Meeting {
  readonly length: number;
}

/** Where the two sides of a seam along the grain are to meet on a stripe; nothing where they cannot. */
function placeOf(seam: Seam, tape: Tape): MeetingPlace | undefined {
  const walked = walkSeam(seam, tape);
  if (!walked || !canMatch(seam, tape)) return undefined;
  const length = walked.seam.lengthB;
  const meeting = ({ a, b }: PairOfPlaces): MeetingPlace => ({
    name: seam.name,
    length,
    a: { piece: a.piece, at: a.x },
    b: { piece: b.piece, at: b.x },
    sense: 1,
  });
  if (length < leastSeam) return undefined;
  if (isFull(seam)) {
    const pair = placeWhereFull(seam, walked, tape, true);
    return pair && { ...meeting(pair), once: true };
  }
  const pair = placeWherePlain(seam, walked, tape);
  return pair && meeting(pair);
}

/** The notch nearest to the middle of a plain seam that runs along the grain, or its lower end. */
function placeWherePlain(seam: Seam, walked: Walk, tape: Tape): PairOfPlaces | undefined {
  if (![...seam.a, ...seam.b].every((ref) => runsAlong(ref, tape))) return undefined;
  const { lengthA, lengthB } = walked.seam;
  const fromMiddle = ([a]: readonly [number, number]): number => Math.abs(a - lengthA / 2);
  const [nearest] = notchPairs(walked).toSorted((p, q) => fromMiddle(p) - fromMiddle(q));
  const ends = [
    [0, 0],
    [lengthA, lengthB],
  ] as const;
  const places = (nearest ? [nearest] : ends).flatMap(([onA, onB]) => pairAt(seam, tape, onA, onB) ?? []);
  return places.toSorted((p, q) => q.a.x - p.a.x)[0];
}

function runsAlong(ref: EdgeRef, tape: Tape): boolean {
  const [piece, edge] = [tape.piece(ref.piece), tape.edge(ref.piece, ref.edge)];
  if (!piece || !edge) return false;
  const straight = alongX(piece);
  const [from, to]: readonly [Point, Point] = [straight(edgeStart(edge)), straight(edgeEnd(edge))];
  return Math.abs(to.x - from.x) >= along * Math.hypot(to.x - from.x, to.y - from.y);
}
