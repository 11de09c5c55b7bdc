import type { Tape } from '../checks/tape.ts';
import type { Walk } from '../checks/walk.ts';
import { pointAlong } from '../geometry/edge.ts';
import { point } from '../geometry/point.ts';
import type { EdgeRef, Seam } from '../pattern/seam.ts';
import { alongX } from './laid-piece.ts';

/** A place on a piece, its grain along x, the top first. mm. */
export interface PlaceOnSeam {
  readonly piece: string;
  readonly x: number;
  readonly y: number;
  /** Whether the seam runs along the grain here, rather than across. */
  readonly isAlong: boolean;
}

/** The same place of a seam on both its sides. */
export interface PairOfPlaces {
  readonly a: PlaceOnSeam;
  readonly b: PlaceOnSeam;
}

/** Whether stripes can be matched at a seam at all: all its pieces are cut of one cloth, and it is not felled over others. */
export function canMatch({ a, b, felled }: Seam, tape: Tape): boolean {
  const [first, ...others] = [...a, ...b].map(
    ({ piece }) => tape.piece(piece)?.cut.map(({ cloth }) => cloth) ?? [],
  );
  return !felled && (first ?? []).some((cloth) => others.every((cloths) => cloths.includes(cloth)));
}

/** The notches that both sides of a seam have: how far along side a, and along side b, mm. */
export function notchPairs({ stretches }: Walk): readonly (readonly [number, number])[] {
  const pairs: (readonly [number, number])[] = [];
  let [upToA, upToB] = [0, 0];
  for (const { lengthA, lengthB } of stretches.slice(0, -1)) {
    upToA += lengthA;
    upToB += lengthB;
    pairs.push([upToA, upToB]);
  }
  return pairs;
}

/** The place so far (mm) along a side of a seam; none where the side has no such edge. */
export function placeOn(side: readonly EdgeRef[], at: number, tape: Tape): PlaceOnSeam | undefined {
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
    const at = pointAlong(edge, from);
    const { x, y } = alongX(piece)(at.point);
    const heading = alongX(piece)(point(at.direction.x, at.direction.y));
    return { piece: piece.name, x, y, isAlong: Math.abs(heading.x) >= Math.abs(heading.y) };
  }
  return undefined;
}

/** So far along side a of a seam, and so far along side b. */
export function pairAt(seam: Seam, tape: Tape, onA: number, onB: number): PairOfPlaces | undefined {
  const [a, b] = [placeOn(seam.a, onA, tape), placeOn(seam.b, onB, tape)];
  return a && b && { a, b };
}
