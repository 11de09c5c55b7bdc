import { edgeEnd } from '../../geometry/edge.ts';
import { laidOut } from './chain.ts';
import type { Measured, MeasureOf } from './measured.ts';

/**
 * How far up a line a notch on it stands, as a share of its height: both measured square to the heading of its start,
 * away from the cloth. An armhole starts at the underarm square to the side seam, so its height is taken along that.
 */
export function notchHeight(
  { of, notch }: MeasureOf<'notch height'>,
  { tape }: Measured,
): number | undefined {
  const whole = laidOut(of, tape);
  const toNotch = laidOut({ ...of, to: notch }, tape);
  return whole && toNotch && edgeEnd(toNotch).y / edgeEnd(whole).y;
}
