import type { Issue } from '../issue.ts';
import { type MeasurementName, measurementNames } from './body.ts';
import { isWithin, limitsOf } from './limits.ts';
import { inUnit, millimetres, type Unit, unitNames } from './units.ts';
import { measurementWords } from './words.ts';

type Numbers = Readonly<Partial<Record<MeasurementName, number>>>;

/** A mistake that was recognised, and the measurements it explains. */
export interface Mistake {
  readonly issue: Issue;
  readonly explains: readonly MeasurementName[];
}

/** The girths of the trunk, which stand in some proportion to one another. */
const trunkGirths = ['bustGirth', 'underBustGirth', 'upperChestGirth', 'waistGirth', 'hipGirth'] as const;

/** Girths that may have been measured across a body lying flat, or on a folded tape. */
const girths: ReadonlySet<MeasurementName> = new Set([
  ...trunkGirths,
  'neckBaseGirth',
  'upperArmGirth',
  'armscyeGirth',
  'wristGirth',
]);

const isLength = (name: MeasurementName): boolean => name !== 'shoulderSlope';

const isLikely = (name: MeasurementName, mm: number): boolean => isWithin(mm, limitsOf[name].likely);
const isPossible = (name: MeasurementName, mm: number): boolean => isWithin(mm, limitsOf[name].possible);

/**
 * Recognises what commonly goes wrong with numbers: all of them in another unit than the file says, one of them in
 * another unit, or a girth given as half. Numbers are in the file's unit.
 */
export function recognisedMistakes(numbers: Numbers, units: Unit): readonly Mistake[] {
  const whole = wholeFileInOtherUnit(numbers, units);
  return whole ? [whole] : measurementNames.flatMap((name) => singleMistake(name, numbers, units) ?? []);
}

/** The whole file is in another unit when most of its lengths are unlikely, and likely in that one. */
function wholeFileInOtherUnit(numbers: Numbers, units: Unit): Mistake | undefined {
  const names = measurementNames.filter((name) => isLength(name) && numbers[name] !== undefined);
  const likelyIn = (unit: Unit): readonly MeasurementName[] =>
    names.filter((name) => isLikely(name, (numbers[name] ?? 0) * millimetres[unit]));
  if (names.every((name) => isPossible(name, (numbers[name] ?? 0) * millimetres[units]))) return undefined;
  const asSaid = likelyIn(units).length;
  for (const unit of unitNames) {
    const explains = likelyIn(unit);
    if (unit === units || asSaid > names.length / 2 || explains.length < 3) continue;
    if (explains.length < 0.8 * names.length) continue;
    return {
      explains: names,
      issue: {
        code: 'unit-mistaken',
        severity: 'error',
        path: 'units',
        value: units,
        message: `These numbers look like ${unitWords[unit]}, but the file says units: ${units}. Write units: ${unit}.`,
      },
    };
  }
  return undefined;
}

const unitWords: Readonly<Record<Unit, string>> = { cm: 'centimetres', in: 'inches', mm: 'millimetres' };

/** How far a girth may be from what the other girths make of it, and how near its double must come. */
const tooSmall = 0.58;
const nearEnough = [0.75, 1.4] as const;

function singleMistake(name: MeasurementName, numbers: Numbers, units: Unit): Mistake | undefined {
  const number = numbers[name];
  if (number === undefined || !isLength(name)) return undefined;
  const mm = number * millimetres[units];
  const usual = usualSize(name, numbers, units);
  const isTrunk = trunkGirths.some((trunk) => trunk === name);
  const isHalf =
    isTrunk && usual !== undefined && mm < tooSmall * usual && isWithin((2 * mm) / usual, nearEnough);
  if (isPossible(name, mm) && !isHalf) return undefined;

  const readings = [
    ...(girths.has(name) ? [{ code: 'girth-halved', mm: 2 * mm, as: 'doubled' }] : []),
    ...unitNames
      .filter((unit) => unit !== units)
      .map((unit) => ({
        code: 'unit-mistaken',
        mm: number * millimetres[unit],
        as: `taken as ${unitWords[unit]}`,
      })),
  ].filter((reading) => isLikely(name, reading.mm));
  const expected = usual ?? middleOf(name);
  const off = (reading: { readonly mm: number }): number => Math.abs(Math.log(reading.mm / expected));
  // With no other girth to go by, half is likelier than another unit, for not all lengths were in that one.
  const decided = isHalf || (usual === undefined && girths.has(name));
  const best = decided ? readings[0] : readings.toSorted((a, b) => off(a) - off(b))[0];
  if (!best) return undefined;
  const given = inUnit(number, units);
  const meant = inUnit(best.mm / millimetres[units], units);
  const message =
    best.code === 'girth-halved'
      ? `The ${measurementWords(name)} of ${given} looks like half the girth: ${best.as} it is ${meant}. Give the whole girth.`
      : `The ${measurementWords(name)} of ${given} looks like another unit: ${best.as} it is ${meant}. Give all lengths in ${units}.`;
  const [min, max] = limitsOf[name].possible.map((limit) => limit / millimetres[units]) as [number, number];
  return {
    explains: [name],
    issue: {
      code: best.code,
      severity: 'error',
      path: name,
      value: number,
      message,
      limits: { min, max, unit: units },
    },
  };
}

/** The geometric middle of what is likely. */
const middleOf = (name: MeasurementName): number =>
  Math.sqrt(limitsOf[name].likely[0] * limitsOf[name].likely[1]);

/** What the likely girths among the others make of a girth: its middle, larger or smaller as theirs are. */
function usualSize(name: MeasurementName, numbers: Numbers, units: Unit): number | undefined {
  if (!girths.has(name)) return undefined;
  const ratios = trunkGirths.flatMap((other) => {
    const mm = (numbers[other] ?? 0) * millimetres[units];
    return other !== name && isLikely(other, mm) ? [Math.log(mm / middleOf(other))] : [];
  });
  if (ratios.length === 0) return undefined;
  return middleOf(name) * Math.exp(ratios.reduce((a, b) => a + b, 0) / ratios.length);
}
