import type { Body } from '../engine/body/body.ts';
import type { WovenCloth } from '../engine/cloth/cloth.ts';
import type { Form } from '../engine/form/form.ts';
import type { Garment } from '../engine/pattern/garment.ts';
import { type Findings, findingsOf } from '../engine/wear/findings.ts';
import type { Stand } from '../engine/wear/stand.ts';
import { standFor } from '../engine/wear/stand-for.ts';
import { type WearingStep, type Worn, wearing } from '../engine/wear/worn.ts';
import { progress } from './progress.ts';
import type { Session } from './session.ts';

/** A garment on a body, and what is found there. */
export interface PutOn {
  readonly form: Form;
  readonly stand: Stand;
  readonly hung: Worn;
  readonly findings: Findings;
}

/** Steps after which most garments hang still, on a first mesh and on a finer one: only the bar rests on it. */
const USUAL_STEPS = 50;

/** The share of the time that a first, coarse mesh takes. */
const FIRST_SHARE = 0.2;

/**
 * Puts a garment on the form of a body, with a bar where somebody looks on. Ctrl-C ends the hanging, not the command: the best
 * so far is kept.
 */
export async function putOn(
  session: Session,
  garment: Garment,
  cloth: WovenCloth,
  body: Body,
  spacing: number,
): Promise<PutOn> {
  const bar = progress(session, `hanging on ${body.name}`);
  let enough = false;
  const deaf = session.onInterrupt(() => {
    enough = true;
  });
  try {
    const { form, stand } = standFor(garment, body);
    const steps = wearing(garment, cloth, stand, spacing);
    let next = steps.next();
    while (!next.done) {
      bar.reached(shareOf(next.value, spacing));
      // Signals are heard between two steps.
      await new Promise(setImmediate);
      next = steps.next(enough);
    }
    return { form, stand, hung: next.value, findings: findingsOf(garment, next.value, stand) };
  } finally {
    deaf();
    bar.done();
  }
}

/** How far it has got: steps grow fewer, and nobody knows how many are left. */
function shareOf({ spacing, step }: WearingStep, wanted: number): number {
  const within = 1 - Math.exp((-2 * step) / USUAL_STEPS);
  return spacing === wanted ? FIRST_SHARE + (1 - FIRST_SHARE) * within : FIRST_SHARE * within;
}
