import type { Measured, MeasureOf } from './measured.ts';

/** How deep the deepest notch of a garment is cut, mm, or as a share of its allowance; 0 where there is none. */
export const deepestNotch = (
  { say }: MeasureOf<'notch depth'>,
  { notchDepths }: Measured,
): { readonly value: number; readonly piece: string } =>
  notchDepths().reduce(
    (deepest, { piece, depth, allowance }) => {
      const value = say === 'mm' ? depth : depth / allowance;
      return value > deepest.value ? { value, piece } : deepest;
    },
    { value: 0, piece: '' },
  );
