import { inverse, Matrix } from 'ml-matrix';
import { factor, solveLower, triangle } from '../../numeric/cholesky.ts';
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
  readonly expected: (name: MeasurementName) => Expected;
}

/** What the others make of one measurement, mm. */
export interface Expected {
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
  const places = women.names.flatMap((name, place) => (sizes[name] === undefined ? [] : [place]));
  const names = places.map((place) => women.names[place]);
  const off = Matrix.columnVector(
    places.map((place) => (sizes[women.names[place] ?? 'stature'] ?? 0) - (women.mean[place] ?? 0)),
  );
  const count = places.length;
  const covariance = new Float64Array(count * count);
  for (const [i, a] of places.entries())
    for (const [j, b] of places.entries())
      covariance[i * count + j] =
        (women.covariance[a]?.[b] ?? 0) + (a === b ? usualError[women.names[a] ?? 'stature'] ** 2 : 0);
  const lower = triangle(count, covariance.slice());
  factor(lower);
  const scores = Float64Array.from(off.getColumn(0));
  solveLower(lower, scores);
  let inverted: { readonly precision: Matrix; readonly weighed: Matrix } | undefined;
  const partition = () => {
    const precision = inverted?.precision ?? inverse(Matrix.from1DArray(count, count, covariance));
    inverted ??= { precision, weighed: precision.mmul(off) };
    return inverted;
  };
  return {
    all: Math.sqrt(scores.reduce((sum, score) => sum + score * score, 0)),
    offOf: (set) => {
      const { precision, weighed } = partition();
      const at = set.map((name) => names.indexOf(name));
      const pulled = weighed.selection(at, [0]);
      const among = inverse(precision.selection(at, at));
      return Math.sqrt(pulled.transpose().mmul(among).mmul(pulled).get(0, 0));
    },
    expected: (name) => {
      const { precision, weighed } = partition();
      const at = names.indexOf(name);
      const variance = 1 / precision.get(at, at);
      return {
        mean: (sizes[name] ?? 0) - variance * weighed.get(at, 0),
        spread: Math.sqrt(variance),
        usual: women.mean[women.names.indexOf(name)] ?? 0,
      };
    },
  };
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
