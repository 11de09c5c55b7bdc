import { inverse, Matrix } from 'ml-matrix';
import type { MeasurementName } from '../body.ts';
import { expectedBustPointWidth } from '../bust.ts';
import { womenLike } from '../population/women.ts';
import { usualError } from '../reconcile/usual-error.ts';
import { underBustForBust } from '../size-table.ts';
import { statisticsOf } from '../survey.ts';

/** Lengths, mm. */
export type Sizes = Readonly<Partial<Record<MeasurementName, number>>>;

/** How far some measurements together are from what all the others of a woman make of them. */
export interface Standing {
  /** The same of all together from the mean woman: none of them is further off. */
  readonly all: number;
  /** In standard deviations: the Mahalanobis distance, for one measurement its standard score. */
  readonly offOf: (names: readonly MeasurementName[]) => number;
}

/**
 * How each measurement stands among the others: by the survey's correlations and the errors of a tape. With P the inverse
 * of the covariance of all and e what they are off from their means, those in a set are off from what the others make of
 * them by P_ss^-1 (P e)_s, whose inverse covariance is P_ss (partitioned inverse: T. W. Anderson, An Introduction to
 * Multivariate Statistical Analysis, 1958, section 2.5).
 */
export function standingOf(sizes: Sizes): Standing {
  const women = womenLike(nearTo(sizes));
  const places = women.names.flatMap((name, place) => (sizes[name] === undefined ? [] : [place]));
  const names = places.map((place) => women.names[place]);
  const off = Matrix.columnVector(
    places.map((place) => (sizes[women.names[place] ?? 'stature'] ?? 0) - (women.mean[place] ?? 0)),
  );
  const precision = inverse(
    new Matrix(
      places.map((a) =>
        places.map(
          (b) =>
            (women.covariance[a]?.[b] ?? 0) + (a === b ? usualError[women.names[a] ?? 'stature'] ** 2 : 0),
        ),
      ),
    ),
  );
  const weighed = precision.mmul(off);
  return {
    all: Math.sqrt(off.dot(weighed)),
    offOf: (set) => {
      const at = set.map((name) => names.indexOf(name));
      const pulled = weighed.selection(at, [0]);
      const among = inverse(precision.selection(at, at));
      return Math.sqrt(pulled.transpose().mmul(among).mmul(pulled).get(0, 0));
    },
  };
}

/** Where the relations that are not straight are taken as straight. */
function nearTo(sizes: Sizes) {
  const bustGirth = sizes.bustGirth ?? statisticsOf('bustGirth').mean;
  return {
    bustGirth,
    underBustGirth: sizes.underBustGirth ?? underBustForBust.at(bustGirth),
    bustPointWidth: sizes.bustPointWidth ?? expectedBustPointWidth(bustGirth),
    neckBaseGirth: sizes.neckBaseGirth ?? statisticsOf('neckBaseGirth').mean,
  };
}
