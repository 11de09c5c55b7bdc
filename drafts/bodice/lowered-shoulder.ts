import type { Body } from '../../engine/body/body.ts';
import { fitted } from '../../engine/body/fitting.ts';
import { type ConstructionLog, degrees, figure } from '../../engine/pattern/construction-log.ts';

/**
 * The slope of a shoulder (radians) whose shoulder point the fitting found lower. Only the strap follows it, crossing
 * lower and running on to the armhole: its corner at the neckline stays where the other side has it, and so do the
 * wedges pinned out there, so that neckline, insert and princess seams remain mirror images.
 */
export function loweredShoulder(
  part: 'front' | 'back',
  { size, fitting }: Body,
  slope: number,
  log: ConstructionLog,
): number {
  const lower = fitted(fitting, 'lower shoulder');
  if (lower === 0) return slope;
  const { shoulderLength } = size;
  return log.angle(
    `Fitting, ${part} shoulder slope`,
    `asin(sin ${degrees(slope)} + ${figure(lower)} lower / shoulder length ${figure(shoulderLength)})`,
    Math.asin(Math.min(1, Math.sin(slope) + lower / shoulderLength)),
    'fitting',
  );
}
