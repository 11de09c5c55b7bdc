import fc from 'fast-check';

const STEPS = 2 ** 24;

/**
 * Any number between two, each about as likely as every other. `fc.double` draws numbers by their digits: of those it
 * draws between -1 and 1 nine in ten are smaller than a millionth, and an angle is as good as none.
 */
export const uniform = (min: number, max: number): fc.Arbitrary<number> => {
  const step = (max - min) / STEPS;
  return fc
    .integer({ min: Math.ceil(min / step), max: Math.floor(max / step) })
    .map((i) => Math.min(max, Math.max(min, i * step)));
};
