import type { Issue } from '../issue.ts';
import { inUnit } from '../text/length.ts';
import { millimetres, type Unit, unitNames, unitWords } from '../text/units.ts';
import { type MeasurementName, measurementNames } from './body.ts';
import { childBackLength } from './child.ts';
import { isWithin, limitsOf } from './limits.ts';
import { measurementWords } from './measurement-words.ts';

/** Lengths in the unit of the file. */
type Numbers = Readonly<Partial<Record<MeasurementName, number>>>;

/** A mistake that was recognised, and the measurements it explains. */
export interface Mistake {
  readonly issue: Issue;
  readonly explains: readonly MeasurementName[];
}

/** The girths of the trunk, which stand in some proportion to one another. */
const trunkGirths: ReadonlySet<MeasurementName> = new Set([
  'bustGirth',
  'underBustGirth',
  'upperChestGirth',
  'waistGirth',
  'hipGirth',
]);

/** Girths that may have been measured across a body lying flat, or on a folded tape. */
export const girths: ReadonlySet<MeasurementName> = new Set([
  ...trunkGirths,
  'neckBaseGirth',
  'upperArmGirth',
  'armscyeGirth',
  'elbowGirth',
  'wristGirth',
]);

const lengthNames = measurementNames.filter((name) => name !== 'shoulderSlope');
const trunkNames = measurementNames.filter((name) => trunkGirths.has(name));

const isLikely = (name: MeasurementName, mm: number): boolean => isWithin(mm, limitsOf[name].likely);
const isPossible = (name: MeasurementName, mm: number): boolean => isWithin(mm, limitsOf[name].possible);

/**
 * Recognises what commonly goes wrong with numbers: all of them in another unit than the file says, one of them in
 * another unit, or a girth given as half. What is possible and sure is no mistake.
 */
export function recognisedMistakes(
  numbers: Numbers,
  units: Unit,
  sure: readonly MeasurementName[] = [],
): readonly Mistake[] {
  const names = lengthNames.filter((name) => numbers[name] !== undefined);
  const mm = (name: MeasurementName, unit: Unit = units): number => (numbers[name] ?? 0) * millimetres[unit];
  const meant = unitMeant(names, mm, units);
  if (meant) return [{ explains: names, issue: wholeFile(units, meant) }];
  return names.flatMap((name) => {
    if (sure.includes(name) && isPossible(name, mm(name))) return [];
    const reading = readingMeant(name, mm, units);
    return reading
      ? [{ explains: [name], issue: singleNumber(name, numbers[name] ?? 0, units, reading) }]
      : [];
  });
}

type InMillimetres = (name: MeasurementName, unit?: Unit) => number;

/** So large a part of the numbers must be likely in another unit for the whole file to be in it. */
const mostOfFile = 0.8;

/** The unit of a whole file, where some number is impossible in the one it says and most are likely in another. */
function unitMeant(names: readonly MeasurementName[], mm: InMillimetres, units: Unit): Unit | undefined {
  if (names.length < 3 || names.every((name) => isPossible(name, mm(name)))) return undefined;
  const likelyIn = (unit: Unit): number => names.filter((name) => isLikely(name, mm(name, unit))).length;
  if (likelyIn(units) > names.length / 2) return undefined;
  return unitNames.find((unit) => unit !== units && likelyIn(unit) >= mostOfFile * names.length);
}

const wholeFile = (units: Unit, meant: Unit): Issue => ({
  code: 'unit-mistaken',
  severity: 'error',
  path: 'units',
  value: units,
  message: `These numbers look like ${unitWords[meant]}, but the file says units: ${units}. Write units: ${meant}.`,
});

/** What a number was probably meant to say. */
interface MeantReading {
  readonly code: 'girth-halved' | 'unit-mistaken';
  readonly mm: number;
  readonly as: string;
}

function readingMeant(name: MeasurementName, mm: InMillimetres, units: Unit): MeantReading | undefined {
  const possible = isPossible(name, mm(name));
  if (possible && !isHalfLikely(name, mm)) return undefined;
  const usual = usualGirth(name, mm);
  const half = isHalf(name, mm, usual);
  if (possible && !half) return undefined;
  const doubled: MeantReading = { code: 'girth-halved', mm: 2 * mm(name), as: 'doubled' };
  const otherUnits = unitNames
    .filter((unit) => unit !== units)
    .map(
      (unit): MeantReading => ({ code: 'unit-mistaken', mm: mm(name, unit), as: `as ${unitWords[unit]}` }),
    );
  const readings = [...(girths.has(name) ? [doubled] : []), ...otherUnits].filter((reading) =>
    isLikely(name, reading.mm),
  );
  const off = (reading: MeantReading): number => Math.abs(Math.log(reading.mm / (usual ?? middleOf(name))));
  const noneToCompare = usual === undefined || isTrunkHalved(mm);
  return half && noneToCompare ? doubled : readings.toSorted((a, b) => off(a) - off(b))[0];
}

/** A girth this much smaller than the others make it is wrong, and half when its double comes this near. */
const tooSmall = 0.58;
const nearEnough = [0.75, 1.4] as const;

/** Without other girths to go by, a girth so far below the likely is half, if the back length has its full size. */
const farBelow = 0.9;

/** Whether twice a number is a likely girth. */
const isHalfLikely = (name: MeasurementName, mm: InMillimetres): boolean =>
  girths.has(name) && isLikely(name, 2 * mm(name));

function isHalf(name: MeasurementName, mm: InMillimetres, usual: number | undefined): boolean {
  if (!isHalfLikely(name, mm)) return false;
  if (trunkGirths.has(name) && isTrunkHalved(mm)) return true;
  const [least] = limitsOf[name].likely;
  if (usual === undefined)
    return mm(name) < farBelow * least && isLikely('backNeckPointToWaist', mm('backNeckPointToWaist'));
  return trunkGirths.has(name) && mm(name) < tooSmall * usual && isWithin((2 * mm(name)) / usual, nearEnough);
}

/** Bust and hip are both smaller than any woman's, on a back too long for a child: all girths were halved. */
const isTrunkHalved = (mm: InMillimetres): boolean =>
  mm('bustGirth') < limitsOf.bustGirth.likely[0] &&
  mm('hipGirth') < limitsOf.hipGirth.likely[0] &&
  isLikely('bustGirth', 2 * mm('bustGirth')) &&
  isLikely('hipGirth', 2 * mm('hipGirth')) &&
  mm('backNeckPointToWaist') >= childBackLength &&
  isLikely('backNeckPointToWaist', mm('backNeckPointToWaist'));

function singleNumber(
  name: MeasurementName,
  number: number,
  units: Unit,
  { code, mm, as }: MeantReading,
): Issue {
  const [least, most] = limitsOf[name].possible;
  const meant = inUnit(mm / millimetres[units], units);
  const looks =
    code === 'girth-halved'
      ? `half the girth: ${as} it is ${meant}. Give the whole girth.`
      : `another unit: ${as} it is ${meant}. Give all lengths in ${units}.`;
  return {
    code,
    severity: 'error',
    path: name,
    value: number,
    message: `The ${measurementWords(name)} of ${inUnit(number, units)} looks like ${looks}`,
    limits: { min: least / millimetres[units], max: most / millimetres[units], unit: units },
  };
}

/** The geometric middle of what is likely, mm. */
function middleOf(name: MeasurementName): number {
  const [least, most] = limitsOf[name].likely;
  return Math.sqrt(least * most);
}

/** What the likely girths of the trunk make of another girth, mm: its middle, larger or smaller as theirs are. */
function usualGirth(name: MeasurementName, mm: InMillimetres): number | undefined {
  if (!girths.has(name)) return undefined;
  let sum = 0;
  let count = 0;
  for (const other of trunkNames) {
    const there = mm(other);
    if (other === name || !isLikely(other, there)) continue;
    sum += Math.log(there / middleOf(other));
    count += 1;
  }
  return count === 0 ? undefined : middleOf(name) * Math.exp(sum / count);
}
