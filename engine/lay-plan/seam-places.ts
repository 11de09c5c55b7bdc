import type { Tape } from '../checks/tape.ts';
import type { Walk } from '../checks/walk.ts';
import { pointAlong } from '../geometry/edge.ts';
import type { EdgeRef } from '../pattern/seam.ts';
import { alongX } from './laid-piece.ts';

/** A place on a piece, its grain along x, the top first. mm. */
export interface PlaceOnSeam {
  readonly piece: string;
  readonly x: number;
  readonly y: number;
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
    return { piece: piece.name, ...alongX(piece)(pointAlong(edge, from).point) };
  }
  return undefined;
}
