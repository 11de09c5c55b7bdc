import type { Body } from '../engine/body/body.ts';
import type { WovenCloth } from '../engine/cloth/cloth.ts';
import type { Form } from '../engine/form/form.ts';
import type { Garment } from '../engine/pattern/garment.ts';
import { type Findings, findingsOf } from '../engine/wear/findings.ts';
import type { Stand } from '../engine/wear/stand.ts';
import { standFor } from '../engine/wear/stand-for.ts';
import { type WearingStep, type Worn, wearing } from '../engine/wear/worn.ts';

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
  { reached, enough }: Waiting,
): Promise<PutOn> {
  const { form, stand } = standFor(garment, body);
  const steps = wearing(garment, cloth, stand, spacing);
  let next = steps.next();
  while (!next.done) {
    await reached(shareOf(next.value, spacing));
    next = steps.next(enough());
  }
  return { form, stand, hung: next.value, findings: findingsOf(garment, next.value, stand) };
}

/** How far it has got: steps grow fewer, and nobody knows how many are left. */
function shareOf({ spacing, step }: WearingStep, wanted: number): number {
  const within = 1 - Math.exp((-2 * step) / USUAL_STEPS);
  return spacing === wanted ? FIRST_SHARE + (1 - FIRST_SHARE) * within : FIRST_SHARE * within;
}
