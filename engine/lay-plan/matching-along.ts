import { type Tape, tapeFor } from '../checks/tape.ts';
import { walkSeam } from '../checks/walk.ts';
import { edgeEnd, edgeStart } from '../geometry/edge.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Seam } from '../pattern/seam.ts';
import { isFull, placeWhereFull } from './full-seams.ts';
import { hung, type Matching, type Meeting, unseen } from './hung.ts';
import { alongX } from './laid-piece.ts';
import { canMatch, notchPairs, type PairOfPlaces, type PlaceOnSeam, pairAt } from './seam-places.ts';

/** Shorter seams are not looked at, mm (common practice, no source). */
const leastSeam = { across: 50, aslant: 100 };

/** A seam neither side of which turns farther from the grain lies beside a stripe rather than across any, mm over all of it. */
const leastSlant = 10;

/** A seam aslant is compared at the ends of so many stretches, and met where its sides then miss each other least. */
const stations = 8;

/**
 * Matches stripes that run along the cloth. A centre line, a fold or a seam to the piece’s own like that lies along the
 * grain, lies on the middle of a stripe. Then seams across the grain are matched, waists and shoulders, the longest first: at the
 * end that lies on a centre line, else at the notch that both sides have nearest to the middle, else at the end nearer to the
 * centre. Then those along the grain whose sides are equally aslant all the way: there stripes meet in a point. Those with unequal
 * slants are named as unmatched. What is eased or gathered is matched at one place, the centre or else a notch (`placeWhereFull`); short
 * seams, and what is sewn to another cloth, are not looked at. A stripe is taken to look the same to the left and to the right of its
 * middle, so that what is turned over matches as what is drawn does.
 *
 * Colours in one order (`oneOrder`) run round her in that order, whether the cloth is folded or open, for every piece has the right
 * side out and its top at one end. Where what meets is a mirror image, as at a shoulder or at sides that meet in a point, they would
 * have to run against it on one side: those seams are unmatched.
 */
export function matchingAlong(garment: Garment, repeat: number, oneOrder = false): Matching {
  const tape = tapeFor(garment);
  const centres = centresOf(garment);
  const looked = garment.seams
    .flatMap((seam) => lookedAt(seam, tape, centres) ?? [])
    .map((seam) => (oneOrder && seam.mirrors ? { ...seam, how: 'unequal' as const } : seam));
  const meetings = looked
    .filter(({ how }) => how !== 'unequal')
    .toSorted((p, q) => (p.how === q.how ? q.length - p.length : p.how === 'across' ? -1 : 1));
  const placed = new Map(Array.from(centres, ([piece, y]) => [piece, -y]));
  const names = garment.pieces.map(({ name }) => name);
  const { phases, matched, matchedOnce, unmatched } = hung(names, meetings, repeat, placed);
  const unequal = looked.filter(({ how }) => how === 'unequal').map(({ name }) => name);
  return { phases, matched, matchedOnce, unmatched: [...unmatched, ...unequal] };
}

/** A seam as it lies to the stripes: across some, or aslant, its sides equally or not. */
interface Looked extends Meeting {
  readonly length: number;
  readonly how: 'across' | 'aslant' | 'unequal';
  /** Sewn, what lies beside the stripe on one side of the seam is the mirror image of what lies beside it on the other. */
  readonly mirrors: boolean;
}

/** How far from the origin, across the grain, the centre line of each piece lies that has one along the grain. */
function centresOf({ pieces, joins }: Garment): ReadonlyMap<string, number> {
  const mirrored = joins.flatMap((join) => (join.kind === 'mirror' && !join.turns ? [join.a] : []));
  const found = new Map<string, number>();
  for (const piece of pieces) {
    const straight = alongX(piece);
    const centre = piece.edges
      .filter(
        ({ name, turn }) =>
          turn === 'fold' || mirrored.some((corner) => corner.piece === piece.name && corner.seam === name),
      )
      .map((edge) => ({ turn: edge.turn, from: straight(edgeStart(edge)), to: straight(edgeEnd(edge)) }))
      .filter(({ from, to }) => Math.abs(to.y - from.y) <= unseen)
      .toSorted((a, b) => Number(b.turn === 'fold') - Number(a.turn === 'fold'))[0];
    if (centre) found.set(piece.name, centre.from.y);
  }
  return found;
}

/** How a seam lies to the stripes, and where its two sides are to meet on one; nothing where it is not looked at. */
function lookedAt(seam: Seam, tape: Tape, centres: ReadonlyMap<string, number>): Looked | undefined {
  const walked = walkSeam(seam, tape);
  if (!walked || !canMatch(seam, tape) || toItsLike(seam)) return undefined;
  const { lengthA, lengthB: length } = walked.seam;
  const at = (share: number): PairOfPlaces | undefined => pairAt(seam, tape, share * lengthA, share * length);
  const [first, last] = [at(0), at(1)];
  if (!first || !last) return undefined;
  const [a, b] = [turned(first.a, last.a), turned(first.b, last.b)];
  const sense = a.y * b.y < 0 ? -1 : 1;
  const looked = (how: Looked['how'], pair: PairOfPlaces): Looked => ({
    name: seam.name,
    length,
    how,
    sense,
    mirrors: sense !== handOf(seam, pair),
    a: { piece: pair.a.piece, at: pair.a.y },
    b: { piece: pair.b.piece, at: pair.b.y },
  });
  if (isFull(seam)) {
    if (length < leastSeam.across) return undefined;
    const onCentre = notchPairs(walked)
      .flatMap((notch) => pairAt(seam, tape, ...notch) ?? [])
      .find((pair) => isOnCentre(pair, centres));
    const pair = onCentre ?? placeWhereFull(seam, walked, tape, false);
    return pair && { ...looked('across', pair), once: true };
  }
  if (Math.abs(a.y) > Math.abs(a.x) && Math.abs(b.y) > Math.abs(b.x)) {
    if (length < leastSeam.across) return undefined;
    const onCentre = [first, last].find((pair) => isOnCentre(pair, centres));
    const fromMiddle = ([onA]: readonly [number, number]): number => Math.abs(onA - lengthA / 2);
    const [notch] = notchPairs(walked).toSorted((p, q) => fromMiddle(p) - fromMiddle(q));
    const nearer = first.a.y >= last.a.y ? first : last;
    return looked('across', onCentre ?? (notch && pairAt(seam, tape, ...notch)) ?? nearer);
  }
  if (length < leastSeam.aslant) return undefined;
  const pairs = Array.from({ length: stations + 1 }, (_, i) => at(i / stations) ?? first);
  if ([pairs.map((pair) => pair.a.y), pairs.map((pair) => pair.b.y)].every((ys) => spanOf(ys) < leastSlant))
    return undefined;
  const apart = pairs.map((pair) => pair.b.y - sense * pair.a.y);
  const misses = apart.map((one) => Math.max(...apart.map((other) => Math.abs(other - one))));
  const least = Math.min(...misses);
  return looked(least <= unseen ? 'aslant' : 'unequal', pairs[misses.indexOf(least)] ?? first);
}

/**
 * 1 where both sides are sewn as drawn, or both turned over: outlines run clockwise, so that they run against each other along
 * the seam; -1 where one is, a right front to a right back: both are drawn with x to the wearer's side.
 */
function handOf({ a, b }: Seam, { a: onA, b: onB }: PairOfPlaces): 1 | -1 {
  const runs = (side: Seam['a'], piece: string): boolean =>
    side.find((ref) => ref.piece === piece)?.reversed ?? false;
  return runs(a, onA.piece) === runs(b, onB.piece) ? -1 : 1;
}

const spanOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

const turned = (from: PlaceOnSeam, to: PlaceOnSeam) => ({ x: to.x - from.x, y: to.y - from.y });

const isOnCentre = ({ a, b }: PairOfPlaces, centres: ReadonlyMap<string, number>): boolean =>
  [a, b].every(({ piece, y }) => Math.abs(y - (centres.get(piece) ?? Number.POSITIVE_INFINITY)) <= unseen);

/** Whether a seam joins a piece to its own like, left to right: what is turned over meets there by itself. */
const toItsLike = ({ a, b }: Seam): boolean =>
  a.length === b.length && a.every(({ piece, edge }, i) => piece === b[i]?.piece && edge === b[i]?.edge);
