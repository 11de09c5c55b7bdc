import { RELATION } from '../../geometry/tolerance.ts';
import { rounded } from '../../text/figure.ts';
import { millimetres, tapeMarks, type Unit, unitNames } from '../../text/units.ts';
import { type MeasurementName, measurementNames, type Sizes } from '../body.ts';

/** What else some numbers may have been meant to say. Lengths in mm. */
export interface OtherReading {
  readonly kind: 'exchanged' | 'other unit' | 'digits exchanged';
  /** The measurements as they were meant. */
  readonly meant: ReadonlyMap<MeasurementName, number>;
  /** The unit that was meant, where it is another. */
  readonly unit?: Unit;
}

/** All measurements that are lengths. */
export const lengthNames = measurementNames.filter((name) => name !== 'shoulderSlope');

/**
 * Measurements that stand side by side on a list or are taken one after the other, so that their numbers change places.
 * Common practice, no source.
 */
const neighbours: readonly (readonly [MeasurementName, MeasurementName])[] = [
  ['waistGirth', 'hipGirth'],
  ['bustGirth', 'waistGirth'],
  ['bustGirth', 'hipGirth'],
  ['bustGirth', 'underBustGirth'],
  ['underBustGirth', 'waistGirth'],
  ['underBustGirth', 'upperChestGirth'],
  ['bustGirth', 'upperChestGirth'],
  ['upperArmGirth', 'elbowGirth'],
  ['upperArmGirth', 'armscyeGirth'],
  ['upperArmGirth', 'wristGirth'],
  ['elbowGirth', 'wristGirth'],
  ['backNeckPointToWaist', 'neckShoulderPointToWaist'],
  ['neckShoulderPointToBustPoint', 'neckShoulderPointToWaist'],
  ['backNeckPointToWaist', 'acrossBackWidth'],
  ['backNeckPointToWaist', 'scyeDepth'],
  ['acrossBackWidth', 'acrossFrontWidth'],
  ['bustPointWidth', 'neckShoulderPointToBustPoint'],
  ['waistHeight', 'stature'],
];

/** Everything that written lengths (mm) may have been meant to say besides: two exchanged, one in another unit, two digits of one exchanged. */
export const otherReadings = (sizes: Sizes, units: Unit): readonly OtherReading[] => [
  ...neighbours.flatMap(([one, other]): readonly OtherReading[] => {
    const [a, b] = [sizes[one], sizes[other]];
    if (a === undefined || b === undefined || a === b) return [];
    const meant = new Map([
      [one, b],
      [other, a],
    ]);
    return [{ kind: 'exchanged', meant }];
  }),
  ...lengthNames.flatMap((name): readonly OtherReading[] => {
    const mm = sizes[name];
    if (mm === undefined) return [];
    const number = mm / millimetres[units];
    return [
      ...unitNames
        .filter((unit) => unit !== units)
        .map(
          (unit): OtherReading => ({
            kind: 'other unit',
            meant: new Map([[name, number * millimetres[unit]]]),
            unit,
          }),
        ),
      ...digitsExchanged(mm, units).map(
        (other): OtherReading => ({ kind: 'digits exchanged', meant: new Map([[name, other]]) }),
      ),
    ];
  }),
];

/** A written length with each two neighbouring digits exchanged, mm. */
export const digitsExchanged = (mm: number, units: Unit): readonly number[] =>
  withDigitsExchanged(mm / millimetres[units], units).map((other) => other * millimetres[units]);

/**
 * A number with each two neighbouring digits exchanged, as it is written to the marks of a tape; only what is again such a
 * mark, for nobody reads 42.95 inches. Its length is kept.
 */
export function withDigitsExchanged(number: number, units: Unit): readonly number[] {
  const mark = tapeMarks[units] / millimetres[units];
  const text = String(rounded(Math.round(number / mark) * mark, 4));
  if (!/^\d+(?:\.\d+)?$/.test(text)) return [];
  const places = [...text].flatMap((sign, place) => (sign === '.' ? [] : [place]));
  const others = places.slice(1).map((place, i) => {
    const signs = [...text];
    const before = places[i] ?? 0;
    [signs[before], signs[place]] = [signs[place] ?? '', signs[before] ?? ''];
    return signs.join('');
  });
  const isMark = (other: number): boolean => Math.abs(other / mark - Math.round(other / mark)) < RELATION;
  return [...new Set(others)]
    .filter((other) => other !== text && !other.startsWith('0'))
    .map(Number)
    .filter(isMark);
}
