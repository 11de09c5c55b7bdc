import { whenAsked } from '../when-asked.ts';
import type { Garment, Step } from './garment.ts';

/*
 * The steps of a construction are written out, formulas and all, when somebody first asks a garment for them: that takes a
 * fiftieth of the time of a draft, and of most drafts nobody asks. To whoever reads, copies or compares a garment they are
 * a field like the others.
 */

/** A garment whose steps `write` writes. */
export function stepsWhenAsked(garment: Omit<Garment, 'steps'>, write: () => readonly Step[]): Garment {
  return copied(garment, { steps: { get: whenAsked(write), enumerable: true } }) as Garment;
}

/** A garment with some fields otherwise; its steps are not asked for. */
export const garmentWith = (garment: Garment, fields: Partial<Omit<Garment, 'steps'>>): Garment =>
  copied(garment, Object.getOwnPropertyDescriptors(fields)) as Garment;

const copied = (garment: object, fields: PropertyDescriptorMap): object =>
  Object.defineProperties({}, { ...Object.getOwnPropertyDescriptors(garment), ...fields });
