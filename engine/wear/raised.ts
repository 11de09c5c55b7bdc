import type { Enough } from '../cloth/equilibrium.ts';
import type { Form } from '../form/form.ts';
import type { Garment } from '../pattern/garment.ts';
import type { ArmsRaised, Findings } from './findings.ts';
import type { Stand } from './stand.ts';
import { ASIDE } from './stand-for.ts';
import { withArms } from './stand-of-form.ts';
import { sleevesOf } from './what-meets.ts';
import { waistLevels } from './where-seams-lie.ts';
import { hanging, type WearingStep, type Worn } from './worn.ts';

/** Arms are raised to these angles one after the other, degrees from where they hang: cloth follows no further at once. */
export const rises: readonly number[] = [30, 45];

/** A waist that has gone up by so much is seen to have, mm; judged. */
export const LIFTED = 10;

/** Nearer to the shoulder than this a sleeve turns with the arm only in part, mm: its seam stays on the bodice. */
const CROWN = 60;

/** Damping to begin with, N/mm^3: what is turned with the arm is a centimetre or two from where it will hang. */
const DAMPING = 1e-7;

/** A garment with its arms raised, and what that did. */
export interface Raised {
  readonly form: Form;
  readonly hung: Worn;
  readonly found: ArmsRaised;
}

/**
 * Raises both arms of a garment that hangs, as far as 45 degrees, and lets it come to rest again on the way. `formAt`: her
 * form with its arms raised by so many degrees. The shoulder does not rise with them. Where it finds no rest any more the arms
 * are raised no further. Nothing where there are no sleeves or no waist, where it had found no rest before, or where whoever
 * looks on has seen enough.
 */
export function* raising(
  garment: Garment,
  hung: Worn,
  stand: Stand,
  formAt: (rise: number) => Form,
): Generator<WearingStep, Raised | undefined, Enough> {
  const atRest = waistLevels(garment, hung, stand);
  if (sleevesOf(garment).size === 0 || atRest.length === 0 || !hung.settled.atRest) return undefined;
  const liftOf = (now: Findings['waistLevel']): ArmsRaised['lift'] =>
    now.map(({ at, above }) => ({
      at,
      by: above - (atRest.find((each) => each.at === at)?.above ?? above),
    }));
  const most = (lift: ArmsRaised['lift']): number => Math.max(...lift.map(({ by }) => by));
  let from = ASIDE;
  let free: number | undefined;
  let last: Raised | undefined;
  for (const rise of rises) {
    const form = formAt(rise);
    const on = withArms(stand, form);
    const before = last?.hung ?? hung;
    const x = turned(garment, before, stand, rise - from);
    const now = yield* hanging(garment, before.sewn, x, on, {
      damping: DAMPING,
      spacing: before.spacing,
      raised: rise,
    });
    if (now.stopped) return undefined;
    if (!now.settled.atRest) break;
    const lift = liftOf(waistLevels(garment, now, on));
    const [less, more] = [last ? most(last.found.lift) : 0, most(lift)];
    if (more >= LIFTED) free ??= from + ((LIFTED - less) / (more - less)) * (rise - from);
    last = { form, hung: now, found: { to: rise, lift, free: free ?? rise } };
    from = rise;
  }
  return last;
}

/** The points of a worn garment, those of its sleeves turned up with the arm about the shoulder by so many degrees. */
function turned(garment: Garment, { sewn, x }: Worn, { arm }: Stand, degrees: number): Float64Array {
  const sleeves = sleevesOf(garment);
  const moves = new Uint8Array(sewn.sheet.count);
  for (const { panel, points } of sewn.panels)
    if (sleeves.has(panel.name)) for (const p of points) moves[p] = 1;
  for (const { panel, points } of sewn.panels)
    if (!sleeves.has(panel.name)) for (const p of points) moves[p] = 0;
  const [left, high] = arm.from;
  const out = x.slice();
  for (const [p, moving] of moves.entries()) {
    if (moving === 0) continue;
    const side = (x[3 * p] as number) < 0 ? -1 : 1;
    const across = side * (x[3 * p] as number) - left;
    const up = (x[3 * p + 1] as number) - high;
    const turn = (Math.PI / 180) * degrees * Math.min(1, Math.hypot(across, up) / CROWN);
    out[3 * p] = side * (left + across * Math.cos(turn) - up * Math.sin(turn));
    out[3 * p + 1] = high + across * Math.sin(turn) + up * Math.cos(turn);
  }
  return out;
}
