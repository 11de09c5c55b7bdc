import { describe, expect, it } from 'vitest';
import { readBody } from '../../../engine/body/read.ts';
import { bringHome } from '../../../engine/grading/bring-home.ts';
import { nearestSizes } from '../../../engine/grading/nearest.ts';
import { chartOf, draftOf, shippedChart } from './charts.ts';

const dress = draftOf('dress');
const chart = chartOf(shippedChart('workshop-stock.yaml'), dress);

const nearestTo = (data: unknown) => {
  const her = readBody(data);
  if (!her.ok) throw new Error('no body');
  const sizes = nearestSizes(chart, her.value, dress.shapedBy);
  if (!sizes.ok || !sizes.value[0]) throw new Error('no size');
  return { near: sizes.value[0], all: sizes.value };
};

describe('the nearest size', () => {
  it('to a size of the chart is that size, in its cup, with nothing to alter', () => {
    for (const name of ['34 A', '40 C', '44 E', '52 B']) {
      const row = chart.rows.find((one) => one.name === name);
      const { near } = nearestTo(row?.body);
      expect([near.of.name, near.apart]).toEqual([name, 0]);
      const home = bringHome(dress, near, row?.body, {});
      expect(home.ok && home.value).toMatchObject({ changes: [], left: [] });
    }
  });

  it('is one size off where every girth is one step larger', () => {
    const row = chart.rows.find((one) => one.name === '42 C');
    const { all } = nearestTo(row?.body);
    expect(all.find(({ of }) => of.name === '40 C')?.apart).toBeCloseTo(1, 0);
  });

  it('is chosen by girths: a tall woman has the size of her girths', () => {
    const row = chart.rows.find((one) => one.name === '40 C');
    expect(nearestTo({ ...row?.body, stature: 1850 }).near.of.name).toBe('40 C');
  });
});

describe('alterations', () => {
  const row = chart.rows.find((one) => one.name === '40 C');

  it('bring the girths of a size within a millimetre or so of hers, each seam moved on four layers', () => {
    const her = { ...row?.body, name: 'her', waistGirth: 749, hipGirth: 1010 };
    const { near } = nearestTo(her);
    expect(near.of.name).toBe('40 C');
    const home = bringHome(dress, near, her, {});
    if (!home.ok) throw new Error('not brought home');
    expect(home.value.changes).toContainEqual({ kind: 'let out', seam: 'side seam', level: 'waist', mm: 6 });
    expect(home.value.changes).toContainEqual({ kind: 'let out', seam: 'side seam', level: 'hip', mm: 5 });
    for (const { level, hers, altered } of home.value.girths.filter(({ level: name }) => name !== 'hem'))
      expect([level, Math.abs(altered - hers) < 1.5]).toEqual([level, true]);
  });

  it('are those of seams alone where a size does not take the others with them, and these are named', () => {
    const her = {
      ...row?.body,
      neckShoulderPointToBustPoint: 185,
      backNeckPointToWaist: 330,
      scyeDepth: 150,
    };
    const { near } = nearestTo(her);
    const home = bringHome(dress, { ...near, off: [...near.off] }, row?.body, {});
    if (!home.ok) throw new Error('not brought home');
    expect(home.value.changes.filter((change) => !('seam' in change))).toEqual([]);
    expect(home.value.left.map(({ measurement }) => measurement)).toEqual(
      expect.arrayContaining(['backNeckPointToWaist']),
    );
  });

  it('are what a fitter would pin for lengths, and the rest is named', () => {
    const her = {
      ...row?.body,
      backNeckPointToWaist: 395,
      acrossBackWidth: 362,
      upperArmGirth: 305,
      shoulderLength: 120,
    };
    const home = bringHome(dress, nearestTo(her).near, her, {});
    if (!home.ok) throw new Error('not brought home');
    expect(home.value.changes).toEqual(
      expect.arrayContaining([
        { kind: 'sway back', mm: 10 },
        { kind: 'broad back', mm: 12 },
        { kind: 'more upper arm', mm: 15 },
      ]),
    );
    expect(home.value.left.map(({ measurement }) => measurement)).toEqual(['shoulderLength']);
  });
});
