import type { LengthPart } from '../../pattern/shape.ts';
import { partWidth } from '../close.ts';
import { chainLength } from './chain.ts';
import type { Measured, MeasureOf } from './measured.ts';

/** Lengths added up, mm, each as often as it counts, and what the draft adds to them. */
export function summedLength(
  { parts, plus = 0 }: Pick<MeasureOf<'length'>, 'parts' | 'plus'>,
  { tape }: Measured,
): number | undefined {
  const lengthOf = (part: LengthPart): number | undefined =>
    part.kind === 'chain' ? chainLength(part.chain, tape) : partWidth(part, tape);
  let sum = plus;
  for (const part of parts) {
    const length = lengthOf(part);
    if (length === undefined) return undefined;
    sum += part.times * length;
  }
  return sum;
}
