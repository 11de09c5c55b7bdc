import { type FittingChange, fitted } from '../../engine/body/fitting.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';
import { bodiceRules as rules } from './rules.ts';
import type { StrapPath } from './straps-path.ts';

/**
 * A strap's part before or behind the shoulder as the fitting left it: shortened on both sides of the shoulder
 * alike, and longer behind by what the shoulder lies further forward.
 */
export function fittedStrap(
  strap: StrapPath,
  part: 'front' | 'back',
  changes: readonly FittingChange[],
  log: ConstructionLog,
): StrapPath {
  const shorter = (fitted(changes, 'shorten strap') - fitted(changes, 'lengthen strap')) / 2;
  const forward = fitted(changes, 'forward shoulder') * (part === 'front' ? 1 : -1);
  const less = shorter + forward;
  if (less === 0) return strap;
  const length = log.mm(
    `Fitting, ${part} strap`,
    `${figure(strap.length)} - ${figure(shorter)} shorter - ${figure(forward)} for the forward shoulder`,
    strap.length - less,
    'fitting',
  );
  if (length < rules.leastStrap.value)
    log.refuse({
      code: 'fitting-too-much',
      severity: 'error',
      path: 'fitting',
      value: length,
      limits: { min: rules.leastStrap.value, unit: 'mm' },
      message: `The fitting leaves only ${figure(length)} mm of the ${part} strap. Shorten the strap by less, or bring the shoulder less far forward.`,
    });
  return { ...strap, length };
}
