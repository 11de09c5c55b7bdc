import type { Issue } from '../issue.ts';
import { inUnit } from '../text/length.ts';
import { millimetres, type Unit } from '../text/units.ts';
import type { Body, MeasurementName } from './body.ts';
import { expectedFrontExcess } from './bust.ts';
import { cupLetter } from './cup.ts';
import { measurementWords } from './measurement-words.ts';
import { backNeckRise } from './neck.ts';

/**
 * What is unusual about a body as a whole, each a warning naming the measurements. One to 99 women in a hundred
 * lie within the limits (600 women of the Spanish survey, R package Anthropometry 1.20); mm, or a plain ratio.
 */
export function unlikelyProportions(body: Pick<Body, 'size' | 'known'>, units: Unit): readonly Issue[] {
  const { bustGirth, waistGirth, hipGirth } = body.size;
  const ratio = waistGirth / hipGirth;
  return [
    ...outside('waistGirth', 'hipGirth', 'divided by', ratio, [0.655, 0.978], { scale: 1, unit: '' }),
    ...outside('hipGirth', 'bustGirth', 'less', hipGirth - bustGirth, [-56, 257], inFile(units)),
    ...outside('bustGirth', 'waistGirth', 'less', bustGirth - waistGirth, [-1, 196], inFile(units)),
    ...cupRemark(body, units),
    ...frontLengthRemark(body, units),
  ];
}

const inFile = (unit: Unit) => ({ scale: millimetres[unit], unit });

function outside(
  name: MeasurementName,
  other: MeasurementName,
  how: string,
  value: number,
  [least, most]: readonly [number, number],
  { scale, unit }: { readonly scale: number; readonly unit: string },
): readonly Issue[] {
  if (value >= least && value <= most) return [];
  const write = (number: number): string => inUnit(number / scale, unit).trim();
  return [
    {
      code: 'proportion-unlikely',
      severity: 'warning',
      path: name,
      value: value / scale,
      limits: { min: least / scale, max: most / scale, unit: unit === '' ? 'ratio' : unit },
      message: `The ${measurementWords(name)} ${how} the ${measurementWords(other)} gives ${write(value)}; for 98 in 100 women it is between ${write(least)} and ${write(most)}. Have the two been swapped, or measured at another level?`,
    },
  ];
}

/** Bust less under-bust girth from 0 to 40 cm; judgement. */
const cupLimits = [0, 400] as const;

function cupRemark({ size }: Pick<Body, 'size'>, units: Unit): readonly Issue[] {
  const difference = size.bustGirth - size.underBustGirth;
  const range = inFile(units);
  return outside('bustGirth', 'underBustGirth', 'less', difference, cupLimits, range).map((issue) => ({
    ...issue,
    message: `${issue.message.split(';')[0]}, cup ${cupLetter(difference)}. Is the under-bust girth taken directly below the breasts?`,
  }));
}

/** A measured front length may be this far from what the cup makes of it before it is worth a word, mm; judgement. */
const frontLengthDoubt = 60;

/** The front length over the bust is the measurement that most often goes wrong, and it makes the bust dart. */
function frontLengthRemark({ size, known }: Pick<Body, 'size' | 'known'>, units: Unit): readonly Issue[] {
  if (known.neckShoulderPointToWaist.from !== 'measured') return [];
  const { bustGirth, underBustGirth, bustPointWidth, neckBaseGirth } = size;
  const front = size.neckShoulderPointToWaist;
  const excess = expectedFrontExcess(bustGirth, bustGirth - underBustGirth, bustPointWidth);
  const expected = size.backNeckPointToWaist + backNeckRise(neckBaseGirth) + excess;
  if (Math.abs(front - expected) <= frontLengthDoubt) return [];
  const { scale } = inFile(units);
  const [least, most] = [expected - frontLengthDoubt, expected + frontLengthDoubt];
  return [
    {
      code: 'front-length-unlikely',
      severity: 'warning',
      path: 'neckShoulderPointToWaist',
      value: front / scale,
      limits: { min: least / scale, max: most / scale, unit: units },
      message: `The neck shoulder point to waist of ${inUnit(front / scale, units)} is unusual for this back length and cup: most lie between ${inUnit(least / scale, units)} and ${inUnit(most / scale, units)}. Measure from the side of the neck, over the bust point, to the same waist as at the back.`,
    },
  ];
}
