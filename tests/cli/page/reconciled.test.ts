import { describe, expect, test } from 'vitest';
import { bodyData, formFrom } from '../../../cli/page/body-form.ts';
import { reduce } from '../../../cli/page/reducer.ts';
import { reconciledOf } from '../../../cli/page/requests/reconciled.ts';
import { emptyState } from '../../../cli/page/state.ts';
import { millimetres, type Unit } from '../../../drafts/index.ts';
import { bodkin } from '../session.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const folder = temporaryFolder();

/** Measurements of which one or two contradict the others, in cm. */
const contradictory = {
  'a back taken to the hip': { backNeckPointToWaist: 45, neckShoulderPointToWaist: 41, scyeDepth: 20 },
  'a front shorter than its bust': { neckShoulderPointToBustPoint: 30, neckShoulderPointToWaist: 31 },
  'two at once': {
    backNeckPointToWaist: 46,
    neckShoulderPointToWaist: 42,
    acrossBackWidth: 46,
    acrossFrontWidth: 45,
  },
};

const written = (odd: Readonly<Record<string, number>>, unit: Unit) => ({
  name: 'odd',
  units: unit,
  ...Object.fromEntries(
    Object.entries({ bustGirth: 92, waistGirth: 74, hipGirth: 99, backNeckPointToWaist: 40.5, ...odd }).map(
      ([name, cm]) => [name, Math.round(((cm * 10) / millimetres[unit]) * 8) / 8],
    ),
  ),
});

describe('measurements that contradict each other', () => {
  const all = Object.entries(contradictory).flatMap(([what, odd]) =>
    (['cm', 'in', 'mm'] as const).map((unit) => [what, unit, written(odd, unit)] as const),
  );

  test.each(all)(
    'are told with what is more likely, as the command line has it: %s, in %s',
    async (_, unit, data) => {
      const file = await folder.file('odd.json', JSON.stringify(data));
      const { code, out, err } = await bodkin(['body', file, '--reconcile', '--json'], { garments: [] });
      expect(code, err).toBe(0);
      const known = Object.entries(
        JSON.parse(out).measurements as Record<string, { from: string; value: number; suspicion?: string }>,
      ).filter(([, { from }]) => from === 'reconciled');
      const moved = reconciledOf(data, unit);
      expect(moved.map(({ name }) => name)).toEqual(known.map(([name]) => name));
      expect(moved.length).toBeGreaterThan(0);
      if (unit !== 'in')
        for (const [i, [name, { value }]] of known.entries())
          expect(Number(moved[i]?.taken) * millimetres[unit], name).toBeCloseTo(value, 6);
    },
  );

  test.each(all)('contradict nothing once they are taken over: %s, in %s', (_, unit, data) => {
    const moved = reconciledOf(data, unit);
    const state = reduce(
      { ...emptyState, form: formFrom(data) },
      { does: 'take sizes', sizes: Object.fromEntries(moved.map(({ name, taken }) => [name, taken])) },
    );
    expect(reconciledOf(bodyData(state.form), unit)).toEqual([]);
    expect(reduce(state, { does: 'undo' }).form).toEqual(formFrom(data));
  });
});
