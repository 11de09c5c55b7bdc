import { firstGuess, type Usual, usualFrom } from '../engine/constraints/first-guess.ts';
import type { Sketch } from '../engine/constraints/sketch.ts';
import armhole from './usual-armhole.json' with { type: 'json' };
import gathered from './usual-gathered.json' with { type: 'json' };
import plain from './usual-plain.json' with { type: 'json' };
import trial from './usual-trial.json' with { type: 'json' };

/**
 * Fronts that have places of their own: those that are chosen, a plain one whose princess seam begins at the armhole, and that of
 * a trial bodice, which leaves no choice.
 */
export type Front = 'gathered' | 'plain' | 'armhole' | 'trial';

const usual: Readonly<Record<Front, Usual>> = {
  gathered: usualFrom(gathered),
  plain: usualFrom(plain),
  armhole: usualFrom({ ...plain, ...armhole }),
  trial: usualFrom({ ...plain, ...trial }),
};

/** Where the unknowns of all sketches usually come to lie with this front: medians over plausible bodies, `npm run usual`. */
export const usualWith = (front: Front): Usual => usual[front];

/** A sketch with its first guesses where the lines of such a garment usually come to lie. */
export const usually = (sketch: Sketch, styling: Readonly<Record<string, unknown>>): Sketch =>
  firstGuess(sketch, usualWith(frontOf(styling)));

function frontOf({ front = 'trial', princess }: Readonly<Record<string, unknown>>): Front {
  if (front === 'gathered' || front === 'trial') return front;
  return princess === 'armhole' ? 'armhole' : 'plain';
}
