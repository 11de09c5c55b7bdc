import type { Body, MeasurementName } from '../../engine/body/body.ts';
import { fitted } from '../../engine/body/fitting.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';

/**
 * The body as the fitting found it: what a fitter says of the body rather than of a seam is a measurement taken
 * again. The other changes are for the parts of the garment they belong to.
 */
export function measuredAgain(body: Body, log: ConstructionLog): Body {
  const higher = fitted(body.fitting, 'raise bust point') - fitted(body.fitting, 'lower bust point');
  const rounder = fitted(body.fitting, 'round back');
  const changes: readonly (readonly [MeasurementName, string, string, number])[] = [
    ['neckShoulderPointToBustPoint', 'bust point', 'neck to bust point', -higher],
    ['backNeckPointToWaist', 'round back', 'back neck point to waist', rounder],
    ['scyeDepth', 'round back', 'scye depth', rounder],
    ['upperArmGirth', 'more upper arm', 'upper arm girth', fitted(body.fitting, 'more upper arm')],
  ];
  const size: Record<MeasurementName, number> = { ...body.size };
  for (const [name, change, words, more] of changes) {
    if (more === 0) continue;
    size[name] = log.mm(
      `Fitting, ${change}`,
      `${words} ${figure(size[name])} ${more > 0 ? '+' : '-'} ${figure(Math.abs(more))}`,
      size[name] + more,
      'fitting',
    );
  }
  return { ...body, size };
}
