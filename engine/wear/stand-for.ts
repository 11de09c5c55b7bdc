import type { Body } from '../body/body.ts';
import { bodyForm } from '../form/body-form.ts';
import type { Form } from '../form/form.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Stand } from './stand.ts';
import { standOfForm } from './stand-of-form.ts';
import { reachesBelow, sleevesOf } from './what-meets.ts';

/** Arms in sleeves are held so far aside, degrees: hanging straight down they would pinch the cloth at the armpit. */
export const ASIDE = 15;

/** What of a body a form is made from. */
type FormedBody = Pick<Body, 'name' | 'size' | 'known'>;

/** A body's form, and what of it a garment is put on: arms where it has sleeves, legs where it reaches below the waist. */
export function standFor(garment: Garment, body: FormedBody): { readonly form: Form; readonly stand: Stand } {
  const arms = sleevesOf(garment).size > 0;
  const form = arms ? formRaised(body, ASIDE) : bodyForm(body);
  return { form, stand: standOfForm(form, { arms, legs: reachesBelow(garment) }) };
}

/** A body's form with its arms raised by so many degrees from where they hang. */
export const formRaised = (body: FormedBody, rise: number): Form => bodyForm(body, { armRise: rise });
