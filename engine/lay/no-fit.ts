import type { Ring } from './convex-parts.ts';

/**
 * Where one shape must not stand for another's sake: the differences of their places at which they overlap. Its boundary
 * as straight stretches x, y, x, y each, with the forbidden side where the cross product from the stretch is positive.
 */
export interface NoFit {
  readonly stretches: Float64Array;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * The places (of `moving` less those of `fixed`) at which two shapes overlap: the sums of each convex part of the fixed one
 * with each of the moving one turned round (Minkowski sums), of which only the stretches of boundary are kept that lie
 * inside no other (M. Cyrus, J. Beck, 1978, clips a stretch by a convex polygon). A hole that is just filled keeps its
 * stretches, so an exact fit stays allowed.
 */
export function noFit(fixed: readonly Ring[], moving: readonly Ring[]): NoFit {
  // The largest first: most of what is hidden lies inside one of these.
  const sums = fixed
    .flatMap((a) => moving.map((b) => sumOf(a, turnedRound(b))))
    .sort((a, b) => (b.right - b.left) * (b.bottom - b.top) - (a.right - a.left) * (a.bottom - a.top));
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const sum of sums) {
    left = Math.min(left, sum.left);
    right = Math.max(right, sum.right);
    top = Math.min(top, sum.top);
    bottom = Math.max(bottom, sum.bottom);
  }
  const size = Math.max(right - left, bottom - top);
  const kept: number[] = [];
  for (const sum of sums)
    for (let i = 0; i < sum.ring.length; i += 2) {
      const next = (i + 2) % sum.ring.length;
      const [ax, ay] = [sum.ring[i] as number, sum.ring[i + 1] as number];
      const [bx, by] = [sum.ring[next] as number, sum.ring[next + 1] as number];
      const length = Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
      let open: [number, number][] = [[0, 1]];
      for (const other of sums) {
        if (other === sum || Math.min(ax, bx) > other.right || Math.max(ax, bx) < other.left) continue;
        if (Math.min(ay, by) > other.bottom || Math.max(ay, by) < other.top) continue;
        const hidden = shareInside(ax, ay, bx, by, other, inset * size);
        if (!hidden) continue;
        open = open.flatMap((span) => without(span, hidden));
        if (open.length === 0) break;
      }
      for (const [t0, t1] of open)
        if ((t1 - t0) * length > sliver * size)
          kept.push(ax + (bx - ax) * t0, ay + (by - ay) * t0, ax + (bx - ax) * t1, ay + (by - ay) * t1);
    }
  return { stretches: meeting(kept, sliver * size), left, right, top, bottom };
}

/** A convex polygon with its box, and for each edge the inward normal of length one and how far along it the edge lies. */
interface Sum {
  readonly ring: Ring;
  readonly normals: Float64Array;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A stretch is hidden where it lies inside another sum by more than this share of the region's size: rounding hides none. */
const inset = 1e-11;

/** Shorter stretches, as a share of the region's size, are what `inset` leaves of hidden ones. */
const sliver = 1e-8;

/** The same stretches, with ends that lie within `small` of each other at one place, so that none is nearer than the other. */
function meeting(stretches: readonly number[], small: number): Float64Array {
  const ends: number[] = [];
  const met = Float64Array.from(stretches);
  for (let i = 0; i < met.length; i += 2) {
    const [x, y] = [met[i] ?? 0, met[i + 1] ?? 0];
    let known = 0;
    while (
      known < ends.length &&
      (Math.abs((ends[known] ?? 0) - x) > small || Math.abs((ends[known + 1] ?? 0) - y) > small)
    )
      known += 2;
    if (known === ends.length) ends.push(x, y);
    else met.set([ends[known] ?? 0, ends[known + 1] ?? 0], i);
  }
  return met;
}

const turnedRound = (ring: Ring): Ring => ring.map((value) => -value);

/** The sum of two convex polygons: their edges in the order of their directions. */
function sumOf(a: Ring, b: Ring): Sum {
  const [p, q] = [fromLowest(a), fromLowest(b)];
  const [n, m] = [p.length / 2, q.length / 2];
  const edge = (ring: Ring, i: number, axis: number): number =>
    (ring[(2 * i + 2 + axis) % ring.length] ?? 0) - (ring[(2 * i + axis) % ring.length] ?? 0);
  const out: number[] = [];
  let [x, y] = [(p[0] ?? 0) + (q[0] ?? 0), (p[1] ?? 0) + (q[1] ?? 0)];
  let i = 0;
  let j = 0;
  while (i < n || j < m) {
    out.push(x, y);
    const turn = i >= n ? -1 : j >= m ? 1 : edge(p, i, 0) * edge(q, j, 1) - edge(p, i, 1) * edge(q, j, 0);
    if (turn >= 0) i += 1;
    if (turn <= 0) j += 1;
    x = (p[(2 * i) % p.length] ?? 0) + (q[(2 * j) % q.length] ?? 0);
    y = (p[(2 * i + 1) % p.length] ?? 0) + (q[(2 * j + 1) % q.length] ?? 0);
  }
  return measured(Float64Array.from(out));
}

function measured(ring: Ring): Sum {
  const normals = new Float64Array((3 * ring.length) / 2);
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < ring.length; i += 2) {
    const next = (i + 2) % ring.length;
    const [x, y] = [ring[i] as number, ring[i + 1] as number];
    const [ex, ey] = [(ring[next] as number) - x, (ring[next + 1] as number) - y];
    const length = Math.sqrt(ex * ex + ey * ey);
    // An edge without length hides nothing and bounds nothing.
    const [nx, ny] = length === 0 ? [0, 0] : [-ey / length, ex / length];
    normals.set([nx, ny, length === 0 ? -Infinity : nx * x + ny * y], (3 * i) / 2);
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return { ring, normals, left, right, top, bottom };
}

/** The same ring from its corner of the least y, and of several the least x. */
function fromLowest(ring: Ring): Ring {
  let at = 0;
  for (let i = 2; i < ring.length; i += 2) {
    const [y, best] = [ring[i + 1] ?? 0, ring[at + 1] ?? 0];
    if (y < best || (y === best && (ring[i] ?? 0) < (ring[at] ?? 0))) at = i;
  }
  return Float64Array.from([...ring.subarray(at), ...ring.subarray(0, at)]);
}

/** Which stretch of a to b lies inside a convex polygon, further in than `small`, as shares of its length. */
function shareInside(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  { normals }: Sum,
  small: number,
): [number, number] | undefined {
  let [from, to] = [0, 1];
  for (let i = 0; i < normals.length; i += 3) {
    const [nx, ny] = [normals[i] as number, normals[i + 1] as number];
    const along = (normals[i + 2] as number) + small;
    const depthA = nx * ax + ny * ay - along;
    const depthB = nx * bx + ny * by - along;
    if (depthA <= 0 && depthB <= 0) return undefined;
    if (depthA < 0) from = Math.max(from, depthA / (depthA - depthB));
    else if (depthB < 0) to = Math.min(to, depthA / (depthA - depthB));
    if (from >= to) return undefined;
  }
  return [from, to];
}

const without = ([from, to]: [number, number], [a, b]: [number, number]): [number, number][] => {
  if (b <= from || a >= to) return [[from, to]];
  const left: [number, number][] = a > from ? [[from, a]] : [];
  return b < to ? [...left, [b, to]] : left;
};
