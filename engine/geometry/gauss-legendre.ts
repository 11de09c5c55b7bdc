/** The most pairs of nodes that a rule has here. Beyond it, halving the interval is the cheaper way to accuracy. */
export const MOST_PAIRS = 12;

/**
 * The Gauss-Legendre rule on [-1, 1] of `pairs` pairs of nodes +x and -x, flat: x, weight, x, weight ... with the
 * weight of one node. The nodes are the zeros of the Legendre polynomial P_n, found by Newton's method from
 * Tricomi's first guess, P_n by its three-term recurrence (NIST Digital Library of Mathematical Functions, 3.5(v)
 * and 18.16). Exact to rounding for polynomials up to degree 4 pairs - 1.
 */
function gaussRule(pairs: number): Float64Array {
  const n = 2 * pairs;
  const rule = new Float64Array(n);
  for (let i = 0; i < pairs; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
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
    rule[2 * i] = x;
    rule[2 * i + 1] = 2 / ((1 - x * x) * slope * slope);
  }
  return rule;
}

const RULES = Array.from({ length: MOST_PAIRS }, (_, i) => gaussRule(i + 1));

/** The Gauss-Legendre rule of 1 to `MOST_PAIRS` pairs of nodes. */
export function gaussPairs(pairs: number): Float64Array {
  const rule = RULES[pairs - 1];
  if (!rule) throw new RangeError(`There is no Gauss rule of ${pairs} pairs of nodes.`);
  return rule;
}
