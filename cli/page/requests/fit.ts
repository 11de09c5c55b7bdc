import { type FittingChange, fittedFurther, readBody, unitNames } from '../../../drafts/index.ts';
import { used } from '../../input/used.ts';
import { fittingEntries } from '../../wear/fitting-entries.ts';
import type { BodyFields } from '../body-form.ts';

/** Asks for measurements whose fitting has more found. */
export interface FitRequest {
  readonly kind: 'fit';
  readonly body: BodyFields;
  readonly changes: readonly FittingChange[];
}

export interface FitAnswer {
  readonly kind: 'fitted';
  /** The whole fitting, as a file of measurements holds it. */
  readonly fitting: readonly Readonly<Record<string, string | number>>[];
}

/** What was found before, with more: to the letter what `bodkin wear --write-fitting` writes. */
export function fittedWith({ body, changes }: FitRequest): FitAnswer {
  const { fitting } = used(readBody(body));
  const unit = unitNames.find((name) => name === body.units) ?? 'mm';
  return { kind: 'fitted', fitting: fittingEntries(fittedFurther(fitting, changes), unit) };
}
