import type { Body, Provenance } from '../body/body.ts';
import { perMm, type Sensitivity, type Slope } from './sensitivity.ts';

/**
 * How far a measurement taken with care is usually off, mm, one standard deviation: common practice, no source. One
 * derived from a cup letter is about as good: cups are 20 mm wide, evenly spread 5.8 mm.
 */
const USUAL_ERROR = 5;

/** A garment that is off by less than this (mm) is as good as true: the thickness of a chalk line. */
const UNSEEN = 0.5;

/** How much a measurement matters for a garment, on this body. */
export interface Importance extends Sensitivity {
  readonly from: Provenance['from'];
  /** How far the measurement is likely to be off, mm, one standard deviation. */
  readonly likelyError: number;
  /** What answers to it most, and how far that is likely to be off for it, mm; none where nothing answers. */
  readonly most: { readonly place: Slope; readonly likelyOff: number } | undefined;
}

/**
 * The measurements in the order in which it is worth taking them again: the estimated ones first, at the end those
 * that make no difference to be seen, and each group by how far the garment is likely to be off for them, all
 * finished girths, seams and levels taken together (root of the sum of squares: one that shifts a whole bodice
 * matters more than one that makes a single seam longer). Edges as cut do not count: gathered ones would count by
 * their fullness, and the others are seams. Nor do notions, which are cut when the garment is tried on. Errors are taken for small enough that the garment answers in
 * proportion.
 */
export function byImportance(body: Body, all: readonly Sensitivity[]): readonly Importance[] {
  const found = all.map((sensitivity) => {
    const { measurement, slopes } = sensitivity;
    const known = body.known[measurement];
    const { from } = known;
    const likelyError = from === 'estimated' ? known.spread / perMm(body, measurement) : USUAL_ERROR;
    const finished = slopes.filter(({ kind }) => kind !== 'edge' && kind !== 'notion');
    const place = steepest(finished);
    const most = place && { place, likelyOff: likelyError * Math.abs(place.perMm) };
    const altogether = likelyError * Math.hypot(...finished.map((slope) => slope.perMm));
    const rank = (most?.likelyOff ?? 0) < UNSEEN ? 2 : from === 'estimated' ? 0 : 1;
    return { importance: { ...sensitivity, from, likelyError, most }, altogether, rank };
  });
  return found
    .toSorted((a, b) => a.rank - b.rank || b.altogether - a.altogether)
    .map(({ importance }) => importance);
}

/** The first so many of those that are worth taking again. */
export const takeAgain = (ranked: readonly Importance[], count = 3): readonly Importance[] =>
  ranked.filter(({ most }) => most && most.likelyOff >= UNSEEN).slice(0, count);

/** Of several about as steep (to 1e-2) the first. */
const steepest = (slopes: readonly Slope[]): Slope | undefined =>
  slopes.reduce<Slope | undefined>(
    (most, slope) => (Math.abs(slope.perMm) > Math.abs(most?.perMm ?? 0) + 0.01 ? slope : most),
    undefined,
  );
