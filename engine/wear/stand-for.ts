import type { Body } from '../body/body.ts';
import { bodyForm } from '../form/body-form.ts';
import type { Form } from '../form/form.ts';
import type { Garment } from '../pattern/garment.ts';
import { reachesBelow, sleevesOf } from './place.ts';
import type { Stand } from './stand.ts';
import { standOfForm } from './stand-of-form.ts';

/** Arms in sleeves are held so far aside, degrees: hanging straight down they would pinch the cloth at the armpit. */
const ASIDE = 15;

/** A body's form, and what of it a garment is put on: arms where it has sleeves, legs where it reaches below the waist. */
export function standFor(
  garment: Garment,
  body: Pick<Body, 'name' | 'size' | 'known'>,
  rise: number = ASIDE,
): { readonly form: Form; readonly stand: Stand } {
  const arms = sleevesOf(garment).size > 0;
  const form = bodyForm(body, arms ? { armRise: rise } : {});
  return { form, stand: standOfForm(form, { arms, legs: reachesBelow(garment) }) };
}
