import { describe, expect, test } from 'vitest';
import { emptyForm } from '../../../cli/page/body-form.ts';
import type { DraftAnswer, MadeGarment } from '../../../cli/page/messages.ts';
import { type PageAction, reduce } from '../../../cli/page/reducer.ts';
import { draftRequest, emptyState, isUpToDate, type PageState, taken } from '../../../cli/page/state.ts';
import { largestZoom } from '../../../cli/page/views/pieces/own.ts';

const did = (actions: readonly PageAction[], from: PageState = emptyState): PageState =>
  actions.reduce(reduce, from);

const bust: PageAction = { does: 'measure', name: 'bustGirth', text: '36 1/4' };

const made: MadeGarment = {
  ok: true,
  garment: 'dress',
  title: 'Dress',
  body: 'prompter',
  units: 'mm',
  styling: {},
  pieces: [],
  checks: { girths: [], seams: [], joins: [], shapes: [], notches: 0 },
  files: [{ name: 'sheet.svg', text: '<svg/>' }],
  parts: {},
};

const hear = (number: number, rest: Partial<DraftAnswer> = {}): PageAction => ({
  does: 'hear',
  answer: { kind: 'drafted', number, issues: [], ...rest },
});

describe('what is typed', () => {
  test('stays as it was typed, and asks for a new draft each time', () => {
    const state = did([bust, { does: 'say', about: { units: 'in' } }]);
    expect(state.form.sizes).toEqual({ bustGirth: '36 1/4' });
    expect(draftRequest(state)).toMatchObject({ number: 2, body: { units: 'in', bustGirth: '36 1/4' } });
  });

  test('leaves nothing behind when it is deleted again', () => {
    const state = did([bust, { does: 'measure', name: 'bustGirth', text: '' }]);
    expect(state.form.sizes).toEqual({});
  });

  test('is kept apart for each garment where it is a choice', () => {
    const state = did([
      { does: 'choose', name: 'waistEase', text: '20' },
      { does: 'choose garment', garment: 'skirt' },
      { does: 'choose', name: 'waistEase', text: '1/2 in' },
    ]);
    expect(draftRequest(state).choices).toEqual({ waistEase: '1/2 in' });
    const back = did([{ does: 'choose garment', garment: 'dress' }], state);
    expect(draftRequest(back)).toMatchObject({ garment: 'dress', choices: { waistEase: '20' } });
    const usual = did([{ does: 'choose', name: 'waistEase', text: undefined }], back);
    expect(draftRequest(usual).choices).toEqual({});
  });

  test('is all deleted at once, with what was drawn of it', () => {
    const full = did([bust, { does: 'choose', name: 'waistEase', text: '20' }, hear(2, { made })]);
    const state = did([{ does: 'forget' }], full);
    expect(state).toMatchObject({ form: emptyForm, choices: {}, made: undefined, answer: undefined });
    expect(did([hear(2, { made })], state).made).toBeUndefined();
  });
});

describe('a view', () => {
  test('asks for no draft of its own, but pieces as files where they are to be shown', () => {
    const state = did([{ does: 'view', view: 'choose' }]);
    expect([state.asked, draftRequest(state).parts]).toEqual([0, []]);
    const pieces = did([{ does: 'view', view: 'pieces' }], state);
    expect([pieces.asked, draftRequest(pieces).parts]).toEqual([1, ['files']]);
    const back = did(
      [
        { does: 'view', view: 'checks' },
        { does: 'view', view: 'take' },
      ],
      pieces,
    );
    expect(back.asked).toBe(1);
  });

  test('cannot be made smaller than the whole, nor larger than is of use', () => {
    const zoomed = (zoom: number) =>
      did([{ does: 'within', view: 'pieces', what: { does: 'zoom', zoom } }]).own.pieces.zoom;
    expect([zoomed(0.2), zoomed(99)]).toEqual([1, largestZoom]);
  });
});

describe('an answer', () => {
  test('to an older state shows what it drew, but is not taken away', () => {
    const state = did([bust, bust, hear(1, { made })]);
    expect(state.made).toBe(made);
    expect([isUpToDate(state), taken(state)]).toEqual([false, undefined]);
    const newest = did([hear(2, { made })], state);
    expect([isUpToDate(newest), taken(newest)]).toEqual([true, made]);
  });

  test('without a drawing leaves the last in sight, and nothing to take', () => {
    const state = did([bust, hear(1, { made }), bust, hear(2)]);
    expect([state.made, taken(state)]).toEqual([made, undefined]);
  });
});

describe('a file', () => {
  const opened: PageAction = {
    does: 'hear',
    answer: { kind: 'opened', file: 'a.yaml', body: { units: 'cm', waistGirth: 70, fitting: [], hipp: 1 } },
  };

  test('takes the place of what was typed, which can be had back', () => {
    const state = did([bust, opened]);
    expect(state.form.sizes).toEqual({ waistGirth: '70' });
    expect(did([{ does: 'take back' }], state).form.sizes).toEqual({ bustGirth: '36 1/4' });
  });

  test('may hold what the form has no field for: it can be left out, but not the fitting', () => {
    const state = did([opened]);
    expect(state.before).toBeUndefined();
    expect(draftRequest(state).body).toMatchObject({ hipp: 1, fitting: [] });
    expect(draftRequest(did([{ does: 'leave out the rest' }], state)).body).toEqual({
      units: 'cm',
      waistGirth: 70,
      fitting: [],
    });
  });
});

describe('a step back', () => {
  const waist = (text: string): PageAction => ({ does: 'measure', name: 'waistGirth', text });
  const slid = (text: string): PageAction => ({ does: 'choose', name: 'strapWidth', text });

  test('takes back all that was typed at one thing, and can be taken back itself', () => {
    const state = did([bust, waist('7'), waist('74'), slid('30'), slid('31'), slid('32')]);
    const back = did([{ does: 'undo' }], state);
    expect(draftRequest(back)).toMatchObject({ choices: {}, body: { waistGirth: 74 } });
    const further = did([{ does: 'undo' }], back);
    expect(further.form.sizes).toEqual({ bustGirth: '36 1/4' });
    const on = did([{ does: 'redo' }, { does: 'redo' }, { does: 'redo' }], further);
    expect([on.form, on.choices]).toEqual([state.form, state.choices]);
    expect(on.asked).toBe(state.asked + 4);
  });

  test('is one for each time that a slider was let go', () => {
    const state = did([slid('30'), slid('31'), { does: 'settle' }, slid('40'), { does: 'undo' }]);
    expect(draftRequest(state).choices).toEqual({ strapWidth: '31' });
  });

  test('gives a fitting back that a file brought', () => {
    const fitting = [{ at: 'waist' }];
    const opened: PageAction = {
      does: 'hear',
      answer: { kind: 'opened', file: 'a.yaml', body: { units: 'cm', fitting } },
    };
    const state = did([opened, { does: 'undo' }]);
    expect(draftRequest(state).body).not.toHaveProperty('fitting');
    expect(draftRequest(did([{ does: 'redo' }], state)).body).toMatchObject({ fitting });
  });

  test('leads nowhere once all is deleted, and holds no more than is of use', () => {
    const gone = did([bust, { does: 'forget' }, { does: 'undo' }, { does: 'redo' }]);
    expect(gone.form).toEqual(emptyForm);
    const many = did(
      Array.from({ length: 1000 }, (_, i): PageAction => (i % 2 ? waist(`${i}`) : slid(`${i}`))),
    );
    expect(many.history.past.length).toBe(200);
    const long = did(Array.from({ length: 1000 }, (_, i): PageAction => slid(`${i}`)));
    expect(long.history.past.length).toBe(1);
  });
});
