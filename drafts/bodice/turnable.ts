import { bodiceRules as rules } from './rules.ts';

/** The tightest a hollow edge with this allowance (mm) may bend, mm: an allowance wider than the bend cannot be cut. */
export const turnable = (allowance: number): number => allowance + 1;

/** The same for an armhole or a cap, which is also sewn to a sleeve. */
export const leastRadius = (allowance: number): number =>
  Math.max(rules.leastRadius.value, turnable(allowance));
