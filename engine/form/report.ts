import type { Body, MeasurementName } from '../body/body.ts';
import { measurementNames } from '../body/body.ts';
import {
  type BodyPosture,
  type FormChoice,
  type FormChoiceName,
  formChoiceNames,
  formChoices,
} from './choices.ts';
import { type Closed, type TapeName, tapeBounds } from './close.ts';
import type { Assumption, FormReport, LaidTape, SectionReading, TapeReading } from './form.ts';

/** Why a measurement has no tape. */
const withoutTape: Readonly<Partial<Record<MeasurementName, string>>> = {
  armscyeGirth: 'the arm and the torso are put into each other, and no fold between them is formed',
  elbowGirth: 'measured over the bent elbow; the form’s is nearly straight',
  shoulderSlope: 'the shoulder is laid at it',
  outerArmLength: 'measured over the bent elbow; the form’s arm is 1/1.06 of it',
  waistHeight: 'the waist is laid at it',
  stature: 'the form has no head',
};

/** What was given and what the form gives back, and what was assumed. */
export function reportOf(
  { size }: Pick<Body, 'size'>,
  closed: Closed,
  tapes: readonly LaidTape[],
  posture: BodyPosture,
): FormReport {
  const readings = tapes.map(({ measurement, length }): TapeReading => {
    const bound = measurement in tapeBounds ? tapeBounds[measurement as TapeName] : 0.5;
    const given = size[measurement];
    return { measurement, given, taken: length, bound, held: Math.abs(length - given) <= bound };
  });
  const taken = new Set(tapes.map(({ measurement }) => measurement));
  const notTaken = Object.fromEntries(
    measurementNames
      .filter((name) => !taken.has(name))
      .map((name) => [name, withoutTape[name] ?? 'no tape is laid for it']),
  );
  return {
    tapes: readings,
    assumed: formChoiceNames.map((name) => assumption(name, closed, posture)),
    sections: sectionsOf(closed),
    notTaken,
  };
}

/** Nine in ten of a normal distribution lie within so many standard deviations. */
const nineInTen = 1.645;

/** A plain choice, that is a choice not let go: how far the likely one may be off. */
const assumedSpread: Readonly<Partial<Record<FormChoiceName, number>>> = {
  shoulderForward: 8,
  underBustBelow: 10,
};

function assumption(
  name: FormChoiceName,
  { given, unknowns, leanings }: Closed,
  posture: BodyPosture,
): Assumption {
  const choice: FormChoice = formChoices[name];
  const rib = leanings.find((leaning) => leaning.name === 'ribDepth')?.value ?? 0;
  const [value, usual, spread] = taken();
  return {
    name,
    says: choice.says,
    value,
    unit: choice.unit,
    likely: spread > 0 ? [usual - nineInTen * spread, usual + nineInTen * spread] : undefined,
    how: posture[name] !== undefined ? 'chosen' : choice.spread > 0 ? 'found likeliest' : 'assumed',
    source: choice.source,
  };

  function taken(): readonly [value: number, usual: number, spread: number] {
    const own = assumedSpread[name] ?? 0;
    switch (name) {
      case 'lean':
        return [unknowns.lean, given.usualLean, formChoices.lean.spread];
      case 'napeForward':
        return [unknowns.napeForward, given.usualNape, formChoices.napeForward.spread];
      case 'backHollow':
      case 'sideNeckBelow':
        return [unknowns[name], formChoices[name].usual, formChoices[name].spread];
      case 'ribDepth':
        return [rib, formChoices.ribDepth.usual, formChoices.ribDepth.spread];
      case 'frontNeckBelow':
        return [given.frontNeckBelow, given.likely.frontNeckBelow.mean, given.likely.frontNeckBelow.spread];
      case 'shoulderForward':
        return [given.shoulderForward, formChoices.shoulderForward.usual, own];
      case 'underBustBelow':
        return [given.underBustBelow, given.usualUnderBustBelow, own];
      case 'armRise':
        return [posture.armRise ?? formChoices.armRise.usual, 0, 0];
    }
  }
}

const sectionNames = ['bustBreadth', 'bustDepth', 'waistBreadth', 'waistDepth', 'hipBreadth', 'hipDepth'];

const sectionsOf = ({ leanings }: Closed): readonly SectionReading[] =>
  leanings
    .filter(({ name }) => sectionNames.includes(name))
    .map(({ name, value, mean, spread }) => ({ name, taken: value, expected: mean, spread }));
