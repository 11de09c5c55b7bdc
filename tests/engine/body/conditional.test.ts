import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectation, type KnownDimension } from '../../../engine/body/conditional.ts';
import { type SurveyDimension, statisticsOf } from '../../../engine/body/survey.ts';

const knowing = (known: Readonly<Partial<Record<SurveyDimension, KnownDimension>>>) =>
  expectation(new Map(Object.entries(known) as [SurveyDimension, KnownDimension][]));

// The figures of the survey (NATICK/TR-15/007, 2014; 1,986 women), mm.
const stature = { mean: 1628.47, sd: 64.2 };
const neckHeight = { mean: 1395.67, sd: 59.52 };
const bust = { mean: 946.86, sd: 82.7 };
const hip = { mean: 1021.25, sd: 75.89 };
const [staturesWithNeckHeight, bustWithHip, bustWithStature, hipWithStature] = [
  0.9842, 0.7429, 0.2596, 0.3788,
];

describe('the expectation of a body dimension', () => {
  it('is the mean and spread of all women while nothing is known', () => {
    const { mean, spread } = knowing({})([['bustGirth', 1]]);
    expect(mean).toBeCloseTo(bust.mean, 6);
    expect(spread).toBeCloseTo(bust.sd, 6);
  });

  it('is the regression line while one dimension is known', () => {
    const { mean, spread } = knowing({ stature: { value: 1700 } })([['backNeckPointHeight', 1]]);
    const r = staturesWithNeckHeight;
    expect(mean).toBeCloseTo(neckHeight.mean + r * (neckHeight.sd / stature.sd) * (1700 - stature.mean), 6);
    expect(spread).toBeCloseTo(neckHeight.sd * Math.sqrt(1 - r ** 2), 6);
  });

  it('is the regression plane while two are known', () => {
    // The closed form of two predictors, with a, b the correlations with the unknown and c between the two.
    const [a, b, c] = [bustWithHip, bustWithStature, hipWithStature];
    const [x, y] = [(1100 - hip.mean) / hip.sd, (1550 - stature.mean) / stature.sd];
    const explained = (a ** 2 + b ** 2 - 2 * a * b * c) / (1 - c ** 2);
    const score = ((a - b * c) * x + (b - a * c) * y) / (1 - c ** 2);
    const { mean, spread } = knowing({ hipGirth: { value: 1100 }, stature: { value: 1550 } })([
      ['bustGirth', 1],
    ]);
    expect(mean).toBeCloseTo(bust.mean + bust.sd * score, 6);
    expect(spread).toBeCloseTo(bust.sd * Math.sqrt(1 - explained), 6);
  });

  it('gives back what is known', () => {
    const known = knowing({
      hipGirth: { value: 1100 },
      stature: { value: 1550 },
      bustGirth: { value: 1000 },
    });
    expect(known([['hipGirth', 1]]).mean).toBeCloseTo(1100, 6);
    expect(known([['hipGirth', 1]]).spread).toBeCloseTo(0, 4);
  });

  it('adds up for sums and multiples of dimensions', () => {
    const known = knowing({ stature: { value: 1700 } });
    const fall = known([
      ['backNeckPointHeight', 2],
      ['axillaHeight', -1],
    ]);
    const [neck, axilla] = [known([['backNeckPointHeight', 1]]), known([['axillaHeight', 1]])];
    expect(fall.mean).toBeCloseTo(2 * neck.mean - axilla.mean, 6);
  });

  it('trusts a noisy value less, and a worthless one not at all', () => {
    const spreadOf = (noise: number) => knowing({ hipGirth: { value: 1100, noise } })([['bustGirth', 1]]);
    expect(spreadOf(40).spread).toBeGreaterThan(spreadOf(0).spread);
    expect(spreadOf(40).mean).toBeLessThan(spreadOf(0).mean);
    expect(spreadOf(1e6).mean).toBeCloseTo(bust.mean, 3);
    expect(spreadOf(1e6).spread).toBeCloseTo(bust.sd, 3);
  });

  it('passes on the doubt of an estimate it was given as known', () => {
    const b = (bustWithHip * bust.sd) / hip.sd;
    const sure = knowing({ hipGirth: { value: 1100 } })([['bustGirth', 1]]);
    const unsure = knowing({ hipGirth: { value: 1100, spread: 30 } })([['bustGirth', 1]]);
    expect(unsure.mean).toBeCloseTo(sure.mean, 9);
    expect(unsure.spread).toBeCloseTo(Math.hypot(sure.spread, 30 * b), 6);
  });

  const bodies = fc.record({
    stature: fc.double({ min: 1450, max: 1800, noNaN: true }),
    bustGirth: fc.double({ min: 720, max: 1180, noNaN: true }),
    hipGirth: fc.double({ min: 800, max: 1240, noNaN: true }),
  });

  it('never becomes less certain by knowing more', () => {
    fc.assert(
      fc.property(bodies, (body) => {
        const one = { stature: { value: body.stature } };
        const two = { ...one, bustGirth: { value: body.bustGirth } };
        const three = { ...two, hipGirth: { value: body.hipGirth } };
        const spreads = [{}, one, two, three].map((known) => knowing(known)([['neckBaseGirth', 1]]).spread);
        expect(spreads).toEqual(spreads.toSorted((a, b) => b - a));
      }),
    );
  });

  it('does not ask in which order things became known', () => {
    fc.assert(
      fc.property(bodies, ({ stature, bustGirth, hipGirth }) => {
        const known = {
          stature: { value: stature },
          bustGirth: { value: bustGirth },
          hipGirth: { value: hipGirth },
        };
        const turned = Object.fromEntries(Object.entries(known).toReversed());
        const [a, b] = [known, turned].map((k) => knowing(k)([['upperArmGirthFlexed', 1]]));
        expect(a?.mean).toBeCloseTo(b?.mean ?? 0, 8);
        expect(a?.spread).toBeCloseTo(b?.spread ?? 0, 8);
      }),
    );
  });

  it('goes on rising far outside the survey, but slower and slower, and becomes less certain', () => {
    const at = (value: number) => knowing({ bustGirth: { value } })([['upperArmGirthFlexed', 1]]);
    const girths = [800, 950, 1100, 1250, 1400, 1550, 1700, 3000].map(at);
    const means = girths.map(({ mean }) => mean);
    expect(means).toEqual(means.toSorted((a, b) => a - b));
    expect(at(10_000).mean).toBeLessThan(statisticsOf('upperArmGirthFlexed').mean + 6 * 30.76);
    expect(at(1700).spread).toBeGreaterThan(at(1100).spread);
  });
});
