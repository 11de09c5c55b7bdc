/** Even numbers from 0 up to 1. */
export type Random = () => number;

/** Numbers from 0 to 1, always the same for a seed (mulberry32, T. Ettinger, 2017); plenty for choosing places, not for secrets. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A number of the normal distribution, mean 0, deviation 1 (G. E. P. Box, M. E. Muller, 1958). */
export const normal = (random: Random): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
