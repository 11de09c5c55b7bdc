import type { MeasurementName } from '../body/body.ts';
import {
  type FittedLevel,
  type FittedSeam,
  type FittingChange,
  mostAtSeam,
  type PlainChange,
  plainChanges,
} from '../body/fitting.ts';
import type { Off } from './nearest.ts';

/** By how much each girth of a size must grow to be hers, mm; less than nothing where it is too large. */
export type Wanted = Readonly<Partial<Record<FittedLevel, number>>>;

/** The seams at which each girth is altered, in the order in which a fitter turns to them; common practice, no source. */
const seamsAt: Readonly<Record<FittedLevel, readonly FittedSeam[]>> = {
  bust: ['side seam', 'back princess seam'],
  'under-bust': ['front princess seam', 'back princess seam'],
  waist: ['side seam', 'back princess seam', 'front princess seam'],
  hip: ['side seam', 'back princess seam', 'front princess seam'],
};

/** Nothing smaller is altered, mm on each layer; a pin is no finer. */
const FINEST = 0.5;

/** A seam moved by 1 on each layer, left and right alike, changes the girth by so much. */
const LAYERS = 4;

/** Seams taken in or let out so that the girths change as wanted, as far as their cloth allows. */
export function seamChanges(wanted: Wanted): readonly FittingChange[] {
  const levels = Object.keys(seamsAt) as readonly FittedLevel[];
  return levels.flatMap((level) => {
    let left = (wanted[level] ?? 0) / LAYERS;
    return seamsAt[level].flatMap((seam): readonly FittingChange[] => {
      const kind = left > 0 ? 'let out' : 'take in';
      const mm = inSteps(Math.min(Math.abs(left), mostAtSeam[kind]));
      if (mm === 0) return [];
      left -= left > 0 ? mm : -mm;
      return [{ kind, seam, level, mm }];
    });
  });
}

const inSteps = (mm: number): number => Math.round(mm / FINEST) * FINEST;

/** What is less than this is let be, mm; common practice, no source. */
const WORTH = 3;

/** Which change brings a measurement that is too small, or too large, to hers. */
const plainChangeFor: Readonly<
  Partial<Record<MeasurementName, { readonly tooSmall?: PlainChange; readonly tooLarge?: PlainChange }>>
> = {
  neckShoulderPointToBustPoint: { tooSmall: 'lower bust point', tooLarge: 'raise bust point' },
  backNeckPointToWaist: { tooSmall: 'round back', tooLarge: 'sway back' },
  acrossBackWidth: { tooSmall: 'broad back', tooLarge: 'narrow back' },
  upperArmGirth: { tooSmall: 'more upper arm' },
};

/** Changes of a fitting that are no seam's, by what a size is off. */
export const plainAlterations = (off: readonly Off[]): readonly FittingChange[] =>
  off.flatMap(({ measurement, by }): readonly FittingChange[] => {
    const kinds = plainChangeFor[measurement];
    const kind = by < 0 ? kinds?.tooSmall : kinds?.tooLarge;
    if (!kind || Math.abs(by) < WORTH) return [];
    return [{ kind, mm: inSteps(Math.min(Math.abs(by), plainChanges[kind].most)) }];
  });

/** The measurements that a girth of the garment is closed to: these the seams bring home. */
const bySeams: ReadonlySet<MeasurementName> = new Set([
  'bustGirth',
  'underBustGirth',
  'waistGirth',
  'hipGirth',
]);

/** What is off by so much that it shows, and that none of these changes alters. */
export const notAltered = (off: readonly Off[], changes: readonly FittingChange[]): readonly Off[] =>
  off.filter(({ measurement, by }) => {
    const kinds = plainChangeFor[measurement];
    const kind = by < 0 ? kinds?.tooSmall : kinds?.tooLarge;
    const altered = bySeams.has(measurement) || changes.some((change) => change.kind === kind);
    return !altered && Math.abs(by) >= WORTH;
  });
