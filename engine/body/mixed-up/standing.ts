import { factor, solveLower, solveUpper, type Triangle, triangle } from '../../numeric/cholesky.ts';
import { zeros } from '../../numeric/zeros.ts';
import type { MeasurementName, Sizes } from '../body.ts';
import { expectedBustPointWidth } from '../bust.ts';
import type { JointDistribution } from '../population/joint.ts';
import { type Near, womenLike } from '../population/women.ts';
import { usualError } from '../reconcile/usual-error.ts';
import { underBustForBust } from '../size-table.ts';
import { statisticsOf } from '../survey.ts';

/** How far some measurements together are from what all the others of a woman make of them. */
export interface Standing {
  /** The same of all together from the mean woman: none of them is further off. */
  readonly all: number;
  /** In standard deviations: the Mahalanobis distance, for one measurement its standard score. */
  readonly offOf: (names: readonly MeasurementName[]) => number;
  readonly expected: (name: MeasurementName) => Foretold;
}

/** What the others make of one measurement, mm. */
export interface Foretold {
  readonly mean: number;
  /** One standard deviation of her and of a reading's usual error. */
  readonly spread: number;
  /** The mean of all women, whose spread that is. */
  readonly usual: number;
}

/**
 * How each measurement stands among the others: by the survey's correlations and the errors of a tape. With P the inverse
 * of the covariance of all and e what they are off from their means, those in a set are off from what the others make of
 * them by P_ss^-1 (P e)_s, whose inverse covariance is P_ss (partitioned inverse: T. W. Anderson, An Introduction to
 * Multivariate Statistical Analysis, 1958, section 2.5).
 */
export function standingOf(sizes: Sizes): Standing {
  const women = womenNear(nearTo(sizes));
  const places: number[] = [];
  for (const [place, name] of women.names.entries()) if (sizes[name] !== undefined) places.push(place);
  const names = places.map((place) => women.names[place]);
  const count = places.length;
  const lower = triangle(count);
  const scores = zeros(count);
  for (let i = 0; i < count; i++) {
    const place = places[i] as number;
    const name = women.names[place] as MeasurementName;
    const row = women.covariance[place] as readonly number[];
    for (let j = 0; j <= i; j++) lower.entries[i * count + j] = row[places[j] as number] as number;
    lower.entries[i * count + i] = (lower.entries[i * count + i] as number) + usualError[name] ** 2;
    scores[i] = (sizes[name] as number) - (women.mean[place] as number);
  }
  factor(lower);
  solveLower(lower, scores);
  const weighed = scores.slice();
  solveUpper(lower, weighed);
  return {
    all: Math.sqrt(scores.reduce((sum, score) => sum + score * score, 0)),
    offOf: (set) => {
      const at = set.map((name) => names.indexOf(name));
      const among = triangle(at.length);
      for (const [i, place] of at.entries()) {
        const column = precision(lower, place);
        for (const [j, other] of at.entries()) among.entries[i * at.length + j] = column[other] as number;
      }
      factor(among);
      const pulled = Float64Array.from(at, (place) => weighed[place] as number);
      solveLower(among, pulled);
      return Math.sqrt(pulled.reduce((sum, score) => sum + score * score, 0));
    },
    expected: (name) => {
      const at = names.indexOf(name);
      const variance = 1 / (precision(lower, at)[at] as number);
      return {
        mean: (sizes[name] as number) - variance * (weighed[at] as number),
        spread: Math.sqrt(variance),
        usual: women.mean[women.names.indexOf(name)] ?? 0,
      };
    },
  };
}

/** A column of the inverse of the matrix that was factored. */
function precision(lower: Triangle, place: number): Float64Array {
  const column = zeros(lower.order);
  column[place] = 1;
  solveLower(lower, column);
  solveUpper(lower, column);
  return column;
}

/** Kinds kept: a population has some hundreds. */
const MOST_KINDS = 1000;

/** Women about so large, each kind found once: for nearly every body it would be the slowest part of reading it. */
const found = new Map<string, JointDistribution>();

function womenNear(near: Near): JointDistribution {
  const kind = `${near.bustGirth} ${near.underBustGirth} ${near.bustPointWidth} ${near.neckBaseGirth}`;
  const women = found.get(kind) ?? womenLike(near);
  if (found.size >= MOST_KINDS) found.clear();
  found.set(kind, women);
  return women;
}

/** Figures of about the same size are taken alike, to so many mm: what is not straight hardly bends between them. */
const ALIKE = 40;

const about = (mm: number): number => ALIKE * Math.round(mm / ALIKE);

/** Where the relations that are not straight are taken as straight. */
function nearTo(sizes: Sizes): Near {
  const bustGirth = sizes.bustGirth ?? statisticsOf('bustGirth').mean;
  return {
    bustGirth: about(bustGirth),
    underBustGirth: about(sizes.underBustGirth ?? underBustForBust.at(bustGirth)),
    bustPointWidth: about(sizes.bustPointWidth ?? expectedBustPointWidth(bustGirth)),
    neckBaseGirth: about(sizes.neckBaseGirth ?? statisticsOf('neckBaseGirth').mean),
  };
}
