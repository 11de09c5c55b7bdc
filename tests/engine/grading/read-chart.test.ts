import { describe, expect, it } from 'vitest';
import { readBody } from '../../../engine/body/read.ts';
import { axesOf } from '../../../engine/grading/chart.ts';
import { readChart } from '../../../engine/grading/read-chart.ts';
import { chartOf, draftOf, shippedChart } from './charts.ts';

const { choices } = draftOf('dress');
const refused = (data: unknown, units?: string) => {
  const read = readChart(data, { choices, units, bodies: new Map() });
  if (read.ok) throw new Error('the chart was read');
  return read.issues;
};
const codes = (data: unknown, units?: string) => refused(data, units).map(({ code }) => code);

const row = (size: string, bust: number) => ({
  size,
  bustGirth: bust,
  waistGirth: bust - 18,
  hipGirth: bust + 6,
  backNeckPointToWaist: 40,
});
const rows = [row('38', 88), row('40', 92), row('42', 96)];

const stepped = {
  units: 'cm',
  sizes: ['36', '38', '40', '42', '44'],
  base: { ...row('40', 92), skirtLength: 600 },
  steps: [
    { from: '36', to: '42', bustGirth: 4, waistGirth: '4 1/2', skirtLength: 5 },
    { from: '42', to: '44', bustGirth: 6, waistGirth: '5', hipGirth: 5 },
  ],
};

describe('a size chart', () => {
  it('is read row by row, in the unit it says', () => {
    const chart = chartOf({ name: 'three', units: 'cm', sizes: rows });
    expect(chart).toMatchObject({ name: 'three', sizes: ['38', '40', '42'], cups: [''] });
    expect(chart.rows[1]?.body).toMatchObject({ name: '40', units: 'cm', bustGirth: 92 });
    expect(chart.rows[1]?.given).toEqual(['bustGirth', 'waistGirth', 'hipGirth', 'backNeckPointToWaist']);
    expect(axesOf(chart)).toHaveLength(1);
  });

  it('takes its unit from a column, or from outside where it says none', () => {
    const inUnits = chartOf({ sizes: rows.map((one) => ({ ...one, units: 'cm' })) });
    expect(inUnits.rows[0]?.body.units).toBe('cm');
    const told = readChart({ sizes: rows }, { choices, units: 'cm', bodies: new Map() });
    expect(told.ok && told.value.rows[0]?.body.units).toBe('cm');
    expect(codes({ units: 'in', sizes: rows }, 'cm')).toEqual(['units-said-twice']);
    expect(codes({ sizes: rows }, 'ell')).toEqual(['unknown-unit']);
  });

  it('steps from a base down and up, and may change its steps along the run', () => {
    const chart = chartOf(stepped);
    const of = (name: string) => chart.rows.map(({ body }) => body[name]);
    expect(of('bustGirth')).toEqual([84, 88, 92, 96, 102]);
    expect(of('waistGirth')).toEqual([65, 69.5, 74, 78.5, 83.5]);
    expect(of('hipGirth')).toEqual([98, 98, 98, 98, 103]);
    expect(of('backNeckPointToWaist')).toEqual([40, 40, 40, 40, 40]);
    expect(chart.rows.map(({ styling }) => styling.skirtLength)).toEqual([590, 595, 600, 605, 605]);
    expect(chart.middle.size).toBe('40');
  });

  it('blends a size of two, half-way where both are named', () => {
    const from = { bustGirth: '38', waistGirth: ['38', '42'], hipGirth: '42' };
    const chart = chartOf({ units: 'cm', sizes: [...rows, { size: '38/42', from }] });
    expect(chart.rows.at(-1)).toMatchObject({
      name: '38/42',
      alone: true,
      body: { bustGirth: 88, waistGirth: 74, hipGirth: 102, backNeckPointToWaist: 40 },
    });
    expect(chart.sizes).toEqual(['38', '40', '42']);
  });

  it('blends in the cup of the sizes it is drawn with', () => {
    const blend = { size: '38/42', from: { bustGirth: '38', hipGirth: '42' } };
    const chart = chartOf({
      units: 'cm',
      sizes: [...rows, blend, { ...blend, size: 'full', cup: 'E' }],
      cups: 'A C E',
    });
    const beside = chart.rows
      .filter(({ alone }) => alone)
      .map(({ name, body }) => [name, body.underBustGirth]);
    // A bust of 88 in the middle cup, C, 17 cm over the under-bust, and in E, 21 cm over it.
    expect(beside).toEqual([
      ['38/42', 710],
      ['full', 670],
    ]);
  });

  it('lets unlikely numbers stand where the chart is sure of them, and where they are its own sums', () => {
    const sizes = [{ ...rows[0], sure: 'hipGirth, waistGirth' }, rows[1]];
    const chart = chartOf({ units: 'cm', sizes, sure: ['bustGirth'] });
    expect(chart.rows.map(({ body }) => body.sure)).toEqual([
      ['bustGirth', 'hipGirth', 'waistGirth'],
      ['bustGirth'],
    ]);
    expect(chartOf(stepped).rows[0]?.body.sure).toContain('hipGirth');
  });

  it('has room for a body’s own file', () => {
    const data = { units: 'cm', sizes: [...rows, { body: 'lady.yaml' }] };
    const bodies = new Map([['lady.yaml', { name: 'leading lady', units: 'in', bustGirth: 36 }]]);
    const read = readChart(data, { choices, bodies });
    expect(read.ok && read.value.rows.at(-1)).toMatchObject({
      name: 'leading lady',
      alone: true,
      body: { units: 'in', bustGirth: 36 },
    });
    expect(codes(data)).toEqual(['body-not-read']);
  });

  // EN 13402-3: cup A is 12 to 14 cm, C 16 to 18, E 20 to 22; the middles are 13, 17 and 21.
  it('changes the under-bust girth from cup to cup where the bust stays', () => {
    const chart = chartOf({ units: 'cm', sizes: rows, cups: ['A', 'C', 'E'], cupsAt: 'bust' });
    expect(chart.rows).toHaveLength(9);
    expect(chart.rows.slice(3, 6).map(({ name }) => name)).toEqual(['40 A', '40 C', '40 E']);
    expect(chart.rows.slice(3, 6).map(({ body }) => body.bustGirth)).toEqual([920, 920, 920]);
    expect(chart.rows.slice(3, 6).map(({ body }) => body.underBustGirth)).toEqual([790, 750, 710]);
    expect(axesOf(chart).map(({ along }) => along)).toEqual([
      ...Array(3).fill('sizes'),
      ...Array(3).fill('cups'),
    ]);
  });

  it('changes the bust girth, and nothing of the frame, where the under-bust stays', () => {
    const sizes = rows.map((one) => ({ ...one, underBustGirth: one.bustGirth - 16 }));
    const chart = chartOf({ units: 'cm', sizes, cups: 'A, C, E', cupsAt: 'underBust' });
    const [a, c, e] = chart.rows.slice(3, 6).map(({ body }) => {
      const read = readBody(body);
      if (!read.ok) throw new Error('no body');
      return read.value.size;
    });
    expect([a, c, e].map((size) => size?.bustGirth)).toEqual([890, 930, 970]);
    expect([a, c, e].map((size) => size?.underBustGirth)).toEqual([760, 760, 760]);
    for (const name of ['neckBaseGirth', 'upperArmGirth', 'shoulderLength', 'acrossBackWidth'] as const)
      expect(e?.[name]).toBeCloseTo(a?.[name] ?? 0, 9);
    expect(e?.neckShoulderPointToWaist).toBeGreaterThan(c?.neckShoulderPointToWaist ?? 0);
  });

  // Cups A and C of EN 13402 are 130 and 170 mm by their middles.
  it('stays in inches in every cup where it is in inches', () => {
    const sizes = [{ size: '12', bustGirth: 36, waistGirth: 29, hipGirth: 39, backNeckPointToWaist: 16 }];
    const chart = chartOf({ units: 'in', sizes, cups: ['A', 'C'] });
    expect(chart.rows.map(({ body }) => body.units)).toEqual(['in', 'in']);
    expect(chart.rows.map(({ body }) => body.bustGirth)).toEqual([36, 36]);
    for (const [i, cup] of [130, 170].entries())
      expect(Number(chart.rows[i]?.body.underBustGirth) * 25.4).toBeCloseTo(36 * 25.4 - cup, 9);
  });

  it('moves what grows with the breast by as much as its estimate, where the chart gives it', () => {
    const sizes = rows.map((one) => ({ ...one, underBustGirth: one.bustGirth - 17, upperChestGirth: 91 }));
    const chart = chartOf({ units: 'cm', sizes, cups: ['C', 'E'] });
    const [c, e] = chart.rows.slice(2, 4).map(({ body }) => Number(body.upperChestGirth));
    expect(c).toBeCloseTo(910, 6);
    expect(e).toBeLessThan(910);
  });

  it('reads cups from a column too', () => {
    const sizes = rows.flatMap((one) => ['B', 'D'].map((cup) => ({ ...one, cup })));
    const chart = chartOf({ units: 'cm', sizes });
    expect(chart).toMatchObject({ sizes: ['38', '40', '42'], cups: ['B', 'D'] });
    expect(chart.rows[0]).toMatchObject({ name: '38 B', body: { cup: 'B' } });
  });

  it.each([
    ['nothing', undefined, 'chart-without-sizes'],
    ['no sizes', { units: 'cm', sizes: [] }, 'chart-without-sizes'],
    ['a stray field', { units: 'cm', sizes: rows, cup: ['A'] }, 'unknown-chart-field'],
    ['a stray column', { units: 'cm', sizes: [{ ...rows[0], bustgirht: 9 }] }, 'unknown-column'],
    ['a size twice', { units: 'cm', sizes: [rows[0], rows[0]] }, 'size-twice'],
    ['a size without a name', { units: 'cm', sizes: [{ ...rows[0], size: '' }] }, 'size-unnamed'],
    ['names alone', { units: 'cm', sizes: ['38', '40'] }, 'size-not-understood'],
    ['a cup nobody has', { units: 'cm', sizes: rows, cups: ['Q'] }, 'unknown-cup'],
    ['a cup twice', { units: 'cm', sizes: rows, cups: ['A', 'A'] }, 'cup-twice'],
    ['cups held at nothing', { units: 'cm', sizes: rows, cups: ['A'], cupsAt: 'knee' }, 'unknown-cups-at'],
    [
      'a blend of nothing',
      { units: 'cm', sizes: [...rows, { size: 'x', from: {} }] },
      'blend-not-understood',
    ],
    [
      'blends of each other alone',
      {
        units: 'cm',
        sizes: [
          { size: 'a', from: { hipGirth: 'b' } },
          { size: 'b', from: { hipGirth: 'a' } },
        ],
      },
      'blend-of-unknown-size',
    ],
    [
      'a blend of a size that is not there',
      { units: 'cm', sizes: [...rows, { size: 'x', from: { hipGirth: '99' } }] },
      'blend-of-unknown-size',
    ],
    ['a base that is no size', { ...stepped, base: row('39', 90) }, 'base-not-a-size'],
    ['no base', { ...stepped, base: undefined }, 'base-missing'],
    ['no steps', { ...stepped, steps: undefined }, 'steps-not-understood'],
    ['steps in words', { ...stepped, steps: { bustGirth: 'four' } }, 'step-not-a-number'],
    ['steps of what the base does not say', { ...stepped, steps: { neckBaseGirth: 1 } }, 'step-without-base'],
    [
      'a step said twice',
      { ...stepped, steps: [{ bustGirth: 4 }, { from: '42', to: '44' }] },
      'steps-overlap',
    ],
    ['a step left out', { ...stepped, steps: [{ from: '36', to: '42', bustGirth: 4 }] }, 'steps-leave-out'],
    ['a stretch the wrong way', { ...stepped, steps: [{ from: '42', to: '36' }] }, 'steps-not-understood'],
  ])('is refused with %s', (_, data, code) => {
    expect(codes(data)).toContain(code);
  });

  it('is refused where it has more sizes than any stock', () => {
    const sizes = Array.from({ length: 401 }, (_, i) => row(`s${i}`, 80));
    expect(refused({ units: 'cm', sizes })).toMatchObject([
      { code: 'chart-too-large', limits: { max: 400 } },
    ]);
    expect(refused({ units: 'cm', sizes: sizes.slice(0, 60), cups: 'A B C D E F G' })).toMatchObject([
      { code: 'chart-too-large', value: 420 },
    ]);
  });

  it('guesses what a mistyped column was to be', () => {
    expect(refused({ units: 'cm', sizes: [{ ...rows[0], hipgirht: 9 }] })[0]?.message).toContain('hipGirth');
  });
});

describe('the charts that ship', () => {
  const files = [
    'astm-d5585-misses-curvy.csv',
    'astm-d5585-misses-straight.csv',
    'en-13402-3-women.yaml',
    'workshop-stock.yaml',
  ];

  it.each(files)('%s: every size is a body without error', (file) => {
    const chart = chartOf(shippedChart(file));
    expect(chart.rows.length).toBeGreaterThanOrEqual(10);
    for (const { body } of chart.rows) expect(readBody(body).ok).toBe(true);
  });
});
