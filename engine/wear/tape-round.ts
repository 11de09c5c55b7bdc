/** Length of a tape round points of a level plane (flat: x, z ...): it lies taut, as their convex hull (mm). */
export function tapeLength(flat: readonly number[]): number {
  const hull = convexHull(flat);
  let length = 0;
  for (let i = 0; i < hull.length; i += 2) {
    const j = (i + 2) % hull.length;
    length += Math.hypot(
      (hull[j] as number) - (hull[i] as number),
      (hull[j + 1] as number) - (hull[i + 1] as number),
    );
  }
  return length;
}

/** The corners of the convex hull of points in a plane, in order (Andrew, 1979, monotone chains). */
function convexHull(flat: readonly number[]): readonly number[] {
  const order = Array.from({ length: flat.length / 2 }, (_, i) => 2 * i).sort(
    (a, b) => (flat[a] as number) - (flat[b] as number) || (flat[a + 1] as number) - (flat[b + 1] as number),
  );
  const half = (points: readonly number[]): number[] => {
    const chain: number[] = [];
    for (const p of points) {
      while (chain.length > 1 && !turnsLeft(flat, chain.at(-2) as number, chain.at(-1) as number, p))
        chain.pop();
      chain.push(p);
    }
    chain.pop();
    return chain;
  };
  const corners = [...half(order), ...half(order.toReversed())];
  return corners.flatMap((p) => [flat[p] as number, flat[p + 1] as number]);
}

const turnsLeft = (flat: readonly number[], a: number, b: number, c: number): boolean =>
  ((flat[b] as number) - (flat[a] as number)) * ((flat[c + 1] as number) - (flat[a + 1] as number)) -
    ((flat[b + 1] as number) - (flat[a + 1] as number)) * ((flat[c] as number) - (flat[a] as number)) >
  0;

/** Where the sides of triangles pass through a height: x, z ... */
export function cutAt(x: Float64Array, triangles: ArrayLike<number>, height: number): readonly number[] {
  const found: number[] = [];
  for (let t = 0; t < triangles.length; t += 3)
    for (let k = 0; k < 3; k++) {
      const a = 3 * (triangles[t + k] as number);
      const b = 3 * (triangles[t + ((k + 1) % 3)] as number);
      const from = (x[a + 1] as number) - height;
      const to = (x[b + 1] as number) - height;
      if (from < 0 === to < 0) continue;
      const share = from / (from - to);
      found.push(
        (x[a] as number) + share * ((x[b] as number) - (x[a] as number)),
        (x[a + 2] as number) + share * ((x[b + 2] as number) - (x[a + 2] as number)),
      );
    }
  return found;
}
