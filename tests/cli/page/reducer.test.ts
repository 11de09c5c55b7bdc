import { describe, expect, test } from 'vitest';
import { emptyForm } from '../../../cli/page/body-form.ts';
import { keptText, withKept } from '../../../cli/page/kept.ts';
import type { DraftAnswer, MadeGarment } from '../../../cli/page/messages.ts';
import type { PageAction } from '../../../cli/page/page-action.ts';
import { reduce } from '../../../cli/page/reducer.ts';
import {
  askedDraft,
  draftRequest,
  emptyState,
  garmentNow,
  isUpToDate,
  type PageState,
  taken,
} from '../../../cli/page/state.ts';
import type { Coding } from '../../../cli/page/views/code/coding.ts';
import { enlarged, type LookedAt, largestZoom, whole } from '../../../cli/page/views/drawing/looked-at.ts';
import type { ScreenPiece } from '../../../drafts/index.ts';

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
  wrong: [],
  proven: true,
  parts: { files: [{ name: 'sheet.svg', text: '<svg/>' }] },
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

describe('what is deleted', () => {
  test('does not come back by an answer that was still to come', () => {
    const begin = (number: number): PageAction => ({
      ...{ does: 'within', view: 'worn' },
      what: { does: 'begin', number, of: askedDraft(emptyState) },
    });
    const worn = (number: number): PageAction => ({
      does: 'hear',
      answer: { kind: 'wearing', number, share: 0.7 },
    });
    const gone = did([bust, begin(1), { does: 'forget' }]);
    expect(did([worn(1)], gone).own.worn.busy).toBeUndefined();
    const next = did([begin(gone.own.worn.number + 1), worn(1)], gone);
    expect(next.own.worn.busy).toBe(0);
    expect(did([worn(next.own.worn.number)], next).own.worn.busy).toBe(0.7);
  });
});

describe('a view', () => {
  test('asks for no draft of its own, but pieces as files where they are to be shown', () => {
    const state = did([{ does: 'view', view: 'choose' }]);
    expect([state.asked, draftRequest(state).parts]).toEqual([0, []]);
    const pieces = did([{ does: 'view', view: 'pieces' }], state);
    expect([pieces.asked, draftRequest(pieces).parts]).toEqual([1, ['lines', 'seams']]);
    const back = did(
      [
        { does: 'view', view: 'checks' },
        { does: 'view', view: 'pieces' },
      ],
      pieces,
    );
    expect(back.asked).toBe(1);
    const take = did([{ does: 'view', view: 'take' }], back);
    expect([take.asked, draftRequest(take).parts]).toEqual([2, ['lines', 'seams', 'files', 'cautions']]);
  });

  test('cannot be made smaller than the whole, nor larger than is of use, nor looked beside', () => {
    const seen = (look: LookedAt) =>
      did([{ does: 'within', view: 'pieces', what: { does: 'look at sheet', look } }]).own.pieces.sheet;
    expect(seen({ zoom: 0.2, x: 0, y: 9 })).toEqual(whole);
    expect(seen({ zoom: 99, x: 0.3, y: 0.3 }).zoom).toBe(largestZoom);
    expect(seen({ zoom: 2, x: -1, y: 0.6 })).toEqual({ zoom: 2, x: 0.25, y: 0.6 });
  });

  test('keeps the place under the pointer where it is while it is enlarged', () => {
    const look = { zoom: 2, x: 0.5, y: 0.5 };
    const placeAt = ({ zoom, x }: LookedAt, share: number): number => x + (share - 0.5) / zoom;
    expect(placeAt(enlarged(look, 1.3, 0.2, 0.7), 0.2)).toBeCloseTo(placeAt(look, 0.2), 12);
  });
});

describe('an answer', () => {
  test('to an older state shows what it drew, but is not taken away', () => {
    const state = did([bust, bust, hear(1, { made })]);
    expect(state.made).toBe(made);
    expect([isUpToDate(state), taken(state)]).toEqual([false, undefined]);
    const newest = did([hear(2, { made })], state);
    expect([isUpToDate(newest), taken(newest)]).toEqual([true, { ...made, files: made.parts.files }]);
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

describe('a step back, of rules and code', () => {
  const files = { 'draft.ts': 'a', 'rules.ts': 'b' };
  const of = { kind: 'garment', name: 'skirt' } as const;
  const within = (what: Coding): PageAction => ({ does: 'within', view: 'code', what });
  const begin = within({ does: 'begin', of, original: files, file: 'draft.ts', strange: false });
  const write = (text: string): PageAction => within({ does: 'write', file: 'rules.ts', text });
  const turn = (value: number | undefined): PageAction => ({
    ...{ does: 'within', view: 'learn' },
    what: { does: 'turn rule', id: 'K8', value },
  });

  test('turns a rule back, one step for each time that its slider was let go', () => {
    const state = did([turn(11), turn(12), { does: 'settle' }, turn(14)]);
    const back = did([{ does: 'undo' }], state);
    expect(back.own.learn.turned).toEqual({ K8: 12 });
    expect(did([{ does: 'undo' }], back).own.learn.turned).toEqual({});
    expect(did([{ does: 'redo' }], back).own.learn.turned).toEqual({ K8: 14 });
    // What is drawn by the draft itself is not asked for anew.
    expect(state.asked).toBe(0);
  });

  test('gives code back that was reset, or that other code took the place of', () => {
    const written = did([begin, write('c'), write('cd')]);
    const reset = did([within({ does: 'back to the original', file: undefined })], written);
    expect(reset.own.code.changed).toEqual({});
    const back = did([{ does: 'undo' }], reset);
    expect(back.own.code).toMatchObject({ of, original: files, changed: { 'rules.ts': 'cd' } });
    // All that was typed into a file in one go is one step.
    expect(did([{ does: 'undo' }], back).own.code.changed).toEqual({});
    const belt = { kind: 'own', name: 'my-belt.ts' } as const;
    const other = did(
      [
        within({
          does: 'begin',
          of: belt,
          original: { 'my-belt.ts': 'x' },
          file: 'my-belt.ts',
          strange: false,
        }),
      ],
      written,
    );
    expect(did([{ does: 'undo' }], other).own.code).toMatchObject({ of, changed: { 'rules.ts': 'cd' } });
    const on = did([{ does: 'undo' }, { does: 'redo' }], other);
    expect(on.own.code).toMatchObject({ of: belt, file: 'my-belt.ts' });
  });

  test('is none where code is only loaded and looked at', () => {
    const looked = did([begin, within({ does: 'show file', file: 'rules.ts' }), write('b')]);
    expect(looked.history.past).toEqual([]);
    const led = did([within({ does: 'lead to', file: 'rules.ts', line: 3 })], looked);
    expect(led.history.past).toEqual([]);
    expect(led.own.code).toMatchObject({ file: 'rules.ts', sought: { line: 3 } });
    const again = did([begin], did([write('c')], looked));
    expect(again.history.past.length).toBe(1);
  });
});

describe('code that draws', () => {
  const files = { 'draft.ts': 'a' };
  const of = { kind: 'garment', name: 'skirt' } as const;
  const within = (what: Coding): PageAction => ({ does: 'within', view: 'code', what });
  const garments: PageAction = {
    does: 'hear',
    answer: {
      kind: 'garments',
      garments: [
        { name: 'dress', title: 'Dress', choices: [], shapedBy: [] },
        { name: 'skirt', title: 'Skirt', choices: [], shapedBy: [] },
      ],
    },
  };
  const begin = within({ does: 'begin', of, original: files, file: 'draft.ts', strange: false });
  const write = (text: string): PageAction => within({ does: 'write', file: 'draft.ts', text });
  const drawing = did([
    garments,
    { does: 'choose garment', garment: 'skirt' },
    begin,
    write('b'),
    { does: 'draw by code', garment: 'skirt' },
  ]);

  test('is asked for by a key that is its own, and by the same for the same files', () => {
    const first = draftRequest(drawing).code;
    expect(first).toBeDefined();
    expect(askedDraft(drawing).code).toBe(first);
    const other = did([write('c')], drawing);
    expect(draftRequest(other).code).not.toBe(first);
    expect(other.asked).toBe(drawing.asked + 1);
    expect(draftRequest(did([{ does: 'undo' }], other)).code).toBe(first);
  });

  test.each<[string, readonly PageAction[]]>([
    ['is reset', [within({ does: 'back to the original', file: undefined })]],
    ['is left for a draft of the program', [{ does: 'choose garment', garment: 'skirt' }]],
    ['is left for what it was', [{ does: 'draw by the program' }]],
    [
      'makes room for a draft from a file',
      [
        within({
          ...{ does: 'begin', of: { kind: 'own', name: 'x.ts' }, original: { 'x.ts': 'x' } },
          ...{ file: 'x.ts', strange: true },
        }),
      ],
    ],
  ])('draws no more once it %s, until that is undone', (_, actions) => {
    const state = did(actions, drawing);
    expect([state.byCode, state.garment, draftRequest(state).code]).toEqual([false, 'skirt', undefined]);
    expect(did([{ does: 'undo' }], state).byCode).toBe(true);
  });

  test('of a draft that the program has not leads back to one that it has', () => {
    const own = { kind: 'own', name: 'my-belt.ts' } as const;
    const belt = did([
      garments,
      within({ does: 'begin', of: own, original: { 'my-belt.ts': 'x' }, file: 'my-belt.ts', strange: false }),
      { does: 'draw by code', garment: 'belt' },
    ]);
    expect(draftRequest(belt)).toMatchObject({ garment: 'belt' });
    expect(did([{ does: 'draw by the program' }], belt)).toMatchObject({ byCode: false, garment: 'dress' });
  });

  test('leaves its own choices open, once it has said which', () => {
    const { code: key = '' } = draftRequest(drawing);
    const garment = { name: 'skirt', title: 'Wider skirt', choices: [], shapedBy: [] } as const;
    const told = did([{ does: 'hear', answer: { kind: 'own draft', key, garment } }], drawing);
    expect(garmentNow(told)).toBe(garment);
    expect(garmentNow(did([{ does: 'draw by the program' }], told))?.title).toBe('Skirt');
  });

  test('draws tomorrow too, but for a stranger’s that nobody has allowed', () => {
    expect(withKept(emptyState, keptText(drawing)).byCode).toBe(true);
    const kept = JSON.parse(keptText(drawing));
    const strange = { ...kept, code: { ...kept.code, strange: true } };
    expect(withKept(emptyState, JSON.stringify(strange)).byCode).toBe(false);
  });
});

describe('a drawing', () => {
  const piece = (d: string): ScreenPiece => ({
    ...{ name: 'sleeve', number: 1, cut: '', left: 0, top: 0, width: 1, height: 1, middle: [0, 0] },
    lines: [{ class: 'cut', name: '', d }],
  });
  const lines = (d: string) => ({ made: { ...made, proven: false, parts: { lines: [piece(d)] } } });
  const slid = (text: string): PageAction => ({ does: 'choose', name: 'strapWidth', text });

  test('is seen as it was when a slider began to move, until it rests', () => {
    const state = did([bust, hear(1, lines('M0')), slid('30'), hear(2, lines('M1')), slid('31')]);
    expect(state.earlier?.[0]?.lines[0]?.d).toBe('M0');
    const other = did([hear(3, lines('M2')), bust], state);
    expect(other.earlier?.[0]?.lines[0]?.d).toBe('M2');
    expect(did([{ does: 'pause' }], other).earlier).toBeUndefined();
    expect(did([{ does: 'choose garment', garment: 'skirt' }], other).earlier).toBeUndefined();
  });

  test('is written and walked once all is quiet, and only then', () => {
    const state = did([bust, hear(1, lines('M0'))]);
    expect(draftRequest(state).parts).not.toContain('proof');
    const quiet = did([{ does: 'pause' }], state);
    expect([quiet.asked, draftRequest(quiet).parts]).toEqual([2, ['proof']]);
    expect(draftRequest(did([slid('30')], quiet)).parts).not.toContain('proof');
  });

  test('stays in sight when an answer comes without one', () => {
    const state = did([bust, hear(1, lines('M0')), bust, hear(2, { made: { ...made, parts: {} } })]);
    expect(state.made?.parts.lines).toHaveLength(1);
    expect(taken(state)).toBeUndefined();
  });

  test('comes after all when it is wanted only once something stands in the way of the next', () => {
    const ofLast = { lines: [piece('M0')] };
    const state = did([bust, hear(1, { made: { ...made, parts: {} } }), bust, hear(2, { ofLast })]);
    expect(state.made?.parts).toEqual(ofLast);
    expect(did([bust, hear(1, { ofLast })]).made).toBeUndefined();
  });
});
