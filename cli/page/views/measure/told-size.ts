import type { MeasurementName } from '../../../../drafts/index.ts';
import type { PageState } from '../../state.ts';

/** The sign of the unit in which a measurement is written. */
export const unitOf = (name: MeasurementName, lengths: string): string =>
  name === 'shoulderSlope' ? '°' : lengths;

/** A measurement as it is told beside its picture. */
export interface ToldSize {
  /** As it was typed, or estimated; empty where it is not known yet. */
  readonly amount: string;
  /** What was found of it, each in a sentence. */
  readonly wrong: readonly string[];
}

/** How much a measurement is, and what is wrong with it. */
export function toldSize({ form, answer }: PageState, name: MeasurementName): ToldSize {
  const typed = form.sizes[name] ?? '';
  const known = answer?.sizes?.[name];
  const unit = unitOf(name, form.units);
  const amount = typed === '' ? (known ? `estimated ${known.text} ${unit}` : '') : `${typed} ${unit}`;
  const wrong = (answer?.issues ?? [])
    .filter(({ path, severity }) => path === name && severity !== 'note')
    .map(({ message }) => message);
  return { amount, wrong };
}
