import survey from '../../../measurements/women-survey-2012.json' with { type: 'json' };
import { type MeasurementName, measurementNames } from '../body.ts';
import { expectedBustPointWidth, expectedFrontExcess } from '../bust.ts';
import { betweenFolds, halfWay } from '../estimate-frame.ts';
import { acrossFrontShare, armscyeShare, elbowShare } from '../estimate-girths.ts';
import { frontSpread, meanScyeDepth, meanScyeFall, overBack, overBlade } from '../estimate-lengths.ts';
import { backNeckRise } from '../neck.ts';
import { underBustForBust, upperChestForBust, upperChestForUnderBust } from '../size-table.ts';
import { correlationOf, type SurveyDimension, statisticsOf } from '../survey.ts';
import { overElbow, relaxedArm } from '../survey-knowledge.ts';
import type { JointDistribution } from './joint.ts';

/** The measurements that women are known by together: all but the slope, which no length says. */
type Length = Exclude<MeasurementName, 'shoulderSlope'>;

const names = measurementNames.filter((name): name is Length => name !== 'shoulderSlope');

const dimensions = Object.keys(survey.dimensions) as readonly SurveyDimension[];

/** A length as a sum of the survey's dimensions and of what each measurement has of its own, which nothing tells. */
interface Sum {
  readonly constant: number;
  /** Factors of the survey's dimensions, then of each measurement's own. */
  readonly factors: readonly number[];
}

const none: Sum = { constant: 0, factors: [...dimensions, ...names].map(() => 0) };

const dimension = (wanted: SurveyDimension): Sum => ({
  constant: 0,
  factors: none.factors.map((_, i) => (dimensions[i] === wanted ? 1 : 0)),
});

/** The sum of parts, each times its factor, and of what `name` has of its own: one standard deviation, mm. */
function sumOf(
  name: Length,
  own: number,
  constant: number,
  ...parts: readonly (readonly [factor: number, part: Sum])[]
): Sum {
  const at = dimensions.length + names.indexOf(name);
  return {
    constant: parts.reduce((sum, [factor, part]) => sum + factor * part.constant, constant),
    factors: none.factors.map((_, i) =>
      parts.reduce((sum, [factor, part]) => sum + factor * (part.factors[i] ?? 0), i === at ? own : 0),
    ),
  };
}

/** Mean waist girth at its natural level as a share of that at the navel: NATICK/TR-89/044, 1988. */
const naturalWaist = 725.5 / 791.9;

/**
 * How far a waist lies from that share, and an under-bust girth from what the bust makes of it, one standard deviation,
 * mm: wide enough for all figures, and for cups from AA to H. Judgement.
 */
const [waistVariety, cupVariety] = [35, 40];

/** The sizes at which what is not straight is taken as straight, mm. */
export type Near = Readonly<
  Record<'bustGirth' | 'underBustGirth' | 'bustPointWidth' | 'neckBaseGirth', number>
>;

/**
 * How a woman's measurements go together, for one about as large as `near`: the survey's dimensions and their
 * correlations, and the proportions by which a missing measurement is estimated, each with what it leaves open. What
 * an estimate says nothing about (how far a waist lies from three quarters of another, say) is judged.
 */
export function womenLike(near: Near): JointDistribution {
  const bustGirth = dimension('bustGirth');
  const hipGirth = dimension('hipGirth');
  const stature = dimension('stature');
  const neckHeight = dimension('backNeckPointHeight');
  const neckBaseGirth = dimension('neckBaseGirth');
  const shoulderLength = dimension('shoulderLength');
  const wristGirth = dimension('wristGirth');
  const waistGirth = sumOf('waistGirth', waistVariety, 0, [naturalWaist, dimension('waistGirthAtNavel')]);
  const upperArmGirth = sumOf('upperArmGirth', 8, 0, [relaxedArm, dimension('upperArmGirthFlexed')]);
  const outerArmLength = sumOf('outerArmLength', 10, 0, [overElbow, dimension('outerArmLengthStraight')]);
  const acrossBackWidth = sumOf('acrossBackWidth', 12, 0, [betweenFolds, dimension('acrossBackWidth')]);
  const backNeckPointToWaist = sumOf('backNeckPointToWaist', halfWay, -halfWay, [
    1,
    dimension('backNeckPointToWaistAtNavel'),
  ]);

  const slope = (line: { readonly at: (x: number) => number }): number => line.at(1) - line.at(0);
  const underBustGirth = sumOf('underBustGirth', cupVariety, underBustForBust.at(0), [
    slope(underBustForBust),
    bustGirth,
  ]);
  const upperChestGirth = sumOf(
    'upperChestGirth',
    25,
    (upperChestForBust.at(0) + upperChestForUnderBust.at(0)) / 2,
    [slope(upperChestForBust) / 2, bustGirth],
    [slope(upperChestForUnderBust) / 2, underBustGirth],
  );
  const spanSlope = expectedBustPointWidth(near.bustGirth + 1) - expectedBustPointWidth(near.bustGirth);
  const bustPointWidth = sumOf(
    'bustPointWidth',
    15,
    expectedBustPointWidth(near.bustGirth) - spanSlope * near.bustGirth,
    [spanSlope, bustGirth],
  );
  const acrossFrontWidth = sumOf('acrossFrontWidth', 18, 0, [acrossFrontShare, upperChestGirth]);
  const armscyeGirth = sumOf('armscyeGirth', 18, 0, [armscyeShare, upperChestGirth]);
  const elbowGirth = sumOf(
    'elbowGirth',
    12,
    0,
    [elbowShare / 2, upperArmGirth],
    [elbowShare / 2, wristGirth],
  );

  const scyeDepth = sumOf(
    'scyeDepth',
    8,
    meanScyeDepth - meanScyeFall,
    [1, neckHeight],
    [-1, dimension('axillaHeight')],
  );
  const rise = backNeckRise(1) - backNeckRise(0);
  const excess = (bust: number, underBust: number, width: number): number =>
    expectedFrontExcess(bust, bust - underBust, width);
  const { bustGirth: bust, underBustGirth: underBust, bustPointWidth: width } = near;
  const here = excess(bust, underBust, width);
  const byBust = excess(bust + 1, underBust, width) - here;
  const byUnderBust = excess(bust, underBust + 1, width) - here;
  const byWidth = excess(bust, underBust, width + 1) - here;
  const neckShoulderPointToWaist = sumOf(
    'neckShoulderPointToWaist',
    frontSpread,
    backNeckRise(0) + here - byBust * bust - byUnderBust * underBust - byWidth * width,
    [1, backNeckPointToWaist],
    [rise, neckBaseGirth],
    [byBust, bustGirth],
    [byUnderBust, underBustGirth],
    [byWidth, bustPointWidth],
  );
  const neckShoulderPointToBustPoint = sumOf(
    'neckShoulderPointToBustPoint',
    10,
    0,
    [1, neckShoulderPointToWaist],
    [-1, backNeckPointToWaist],
    [overBlade, neckHeight],
    [-overBlade, dimension('bustPointHeight')],
  );
  const waistHeight = sumOf('waistHeight', 10, 0, [1, neckHeight], [-1 / overBack, backNeckPointToWaist]);
  const waistToHip = sumOf(
    'waistToHip',
    15,
    0,
    [overBlade, waistHeight],
    [-overBlade, dimension('hipHeight')],
  );
  const sums: Readonly<Record<Length, Sum>> = {
    bustGirth,
    underBustGirth,
    upperChestGirth,
    waistGirth,
    hipGirth,
    neckBaseGirth,
    upperArmGirth,
    armscyeGirth,
    elbowGirth,
    wristGirth,
    shoulderLength,
    outerArmLength,
    backNeckPointToWaist,
    neckShoulderPointToBustPoint,
    neckShoulderPointToWaist,
    bustPointWidth,
    acrossBackWidth,
    acrossFrontWidth,
    scyeDepth,
    waistToHip,
    waistHeight,
    stature,
  };
  const all = names.map((name) => sums[name]);
  return { names, mean: all.map(meanOf), covariance: covarianceOf(all) };
}

const means = dimensions.map((name) => statisticsOf(name).mean);
const spreads = dimensions.map((name) => statisticsOf(name).sd);
const covariances = dimensions.map((a, i) =>
  dimensions.map((b, j) => correlationOf(a, b) * (spreads[i] ?? 0) * (spreads[j] ?? 0)),
);

const meanOf = ({ constant, factors }: Sum): number =>
  means.reduce((sum, mean, i) => sum + mean * (factors[i] ?? 0), constant);

/** The covariances of some sums: those of the survey's dimensions between their factors, and their own beside them. */
function covarianceOf(sums: readonly Sum[]): readonly (readonly number[])[] {
  const mixed = sums.map(({ factors }) => {
    const row = Float64Array.from(factors);
    for (let i = 0; i < dimensions.length; i++) {
      let sum = 0;
      for (let j = 0; j < dimensions.length; j++)
        sum += (factors[j] as number) * ((covariances[j] as readonly number[])[i] as number);
      row[i] = sum;
    }
    return row;
  });
  const rows = sums.map(() => sums.map(() => 0));
  for (const [i, row] of mixed.entries()) {
    for (let j = 0; j <= i; j++) {
      const { factors } = sums[j] as Sum;
      let sum = 0;
      for (let k = 0; k < row.length; k++) sum += (row[k] as number) * (factors[k] as number);
      // Each pair once, so that rounding leaves the matrix symmetric.
      (rows[i] as number[])[j] = (rows[j] as number[])[i] = sum;
    }
  }
  return rows;
}
