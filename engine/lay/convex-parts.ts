import { orient2d } from 'robust-predicates';
import { UNIT_ROUNDING } from '../geometry/tolerance.ts';

/** A polygon as x, y, x, y ..., turning from x towards y. */
export type Ring = Float64Array;

/**
 * A simple polygon cut into convex ones: ears are clipped off (G. H. Meisters, 1975), then parts joined again over every
 * cut that leaves both its ends convex (S. Hertel, K. Mehlhorn, 1983; at most four times as many parts as needed).
 * Corners in a straight line are left out first.
 */
export function convexParts(ring: Ring): Ring[] {
  const corners = withoutStraight(ring);
  const x = (i: number): number => ring[2 * i] ?? 0;
  const y = (i: number): number => ring[2 * i + 1] ?? 0;
  const turn = (a: number, b: number, c: number): number => -orient2d(x(a), y(a), x(b), y(b), x(c), y(c));
  let parts = triangles(corners, turn);
  for (let joined = true; joined; ) {
    joined = false;
    search: for (let i = 0; i < parts.length; i++)
      for (let j = i + 1; j < parts.length; j++) {
        const one = joinOf(parts[i] ?? [], parts[j] ?? [], turn);
        if (!one) continue;
        parts = [...parts.slice(0, i), one, ...parts.slice(i + 1, j), ...parts.slice(j + 1)];
        joined = true;
        break search;
      }
  }
  return parts.map((part) => Float64Array.from(part.flatMap((i) => [x(i), y(i)])));
}

/** Twice the area of a triangle of corners, positive when it turns from x towards y; its sign is exact. */
type Turn = (a: number, b: number, c: number) => number;

/** The corners of a ring that are no corners of a straight line. */
function withoutStraight(ring: Ring): number[] {
  const all = Array.from({ length: ring.length / 2 }, (_, i) => i);
  const at = (i: number): [number, number] => {
    const k = all[(i + all.length) % all.length] ?? 0;
    return [ring[2 * k] ?? 0, ring[2 * k + 1] ?? 0];
  };
  for (let i = 0; i < all.length && all.length > 3; ) {
    const [[ax, ay], [bx, by], [cx, cy]] = [at(i - 1), at(i), at(i + 1)];
    const cross = (bx - ax) * (cy - by) - (by - ay) * (cx - bx);
    const size = Math.hypot(bx - ax, by - ay) * Math.hypot(cx - bx, cy - by);
    if (Math.abs(cross) <= UNIT_ROUNDING * size) {
      all.splice(i, 1);
      i = Math.max(0, i - 1);
    } else i += 1;
  }
  return all;
}

function triangles(corners: readonly number[], turn: Turn): number[][] {
  const left = [...corners];
  const found: number[][] = [];
  const at = (i: number): number => left[(i + left.length) % left.length] ?? 0;
  const isEar = (i: number): boolean => {
    const [a, b, c] = [at(i - 1), at(i), at(i + 1)];
    if (turn(a, b, c) <= 0) return false;
    return !left.some(
      (p) => p !== a && p !== b && p !== c && turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0,
    );
  };
  while (left.length > 3) {
    let best = -1;
    let widest = -Infinity;
    for (let i = 0; i < left.length; i++) {
      if (!isEar(i)) continue;
      const width = turn(at(i - 1), at(i), at(i + 1));
      if (width > widest) {
        widest = width;
        best = i;
      }
    }
    // A polygon that touches itself may have no ears left: any convex corner will do.
    if (best < 0) best = left.findIndex((_, i) => turn(at(i - 1), at(i), at(i + 1)) > 0);
    if (best < 0) break;
    found.push([at(best - 1), at(best), at(best + 1)]);
    left.splice(best, 1);
  }
  if (left.length === 3 && turn(at(0), at(1), at(2)) > 0) found.push(left);
  return found;
}

/** Two parts as one, if they share an edge and the whole is convex. */
function joinOf(a: readonly number[], b: readonly number[], turn: Turn): number[] | undefined {
  for (const [i, from] of a.entries()) {
    const to = a[(i + 1) % a.length] ?? from;
    const j = b.findIndex((start, k) => start === to && b[(k + 1) % b.length] === from);
    if (j < 0) continue;
    const one = [
      ...Array.from({ length: a.length - 1 }, (_, k) => a[(i + 1 + k) % a.length] ?? 0),
      ...Array.from({ length: b.length - 1 }, (_, k) => b[(j + 1 + k) % b.length] ?? 0),
    ];
    const at = (k: number): number => one[(k + one.length) % one.length] ?? 0;
    return one.every((_, k) => turn(at(k - 1), at(k), at(k + 1)) >= 0) ? one : undefined;
  }
  return undefined;
}
