import { describe, expect, it } from 'vitest';
import { skirtRules } from '../../drafts/skirt/rules.ts';
import type { Grade } from '../../engine/grading/grade.ts';
import misses from '../../measurements/astm-d5585-misses.json' with { type: 'json' };
import classes from '../../measurements/en-13402.json' with { type: 'json' };
import { chartOf, draftOf, gradedBy, shippedChart } from '../engine/grading/charts.ts';

/** What the drafted pieces of each size measure round a level, as a tape would: mm. */
const finished = (grade: Grade, level: string): readonly number[] =>
  grade.sizes.map(({ made }) => {
    const girth = made.report.girths.find((one) => one.level === level);
    if (!girth) throw new Error(`no girth ${level}`);
    return girth.finished;
  });

const steps = (values: readonly number[]): readonly number[] =>
  values.slice(1).map((value, i) => value - (values[i] ?? value));

const agree = (found: readonly number[], wanted: readonly number[], digits = 2): void => {
  expect(found).toHaveLength(wanted.length);
  for (const [i, value] of found.entries()) expect(value).toBeCloseTo(wanted[i] ?? 0, digits);
};

describe('the steps of published size tables come out at the girths of the drafted pieces', () => {
  // ASTM D5585-11e1, Table 1 (inches), misses 00 to 20: its own steps, at most 2 in, all uneven.
  it.each([['curvy', 'waistGirthCurvy'] as const, ['straight', 'waistGirthStraight'] as const])(
    'ASTM D5585, %s figures: bust, under-bust and waist of a trial bodice',
    (figure, waist) => {
      const trial = draftOf('trial');
      const grade = gradedBy(trial, chartOf(shippedChart(`astm-d5585-misses-${figure}.csv`), trial));
      const inMm = (inches: readonly number[]) => steps(inches).map((step) => step * 25.4);
      agree(steps(finished(grade, 'bust')), inMm(misses.rows.bustGirth));
      agree(steps(finished(grade, 'under-bust')), inMm(misses.rows.underBustGirth));
      agree(steps(finished(grade, 'waist')), inMm(misses.rows[waist]));
      expect(grade.ok).toBe(true);
    },
  );

  it('the table’s rows are the ones published: bust 31 1/8 to 46, in steps of 5/8 to 2 in', () => {
    expect(steps(misses.rows.bustGirth)).toEqual([
      0.625, 1.25, 1.125, 1.125, 1, 1, 1.5, 1.625, 1.75, 1.875, 2,
    ]);
  });

  // EN 13402-3: classes of 4 cm up to a bust of 102, of 5 and 6 cm from there, each called by its middle.
  it('EN 13402-3: the bust of a dress goes from the middle of one class to that of the next', () => {
    const dress = draftOf('dress');
    const chart = chartOf(shippedChart('en-13402-3-women.yaml'), dress);
    const edges = classes.bustClassEdges;
    const middles = edges.slice(1).map((edge, i) => Math.floor((edge + (edges[i] ?? edge)) / 2));
    expect(chart.sizes).toEqual(middles.map(String));
    const grade = gradedBy(dress, chart);
    agree(
      steps(finished(grade, 'bust')),
      steps(middles).map((cm) => 10 * cm),
    );
    // Waist and hip of these classes (from memory): 4 cm with the bust, then waists of 6 and hips of 5.
    agree(steps(finished(grade, 'waist')), [...Array(7).fill(40), ...Array(4).fill(60)]);
    agree(steps(finished(grade, 'hip')), [...Array(7).fill(40), ...Array(4).fill(50)]);
    expect(grade.ok).toBe(true);
  });

  // JIS L 4005 (women, A type; read on secondary pages): 9 is bust 83, waist 64, hip 91, 11 is 86, 67 and 93.
  it('JIS L 4005: from 9 to 11 a dress grows by 3, 3 and 2 cm', () => {
    const sizes = [
      { size: '9', bustGirth: 83, waistGirth: 64, hipGirth: 91, backNeckPointToWaist: 38 },
      { size: '11', bustGirth: 86, waistGirth: 67, hipGirth: 93, backNeckPointToWaist: 38 },
    ];
    const grade = gradedBy(draftOf('dress'), chartOf({ units: 'cm', sizes }));
    for (const [level, mm] of [
      ['bust', 30],
      ['waist', 30],
      ['hip', 20],
    ] as const)
      agree(steps(finished(grade, level)), [mm]);
  });
});

/**
 * Five sizes of a skirt with the waist, hip and hem of so much of a circle, their waists 4 cm apart: at a distance L from
 * a waist W its girth is W + 2 pi f L (closed form).
 */
function circleSkirts(part: number, toHip: number, length: number): Grade {
  const opening = (distance: number) => 2 * Math.PI * part * distance;
  const { sideRise, leastRise, mostRise } = skirtRules;
  const growth = opening(toHip) - 60;
  const rise = Math.min(Math.max(sideRise.value * growth, leastRise.value), mostRise.value);
  const sizes = [620, 660, 700, 740, 780].map((waist) => ({
    size: String(waist),
    bustGirth: 900,
    backNeckPointToWaist: 400,
    stature: 1650,
    waistHeight: 1030,
    waistGirth: waist,
    hipGirth: waist + growth,
    waistToHip: toHip + rise,
    hemSweep: waist + opening(length),
  }));
  const skirt = draftOf('skirt');
  return gradedBy(skirt, chartOf({ units: 'mm', sizes }, skirt), {
    waistEase: 0,
    hipEase: 60,
    skirtLength: length,
  });
}

describe('a circle skirt cut in gores, through five sizes', () => {
  it.each([
    ['a quarter circle', 1 / 4],
    ['half a circle', 1 / 2],
  ])('%s: waist, hip and hem all grow by the waist’s step, and every step is even', (_, part) => {
    const grade = circleSkirts(part, 200, 600);
    for (const level of ['waist', 'hip', 'hem']) agree(steps(finished(grade, level)), [40, 40, 40, 40], 3);
    agree(
      finished(grade, 'hem'),
      [620, 660, 700, 740, 780].map((waist) => waist + 2 * Math.PI * part * 600),
      3,
    );
    const [axis] = grade.axes;
    expect(axis?.uneven).toEqual([]);
    expect(grade.issues).toEqual([]);
  });

  // Twelve gore edges share the circle's angle, so each leans by 2 pi f / 12; a hem is an arc of that angle on each half
  // gore, and its corner lies at radius x sine: from size to size it moves out by the arc's step x sine / angle.
  it.each([
    ['a quarter circle', 1 / 4],
    ['half a circle', 1 / 2],
  ])('%s: the hem’s corner of a centre gore moves out as on a sector of the circle', (_, part) => {
    const lean = (2 * Math.PI * part) / 12;
    const [axis] = circleSkirts(part, 200, 600).axes;
    const gore = axis?.pieces.find(({ piece }) => piece === 'skirt centre front');
    const hem = gore?.edges.find(({ edge }) => edge === 'hem');
    const corner = gore?.points.find(({ point }) => point === 'front princess to hem');
    expect(gore?.anchor).toBe('centre line at the waist');
    agree(
      corner?.steps.map(({ x }) => x) ?? [],
      hem?.steps.map((step) => (step * Math.sin(lean)) / lean) ?? [1],
      4,
    );
  });
});
