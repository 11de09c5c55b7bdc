import type { Issue } from '../../engine/issue.ts';
import { figure } from '../../engine/text/figure.ts';
import type { Foundation } from './foundation.ts';
import { foundationRules as rules } from './rules.ts';
import type { FoundationTable } from './table.ts';

/** Refuses a foundation that cannot be cut, naming the measurements that contradict each other. */
export function refuseImpossible(table: FoundationTable, { levels, front }: Foundation): void {
  const { size } = table.body;
  const refuse = (path: string, message: string, value: number, limits: Issue['limits']): void =>
    table.refuse({
      code: 'measurements-contradict',
      severity: 'error',
      path,
      message,
      value,
      ...(limits ? { limits } : {}),
    });

  if (levels.bust.value - rules.underarmAboveBust.value < size.scyeDepth)
    refuse(
      'scyeDepth',
      `The bust level lies ${figure(levels.bust.value)} mm below the back neck point, not below the armpit (scye depth ${figure(size.scyeDepth)} mm). Measure again: scye depth (smaller would help), neck shoulder point to bust point (larger would help), neck shoulder point to waist (smaller would help).`,
      size.scyeDepth,
      { max: levels.bust.value - rules.underarmAboveBust.value, unit: 'mm' },
    );
  const midriff = levels.waist.value - levels.underBust.value;
  if (midriff < rules.leastMidriff.value)
    refuse(
      'neckShoulderPointToWaist',
      `Between the under-bust seam and the waist only ${figure(midriff)} mm are left. Measure again: neck shoulder point to waist (larger would help), neck shoulder point to bust point (smaller would help); or choose a smaller underBustDrop.`,
      midriff,
      { min: rules.leastMidriff.value, unit: 'mm' },
    );
  const dart = (front.turned * 180) / Math.PI;
  if (!(dart >= rules.leastBustDart.value && dart <= rules.greatestBustDart.value))
    refuse(
      'neckShoulderPointToWaist',
      `The front is ${dart < rules.leastBustDart.value ? 'too short' : 'too long'} over the bust for the back: the bust dart would have ${figure(dart)}°. Measure again: neck shoulder point to waist (${dart < rules.leastBustDart.value ? 'larger' : 'smaller'} would help), back neck point to waist (the other way).`,
      dart,
      { min: rules.leastBustDart.value, max: rules.greatestBustDart.value, unit: 'degrees' },
    );
  if (!Number.isFinite(front.neckHeight.value))
    refuse(
      'neckShoulderPointToBustPoint',
      'The bust points lie further out from the neck than they are from it. Measure again: neck shoulder point to bust point (larger would help), bust point width (smaller would help).',
      size.neckShoulderPointToBustPoint,
      { min: size.bustPointWidth / 2, unit: 'mm' },
    );
  if (front.underBust.centre.x < rules.leastCentreFront.value)
    refuse(
      'underBustGirth',
      `Under the bust the centre front panel would be only ${figure(front.underBust.centre.x)} mm wide. Measure again: under-bust girth (larger would help), bust point width (larger would help), bust girth (smaller would help).`,
      front.underBust.centre.x,
      { min: rules.leastCentreFront.value, unit: 'mm' },
    );
}
