import { type FittingChange, fitted } from '../../engine/body/fitting.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';
import type { ByGore } from './gore-sizes.ts';

/**
 * How far the waist of the skirt drops for a hollow back, mm: at the centre all that was pinned, at the side seam
 * nothing, between them in proportion along the waist. Only waist to hip gets shorter, so the hem still hangs level.
 * A fold above the waist is the bodice's: there the skirt stays, as it hangs from the same waist as before.
 */
export function droppedBehind(
  changes: readonly FittingChange[],
  waist: ByGore,
  log: ConstructionLog,
): { readonly 'centre back': number; readonly 'back princess': number } {
  const drop = fitted(changes, 'sway back in skirt');
  if (drop === 0) return { 'centre back': 0, 'back princess': 0 };
  const share = waist['side back'] / (waist['side back'] + waist['centre back']);
  const atPrincess = log.mm(
    'Fitting, the waist drops behind',
    `${figure(drop)} at the centre back, nothing at the side; in proportion along the waist, at the back princess seam`,
    share * drop,
    'fitting',
  );
  return { 'centre back': drop, 'back princess': atPrincess };
}
