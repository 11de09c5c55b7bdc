import { describe, expect, test } from 'vitest';
import type { PageAnswer } from '../../../cli/page/messages.ts';
import type { PageAction } from '../../../cli/page/page-action.ts';
import { reduce } from '../../../cli/page/reducer.ts';
import type { GradeShown, NamedText } from '../../../cli/page/requests/sizes-messages.ts';
import { emptyState, type PageState } from '../../../cli/page/state.ts';
import { clothAsked } from '../../../cli/page/views/cloth/her-unit.ts';
import { filesTaken } from '../../../cli/page/views/sizes/chart-files.ts';
import type { SizesAction } from '../../../cli/page/views/sizes/own.ts';
import { paperAsked } from '../../../cli/page/views/take/own.ts';

const did = (actions: readonly PageAction[], from: PageState = emptyState): PageState =>
  actions.reduce(reduce, from);
const hear = (answer: PageAnswer): PageAction => ({ does: 'hear', answer });
const none = { titles: [], rows: [] };

describe('what is taken', () => {
  const begun = did([{ does: 'within', view: 'take', what: { does: 'begin', number: 1 } }]);

  test('says how far it is, and what was handed over', () => {
    const writing = did(
      [hear({ kind: 'taking', number: 1, done: 1, of: 3, what: 'the lesson, to print' })],
      begun,
    );
    expect(writing.own.take.busy).toBe('Writing the lesson, to print (2 of 3) …');
    const file = { name: 'lesson.pdf', bytes: new Uint8Array() };
    const done = did([hear({ kind: 'taken', number: 1, handed: [file], issues: [] })], writing);
    expect(done.own.take).toMatchObject({ busy: undefined, last: 'Handed to the browser: lesson.pdf.' });
  });

  test('is not changed by what was asked for before', () => {
    const again = did([{ does: 'within', view: 'take', what: { does: 'begin', number: 2 } }], begun);
    expect(did([hear({ kind: 'taken', number: 1, handed: [], issues: [] })], again).own).toBe(again.own);
  });

  test('names a roll by its width', () => {
    expect(paperAsked({ paper: 'roll', roll: ' 36in ' })).toBe('roll:36in');
    expect(paperAsked({ paper: 'letter', roll: '914' })).toBe('letter');
  });
});

describe('sizes', () => {
  const grade: GradeShown = {
    ...{ garment: 'bodice', chart: 'stock', source: '', ok: true, units: 'mm' },
    ...{ sizes: ['38', '40'], cups: ['B', 'C'], middle: { size: '40', cup: 'C' } },
    ...{ pieces: ['side back'], girths: none, even: none },
  };
  const chart = { file: 'stock.yaml', text: '', units: '', bodies: [] };
  const begun = did([
    { does: 'within', view: 'sizes', what: { does: 'chart', chart } },
    {
      ...{ does: 'within', view: 'sizes' },
      what: { does: 'begin', number: 1, of: { garment: 'bodice', choices: {} } },
    },
  ]);

  test('are looked at in their middle once they are drafted', () => {
    const graded = did([hear({ kind: 'graded', number: 1, grade, issues: [], needs: [] })], begun);
    expect(graded.own.sizes.busy).toBeUndefined();
    expect(graded.own.sizes.looked).toMatchObject({ piece: 'side back', size: '40', cup: 'C' });
  });

  test('stay where they were looked at when they are graded anew', () => {
    const at = did(
      [
        hear({ kind: 'graded', number: 1, grade, issues: [], needs: [] }),
        { does: 'within', view: 'sizes', what: { does: 'look', at: { size: '38', cup: 'B' } } },
        {
          ...{ does: 'within', view: 'sizes' },
          what: { does: 'begin', number: 2, of: { garment: 'bodice', choices: { front: 'plain' } } },
        },
        hear({ kind: 'graded', number: 2, grade, issues: [], needs: [] }),
      ],
      begun,
    );
    expect(at.own.sizes.looked).toMatchObject({ size: '38', cup: 'B' });
  });

  test('are graded anew once the bodies are there that their chart names', () => {
    const needing = did(
      [hear({ kind: 'graded', number: 1, grade: undefined, issues: [], needs: ['a.yaml', 'b.yaml'] })],
      begun,
    );
    expect(needing.own.sizes.needs).toEqual(['a.yaml', 'b.yaml']);
    const [a, b] = ['a.yaml', 'b.yaml'].map((file) => ({ file, text: 'units: cm' }));
    const one = filesTaken([a as NamedText], needing.own.sizes.needs);
    const there = did([{ does: 'within', view: 'sizes', what: one as SizesAction }], needing);
    expect(there.own.sizes).toMatchObject({ of: undefined, chart: { file: 'stock.yaml', bodies: [a] } });
    const both = did(
      [{ does: 'within', view: 'sizes', what: filesTaken([b as NamedText], ['b.yaml']) as SizesAction }],
      there,
    );
    expect(both.own.sizes.chart?.bodies).toEqual([a, b]);
  });

  test('come from files dropped together, the chart with the bodies beside it', () => {
    const body = { file: 'prompter.yaml', text: 'units: cm\nbustGirth: 92\n' };
    const yaml = { file: 'mine.yaml', text: 'units: cm\nsizes:\n  - {body: prompter.yaml}\n' };
    const csv = { file: 'mine.csv', text: 'size,bustGirth\n40,92\n' };
    for (const each of [yaml, csv])
      expect(filesTaken([body, each], [])).toEqual({
        does: 'chart',
        chart: { ...each, units: '', bodies: [body] },
      });
    // A file alone that nobody has asked for is a chart, be it only to be refused as one.
    expect(filesTaken([body], [])).toMatchObject({ does: 'chart', chart: { file: 'prompter.yaml' } });
    expect(filesTaken([], [])).toBeUndefined();
  });

  test('of another chart are not mixed up with those of the one before', () => {
    const other = did([{ does: 'within', view: 'sizes', what: { does: 'chart', chart } }], begun);
    expect(other.own.sizes.of).toBeUndefined();
    const again = did(
      [
        {
          ...{ does: 'within', view: 'sizes' },
          what: { does: 'begin', number: 2, of: { garment: 'bodice', choices: {} } },
        },
        hear({ kind: 'graded', number: 1, grade, issues: [], needs: [] }),
      ],
      other,
    );
    expect(again.own.sizes.grade).toBeUndefined();
  });
});

describe('the cloth', () => {
  test('shows each better plan, and keeps the last', () => {
    const plan = { cloth: 'self', svg: '<svg/>', words: '', alt: '', buy: '2 m' };
    const state = did([
      {
        ...{ does: 'within', view: 'cloth' },
        what: { does: 'begin', number: 1, of: { body: {}, garment: 'dress', choices: {} } },
      },
      hear({ kind: 'laying', number: 1, cloth: 'self', share: 0.1, plans: [plan] }),
      hear({ kind: 'laying', number: 1, cloth: 'self', share: 0.2 }),
    ]);
    expect(state.own.cloth).toMatchObject({ plans: [plan], busy: { cloth: 'self', share: 0.2 } });
    const laid = { kind: 'laid', number: 1, plans: [plan], table: none, stripes: [], issues: [] } as const;
    expect(did([hear(laid)], state).own.cloth).toMatchObject({ busy: undefined, plans: [plan] });
  });

  test('is told in inches to whoever measures in inches, and the usual in mm', () => {
    const typed = {
      width: '45',
      cloth: 'open',
      selvedge: '',
      gap: '1/4',
      shrink: '',
      stripe: '',
      stripeAlong: '',
    } as const;
    expect(clothAsked(typed, true)).toMatchObject({
      ...{ width: '45 in', selvedge: '10 mm', gap: '1/4 in', shrink: '0' },
    });
    expect(clothAsked(typed, false)).toMatchObject({ width: '45', selvedge: '10', stripe: '0' });
  });
});

describe('what is worn', () => {
  const fitting = [{ 'take in': 'side seam', level: 'waist', by: 0.4 }];
  const fitted = hear({ kind: 'fitted', fitting });

  test('changes her fitting by a finding that is taken over, asks for the pieces anew, and can be undone', () => {
    const state = did([fitted]);
    expect(state.form.rest).toEqual({ fitting });
    expect(state.asked).toBe(1);
    expect(did([{ does: 'undo' }], state).form.rest).toEqual({});
  });

  test('remembers what was taken over until it is put on again', () => {
    const state = did([
      { does: 'within', view: 'worn', what: { does: 'take over', words: ['ease at the waist'] } },
    ]);
    expect(state.own.worn.taken).toEqual(['ease at the waist']);
    const of = { body: {}, garment: 'bodice', choices: {} };
    const again = did([{ does: 'within', view: 'worn', what: { does: 'begin', number: 1, of } }], state);
    expect(again.own.worn).toMatchObject({ taken: [], busy: 0 });
    expect(
      did([hear({ kind: 'worn', number: 1, worn: undefined, issues: [] })], again).own.worn.busy,
    ).toBeUndefined();
  });
});
