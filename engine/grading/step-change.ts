import type { MeasurementName } from '../body/body.ts';
import { perMm } from '../sensitivity/sensitivity.ts';
import type { GradedSize } from './laid-size.ts';

/** What is no more than this is rounding of a file's numbers, mm. */
const ROUNDED = 1e-6;

/** By how much the step of a measurement changes in the middle of three sizes, its second difference, mm; the slope by how far it lowers the shoulder point. */
export function stepChange(three: readonly GradedSize[], name: MeasurementName): number {
  const [a = 0, b = 0, c = 0] = three.map(({ made }) => made.body.size[name]);
  const body = three[1]?.made.body;
  const change = body ? (c - 2 * b + a) / perMm(body, name) : 0;
  return Math.abs(change) <= ROUNDED ? 0 : change;
}
