import { type MeasurementName, measurementNames } from '../../../engine/body/body.ts';
import { completed } from '../../../engine/body/estimate.ts';
import { measured } from '../../../engine/body/found.ts';
import { readBody } from '../../../engine/body/read.ts';
import { atNaturalWaist, normalScores, surveyBody } from '../../plausible-bodies.ts';

/** Every measurement of one woman, mm, the slope in degrees. */
export type FullSet = Readonly<Record<MeasurementName, number>>;

/** What is moved when a set is read with the wish to reconcile it. */
export const movedIn = (set: FullSet): readonly MeasurementName[] => {
  const read = readBody({ units: 'mm', ...set, reconcile: true });
  return read.ok ? measurementNames.filter((name) => read.value.known[name].from === 'reconciled') : [];
};

const lengths = measurementNames.filter((name) => name !== 'shoulderSlope');

/** A full set with each length off by a random amount, one standard deviation of it in mm; the same seed, the same set. */
export function misreadBy(mm: number, set: FullSet, seed: number): FullSet {
  const score = normalScores(seed);
  return {
    ...set,
    ...Object.fromEntries(lengths.map((name) => [name, Math.round(set[name] + mm * score())])),
  };
}

/**
 * Women of the survey with all their measurements, each as far from what is likely for her as its estimate leaves open,
 * times `variety`; such as contradict themselves left out. The first `count` of them.
 */
export function fullSets(count: number, variety = 0.7): readonly FullSet[] {
  const sets: FullSet[] = [];
  for (let seed = 1; sets.length < count; seed++) {
    const { bustGirth, waistGirth, hipGirth, backNeckPointToWaist, stature } = atNaturalWaist(
      surveyBody(seed),
    );
    const { size, known } = completed({
      bustGirth: measured(bustGirth),
      waistGirth: measured(waistGirth),
      hipGirth: measured(hipGirth),
      backNeckPointToWaist: measured(backNeckPointToWaist),
      stature: measured(stature),
    });
    const score = normalScores(5000 + seed);
    const entries = lengths.map((name): readonly [MeasurementName, number] => {
      const from = known[name];
      const off = from.from === 'estimated' ? variety * from.spread * score() : 0;
      return [name, Math.round(size[name] + off)];
    });
    const slope = Math.round((size.shoulderSlope * 1800) / Math.PI) / 10;
    const set = { ...Object.fromEntries(entries), shoulderSlope: slope } as FullSet;
    if (readBody({ units: 'mm', ...set }).ok && movedIn(set).length === 0) sets.push(set);
  }
  return sets;
}
