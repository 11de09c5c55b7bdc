import type { Body } from '../../engine/body/body.ts';
import type { WovenCloth } from '../../engine/cloth/cloth.ts';
import type { Form } from '../../engine/form/form.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import { type Findings, findingsOf } from '../../engine/wear/findings.ts';
import { type Raised, raising, rises } from '../../engine/wear/raised.ts';
import type { Stand } from '../../engine/wear/stand.ts';
import { formRaised, standFor } from '../../engine/wear/stand-for.ts';
import { sleevesOf } from '../../engine/wear/what-meets.ts';
import { type WearingStep, type Worn, wearing } from '../../engine/wear/worn.ts';

/** A garment on a body, and what is found there. */
export interface PutOn {
  readonly form: Form;
  readonly stand: Stand;
  readonly hung: Worn;
  readonly findings: Findings;
  /** The same with its arms raised; none where it has no sleeves, or where they were not to be. */
  readonly raised?: Raised | undefined;
}

/** Steps after which most garments hang still, on a first mesh and on a finer one: only the bar rests on it. */
const USUAL_STEPS = 50;

/** The share of the time that a first, coarse mesh takes. */
const FIRST_SHARE = 0.2;

/** The share of the time that hanging takes where the arms are raised then. */
const HANGING_SHARE = 0.6;

/** Who waits for a garment to hang. */
export interface Waiting {
  /** Told the share that is likely over, between two steps; others may do something meanwhile. */
  readonly reached: (share: number) => Promise<void>;
  /** Whether what hangs so far will do. */
  readonly enough: () => boolean;
}

/** Puts a garment on the form of a body, step by step: the best so far is kept where that is enough. */
export async function hanging(
  garment: Garment,
  cloth: WovenCloth,
  body: Body,
  spacing: number,
  waiting: Waiting,
): Promise<PutOn> {
  const { form, stand } = standFor(garment, body);
  const steps = wearing(garment, cloth, stand, spacing);
  const hung = await stepByStep(steps, (step) => shareOf(step, spacing), waiting);
  return { form, stand, hung, findings: findingsOf(garment, hung, stand) };
}

/** Takes all steps, the share that is over told between two, or as many as are enough. */
async function stepByStep<Made>(
  steps: Generator<WearingStep, Made, boolean>,
  share: (step: WearingStep) => number,
  { reached, enough }: Waiting,
): Promise<Made> {
  let next = steps.next(false);
  while (!next.done) {
    await reached(share(next.value));
    next = steps.next(enough());
  }
  return next.value;
}

/** The same with the arms raised then, where it has sleeves: what that does to the waist is among the findings. */
export async function hangingAndRaised(
  garment: Garment,
  cloth: WovenCloth,
  body: Body,
  spacing: number,
  waiting: Waiting,
): Promise<PutOn> {
  const part = sleevesOf(garment).size > 0 ? HANGING_SHARE : 1;
  const hung = await hanging(garment, cloth, body, spacing, {
    ...waiting,
    reached: (share) => waiting.reached(part * share),
  });
  const raised = await stepByStep(
    raising(garment, hung.hung, hung.stand, (rise) => formRaised(body, rise)),
    ({ step, raised: rise = 0 }) =>
      part + ((1 - part) * (rises.indexOf(rise) + nearing(step))) / rises.length,
    waiting,
  );
  return raised ? { ...hung, raised, findings: { ...hung.findings, arms: raised.found } } : hung;
}

/** How far it has got: steps grow fewer, and nobody knows how many are left. */
function shareOf({ spacing, step }: WearingStep, wanted: number): number {
  const within = nearing(step);
  return spacing === wanted ? FIRST_SHARE + (1 - FIRST_SHARE) * within : FIRST_SHARE * within;
}

const nearing = (step: number): number => 1 - Math.exp((-2 * step) / USUAL_STEPS);
