import type { Cloth } from '../../engine/lay-plan/cloth.ts';
import { unseen } from '../../engine/lay-plan/hung.ts';
import { rounded } from '../../engine/text/figure.ts';
import { millimetres } from '../../engine/text/units.ts';
import { writtenLength } from '../../engine/text/written-length.ts';
import { numberOf } from '../input/number-of.ts';
import { unusable } from '../input/unusable.ts';

/** A cloth as it is told: lengths in mm or with their unit behind them, the loss in the wash in percent. */
export interface ClothTexts {
  readonly width: string;
  readonly cloth: 'folded' | 'open';
  readonly nap?: boolean | undefined;
  readonly selvedge: string;
  readonly gap: string;
  readonly shrink: string;
  readonly stripe: string;
  readonly stripeAlong: string;
  readonly oneOrder?: boolean | undefined;
}

/** What is told of a cloth that nothing is told of but its width. */
export const usualCloth = {
  cloth: 'folded',
  selvedge: '10',
  gap: '0',
  shrink: '0',
  stripe: '0',
  stripeAlong: '0',
} as const;

/** What its figures are called where they are asked for. */
export type ClothWords = Readonly<
  Record<'width' | 'selvedge' | 'gap' | 'shrink' | 'stripe' | 'stripeAlong', string>
>;

/** The cloth that is told. Throws `Unusable` where a figure is none, or lies outside what there is. */
export function clothTold(told: ClothTexts, called: ClothWords): Cloth {
  const stripeAlong = repeatOf(called.stripeAlong, told.stripeAlong);
  return {
    width: lengthOf(called.width, told.width, 100, 5000),
    folded: told.cloth === 'folded',
    nap: told.nap ?? false,
    selvedge: lengthOf(called.selvedge, told.selvedge, 0, 200),
    gap: lengthOf(called.gap, told.gap, 0, 100),
    shrink: numberOf(called.shrink, told.shrink, 0, 25) / 100,
    stripe: repeatOf(called.stripe, told.stripe),
    stripeAlong,
    oneOrder: told.oneOrder === true && stripeAlong > 0,
  };
}

/** Stripes that repeat after less, mm, meet wherever they lie, as nearly as can be seen (`unseen`). */
const leastRepeat = 2 * unseen;

/** The repeat of stripes in mm, or with its unit behind it; 0 for none. */
const repeatOf = (option: string, text: string): number =>
  writtenLength(text)?.value === 0 ? 0 : lengthOf(option, text, leastRepeat, 1000);

const inches = (mm: number): string => rounded(mm / millimetres.in, 0).toString();

/** A length in mm, or with its unit behind it. */
function lengthOf(option: string, text: string, min: number, max: number): number {
  const value = writtenLength(text)?.value;
  if (value === undefined || !(value >= min && value <= max))
    throw unusable(
      'length-not-understood',
      option,
      `${option} takes a length from ${min} to ${max} mm (${inches(min)} to ${inches(max)} in). A number alone is mm; behind any other stands its unit: ${/^\d+$/.test(text) ? `${text}in` : '55in'}.`,
    );
  return value;
}
