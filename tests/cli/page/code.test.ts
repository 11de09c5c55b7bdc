import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { type DraftFiles, filesJoined, joinedFiles } from '../../../cli/own-draft/draft-files.ts';
import { reduce } from '../../../cli/page/reducer.ts';
import { linked } from '../../../cli/page/requests/link.ts';
import { emptyState, type PageState } from '../../../cli/page/state.ts';
import type { Coding } from '../../../cli/page/views/code/coding.ts';
import { frameDocument, frameHash, frameScript } from '../../../cli/page/views/code/frame.ts';
import { codeKept, keptCode } from '../../../cli/page/views/code/kept-code.ts';
import { type Coded, codeIssues } from '../../../cli/page/views/code/own.ts';
import { runAnswer } from '../../../cli/page/views/code/questions.ts';
import { withRulesWritten } from '../../../cli/page/views/code/rule-in-code.ts';
import { garmentFiles } from '../../../cli/page/views/code/sources.ts';
import { placeOfStep, stepAt, stepPlaces } from '../../../cli/page/views/code/step-places.ts';
import { filesNow } from '../../../cli/page/views/code/written-code.ts';
import { evaluate, garments, notchesOf, provenSheet } from '../../../drafts/index.ts';
import { ladyBody, run, sources } from './drafts-in-files.ts';

const root = new URL('../../../', import.meta.url).pathname;
const text = (file: string): string => readFileSync(root + file, 'utf8');
const skirt = garmentFiles(sources, 'skirt');

/** What files draw for the leading lady. */
function drawn(files: DraftFiles) {
  const answer = run(files)({ kind: 'draft', body: ladyBody, choices: {}, turned: {} });
  if (answer.kind !== 'drafted') throw new Error(answer.kind);
  return answer;
}

const did = (actions: readonly Coding[], from: PageState = emptyState): Coded =>
  actions.reduce<PageState>((state, what) => reduce(state, { does: 'within', view: 'code', what }), from).own
    .code;

const begin: Coding = {
  does: 'begin',
  of: { kind: 'garment', name: 'skirt' },
  original: { 'draft.ts': 'a', 'rules.ts': 'b' },
  file: 'rules.ts',
  strange: false,
};

describe('the code of a garment', () => {
  test.each(Object.values(garments).map((draft) => [draft.name, draft] as const))(
    'linked from its own files draws the %s to the byte as the program does',
    (name, draft) => {
      const { sheet, lesson, ok } = drawn(garmentFiles(sources, name));
      const made = evaluate(draft, ladyBody);
      if (!made.ok) throw new Error('not drawn');
      const print = { date: undefined, units: 'mm', notches: notchesOf(made.value.styling) } as const;
      expect(ok).toBe(true);
      expect(sheet === provenSheet(made.value, print).sheet).toBe(true);
      expect(lesson?.steps.length).toBe(made.value.garment.steps.length);
    },
  );

  test('keeps its lines when types are left out', () => {
    const { starts = [] } = linked({ kind: 'link', key: '1', asks: 'editor', files: skirt });
    for (const [i, [file, line]] of starts.entries()) {
      const next = starts[i + 1]?.[1];
      if (next !== undefined)
        expect([file, next - line]).toEqual([file, (skirt[file] ?? '').split('\n').length + 1]);
    }
  });

  test('is kept in one file and read from it again', () => {
    const again = filesJoined(joinedFiles(skirt), 'x.ts');
    expect(Object.fromEntries(again.map((file) => [file.name, file.text]))).toEqual(skirt);
    expect(filesJoined('export default 1;', 'x.ts')).toEqual([
      { name: 'x.ts', text: 'export default 1;', line: 1 },
    ]);
  });

  test('takes the value of a rule into its row, and draws with it', () => {
    const { files, file } = withRulesWritten(skirt, { K8: 14, K99: 3 });
    expect([file, Object.keys(files)]).toEqual(['skirt/rules.ts', ['skirt/rules.ts']]);
    const { lesson } = drawn({ ...skirt, ...files });
    const front = lesson?.steps.find(({ title }) => title === 'Waist of the front half');
    expect(front?.mm).toBeCloseTo((740 + 30) / 4 + 14 / 2, 6);
  });

  test('tells where each step is written, and which step a line writes', () => {
    const { lesson } = drawn(skirt);
    if (!lesson) throw new Error('no lesson');
    const places = stepPlaces(skirt);
    for (const { number, title } of lesson.steps) {
      const place = placeOfStep(places, number, lesson);
      expect([title, place?.file.endsWith('.ts')]).toEqual([title, true]);
      const step = place && stepAt(places, place.file, place.from, lesson);
      expect(step).toBeDefined();
    }
    const half = placeOfStep(places, 1, lesson);
    expect(skirt[half?.file ?? '']?.split('\n')[(half?.from ?? 0) - 1]).toContain('mm`Half waist:');
  });
});

describe('what is wrong with code', () => {
  test('is told on its line, be it unreadable, thrown, or only wrong for this body', () => {
    const wrong = (name: string, was: string, is: string) => {
      expect(skirt[name]).toContain(was);
      return { ...skirt, [name]: (skirt[name] ?? '').replace(was, () => is) };
    };
    const unreadable = linked({
      kind: 'link',
      key: '1',
      asks: 'editor',
      files: { 'a.ts': 'const a = 1;\nconst = 3;\n' },
    });
    expect(unreadable.problem).toMatchObject({ file: 'a.ts', line: 2 });
    const stray = linked({
      kind: 'link',
      key: '1',
      asks: 'editor',
      files: { 'a.ts': "\nimport { x } from 'y';\nexport default x;" },
    });
    expect(stray.problem).toMatchObject({ file: 'a.ts', line: 2, message: expect.stringContaining('“y”') });
    const unnamed = drawn(wrong('skirt/skirt.ts', '{rules.sideBalance}', '{rules.sideBalanc}'));
    expect(unnamed.issues[0]?.message).toMatch(/no measurement, choice, rule or step has the name/);
    const thrown = drawn(wrong('skirt/draft.ts', 'table.solved(solution);', "throw new Error('here');"));
    const line = (skirt['skirt/draft.ts'] ?? '')
      .split('\n')
      .findIndex((each) => each.includes('table.solved(solution)'));
    expect(thrown.issues[0]).toMatchObject({ message: 'here' });
    expect(line).toBeGreaterThan(0);
  });

  test('is told of a name that the program does not export', () => {
    const files = { 'a.ts': "import { drawGarmint } from 'bodkin';\nexport default drawGarmint();\n" };
    expect(drawn(files).issues[0]?.message).toContain('There is no “drawGarmint”');
  });
});

describe('an edited draft', () => {
  test('is what differs from the original, and nothing once it does not', () => {
    const changed = did([begin, { does: 'write', file: 'rules.ts', text: 'c' }]);
    expect([changed.changed, filesNow(changed)]).toEqual([
      { 'rules.ts': 'c' },
      { 'draft.ts': 'a', 'rules.ts': 'c' },
    ]);
    expect(
      did([
        begin,
        { does: 'write', file: 'rules.ts', text: 'c' },
        { does: 'write', file: 'rules.ts', text: 'b' },
      ]).changed,
    ).toEqual({});
    expect(
      did([
        begin,
        { does: 'write', file: 'rules.ts', text: 'c' },
        { does: 'back to the original', file: undefined },
      ]).changed,
    ).toEqual({});
    expect(did([begin, { does: 'write', file: 'elsewhere.ts', text: 'c' }]).changed).toEqual({});
  });

  test('from a file is not to be run before somebody says so', () => {
    const strange: Coding = { ...begin, of: { kind: 'own', name: 'x.ts' }, strange: true };
    expect(did([strange]).strange).toBe(true);
    expect(did([strange, { does: 'allow' }]).strange).toBe(false);
    // Another file of that name is another file.
    expect(did([begin, strange]).strange).toBe(true);
    // Nor does another file run because one that was called so may.
    const other: Coding = { ...strange, original: { 'x.ts': 'another' } };
    expect(did([strange, { does: 'allow' }, other])).toMatchObject({
      strange: true,
      original: { 'x.ts': 'another' },
    });
  });

  test('takes over turned rules once its source is there, and shows the difference', () => {
    const wanted = did([
      { does: 'take over rules', of: { kind: 'garment', name: 'skirt' }, turned: { K8: 14 } },
      begin,
    ]);
    expect(wanted.turned).toEqual({ K8: 14 });
    const taken = did([
      { does: 'take over rules', of: { kind: 'garment', name: 'skirt' }, turned: { K8: 14 } },
      begin,
      { does: 'rules are taken over', files: { 'rules.ts': '14' }, file: 'rules.ts' },
    ]);
    expect(taken).toMatchObject({
      turned: undefined,
      shows: 'difference',
      file: 'rules.ts',
      changed: { 'rules.ts': '14' },
    });
  });

  test('keeps the last drawing while the next has none, and says why', () => {
    const drawn = { kind: 'drafted', name: 'a', title: 'A', ok: true, issues: [], sheet: '<svg/>' } as const;
    const issue = { code: 'x', severity: 'error', path: '', message: 'No.' } as const;
    const state = did([
      begin,
      { does: 'ran', key: '1', ran: drawn },
      { does: 'ran', key: '2', ran: { kind: 'drafted', name: 'a', title: 'A', ok: false, issues: [issue] } },
    ]);
    expect([state.drawn, codeIssues(state)]).toEqual([drawn, [issue]]);
    const ended = did([
      begin,
      { does: 'ran', key: '1', ran: drawn },
      { does: 'ended', key: '2', problem: { message: 'Too long.' } },
    ]);
    expect([ended.drawn, codeIssues(ended)[0]?.message]).toEqual([drawn, 'Too long.']);
  });

  test('is no longer held to anybody once it is changed', () => {
    const held: Coding = {
      does: 'hold',
      ends: false,
      cases: [{ name: 'prompter', choices: '', came: undefined }],
    };
    expect(did([begin, held]).held?.cases.length).toBe(1);
    expect(did([begin, held, { does: 'write', file: 'rules.ts', text: 'c' }]).held).toBeUndefined();
  });

  test('is there tomorrow, and whatever else was kept does no harm', () => {
    const state = did([begin, { does: 'write', file: 'rules.ts', text: 'c' }]);
    expect(codeKept(JSON.parse(JSON.stringify(keptCode(state))))).toMatchObject({
      of: state.of,
      changed: state.changed,
    });
    for (const odd of [null, 7, 'x', [], { of: 3 }, { of: { kind: 'own', name: 1 } }])
      expect(codeKept(odd).of).toBeUndefined();
  });
});

describe('the frame in which edited code is run', () => {
  let hash = '';
  beforeAll(() => {
    hash = `sha256-${createHash('sha256').update(frameScript).digest('base64')}`;
  });

  test('holds the one script that the security policies allow by its hash', () => {
    expect(frameHash).toBe(hash);
    expect(frameDocument).toContain(`script-src '${hash}'`);
    for (const file of ['cli/page/index.html', 'cli/open/page-server.ts'])
      expect(text(file)).toContain(`'${hash}'`);
  });

  test.each([
    ['nothing', undefined],
    ['a text', 'drafted'],
    ['another kind', { kind: 'opened' }],
    [
      'a lesson that is none',
      { kind: 'drafted', name: 'a', title: 'A', ok: true, issues: [], lesson: { steps: 7 } },
    ],
    ['an endless message', { kind: 'failed', message: 'x'.repeat(30_000) }],
  ])('is believed no answer that is %s', (_, answer) => {
    expect(runAnswer.safeParse(answer).success).toBe(false);
  });
});
