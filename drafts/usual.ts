import { firstGuess, type Usual } from '../engine/constraints/first-guess.ts';
import type { Sketch } from '../engine/constraints/sketch.ts';
import gathered from './usual-gathered.json' with { type: 'json' };
import plain from './usual-plain.json' with { type: 'json' };

/** Fronts that have places of their own; a garment without the choice is plain. */
export type Front = 'gathered' | 'plain';

const usual: Readonly<Record<Front, Usual>> = { gathered, plain };

/** Where the unknowns of all sketches usually come to lie with this front: medians over plausible bodies, `npm run usual`. */
export const usualWith = (front: Front): Usual => usual[front];

/** A sketch with its first guesses where the lines of such a garment usually come to lie. */
export const usually = (sketch: Sketch, { front }: Readonly<Record<string, unknown>>): Sketch =>
  firstGuess(sketch, usualWith(front === 'gathered' ? 'gathered' : 'plain'));
