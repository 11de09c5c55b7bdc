import { whenAsked, withWhenAsked } from '../when-asked.ts';
import type { Garment, Step } from './garment.ts';

/*
 * The steps of a construction are written out, formulas and all, when somebody first asks a garment for them: that takes a
 * fiftieth of the time of a draft, and of most drafts nobody asks.
 */

/** A garment without its steps, and how these are written. */
interface Unwritten {
  readonly garment: Omit<Garment, 'steps'>;
  readonly write: () => readonly Step[];
}

const unwritten = new WeakMap<Garment, Unwritten>();

/** A garment whose steps `write` writes. */
export function stepsWhenAsked(garment: Omit<Garment, 'steps'>, write: () => readonly Step[]): Garment {
  const steps = whenAsked(write);
  const whole: Garment = withWhenAsked(garment, { steps });
  unwritten.set(whole, { garment, write: steps });
  return whole;
}

/** A garment with some fields otherwise; its steps are not asked for. */
export function garmentWith(garment: Garment, fields: Partial<Omit<Garment, 'steps'>>): Garment {
  const known = unwritten.get(garment);
  return known ? stepsWhenAsked({ ...known.garment, ...fields }, known.write) : { ...garment, ...fields };
}
