import type { Unit } from '../text/units.ts';

/** A width in which cloth is sold, mm, and what it is called. */
export interface ClothWidth {
  readonly width: number;
  readonly called: string;
}

const inch = 25.4;

/**
 * The widths in which dress cloth is sold to who measures in a unit (common practice, no source). In inches they are no
 * conversions: cloth that is called 54 in wide is narrower than cloth of 140 cm.
 */
export const clothWidths = (unit: Unit): readonly ClothWidth[] =>
  unit === 'in'
    ? [36, 45, 54, 60].map((width) => ({ width: width * inch, called: `${width} in` }))
    : [90, 115, 140, 150].map((width) => ({ width: width * 10, called: `${width} cm` }));
