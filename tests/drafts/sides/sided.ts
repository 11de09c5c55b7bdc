import type { Evaluation } from '../../../engine/evaluate.ts';
import { drafted, shippedBody } from '../drafted.ts';

/** One cm in the units of a body file. */
const perCm: Readonly<Record<string, number>> = { cm: 1, in: 1 / 2.54, mm: 10 };

/** A shipped body fitted by changes of so many cm. */
export const fittedBody = (name: string, ...fitting: readonly Readonly<Record<string, unknown>>[]) => {
  const body = shippedBody(name);
  const unit = perCm[String(body.units)] ?? 1;
  const inUnits = (change: Readonly<Record<string, unknown>>) =>
    Object.fromEntries(Object.entries(change).map(([k, v]) => [k, typeof v === 'number' ? v * unit : v]));
  return { ...body, fitting: fitting.map(inUnits) };
};

/** The leading lady's dress fitted by changes of so many cm. */
export const fittedDress = (...fitting: readonly Readonly<Record<string, unknown>>[]): Evaluation =>
  drafted('dress', fittedBody('leading-lady', ...fitting));

export const errorsOf = ({ report }: Evaluation): readonly string[] =>
  report.issues.filter(({ severity }) => severity === 'error').map(({ message }) => message);
