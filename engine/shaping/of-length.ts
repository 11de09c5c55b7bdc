import type { Cubic } from '../geometry/curve.ts';
import { edgeLength } from '../geometry/edge.ts';
import { inflectionCount } from '../geometry/inflections.ts';
import { between } from '../geometry/point.ts';
import { RELATION } from '../geometry/tolerance.ts';

/** Handles are made so many times their length at least and at most. */
const [SHORTEST, LONGEST] = [0.6, 1.6];

const STEPS = 40;

/**
 * A smooth chain with its handles made longer or shorter together, so that it comes as near to a length (mm) as it
 * can with no more than so many inflections. Longer handles draw a longer line, until it waves. False position with
 * the standing end weakened (after M. Dowell and P. Jarratt, 1971), and halving while the far end waves.
 */
export function ofLength(curves: readonly Cubic[], length: number, inflections: number): readonly Cubic[] {
  const at = (factor: number) => {
    const chain = curves.map((cubic) => withHandles(cubic, factor));
    const excess = edgeLength({ name: '', curves: chain }, RELATION) - length;
    const waves = inflectionCount({ name: '', curves: chain }) > inflections;
    return { factor, chain, excess, waves };
  };
  let best = at(1);
  let [low, high] = [at(SHORTEST), at(LONGEST)];
  for (let step = 0; step < STEPS && Math.abs(best.excess) > RELATION; step++) {
    const bracketed = !high.waves && low.excess < 0 && high.excess > 0;
    const share = bracketed ? low.excess / (low.excess - high.excess) : 0.5;
    const tried = at(low.factor + share * (high.factor - low.factor));
    if (Math.abs(tried.excess) < Math.abs(best.excess) && !tried.waves) best = tried;
    if (high.factor - low.factor < RELATION) break;
    if (tried.excess > 0 || tried.waves) {
      high = tried;
      low = { ...low, excess: low.excess / 2 };
    } else {
      low = tried;
      high = { ...high, excess: high.excess / 2 };
    }
  }
  return best.chain;
}

const withHandles = ({ kind, from, handle1, handle2, to }: Cubic, factor: number): Cubic => ({
  kind,
  from,
  handle1: between(from, handle1, factor),
  handle2: between(to, handle2, factor),
  to,
});
