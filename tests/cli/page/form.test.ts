import { readFile } from 'node:fs/promises';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { bodyData, emptyForm, formFrom } from '../../../cli/page/body-form.ts';
import { newestFirst } from '../../../cli/page/drafter.ts';
import { noHistory } from '../../../cli/page/history.ts';
import { keptText, withKept } from '../../../cli/page/kept.ts';
import type { DraftRequest, PageRequest } from '../../../cli/page/messages.ts';
import { reduce } from '../../../cli/page/reducer.ts';
import { draftRequest, emptyState } from '../../../cli/page/state.ts';
import { sliderOf } from '../../../cli/page/views/choose/slider.ts';
import { inOtherUnit, unitBefore } from '../../../cli/page/views/measure/in-other-unit.ts';
import { garments, measurementNames, readBody } from '../../../drafts/index.ts';
import { shippedBodies } from '../../drafts/drafted.ts';

describe('the unit of a form', () => {
  const file = async (name: string) =>
    formFrom(parse(await readFile(new URL(`../../../measurements/${name}.yaml`, import.meta.url), 'utf8')));

  test('is another at a press, and only asked for are the numbers turned into it', async () => {
    const cm = await file('leading-lady');
    const opened = { ...emptyState, form: cm };
    expect(unitBefore(opened)).toBe(undefined);
    const called = reduce(opened, { does: 'say', about: { units: 'in' } });
    expect(called.form.sizes).toBe(cm.sizes);
    expect(unitBefore(called)).toBe('cm');
    const turned = reduce(called, { does: 'say', about: inOtherUnit(called.form, 'cm', 'in') });
    // 92 cm are 36.22 inches: three and a half sixteenths behind 36.
    expect(turned.form.sizes.bustGirth).toBe('36 1/4');
    expect(turned.form.sizes.shoulderSlope).toBe(cm.sizes.shoulderSlope);
    expect(unitBefore(turned)).toBe(undefined);
    expect(reduce(turned, { does: 'undo' }).form).toBe(called.form);
  });

  test.each(shippedBodies)(
    'turned leaves the %s as she is, but for what a tape cannot show',
    async (name) => {
      const form = await file(name);
      const { units } = form;
      if (units === '') throw new Error('no unit');
      for (const to of ['cm', 'in', 'mm'] as const) {
        const before = readBody(bodyData(form));
        const after = readBody(bodyData({ ...form, units: to, ...inOtherUnit(form, units, to) }));
        if (!before.ok || !after.ok) throw new Error(`${name} cannot be read in ${to}`);
        for (const size of measurementNames)
          if (form.sizes[size] !== undefined && size !== 'shoulderSlope')
            expect(Math.abs(after.value.size[size] - before.value.size[size])).toBeLessThanOrEqual(
              to === 'in' ? 25.4 / 32 + 1e-9 : 0.05 + 1e-9,
            );
      }
    },
  );

  test('turned turns what a fitting changed too, and leaves what is no length of it', () => {
    const form = formFrom({
      units: 'cm',
      bustGirth: '36 in',
      waistGirth: 'wide',
      fitting: [
        { 'take in': 'side seam', level: 'waist', by: 1 },
        { 'lower shoulder': 2, side: 'left' },
      ],
    });
    const { sizes, rest } = inOtherUnit(form, 'cm', 'mm');
    expect(sizes).toEqual({ bustGirth: '36 in', waistGirth: 'wide' });
    expect(rest.fitting).toEqual([
      { 'take in': 'side seam', level: 'waist', by: 10 },
      { 'lower shoulder': 20, side: 'left' },
    ]);
    expect(inOtherUnit(form, 'cm', 'in').rest.fitting).toEqual([
      { 'take in': 'side seam', level: 'waist', by: 0.394 },
      { 'lower shoulder': 0.787, side: 'left' },
    ]);
  });
});

describe('the form of a body', () => {
  test.each(shippedBodies)('holds all that the file of the %s says', async (name) => {
    const file = new URL(`../../../measurements/${name}.yaml`, import.meta.url);
    const data = parse(await readFile(file, 'utf8'));
    expect(bodyData(formFrom(data))).toEqual(data);
  });

  test('holds what it cannot show, as it was', () => {
    const odd = {
      units: 'feet',
      cup: 'ZZ',
      bustGirth: [92],
      sure: ['waist'],
      reconcile: 'perhaps',
      age: null,
    };
    expect(bodyData(formFrom(odd))).toEqual(odd);
  });

  test('has what is typed instead of what could not be read', () => {
    const form = formFrom({ units: 'feet', bustGirth: [92] });
    expect(bodyData({ ...form, units: 'cm', sizes: { bustGirth: ' 92,5 ' } })).toEqual({
      units: 'cm',
      bustGirth: '92,5',
    });
  });

  test('loses nothing of any data', () => {
    const entries = fc.dictionary(fc.string(), fc.jsonValue(), { noNullPrototype: true });
    fc.assert(
      fc.property(entries, (data) => {
        const kept = bodyData(formFrom(data));
        for (const [name, value] of Object.entries(data))
          if (!(name in emptyForm)) expect(kept[name]).toEqual(value);
      }),
    );
  });
});

describe('what is kept in the browser', () => {
  test('is the same again', () => {
    const typed = [
      { does: 'measure', name: 'bustGirth', text: '36 1/4' },
      { does: 'measure', name: 'hipGirth', text: '39.' },
      { does: 'be sure', name: 'bustGirth', sure: true },
      { does: 'choose garment', garment: 'skirt' },
      { does: 'choose', name: 'hipEase', text: '5' },
      { does: 'view', view: 'checks' },
    ] as const;
    const state = typed.reduce(reduce, emptyState);
    expect(withKept(emptyState, keptText(state))).toEqual({
      ...state,
      asked: 0,
      wanted: [],
      history: noHistory,
    });
  });

  test.each([
    null,
    '',
    '[]',
    'nonsense',
    '{"body":[],"garment":7,"choices":{"dress":{"a":1},"x":3},"view":"nowhere"}',
  ])('is passed over where it cannot be read: %s', (text) => {
    const { choices, ...state } = withKept(emptyState, text);
    expect({ ...state, choices: {} }).toEqual(emptyState);
    expect(Object.values(choices).flatMap((made) => Object.keys(made))).toEqual([]);
  });
});

describe('the drafter', () => {
  test('makes one draft at a time, and of those that are wanted meanwhile only the newest', () => {
    const sent: PageRequest[] = [];
    const drafter = newestFirst({ postMessage: (request) => sent.push(request) });
    const numbered = (number: number): DraftRequest => ({ ...draftRequest(emptyState), number });
    for (const number of [1, 2, 3, 4]) drafter.want(numbered(number));
    const done = (number: number) => drafter.hear({ kind: 'drafted', number, issues: [] });
    expect(sent.map((request) => 'number' in request && request.number)).toEqual([1]);
    drafter.hear({ kind: 'refused', message: 'a file' });
    done(1);
    done(4);
    drafter.want(numbered(5));
    expect(sent.map((request) => 'number' in request && request.number)).toEqual([1, 4, 5]);
  });
});

describe('a slider', () => {
  const figures = Object.values(garments).flatMap(({ choices }) =>
    choices.flatMap((choice) => (choice.kind === 'word' ? [] : [choice])),
  );

  test.each(figures.map((choice) => [choice.name, choice] as const))(
    'of %s keeps within what the draft takes, and comes near both ends',
    (_, choice) => {
      for (const inches of [false, true]) {
        const { min, max, step } = sliderOf(choice, inches);
        expect(min).toBeGreaterThanOrEqual(choice.min - 1e-9);
        expect(max).toBeLessThanOrEqual(choice.max + 1e-9);
        expect(Math.max(min - choice.min, choice.max - max)).toBeLessThan(step);
        expect((max - min) / step).toBeGreaterThan(5);
        expect((max - min) / step).toBeLessThan(700);
      }
    },
  );
});
