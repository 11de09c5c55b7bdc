/** Where the tail begins that is found by a fraction: before, it would need too many terms. */
const TAIL = 2;

/** Terms of the fraction: at the beginning of the tail they are exact to 1e-9. */
const TERMS = 60;

/**
 * The natural logarithm of the share of a standard normal distribution below x, to 1e-5, however far out: its polynomial
 * (M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964, formula 26.2.17), in the tail Laplace's
 * continued fraction (26.2.14).
 */
export function logNormalBelow(x: number): number {
  const density = -(x * x) / 2 - Math.log(2 * Math.PI) / 2;
  if (x < -TAIL) {
    let fraction = -x;
    for (let term = TERMS; term > 0; term--) fraction = -x + term / fraction;
    return density - Math.log(fraction);
  }
  const t = 1 / (1 + 0.2316419 * Math.abs(x));
  const polynomial =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const beyond = Math.exp(density) * polynomial;
  return Math.log(x < 0 ? beyond : 1 - beyond);
}
