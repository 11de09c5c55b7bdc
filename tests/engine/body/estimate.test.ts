import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type MeasurementName, measurementNames } from '../../../engine/body/body.ts';
import { expectedDartAngle, frontHang } from '../../../engine/body/bust.ts';
import { contradictions } from '../../../engine/body/contradictions.ts';
import { cupDifference } from '../../../engine/body/cup.ts';
import { cupLetters } from '../../../engine/body/cup-letters.ts';
import { completed } from '../../../engine/body/estimate.ts';
import { essentialNames, measured } from '../../../engine/body/found.ts';
import { backNeckRise } from '../../../engine/body/neck.ts';
import misses from '../../../measurements/astm-d5585-misses.json' with { type: 'json' };
import { type BodyData, bodyGrid, plausibleBodies, plausibleBody } from '../../plausible-bodies.ts';
import { people } from './people.ts';

type Sizes = Readonly<Partial<Record<MeasurementName, number>>>;

/** Completes sizes in mm and radians, all of them measured. */
function complete({
  bustGirth = 0,
  waistGirth = 0,
  hipGirth = 0,
  backNeckPointToWaist = 0,
  ...others
}: Sizes) {
  return completed({
    ...Object.fromEntries(Object.entries(others).map(([name, value]) => [name, measured(value)])),
    bustGirth: measured(bustGirth),
    waistGirth: measured(waistGirth),
    hipGirth: measured(hipGirth),
    backNeckPointToWaist: measured(backNeckPointToWaist),
  });
}

/** The sizes of a body file in mm, with the under-bust girth of its cup. */
function sizesOf(data: BodyData): Sizes {
  const sizes = Object.fromEntries(
    measurementNames
      .filter((name) => name in data)
      .map((name) => [name, Number(data[name]) * (name === 'shoulderSlope' ? Math.PI / 180 : 1)]),
  );
  const difference = typeof data.cup === 'string' ? cupDifference(data.cup) : undefined;
  return difference === undefined ? sizes : { ...sizes, underBustGirth: Number(data.bustGirth) - difference };
}

/** Sizes as far apart as the reader lets through without a warning, whether or not anyone has them together. */
const anyBody: fc.Arbitrary<Sizes> = fc
  .record({
    bustGirth: fc.integer({ min: 650, max: 1700 }),
    waistGirth: fc.integer({ min: 500, max: 1650 }),
    hipGirth: fc.integer({ min: 700, max: 1750 }),
    backNeckPointToWaist: fc.integer({ min: 280, max: 550 }),
    stature: fc.option(fc.integer({ min: 1350, max: 2000 }), { nil: undefined }),
    difference: fc.option(fc.integer({ min: 50, max: 350 }), { nil: undefined }),
  })
  .map(({ stature, difference, ...essentials }) => ({
    ...essentials,
    ...(stature === undefined ? {} : { stature }),
    ...(difference === undefined ? {} : { underBustGirth: essentials.bustGirth - difference }),
  }));

const likelyBody: fc.Arbitrary<Sizes> = plausibleBody.map(sizesOf);

/** The bust level below the back neck point, as the draft finds it. */
const bustLevel = ({ size }: ReturnType<typeof complete>): number =>
  size.backNeckPointToWaist - (size.neckShoulderPointToWaist - size.neckShoulderPointToBustPoint);

/** The women of the survey of 1988 (NATICK/TR-89/044, 2,208 women): their means, mm, waist at its natural level. */
const women1988: Sizes = {
  bustGirth: 907.1,
  waistGirth: 725.5,
  hipGirth: 966.9,
  backNeckPointToWaist: 367.3,
  stature: 1629.4,
};

describe('a completed body', () => {
  const alone = complete(women1988);

  it.each([
    ['underBustGirth', 769.7, 15],
    ['scyeDepth', 185.7, 5],
    ['neckShoulderPointToBustPoint', 268, 20],
    ['armscyeGirth', 371.3, 5],
    ['wristGirth', 151.2, 5],
    ['shoulderLength', 144.7, 10],
    // Its sleeve outseam of 547.2 mm on the straight arm, and 6 % over the bent elbow.
    ['outerArmLength', 580, 10],
    ['waistHeight', 1056.5, 20],
  ] as const)('has the %s of the 1988 survey, %d mm, within %d mm', (name, mean, within) => {
    expect(Math.abs(alone.size[name] - mean)).toBeLessThan(within);
  });

  it('has a bust level as far above the waist as the women of 1988, within 3 cm', () => {
    // Heights 117.44 and 105.65 cm.
    expect(Math.abs(367.3 - bustLevel(alone) - 117.9)).toBeLessThan(30);
  });

  it.each(['underBustGirth', 'scyeDepth'] as const)(
    'errs in %s as much as it says, over twelve women',
    (name) => {
      const errors = people.map((woman) => {
        const { size, known } = complete({
          bustGirth: woman.bustGirth,
          waistGirth: woman.waistGirth,
          hipGirth: woman.hipGirth,
          backNeckPointToWaist: woman.stature / 4,
          stature: woman.stature,
          neckBaseGirth: woman.neckBaseGirth,
          shoulderLength: woman.shoulderLength,
        });
        const from = known[name];
        return (size[name] - woman[name]) / (from.from === 'estimated' ? from.spread : 0);
      });
      const rootMeanSquare = Math.sqrt(errors.reduce((sum, error) => sum + error ** 2, 0) / errors.length);
      // Of twelve normal errors, 99 in a hundred such means lie between these (chi square, 12 degrees of freedom).
      expect(rootMeanSquare).toBeGreaterThan(0.5);
      expect(rootMeanSquare).toBeLessThan(1.54);
    },
  );

  it('follows the ASTM D5585-11e1 sizes in under-bust and upper chest, within 2 cm', () => {
    const { bustGirth, underBustGirth, upperChestGirth } = misses.rows;
    for (const [i, bust] of bustGirth.entries()) {
      const { size } = complete({ ...women1988, bustGirth: bust * 25.4 });
      expect(Math.abs(size.underBustGirth - (underBustGirth[i] ?? 0) * 25.4)).toBeLessThan(20);
      expect(Math.abs(size.upperChestGirth - (upperChestGirth[i] ?? 0) * 25.4)).toBeLessThan(20);
    }
  });

  it('says what every estimate was made from', () => {
    expect(alone.known.neckBaseGirth).toMatchObject({
      from: 'estimated',
      basis: 'from stature, bust girth and hip girth: survey of 1,986 women, 2012',
    });
    expect(complete({ ...women1988, wristGirth: 150 }).known.neckBaseGirth).toMatchObject({
      basis: 'from stature, bust girth, hip girth and wrist girth: survey of 1,986 women, 2012',
    });
  });

  it('has an elbow of a size table between its arm and its wrist', () => {
    // 28.3, 24.8 and 15.9 cm: from memory.
    const { size, known } = complete({ ...women1988, upperArmGirth: 283, wristGirth: 159 });
    expect(Math.abs(size.elbowGirth - 248)).toBeLessThan(2);
    expect(known.elbowGirth).toMatchObject({ from: 'estimated' });
  });

  it('has the arm length of a textbook over the bent elbow', () => {
    // 59.5 cm at a stature of 168: from memory.
    const { size } = complete({ ...women1988, stature: 1680 });
    expect(Math.abs(size.outerArmLength - 595)).toBeLessThan(8);
  });

  it('doubts a stature it had to estimate, and what follows from it', () => {
    const { stature, ...without } = women1988;
    const { size, known } = complete(without);
    const spread = (name: MeasurementName, of = known): number => {
      const from = of[name];
      return from.from === 'estimated' ? from.spread : 0;
    };
    expect(Math.abs(size.stature - (stature ?? 0))).toBeLessThan(spread('stature'));
    expect(spread('stature')).toBeGreaterThan(35);
    expect(spread('waistHeight')).toBeGreaterThan(spread('waistHeight', alone.known));
  });

  it('is the longer in front the fuller the cup', () => {
    const lengths = cupLetters.map((letter) => {
      const underBustGirth = 907.1 - (cupDifference(letter) ?? 0);
      return complete({ ...women1988, underBustGirth }).size.neckShoulderPointToWaist;
    });
    expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
    expect(new Set(lengths).size).toBe(cupLetters.length);
  });

  it('has the front length that gives the bust dart expected of its cup', () => {
    const { size } = alone;
    const leg = size.bustGirth / 4 - size.bustPointWidth / 2 + 25;
    const intake =
      size.neckShoulderPointToWaist -
      size.backNeckPointToWaist -
      backNeckRise(size.neckBaseGirth) +
      frontHang;
    const angle = 2 * Math.asin(intake / (2 * leg));
    expect(angle).toBeCloseTo(expectedDartAngle(size.bustGirth - size.underBustGirth), 9);
  });

  it.each(['neckShoulderPointToWaist', 'neckShoulderPointToBustPoint'] as const)(
    'keeps its bust level when %s turns out to be what was estimated',
    (name) => {
      const again = complete({ ...women1988, [name]: alone.size[name] });
      expect(bustLevel(again)).toBeCloseTo(bustLevel(alone), 6);
    },
  );
});

const everyBody = [
  ['a woman of the survey', plausibleBodies(1000).map(sizesOf)],
  ['the grid of busts, cups and statures', bodyGrid().map(sizesOf)],
  ['anybody who could be measured', fc.sample(likelyBody, { numRuns: 1000, seed: 1 })],
  ['anybody at all, likely or not', fc.sample(anyBody, { numRuns: 1000, seed: 1 })],
] as const;

describe.each(everyBody)('%s', (_, bodies) => {
  const completedBodies = bodies.map((given) => ({ given, body: complete(given) }));
  const broken = (rule: (body: ReturnType<typeof complete>, given: Sizes) => boolean): readonly Sizes[] =>
    completedBodies.filter(({ body, given }) => !rule(body, given)).map(({ given }) => given);

  it('gets a positive number for every measurement', () => {
    expect(
      broken(({ size }) => measurementNames.every((n) => Number.isFinite(size[n]) && size[n] > 0)),
    ).toEqual([]);
  });

  it('keeps what was given', () => {
    const kept = ({ size, known }: ReturnType<typeof complete>, given: Sizes): boolean =>
      measurementNames.every((n) =>
        given[n] === undefined
          ? known[n].from !== 'measured'
          : size[n] === given[n] && known[n].from === 'measured',
      );
    expect(broken(kept)).toEqual([]);
  });

  it('has a likely error for every estimate', () => {
    expect(
      broken(({ known }) =>
        measurementNames.every((n) => known[n].from !== 'estimated' || known[n].spread > 0),
      ),
    ).toEqual([]);
  });

  it('has its bust level well below the underarm and well above the waist', () => {
    const ordered = (body: ReturnType<typeof complete>): boolean =>
      bustLevel(body) > body.size.scyeDepth + 10 && bustLevel(body) < body.size.backNeckPointToWaist - 40;
    expect(broken(ordered)).toEqual([]);
  });

  it('gets no estimate that contradicts another measurement', () => {
    const contradicted = (sizes: Sizes): boolean => contradictions(sizes, 'mm').length > 0;
    expect(broken(({ size }, given) => contradicted(given) || !contradicted(size))).toEqual([]);
  });

  it('has girths, widths and heights that go together', () => {
    expect(
      broken(
        ({ size }) =>
          size.underBustGirth < size.bustGirth + 40 &&
          size.bustPointWidth < size.bustGirth / 3 &&
          size.shoulderLength < size.acrossBackWidth / 2 + 30 &&
          size.neckShoulderPointToBustPoint > size.bustPointWidth / 2 &&
          size.wristGirth < size.elbowGirth &&
          size.outerArmLength < 0.45 * size.stature &&
          size.waistHeight < size.stature - 0.7 * size.backNeckPointToWaist &&
          size.waistToHip < size.waistHeight / 2,
      ),
    ).toEqual([]);
  });
});

describe('the estimates', () => {
  /**
   * How far an estimate may move for one millimetre of one given measurement, mm; for a slope, in radians. Stature
   * follows the thin wrist most: 0.5432 x 64.20 / 7.83 = 4.5 mm (NATICK/TR-15/007).
   */
  const bound = (name: MeasurementName, given: MeasurementName): number =>
    name === 'shoulderSlope' ? 0.003 : given === 'wristGirth' ? 5 : 2.5;

  it.each([
    ['anybody who could be measured', likelyBody],
    ['anybody at all', anyBody],
  ])('never jump when one measurement of %s changes by a millimetre', (_, bodies) => {
    fc.assert(
      fc.property(bodies, fc.nat(), (given, which) => {
        const names = measurementNames.filter((name) => given[name] !== undefined);
        const changed = names[which % names.length] ?? essentialNames[0];
        const step = changed === 'shoulderSlope' ? 0.01 : 1;
        const [before, after] = [given, { ...given, [changed]: (given[changed] ?? 0) + step }].map(complete);
        for (const name of measurementNames) {
          if (name === changed) continue;
          const moved = Math.abs((after?.size[name] ?? 0) - (before?.size[name] ?? 0));
          expect(moved, `${name} by ${changed}`).toBeLessThan(bound(name, changed));
        }
      }),
      { numRuns: 400 },
    );
  });

  it('are the same for the same body', () => {
    fc.assert(
      fc.property(likelyBody, (given) => {
        expect(complete(given)).toEqual(complete({ ...given }));
      }),
    );
  });
});
