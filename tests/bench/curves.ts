import type { Cubic, Curve, Edge, Outline } from '../../engine/geometry/curve.ts';
import { point } from '../../engine/geometry/point.ts';

/** Random numbers in [0, 1) that are the same on every run (S. K. Park and K. W. Miller, 1988). */
export function randomNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 16807) % 2147483647;
    return (state - 1) / 2147483646;
  };
}

/**
 * Cubics such as edges are made of: 20 to 400 mm from end to end, each end turned up to 57 degrees away from the
 * chord to either side, handles of a quarter to a half of the chord.
 */
export function typicalCubics(count: number): Cubic[] {
  const random = randomNumbers(1);
  const spread = (size: number): number => (2 * random() - 1) * size;
  return Array.from({ length: count }, () => {
    const chord = 20 + 380 * random();
    const lie = random() * 2 * Math.PI;
    const out = lie + spread(1);
    const into = lie + spread(1);
    const first = chord * (0.25 + 0.25 * random());
    const second = chord * (0.25 + 0.25 * random());
    const to = point(chord * Math.cos(lie), chord * Math.sin(lie));
    return {
      kind: 'cubic',
      from: point(0, 0),
      handle1: point(first * Math.cos(out), first * Math.sin(out)),
      handle2: point(to.x - second * Math.cos(into), to.y - second * Math.sin(into)),
      to,
    };
  });
}

const line = (x0: number, y0: number, x1: number, y1: number): Curve => ({
  kind: 'line',
  from: point(x0, y0),
  to: point(x1, y1),
});

const cubic = (...c: readonly [number, number, number, number, number, number, number, number]): Curve => ({
  kind: 'cubic',
  from: point(c[0], c[1]),
  handle1: point(c[2], c[3]),
  handle2: point(c[4], c[5]),
  to: point(c[6], c[7]),
});

const edge = (name: string, ...curves: Curve[]): Edge => ({ name, curves });

/** An outline like a side front's: a princess line over the bust, a hollow armhole, a straight side, a bent waist. */
export const CURVED_OUTLINE: Outline = [
  edge('top', line(40, 0, 78, 14)),
  edge('armhole', cubic(78, 14, 74, 60, 76, 100, 104, 128), cubic(104, 128, 116, 140, 130, 146, 150, 146)),
  edge('side', cubic(150, 146, 148, 200, 140, 260, 132, 318)),
  edge('waist', cubic(132, 318, 100, 324, 60, 326, 22, 322)),
  edge('princess', cubic(22, 322, 14, 270, 0, 230, 0, 182), cubic(0, 182, 0, 110, 34, 60, 40, 0)),
];
