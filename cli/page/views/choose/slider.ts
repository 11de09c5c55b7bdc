import { type Choice, millimetres } from '../../../../drafts/index.ts';

/** Where a slider begins and ends, and how far apart its places lie. */
export interface Slider {
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

/**
 * The slider of a number: on round figures within its range, or the fractions of an inch that a ruler has, so far apart that a
 * press of an arrow key can be seen and the whole way does not take too many.
 */
export function sliderOf(
  { unit, min, max }: Pick<Exclude<Choice, { kind: 'word' }>, 'unit' | 'min' | 'max'>,
  inches: boolean,
): Slider {
  const step = stepOf(unit, max - min, inches);
  const places = (value: number): number => value / step;
  // A place that the range reaches but for rounding is reached.
  const hair = 1e-9;
  return { min: Math.ceil(places(min) - hair) * step, max: Math.floor(places(max) + hair) * step, step };
}

function stepOf(
  unit: Choice extends infer C ? (C extends { unit: infer U } ? U : never) : never,
  width: number,
  inches: boolean,
): number {
  switch (unit) {
    case 'mm':
      if (inches) return millimetres.in / (width > 500 ? 2 : width > 100 ? 8 : width > 10 ? 16 : 64);
      return width > 500 ? 10 : width > 100 ? 1 : width > 10 ? 0.5 : 0.1;
    case 'share':
      return 0.01;
    case 'ratio':
      return 0.05;
    case 'degrees':
    case 'count':
      return 1;
  }
}
