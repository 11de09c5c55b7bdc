import { firstGuess, type Usual, usualFrom } from '../engine/constraints/first-guess.ts';
import type { Sketch } from '../engine/constraints/sketch.ts';
import gathered from './usual-gathered.json' with { type: 'json' };
import plain from './usual-plain.json' with { type: 'json' };
import trial from './usual-trial.json' with { type: 'json' };

/** Fronts that have places of their own: those that are chosen, and that of a trial bodice, which leaves no choice. */
export type Front = 'gathered' | 'plain' | 'trial';

const usual: Readonly<Record<Front, Usual>> = {
  gathered: usualFrom(gathered),
  plain: usualFrom(plain),
  trial: usualFrom({ ...plain, ...trial }),
};

/** Where the unknowns of all sketches usually come to lie with this front: medians over plausible bodies, `npm run usual`. */
export const usualWith = (front: Front): Usual => usual[front];

/** A sketch with its first guesses where the lines of such a garment usually come to lie. */
export const usually = (sketch: Sketch, { front = 'trial' }: Readonly<Record<string, unknown>>): Sketch =>
  firstGuess(sketch, usualWith(front === 'gathered' || front === 'trial' ? front : 'plain'));
