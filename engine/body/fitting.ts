import { type Side, sides } from './side.ts';

/**
 * What was found at a fitting, as a fitter says it. Amounts are in mm and above nothing. A seam is taken in or let
 * out as it is pinned: the amount is how far the stitching line moves on each of the two layers, left and right
 * alike, so a side seam taken in by 10 makes the girth 40 smaller. What names a side was found on that side only.
 */
export type FittingChange =
  | {
      readonly kind: 'take in' | 'let out';
      readonly seam: FittedSeam;
      readonly level: FittedLevel;
      readonly mm: number;
    }
  | { readonly kind: PlainChange; readonly mm: number; readonly side?: Side };

/** The seams that can be taken in, and the levels at which each has a place of its own: between, they run on. */
export const fittedLevels = {
  'side seam': ['bust', 'waist', 'hip'],
  'front princess seam': ['under-bust', 'waist', 'hip'],
  'back princess seam': ['bust', 'under-bust', 'waist', 'hip'],
  'centre back seam': ['waist', 'hip'],
} as const;

export type FittedSeam = keyof typeof fittedLevels;

export type FittedLevel = (typeof fittedLevels)[FittedSeam][number];

export const fittedSeams = Object.keys(fittedLevels) as readonly FittedSeam[];

/** The allowance of a trial bodice on every seam, for letting out, mm. Common practice, no source. */
export const trialAllowance = 25;

/** What a seam needs of its allowance to hold, mm. Common practice, no source. */
export const leastAllowance = 10;

/**
 * How far a seam of a trial bodice can be pinned on each layer, mm. Let out, it moves into the allowance, and as much of
 * that must stay as a seam needs. Taken in, the fold that is pinned is no deeper than the allowance is wide: what takes
 * more is another shape.
 */
export const mostAtSeam = {
  'take in': trialAllowance,
  'let out': trialAllowance - leastAllowance,
} as const;

/** The changes that need no more than an amount, and beyond what (mm) to measure again. Common practice, no source. */
export const plainChanges = {
  'raise bust point': { most: 25, help: 'The bust points lie this much higher than drafted.' },
  'lower bust point': { most: 25, help: 'The bust points lie this much lower than drafted.' },
  'wedge from neckline': {
    most: 20,
    help: 'The front neckline gapes: pinned out on each side, to nothing at the bust point.',
  },
  'wedge from armhole': {
    most: 15,
    help: 'The front armhole gapes: pinned out of each, to nothing at the bust point.',
  },
  'wedge from back neckline': {
    most: 20,
    help: 'The back neckline gapes: pinned out on each side, to nothing at the shoulder blade.',
  },
  'wedge from back armhole': {
    most: 15,
    help: 'The back armhole gapes: pinned out of each, to nothing at the shoulder blade.',
  },
  'shorten strap': {
    most: 50,
    help: 'Each strap is shorter by this, half before the shoulder and half behind.',
  },
  'lengthen strap': {
    most: 50,
    help: 'Each strap is longer by this, half before the shoulder and half behind.',
  },
  'forward shoulder': { most: 25, help: 'The shoulder lies this much further forward than its mark.' },
  'lower shoulder': {
    most: 30,
    help: 'One shoulder lies this much lower than the other; draft for the higher one, and say which side is lower.',
  },
  'round back': { most: 30, help: 'The back needs this much more length above the bust level.' },
  'broad back': {
    most: 40,
    help: 'The back strains across the shoulder blades: this much wider from side seam to side seam at the bust level. A round back may need it too.',
  },
  'narrow back': {
    most: 40,
    help: 'The back is loose across the shoulder blades: this much narrower from side seam to side seam at the bust level.',
  },
  'sway back': {
    most: 30,
    help: 'The back folds above the waist: pinned out of the bodice at the centre, to nothing at the side seam.',
  },
  'sway back in skirt': {
    most: 30,
    help: 'The skirt folds under the waist behind: its waist drops this much at the centre, to nothing at the side seam.',
  },
  'more upper arm': { most: 80, help: 'The sleeve needs this much more room around the upper arm.' },
} as const;

export type PlainChange = keyof typeof plainChanges;

export const plainChangeNames = Object.keys(plainChanges) as readonly PlainChange[];

/**
 * The changes that may, or must, be made on one side only: they leave every piece as it is that is cut whole, and the
 * seams of the panels at the centre.
 */
export const oneSided: Readonly<Partial<Record<FittingChange['kind'], 'may' | 'must'>>> = {
  'shorten strap': 'may',
  'lengthen strap': 'may',
  'forward shoulder': 'may',
  'lower shoulder': 'must',
  'more upper arm': 'may',
};

/** The side a change was found on; none where it is on both. */
export const sideOf = (change: FittingChange): Side | undefined =>
  'side' in change ? change.side : undefined;

/** The changes that one side of the body needs. */
export const onSide = (changes: readonly FittingChange[], side: Side): readonly FittingChange[] =>
  changes.filter((change) => (sideOf(change) ?? side) === side);

/** The changes with what left and right have in common made on both: the sides part no further than they must. */
export function sharedBySides(changes: readonly FittingChange[]): readonly FittingChange[] {
  const kinds = [...new Set(changes.filter(sideOf).map(({ kind }) => kind))] as readonly PlainChange[];
  const parted = kinds.flatMap((kind): readonly FittingChange[] => {
    const on = (side: Side): number =>
      changes.reduce(
        (sum, change) => (change.kind === kind && sideOf(change) === side ? sum + change.mm : sum),
        0,
      );
    const both = Math.min(...sides.map(on));
    return [
      { kind, mm: both },
      ...sides.map((side): FittingChange => ({ kind, mm: on(side) - both, side })),
    ].filter(({ mm }) => mm > 0);
  });
  return [...changes.filter((change) => !sideOf(change)), ...parted];
}

/** Changes that undo each other. */
const opposites: readonly (readonly [FittingChange['kind'], FittingChange['kind']])[] = [
  ['take in', 'let out'],
  ['raise bust point', 'lower bust point'],
  ['shorten strap', 'lengthen strap'],
  ['broad back', 'narrow back'],
];

/** Whether one change undoes the other, at the same place. */
export const isOpposite = (a: FittingChange, b: FittingChange): boolean =>
  opposites.some(([one, other]) => one === a.kind && other === b.kind) &&
  placeOf(a) === placeOf(b) &&
  sides.some((side) => onSide([a, b], side).length === 2);

/** The seam and level of a change, in words; empty where it needs none. */
export const placeOf = (change: FittingChange): string =>
  'seam' in change ? `${change.seam} at the ${change.level}` : '';

/** "take in the side seam at the waist", "round back", "lower shoulder on the left". */
export const changeWords = (change: FittingChange): string => {
  if ('seam' in change) return `${change.kind} the ${placeOf(change)}`;
  return change.side ? `${change.kind} on the ${change.side}` : change.kind;
};

/** The most there is of a change, mm. */
export const mostOf = (change: FittingChange): number =>
  'seam' in change ? mostAtSeam[change.kind] : plainChanges[change.kind].most;

/** Where a change was found: on both sides, or on the one that is drawn. */
export type FoundOn = 'both sides' | 'one side';

/** All there is of one plain change, or of what was found so, mm; said twice, it counts twice. */
export const fitted = (changes: readonly FittingChange[], kind: PlainChange, on?: FoundOn): number =>
  changes.reduce((sum, change) => {
    const counts =
      change.kind === kind && (on === undefined || (on === 'one side') === (sideOf(change) !== undefined));
    return counts ? sum + change.mm : sum;
  }, 0);

/** How far a seam is taken in at a level on each layer, mm; less than nothing where it is let out. */
export const takenIn = (changes: readonly FittingChange[], seam: FittedSeam, level: FittedLevel): number =>
  changes.reduce((sum, change) => {
    if (!('seam' in change) || change.seam !== seam || change.level !== level) return sum;
    return sum + (change.kind === 'take in' ? change.mm : -change.mm);
  }, 0);
