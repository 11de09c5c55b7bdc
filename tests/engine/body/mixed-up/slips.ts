import { type MeasurementName, measurementNames } from '../../../../engine/body/body.ts';
import { readBody } from '../../../../engine/body/read.ts';
import { millimetres, type Unit } from '../../../../engine/text/units.ts';
import { type FullSet, fullSets, misreadBy, movedIn } from '../full-sets.ts';

/** A set as it is written in one unit, the slope in degrees. */
export type WrittenSet = Readonly<Partial<Record<MeasurementName, number>>>;

/** What a slip of the pen makes of a set; nothing where it cannot be made, or would hardly be one. */
export type SlipOfPen = (set: WrittenSet) => WrittenSet | undefined;

/** Full sets of consistent women, read a little off (5 mm). */
export const readSets = (count: number): readonly FullSet[] =>
  fullSets(count)
    .map((set, i) => misreadBy(5, set, 300 + i))
    .filter((set) => movedIn(set).length === 0);

export const four = ['bustGirth', 'waistGirth', 'hipGirth', 'backNeckPointToWaist'] as const;

export const nine = [
  ...four,
  'underBustGirth',
  'neckShoulderPointToBustPoint',
  'neckShoulderPointToWaist',
  'bustPointWidth',
  'scyeDepth',
] as const;

export const lengths = measurementNames.filter((name) => name !== 'shoulderSlope');

/** Some measurements of a set in a unit: to a millimetre, or a quarter of an inch. */
export const writtenIn = (set: FullSet, names: readonly MeasurementName[], units: Unit): WrittenSet =>
  Object.fromEntries(
    names.map((name) => {
      if (name === 'shoulderSlope') return [name, set[name]];
      const parts = units === 'in' ? 4 : 10;
      return [name, Math.round((set[name] / millimetres[units]) * parts) / parts];
    }),
  );

export const exchanged =
  (one: MeasurementName, other: MeasurementName): SlipOfPen =>
  (set) => ({ ...set, [one]: set[other], [other]: set[one] });

export const inOtherUnit =
  (name: MeasurementName, factor: number): SlipOfPen =>
  (set) => ({ ...set, [name]: Math.round((set[name] ?? 0) * factor * 100) / 100 });

/** The first two digits exchanged, where that is a slip of 9 units or more; a zero is not put first. */
export const digitsExchanged =
  (name: MeasurementName): SlipOfPen =>
  (set) => {
    const [first = '', second = '', ...rest] = String(Math.floor(set[name] ?? 0));
    const slip = Number([second, first, ...rest].join(''));
    return second === '' || second === '0' || Math.abs(slip - (set[name] ?? 0)) < 9
      ? undefined
      : { ...set, [name]: slip };
  };

/** Girths by which a garment is cut. */
export const girths = [
  'bustGirth',
  'underBustGirth',
  'upperChestGirth',
  'waistGirth',
  'hipGirth',
  'neckBaseGirth',
  'upperArmGirth',
  'armscyeGirth',
  'elbowGirth',
  'wristGirth',
] as const satisfies readonly MeasurementName[];

/** The digit at a place exchanged with the next, where that moves the number by more than 8 %. */
export const farDigitsExchanged =
  (name: MeasurementName, place: number): SlipOfPen =>
  (set) => {
    const number = set[name] ?? 0;
    const digits = String(Math.round(number * 10)).split('');
    const [one = '', next = ''] = digits.slice(place);
    if (next === '' || (place === 0 && next === '0')) return undefined;
    const slip =
      Number(
        digits
          .with(place, next)
          .with(place + 1, one)
          .join(''),
      ) / 10;
    return Math.abs(slip / number - 1) > 0.08 ? { ...set, [name]: slip } : undefined;
  };

/** What comes of a slip over many sets, as counts. */
export interface Caught {
  readonly sets: number;
  /** Refused as this slip, by the name of its measurement. */
  readonly named: number;
  /** Refused for another reason: out of range, contradicting others. */
  readonly refused: number;
  /** Read, but named as this slip in a warning. */
  readonly doubted: number;
  /** Read, with another warning. */
  readonly warned: number;
  /** A slip was seen in another measurement. */
  readonly misnamed: number;
}

const slipCodes = ['measurements-exchanged', 'unit-mistaken', 'digits-exchanged', 'girth-halved'];

/** Reads sets with a slip in some measurements, and counts what is said of it. */
export function caught(
  sets: readonly WrittenSet[],
  units: Unit,
  slip: SlipOfPen,
  names: readonly MeasurementName[],
  code: string,
): Caught {
  const count = { sets: 0, named: 0, refused: 0, doubted: 0, warned: 0, misnamed: 0 };
  for (const set of sets) {
    const slipped = slip(set);
    if (!slipped) continue;
    count.sets++;
    const { ok, issues } = readBody({ units, ...slipped });
    const errors = issues.filter(({ severity }) => severity === 'error');
    const isOwn = (path: string): boolean => names.some((name) => name === path);
    if (errors.some((error) => error.code === code && isOwn(error.path))) count.named++;
    else if (!ok) count.refused++;
    else if (issues.some((issue) => issue.code === code && isOwn(issue.path))) count.doubted++;
    else if (issues.some(({ severity }) => severity === 'warning')) count.warned++;
    if (errors.some((error) => slipCodes.includes(error.code) && !isOwn(error.path))) count.misnamed++;
  }
  return count;
}
