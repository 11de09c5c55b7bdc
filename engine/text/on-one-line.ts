import { plainFigure } from './figure.ts';
import { lengthIn, SIXTEENTHS } from './length.ts';
import type { Unit } from './units.ts';

/** A length for the eye: whole millimetres or their like, kept on one line with their unit. */
export const wholeLength = (mm: number, units: Unit): string =>
  onOneLine(lengthIn(units === 'in' ? mm : Math.round(mm), units));

/** A width that is set on a machine or a gauge: a tenth of a millimetre, or a sixteenth of an inch. */
export const fineLength = (mm: number, units: Unit): string => onOneLine(lengthIn(mm, units, SIXTEENTHS));

const onOneLine = (text: string): string => text.replaceAll(' ', '\u00a0');

/** A ratio such as `1.9 : 1`, kept on one line. */
export const ratioWords = (ratio: number): string => `${plainFigure(ratio, 2)}\u00a0:\u00a01`;
