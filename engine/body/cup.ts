import tables from '../../measurements/en-13402.json' with { type: 'json' };
import { COINCIDENCE } from '../geometry/tolerance.ts';
import type { Body } from './body.ts';
import { cupLetters } from './cup-letters.ts';

/** Cup, band and how the bust sits on the frame. Lengths in mm. */
export interface Cup {
  /** `AA` to `J`, or `less than AA`, or `more than J`. */
  readonly letter: string;
  /** Bust girth less under-bust girth. */
  readonly difference: number;
  /** The band a bra of this size is named by, cm. */
  readonly band: number;
  /** Bust girth less upper chest girth. Negative where the chest is the larger. */
  readonly upperChestDifference: number;
}

/** Each letter with the differences it covers, mm: more than `above`, up to and with `upTo` (EN 13402). */
const cups = Object.entries(tables.cupsAbove).map(([letter, above], i, all) => ({
  letter,
  above: above * 10,
  upTo: (all[i + 1]?.[1] ?? tables.lastCupUpTo) * 10,
}));

/** Which difference each letter stands for, in words. */
export const cupDifferences: string = cups
  .map(({ letter, above, upTo }, i) => `${letter} for ${above / 10} to ${upTo / 10}${i === 0 ? ' cm' : ''}`)
  .join(', ');

/**
 * The cup letter of bust girth less under-bust girth (mm), after EN 13402: the lower edge of a cup belongs to the
 * cup below. A difference that lies on an edge but for rounding counts as on it.
 */
export function cupLetter(difference: number): string {
  const [smallest] = cups;
  if (smallest && difference <= smallest.above + COINCIDENCE) return `less than ${smallest.letter}`;
  const found = cups.find(({ upTo }) => difference <= upTo + COINCIDENCE);
  return found?.letter ?? `more than ${cupLetters.at(-1)}`;
}

/** The difference in the middle of a letter's cup, mm; nothing for a letter that EN 13402 does not have. */
export function cupDifference(letter: string): number | undefined {
  const cup = cups.find((known) => known.letter === letter);
  return cup && (cup.above + cup.upTo) / 2;
}

/**
 * The bra band of an under-bust girth (mm), in cm: the nearest 5 cm (EN 13402). The standard's bands are whole
 * centimetres and leave a tie such as 72.5 open; here it goes to the smaller band, for bands give in wear.
 */
export const band = (underBustGirth: number): number =>
  Math.ceil((underBustGirth - COINCIDENCE) / (10 * tables.bandStep) - 0.5) * tables.bandStep;

/** A complete body's cup. */
export const cupOf = ({ size }: Pick<Body, 'size'>): Cup => ({
  letter: cupLetter(size.bustGirth - size.underBustGirth),
  difference: size.bustGirth - size.underBustGirth,
  band: band(size.underBustGirth),
  upperChestDifference: size.bustGirth - size.upperChestGirth,
});
