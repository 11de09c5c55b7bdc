import { type Body, readBody } from '../../../drafts/index.ts';
import type { BodyFields } from '../body-form.ts';

/** Nobody's: about the middle of the invented bodies. */
const usual: BodyFields = {
  name: 'a usual figure',
  units: 'cm',
  bustGirth: 94,
  waistGirth: 76,
  hipGirth: 101,
  backNeckPointToWaist: 40.5,
};

/** A body from its data, or a usual one where that is not known yet. */
export function bodyOrUsual(data: BodyFields): { readonly body: Body; readonly hers: boolean } {
  const read = readBody(data);
  if (read.ok) return { body: read.value, hers: true };
  const instead = readBody(usual);
  if (!instead.ok) throw new Error('The usual figure cannot be read.');
  return { body: instead.value, hers: false };
}
