/**
 * A tape laid over points in a plane: the chain of those points that lie outermost, in order of their first coordinate
 * (A. M. Andrew, Another efficient algorithm for convex hulls in two dimensions, 1979). `u` must not fall; `v` is outward.
 * Returns the indices of the points that the tape touches, the first and the last always among them.
 */
export function tautChain(u: ArrayLike<number>, v: ArrayLike<number>): number[] {
  const chain: number[] = [];
  for (let i = 0; i < u.length; i++) {
    while (chain.length > 1) {
      const [a, b] = [chain[chain.length - 2] as number, chain[chain.length - 1] as number];
      const turn =
        ((u[b] as number) - (u[a] as number)) * ((v[i] as number) - (v[a] as number)) -
        ((v[b] as number) - (v[a] as number)) * ((u[i] as number) - (u[a] as number));
      if (turn < 0) break;
      chain.pop();
    }
    chain.push(i);
  }
  return chain;
}

/**
 * A tape round a loop that is its own mirror image in u = 0: `u` and `v` hold one half, in any order, u not negative. The
 * indices that the tape touches on that half, from the least v to the greatest.
 */
export function tautHalf(u: ArrayLike<number>, v: ArrayLike<number>): number[] {
  const order = Array.from({ length: u.length }, (_, i) => i).sort(
    (a, b) => (v[a] as number) - (v[b] as number) || (u[a] as number) - (u[b] as number),
  );
  const chain = tautChain(
    order.map((i) => v[i] as number),
    order.map((i) => u[i] as number),
  );
  return chain.map((place) => order[place] as number);
}
