/**
 * A figure a pattern cutter looks at first, beside the band it usually lies in for a regular adult (common
 * practice, from memory, no source). Never a test: large, small or unusual bodies leave the bands for good
 * reasons, and `outside` says what usually is the reason.
 */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: 'mm' | 'degrees' | 'share' | 'ratio';
  readonly low: number;
  readonly high: number;
  readonly outside: string;
}

/** Whether a figure lies in its band. */
export const inBand = ({ value, low, high }: Figure): boolean => value >= low && value <= high;
