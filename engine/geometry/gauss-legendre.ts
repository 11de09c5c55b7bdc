/** Nodes on [-1, 1] and weights of one Gauss-Legendre rule. */
export interface GaussRule {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

/** The most nodes that a rule has here. Beyond it, halving the interval is the cheaper way to more accuracy. */
export const MOST_NODES = 24;

/**
 * The Gauss-Legendre rule of `n` nodes: the zeros of the Legendre polynomial P_n, found by Newton's method from
 * Tricomi's first guess (G. H. Golub and J. H. Welsch, "Calculation of Gauss quadrature rules", 1969, describe
 * the rule; P_n by its three-term recurrence). Exact to rounding for polynomials of degree 2n - 1.
 */
function gaussRule(n: number): GaussRule {
  const nodes = new Float64Array(n);
  const weights = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let x = -Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 8; step++) {
      let before = 1;
      let value = x;
      for (let k = 2; k <= n; k++) {
        const next = ((2 * k - 1) * x * value - (k - 1) * before) / k;
        before = value;
        value = next;
      }
      slope = (n * (before - x * value)) / (1 - x * x);
      x -= value / slope;
    }
    nodes[i] = x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  return { nodes, weights };
}

/** The rules of 2 nodes (at index 0) to `MOST_NODES` nodes. */
export const GAUSS_RULES: readonly GaussRule[] = Array.from({ length: MOST_NODES - 1 }, (_, i) =>
  gaussRule(i + 2),
);
