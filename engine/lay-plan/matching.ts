import { type Tape, tapeFor } from '../checks/tape.ts';
import { walkSeam } from '../checks/walk.ts';
import { edgeEnd, edgeStart, pointAlong } from '../geometry/edge.ts';
import type { Point } from '../geometry/point.ts';
import type { Garment } from '../pattern/garment.ts';
import type { EdgeRef, Seam } from '../pattern/seam.ts';
import { alongX } from './laid-piece.ts';

/** How pieces must lie on stripes that run across the cloth so that the stripes meet at seams. mm. */
export interface Matching {
  /** By piece: how far behind the beginning of a repeat the origin of the piece lies, its grain along the cloth. */
  readonly phases: ReadonlyMap<string, number>;
  /** The seams at which stripes meet, and those along the grain at which they cannot as well. */
  readonly matched: readonly string[];
  readonly unmatched: readonly string[];
}

/** Stripes that miss each other by less look as if they met, mm (common practice, no source). */
const unseen = 1;

/** Shorter seams, such as those under an arm, are not looked at, mm (common practice, no source). */
const leastSeam = 100;

/** A seam runs along the grain where it turns from it by less than half a right angle on both pieces. */
const along = Math.SQRT1_2;

/**
 * Matches stripes at the seams that run along the grain: side seams, princess seams, centre seams. On each the place of a notch
 * that both sides have, the one nearest to the middle of the seam, must lie at the same place of the repeat; where there is
 * no notch, the lower end of the seam. The longest seams first, until all pieces hang together; a seam that closes a ring is
 * matched if it happens to be. The first piece of each such group begins a repeat. Gathered, eased and short seams are
 * not matched. A seam of a piece to its own like, a left to its right, is matched as they are cut at the same place.
 */
export function matching(garment: Garment, repeat: number): Matching {
  const tape = tapeFor(garment);
  const seams = garment.seams
    .flatMap((seam) => placeOf(seam, tape) ?? [])
    .toSorted((a, b) => b.length - a.length);
  // Each piece hangs on another, so far along the grain behind it; the first of a group on itself.
  const hung = new Map(garment.pieces.map(({ name }) => [name, { on: name, by: 0 }]));
  const phaseOf = (piece: string): { readonly root: string; readonly by: number } => {
    const own = hung.get(piece) ?? { on: piece, by: 0 };
    if (own.on === piece) return { root: piece, by: 0 };
    const above = phaseOf(own.on);
    return { root: above.root, by: above.by + own.by };
  };
  const matched: string[] = [];
  const unmatched: string[] = [];
  for (const { name, a, b } of seams) {
    const [onA, onB] = [phaseOf(a.piece), phaseOf(b.piece)];
    const apart = onA.by + a.x - (onB.by + b.x);
    if (onA.root !== onB.root) {
      hung.set(onB.root, { on: onA.root, by: apart });
      matched.push(name);
    } else (Math.abs(apart - repeat * Math.round(apart / repeat)) <= unseen ? matched : unmatched).push(name);
  }
  const phases = new Map(
    garment.pieces.map(({ name }) => {
      const { by } = phaseOf(name);
      return [name, by - repeat * Math.floor(by / repeat)];
    }),
  );
  return { phases, matched, unmatched };
}

interface Place {
  readonly name: string;
  readonly length: number;
  /** Where the place lies along the grain of each piece. */
  readonly a: { readonly piece: string; readonly x: number };
  readonly b: { readonly piece: string; readonly x: number };
}

/** Where the two sides of a seam along the grain are to meet on a stripe; nothing where they cannot. */
function placeOf(seam: Seam, tape: Tape): Place | undefined {
  if (seam.gatherRatio !== 1 || seam.ease !== 0 || seam.felled) return undefined;
  const walked = walkSeam(seam, tape);
  if (!walked || ![...seam.a, ...seam.b].every((ref) => runsAlong(ref, tape))) return undefined;
  const { lengthA, lengthB } = walked.seam;
  if (lengthB < leastSeam) return undefined;
  const notches: (readonly [number, number])[] = [];
  let [upToA, upToB] = [0, 0];
  for (const { lengthA: onA, lengthB: onB } of walked.stretches.slice(0, -1)) {
    upToA += onA;
    upToB += onB;
    notches.push([upToA, upToB]);
  }
  const fromMiddle = ([a]: readonly [number, number]): number => Math.abs(a - lengthA / 2);
  const [nearest] = notches.toSorted((p, q) => fromMiddle(p) - fromMiddle(q));
  const ends = [
    [0, 0],
    [lengthA, lengthB],
  ] as const;
  const places = (nearest ? [nearest] : ends).flatMap(([onA, onB]) => {
    const [a, b] = [placeOn(seam.a, onA, tape), placeOn(seam.b, onB, tape)];
    return a && b ? [{ name: seam.name, length: lengthB, a, b }] : [];
  });
  return places.toSorted((p, q) => q.a.x - p.a.x)[0];
}

/** The place so far along a side of a seam, and where it lies along the grain of its piece. */
function placeOn(side: readonly EdgeRef[], at: number, tape: Tape): Place['a'] | undefined {
  let left = at;
  for (const [i, ref] of side.entries()) {
    const [piece, edge] = [tape.piece(ref.piece), tape.edge(ref.piece, ref.edge)];
    if (!piece || !edge) return undefined;
    const length = tape.length(edge);
    if (left > length && i < side.length - 1) {
      left -= length;
      continue;
    }
    const from = Math.max(0, Math.min(length, ref.reversed ? length - left : left));
    return { piece: piece.name, x: alongX(piece)(pointAlong(edge, from).point).x };
  }
  return undefined;
}

function runsAlong(ref: EdgeRef, tape: Tape): boolean {
  const [piece, edge] = [tape.piece(ref.piece), tape.edge(ref.piece, ref.edge)];
  if (!piece || !edge) return false;
  const straight = alongX(piece);
  const [from, to]: readonly [Point, Point] = [straight(edgeStart(edge)), straight(edgeEnd(edge))];
  return Math.abs(to.x - from.x) >= along * Math.hypot(to.x - from.x, to.y - from.y);
}
