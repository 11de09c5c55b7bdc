import fc from 'fast-check';
import { type MeasurementName, measurementNames } from '../engine/body/body.ts';
import { cupDifference } from '../engine/body/cup.ts';
import { completed } from '../engine/body/estimate.ts';
import { essentialNames, measured } from '../engine/body/found.ts';
import { type BodyData, gridCups } from '../engine/body/grid.ts';
import { randomFrom } from '../engine/numeric/random.ts';
import survey from '../measurements/women-survey-2012.json' with { type: 'json' };
import { uniform } from './uniform.ts';

export { type BodyData, bodyGrid } from '../engine/body/grid.ts';

/**
 * What a survey of real women would give to a dressmaker, and by which dimension of the survey. Its waist lies at
 * the navel and its arm is flexed: unlike what the draft expects, and so a good test of it.
 */
const surveyed = {
  bustGirth: 'bustGirth',
  waistGirth: 'waistGirthAtNavel',
  hipGirth: 'hipGirth',
  neckBaseGirth: 'neckBaseGirth',
  shoulderLength: 'shoulderLength',
  acrossBackWidth: 'acrossBackWidth',
  backNeckPointToWaist: 'backNeckPointToWaistAtNavel',
  upperArmGirth: 'upperArmGirthFlexed',
  stature: 'stature',
} as const satisfies Partial<Record<MeasurementName, keyof typeof survey.dimensions>>;

type Surveyed = keyof typeof surveyed;

const surveyedNames = Object.keys(surveyed) as readonly Surveyed[];
const order = Object.keys(survey.dimensions);

const optionalNames = measurementNames.filter((name) => !essentialNames.some((other) => other === name));

/** Lower triangle of the correlations of the surveyed dimensions, so that its rows mix independent scores. */
const mixing = lowerTriangle(
  surveyedNames.map((a) => {
    const row = survey.correlation[order.indexOf(surveyed[a])];
    return surveyedNames.map((b) => row?.[order.indexOf(surveyed[b])] ?? 0);
  }),
);

/**
 * A woman as the survey could have met her: standard normal scores with the survey's correlations, each turned
 * into mm through the published percentiles (a Gaussian copula). The same seed gives the same woman.
 */
export function surveyBody(seed: number): BodyData {
  const score = normalScores(seed);
  const independent = surveyedNames.map(() => score());
  const sizes = surveyedNames.map((name, i) => {
    const mixed = mixing[i]?.reduce((sum, weight, j) => sum + weight * (independent[j] ?? 0), 0) ?? 0;
    return [name, Math.round(atScore(surveyed[name], mixed))];
  });
  return { name: `survey ${seed}`, units: 'mm', ...Object.fromEntries(sizes) };
}

/** So many women of the survey, always the same. */
export const plausibleBodies = (count: number): readonly BodyData[] =>
  Array.from({ length: count }, (_, i) => surveyBody(i + 1));

/**
 * Anybody a dressmaker could have measured: a woman of the survey with her waist at its natural level, of whom any
 * of the other measurements may be known, each somewhat off from what is likely for her, and sometimes her cup.
 */
export const plausibleBody: fc.Arbitrary<BodyData> = fc
  .record({
    seed: fc.integer({ min: 1, max: 1_000_000 }),
    cup: fc.constantFrom('none', 'letter', 'girth'),
    difference: fc.integer({ min: 100, max: 280 }),
    optional: fc.subarray(optionalNames),
    off: fc.array(uniform(-1.5, 1.5), {
      minLength: measurementNames.length,
      maxLength: measurementNames.length,
    }),
  })
  .map(({ seed, cup, difference, optional, off }) => {
    const given = atNaturalWaist(surveyBody(seed));
    const underBustGirth = given.bustGirth - difference;
    const { size, known } = completed({
      bustGirth: measured(given.bustGirth),
      waistGirth: measured(given.waistGirth),
      hipGirth: measured(given.hipGirth),
      backNeckPointToWaist: measured(given.backNeckPointToWaist),
      stature: measured(given.stature),
      ...(cup === 'none' ? {} : { underBustGirth: measured(underBustGirth) }),
    });
    const others = optional
      .filter((name) => name !== 'underBustGirth')
      .map((name) => {
        const from = known[name];
        const by =
          from.from === 'estimated' ? from.spread * (off[measurementNames.indexOf(goesWith(name))] ?? 0) : 0;
        return [name, inFile(name, size[name] + by)] as const;
      });
    return {
      name: `plausible ${seed}`,
      units: 'mm',
      ...Object.fromEntries(essentialNames.map((name) => [name, given[name]])),
      ...orderly(Object.fromEntries(others), given.backNeckPointToWaist),
      ...(cup === 'letter' ? { cup: letterOf(difference) } : {}),
      ...(cup === 'girth' ? { underBustGirth } : {}),
    };
  });

/**
 * Mean natural waist girth and back length as shares of those at the navel: 72.55 by 79.19 and 36.73 by 44.25 cm
 * of the same 2,208 women (NATICK/TR-89/044, 1988).
 */
const natural = { waistGirth: 72.55 / 79.19, backNeckPointToWaist: 36.73 / 44.25 };

export function atNaturalWaist(body: BodyData) {
  const sizes = Object.fromEntries(surveyedNames.map((name) => [name, Number(body[name])]));
  const of = (name: Surveyed): number => sizes[name] ?? 0;
  return {
    bustGirth: of('bustGirth'),
    waistGirth: Math.round(natural.waistGirth * of('waistGirth')),
    hipGirth: of('hipGirth'),
    backNeckPointToWaist: Math.round(natural.backNeckPointToWaist * of('backNeckPointToWaist')),
    stature: of('stature'),
  };
}

/**
 * Two lengths that were each taken a little wrong may tell of a bust level above the underarm or below the waist,
 * which nobody has. The later of the two is then left out, as if it had not been measured.
 */
function orderly(others: Readonly<Record<string, number>>, back: number): Readonly<Record<string, number>> {
  const { neckShoulderPointToWaist: toWaist, neckShoulderPointToBustPoint: toBust, scyeDepth } = others;
  if (toWaist === undefined || toBust === undefined) return others;
  const bustToWaist = toWaist - toBust;
  if (bustToWaist > 70 && back - bustToWaist > (scyeDepth ?? 0.5 * back) + 30) return others;
  const { neckShoulderPointToBustPoint: _, ...rest } = others;
  return rest;
}

/** A thick arm has a large armscye: the two are off alike. */
const goesWith = (name: MeasurementName): MeasurementName =>
  name === 'armscyeGirth' ? 'upperArmGirth' : name;

const letterOf = (difference: number): string | undefined =>
  gridCups.find((cup) => difference <= (cupDifference(cup) ?? 0) + 10);

const inFile = (name: MeasurementName, value: number): number =>
  name === 'shoulderSlope' ? Math.round((value * 1800) / Math.PI) / 10 : Math.round(value);

/** Percentiles of one dimension by the standard score each lies at; of 1,986 women, the ends lie at 3.29. */
function atScore(dimension: keyof typeof survey.dimensions, score: number): number {
  const { min, p1, p5, p50, p95, p99, max } = survey.dimensions[dimension];
  const knots: readonly (readonly [number, number])[] = [
    [-3.29, min],
    [-2.326, p1],
    [-1.645, p5],
    [0, p50],
    [1.645, p95],
    [2.326, p99],
    [3.29, max],
  ];
  const held = Math.min(3.29, Math.max(-3.29, score));
  const next = Math.max(
    1,
    knots.findIndex(([at]) => at >= held),
  );
  const [[from, low], [to, high]] = [knots[next - 1] ?? [0, p50], knots[next] ?? [0, p50]];
  return low + ((held - from) / (to - from)) * (high - low);
}

/** Cholesky's square root of a correlation matrix. */
function lowerTriangle(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const rows: number[][] = [];
  for (const [i, source] of matrix.entries()) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      const other = j === i ? row : (rows[j] ?? []);
      let rest = source[j] ?? 0;
      for (let k = 0; k < j; k++) rest -= (row[k] ?? 0) * (other[k] ?? 0);
      row.push(j === i ? Math.sqrt(rest) : rest / (other[j] ?? 1));
    }
    rows.push(row);
  }
  return rows;
}

/** Standard normal scores from a seed (G. E. P. Box and M. E. Muller, 1958, over mulberry32). */
export function normalScores(seed: number): () => number {
  const random = randomFrom(seed);
  // The logarithm of nothing is none.
  const positive = (): number => random() + 0.5 / 2 ** 32;
  return () => Math.sqrt(-2 * Math.log(positive())) * Math.cos(2 * Math.PI * positive());
}
