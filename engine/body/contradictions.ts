import type { Issue } from '../issue.ts';
import { inUnit } from '../text/length.ts';
import { millimetres, type Unit } from '../text/units.ts';
import type { MeasurementName, Sizes } from './body.ts';
import { isWithin } from './limits.ts';
import { measurementWords } from './measurement-words.ts';

/**
 * How small and how large a measurement can be as a share of another of the same body. Wide enough for anyone who
 * stands upright; judgement. Beyond, one of the two is wrong, and no draft would come together.
 */
export const shares: readonly (readonly [MeasurementName, MeasurementName, number, number])[] = [
  ['waistGirth', 'bustGirth', 0.45, 1.5],
  ['hipGirth', 'bustGirth', 0.55, 1.8],
  ['waistGirth', 'hipGirth', 0.4, 1.5],
  ['underBustGirth', 'bustGirth', 0.5, 1.08],
  ['upperChestGirth', 'bustGirth', 0.6, 1.4],
  ['neckBaseGirth', 'bustGirth', 0.2, 0.65],
  ['upperArmGirth', 'bustGirth', 0.15, 0.55],
  ['armscyeGirth', 'upperArmGirth', 1.02, 2.5],
  ['elbowGirth', 'upperArmGirth', 0.5, 1.5],
  ['wristGirth', 'upperArmGirth', 0.25, 1],
  ['wristGirth', 'elbowGirth', 0.3, 1],
  ['outerArmLength', 'stature', 0.22, 0.5],
  ['bustPointWidth', 'bustGirth', 0.1, 0.33],
  ['acrossBackWidth', 'bustGirth', 0.2, 0.6],
  ['acrossFrontWidth', 'bustGirth', 0.18, 0.55],
  ['shoulderLength', 'acrossBackWidth', 0.15, 0.6],
  ['scyeDepth', 'backNeckPointToWaist', 0.25, 0.75],
  ['neckShoulderPointToWaist', 'backNeckPointToWaist', 0.75, 2],
  ['neckShoulderPointToBustPoint', 'neckShoulderPointToWaist', 0.35, 0.93],
  ['backNeckPointToWaist', 'stature', 0.12, 0.42],
  ['waistHeight', 'stature', 0.4, 0.78],
  ['waistToHip', 'waistHeight', 0.05, 0.5],
];

/** Pairs of measurements (mm) that no body has together, each an error naming both; limits in the file's unit. */
export function contradictions(sizes: Sizes, units: Unit): readonly Issue[] {
  const pairs = shares.flatMap(([name, other, least, most]): readonly Issue[] => {
    const [value, whole] = [sizes[name], sizes[other]];
    if (value === undefined || whole === undefined) return [];
    const limits = [least * whole, most * whole] as const;
    return isWithin(value, limits)
      ? []
      : [
          contradiction(
            name,
            value,
            limits,
            units,
            `a ${measurementWords(other)} of ${written(whole, units)}`,
          ),
        ];
  });
  const said = new Set(pairs.map(({ path }) => path));
  return [...pairs, ...bustLevel(sizes, units).filter(({ path }) => !said.has(path))];
}

/**
 * The bust level lies at least so far down a scye depth, or down a back length whose scye depth was not measured, and
 * at least so much of a back length above the waist.
 */
export const bustLevelShares = { scyeDepth: 0.9, backLength: 0.35, aboveWaist: 0.13 } as const;

/** The bust level must come out between underarm and waist; it can lie a little above a loosely taken scye depth. */
function bustLevel(sizes: Sizes, units: Unit): readonly Issue[] {
  const { backNeckPointToWaist: back, neckShoulderPointToWaist: toWaist } = sizes;
  const { neckShoulderPointToBustPoint: toBust, scyeDepth } = sizes;
  if (back === undefined || toWaist === undefined || toBust === undefined) return [];
  const leastLevel =
    scyeDepth === undefined ? bustLevelShares.backLength * back : bustLevelShares.scyeDepth * scyeDepth;
  const limits = [toWaist - back + leastLevel, toWaist - bustLevelShares.aboveWaist * back] as const;
  const others = [
    `a neck shoulder point to waist of ${written(toWaist, units)}`,
    `a back neck point to waist of ${written(back, units)}`,
    ...(scyeDepth === undefined ? [] : [`a scye depth of ${written(scyeDepth, units)}`]),
  ];
  return isWithin(toBust, limits)
    ? []
    : [contradiction('neckShoulderPointToBustPoint', toBust, limits, units, others.join(' and '))];
}

function contradiction(
  name: MeasurementName,
  value: number,
  [least, most]: readonly [number, number],
  units: Unit,
  others: string,
): Issue {
  return {
    code: 'measurements-contradict',
    severity: 'error',
    path: name,
    value: value / millimetres[units],
    limits: { min: least / millimetres[units], max: most / millimetres[units], unit: units },
    message: `The ${measurementWords(name)} of ${written(value, units)} cannot go with ${others}: it would lie between ${written(least, units)} and ${written(most, units)}. Measure both again.`,
  };
}

const written = (mm: number, units: Unit): string => inUnit(mm / millimetres[units], units);
