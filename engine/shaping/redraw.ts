import type { Cubic } from '../geometry/curve.ts';
import { headingAt, pointAt } from '../geometry/evaluate.ts';
import { fitCurve } from '../geometry/fit.ts';
import { distance } from '../geometry/point.ts';

/** A smooth line is redrawn within this of itself, mm: far below a pencil line. */
const REDRAWN = 0.02;

/** A handle shorter or longer than this share of its chord stands for a fit that had too little to go by. */
const SOUND = [0.05, 1.2] as const;

/** A smooth chain of cubics in as few cubics as keep within 0.02 mm of it; the chain itself where they turn out odd. */
export function redrawn(chain: readonly Cubic[]): readonly Cubic[] {
  const at = (t: number) => {
    const place = Math.min(chain.length - 1, Math.floor(t));
    const curve = chain[place];
    if (!curve) throw new RangeError('A line to redraw is empty.');
    return { point: pointAt(curve, t - place), tangent: headingAt(curve, t - place) };
  };
  const { curves } = fitCurve(at, 0, chain.length, REDRAWN);
  return curves.length < chain.length && curves.every(isSound) ? curves : chain;
}

function isSound({ from, handle1, handle2, to }: Cubic): boolean {
  const chord = distance(from, to);
  return [distance(from, handle1), distance(handle2, to)].every(
    (handle) => handle >= SOUND[0] * chord && handle <= SOUND[1] * chord,
  );
}
