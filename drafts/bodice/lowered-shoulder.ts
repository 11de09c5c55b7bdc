import type { FoundationTable } from '../foundation/foundation.ts';
import type { Shoulder } from '../foundation/neck-and-shoulder.ts';

/**
 * A shoulder whose shoulder point the fitting found lower. Only the armhole's side of the bodice follows it: the corner
 * of the neckline stays where the other side has it, and so do the wedges pinned out there, so that neckline, insert
 * and princess seams remain mirror images.
 */
export function loweredShoulder(
  table: FoundationTable,
  part: 'front' | 'back',
  shoulder: Shoulder,
): Shoulder {
  const lower = table.fitted('lower shoulder');
  if (lower.value === 0) return shoulder;
  const slope = table.angle`Fitting, ${part} shoulder slope: arc sine of (sine of ${shoulder.slope} + ${lower} / shoulder length ${table.size.shoulderLength}, at most 1)`;
  return { ...shoulder, slope };
}
