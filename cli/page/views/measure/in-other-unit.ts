import { lengthFigure, millimetres, type Unit, writtenLength } from '../../../../drafts/index.ts';
import type { BodyForm } from '../../body-form.ts';
import type { PageState } from '../../state.ts';

/** Marks on an inch tape. */
const sixteenths = 16;

/** What was pinned is kept to the thousandth of a unit. */
const thousand = 1000;

/** The unit in which the numbers of the form were written, where another was chosen since and they stayed. */
export function unitBefore({ form, history }: PageState): Unit | undefined {
  const before = history.past.at(-1)?.form;
  if (!before || before.units === form.units || before.sizes !== form.sizes) return undefined;
  return Object.keys(form.sizes).length > 0 ? before.units || undefined : undefined;
}

/**
 * The lengths of a form that were written in one unit, in another: as a tape has them, so to half a sixteenth of an inch, and to the
 * tenth of a mm. What is no number, or has its own unit behind it, stays, and so do angles.
 */
export function inOtherUnit(
  { sizes, rest }: BodyForm,
  from: Unit,
  to: Unit,
): Pick<BodyForm, 'sizes' | 'rest'> {
  const plain = (text: string): number | undefined => {
    const written = writtenLength(text);
    return written && !written.withUnit ? written.value : undefined;
  };
  const turned = (text: string): string => {
    const figure = plain(text);
    return figure === undefined ? text : lengthFigure(figure * millimetres[from], to, sixteenths);
  };
  const amount = (value: unknown): unknown => {
    const figure = plain(String(value));
    const times = millimetres[from] / millimetres[to];
    return figure === undefined ? value : Math.round(figure * times * thousand) / thousand;
  };
  const { fitting } = rest;
  return {
    sizes: Object.fromEntries(
      Object.entries(sizes).map(([name, text]) => [name, name === 'shoulderSlope' ? text : turned(text)]),
    ),
    rest: Array.isArray(fitting)
      ? { ...rest, fitting: fitting.map((change: unknown) => eachOf(change, amount)) }
      : rest,
  };
}

/** A change of a fitting is an amount and words: each of them done so with. */
const eachOf = (change: unknown, done: (value: unknown) => unknown): unknown =>
  typeof change === 'object' && change !== null
    ? Object.fromEntries(Object.entries(change).map(([name, value]) => [name, done(value)]))
    : change;
