import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { MessageChannel, type MessagePort } from 'node:worker_threads';
import { afterEach, describe, expect, test } from 'vitest';
import type { DraftFiles } from '../../../cli/own-draft/draft-files.ts';
import { answer } from '../../../cli/page/answers.ts';
import type { PageAnswer, PageRequest } from '../../../cli/page/messages.ts';
import type { Port } from '../../../cli/page/own-draft/port.ts';
import { garmentFiles } from '../../../cli/page/views/code/sources.ts';
import { ladyBody, run, sources } from './drafts-in-files.ts';

/* Code that draws the views in the place of the program's own draft, asked over a port as the page's workers ask it. */

const skirt = garmentFiles(sources, 'skirt');
const rules = 'skirt/rules.ts';
const wider: DraftFiles = {
  ...skirt,
  [rules]: (skirt[rules] ?? '').replace(/(sideBalance: \[\s*)10,/, '$114,'),
};

const open: MessagePort[] = [];
afterEach(() => {
  for (const port of open.splice(0)) port.close();
});

/** What is told until an answer of this kind comes. */
async function told(request: PageRequest, until: PageAnswer['kind']): Promise<readonly PageAnswer[]> {
  const all: PageAnswer[] = [];
  return new Promise((resolve, reject) => {
    void answer(request, (each) => {
      all.push(each);
      if (each.kind === until && !('done' in each && each.done === false)) resolve(all);
      else if (each.kind === 'refused') reject(new Error(each.message));
    });
  });
}

/** Hands code over under a key; answers come from `answering`. */
function hand(key: string, answering: (question: never) => unknown): Promise<readonly PageAnswer[]> {
  const { port1: own, port2: its } = new MessageChannel();
  open.push(own, its);
  its.on('message', (question) => its.postMessage(answering(question as never)));
  return told({ kind: 'own draft', key, is: { how: 'running', port: own as unknown as Port } }, 'own draft');
}

const asked = { body: ladyBody, garment: 'skirt', choices: { skirtTo: 'calf' } };

/** Data as they are compared: bytes by their digest. */
const plain = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_, each: unknown) =>
      each instanceof Uint8Array ? createHash('sha256').update(each).digest('hex') : each,
    ),
  );

const chart = {
  file: 'workshop-stock.yaml',
  text: await readFile(new URL('../../../measurements/charts/workshop-stock.yaml', import.meta.url), 'utf8'),
  units: '',
  bodies: [],
};

const everything: readonly (readonly [string, PageAnswer['kind'], (code?: string) => PageRequest])[] = [
  [
    'pieces and checks',
    'drafted',
    (code) => ({
      ...{ kind: 'draft', number: 1, ...asked, ...(code ? { code } : {}) },
      parts: ['lines', 'seams', 'proof', 'files', 'cautions', 'lesson'],
    }),
  ],
  [
    'what is taken',
    'taken',
    (code) => ({
      ...{ kind: 'take', number: 1, asked: { ...asked, ...(code ? { code } : {}) } },
      ...{ writings: ['sheet', 'dxf', 'sewing page', 'lesson page', 'report'], paper: 'a4', zip: false },
    }),
  ],
  [
    'the lay',
    'laid',
    (code) => ({
      ...{ kind: 'lay', number: 1, does: 'begin', asked: { ...asked, ...(code ? { code } : {}) } },
      ...{ seconds: 60, rounds: 2 },
      cloth: { ...noFigures, width: '1400', cloth: 'folded', selvedge: '10', gap: '3' },
    }),
  ],
  [
    'the lesson with a rule turned',
    'lesson',
    (code) => ({ kind: 'lesson', key: '1', turned: { K8: 12 }, ...asked, ...(code ? { code } : {}) }),
  ],
  [
    'the pictures',
    'pictured',
    (code) => ({ kind: 'pictures', of: '1', ...asked, ...(code ? { code } : {}) }),
  ],
  [
    'what to take again',
    'studied',
    (code) => ({ kind: 'study', of: '1', ...asked, ...(code ? { code } : {}) }),
  ],
  [
    'the grade',
    'graded',
    (code) => ({
      ...{ kind: 'sizes', number: 1, does: 'grade', chart },
      asked: { ...asked, ...(code ? { code } : {}) },
    }),
  ],
  [
    'the nearest size',
    'nearest found',
    (code) => ({
      ...{ kind: 'sizes', number: 1, does: 'nearest', chart },
      asked: { ...asked, ...(code ? { code } : {}) },
    }),
  ],
];

const noFigures = { selvedge: '0', gap: '0', shrink: '0', stripe: '0', stripeAlong: '0' };

describe('code that nobody has changed', () => {
  test.each(everything)('gives %s as the program’s own draft does, to the byte', async (_, kind, request) => {
    await hand('same', run(skirt) as (question: never) => unknown);
    const last = async (code?: string) =>
      (await told(request(code), kind)).findLast((each) => each.kind === kind);
    expect(plain(await last('same'))).toEqual(plain(await last()));
  });
});

describe('changed code', () => {
  test('is seen in what every view shows', async () => {
    await hand('wider', run(wider) as (question: never) => unknown);
    for (const [what, kind, request] of everything.slice(0, 3)) {
      const last = async (code?: string) =>
        plain((await told(request(code), kind)).findLast((each) => each.kind === kind));
      expect(JSON.stringify(await last('wider')) === JSON.stringify(await last()), what).toBe(false);
    }
  });

  test('is waited for, and refused where other code has been handed over since', async () => {
    const request = everything[0]?.[2];
    const early = told(request?.('late') as PageRequest, 'drafted');
    await hand('late', run(wider) as (question: never) => unknown);
    expect((await early)[0]).toMatchObject({ kind: 'drafted', made: { ok: true } });
    const old = told(request?.('gone') as PageRequest, 'drafted');
    await hand('newest', run(wider) as (question: never) => unknown);
    expect((await old)[0]).toMatchObject({
      issues: [{ message: 'The code has been changed since: ask again.' }],
    });
  });

  const describing = { kind: 'described', issues: [] } as const;
  const self = { name: 'skirt', title: 'Skirt', choices: [], shapedBy: [] };
  const drawn = (value: unknown) => ({ kind: 'drawn', drawn: { ok: true, value, issues: [] } });
  test.each([
    ['what is no answer', 7, 'The code answered what is no answer, and was ended.'],
    ['another answer', { ...describing, garment: self }, 'The code answered what is no answer'],
    ['no garment', drawn({ pieces: 7 }), 'What the draft hands back is no garment yet'],
    ['a number that is none', drawn({ pieces: [Number.NaN] }), 'or has a number that is none'],
    ['what never ends', drawn(Array.from({ length: 200_001 }, () => 1)), 'is too large for a garment'],
  ])('that hands back %s draws nothing, and says why', async (_, handed, says) => {
    await hand('odd', (question: { readonly kind: string }) =>
      question.kind === 'describe' ? { ...describing, garment: self } : handed,
    );
    const all = await told(
      { kind: 'draft', number: 1, body: ladyBody, garment: 'skirt', choices: {}, parts: [], code: 'odd' },
      'drafted',
    );
    const last = all.at(-1);
    expect(last?.kind === 'drafted' && last.issues[0]?.message).toContain(says);
    expect(last).not.toHaveProperty('made');
  });

  test('that cannot be run hinders no other question for good', async () => {
    const problem = { code: 'draft-not-loaded', severity: 'error', path: '', message: 'No.' } as const;
    void answer({ kind: 'own draft', key: 'broken', is: { how: 'stopped', problem } }, () => {});
    for (const [, kind, request] of everything) {
      const last = (await told(request('broken'), kind)).at(-1);
      expect(last?.kind).toBe(kind);
      if (last && 'issues' in last) expect(last.issues).toContainEqual(expect.objectContaining(problem));
    }
  });

  describe.each([
    ['before it came', undefined],
    ['before it said what it is', []],
    ['in the midst of an answer', ['describe']],
  ])('whoever waits for it %s', (when, answers) => {
    const problem = { code: 'draft-mistake', severity: 'error', path: '', message: 'It was ended.' } as const;
    test.each([
      ['is told at once that other code draws since', { how: 'over' }, /changed since: ask again/],
      ['is told at once why it was ended', { how: 'stopped', problem }, /It was ended/],
    ] as const)('%s', async (_, is, says) => {
      const key = `left ${when} ${is.how}`;
      const request = { ...(everything[0]?.[2](key) as PageRequest), choices: {} } as PageRequest;
      const waiting = told(request, 'drafted');
      if (answers) {
        const { port1: own, port2: its } = new MessageChannel();
        open.push(own, its);
        const last = new Promise<void>((resolve) => {
          its.on('message', ({ kind }) => {
            if (answers.includes(kind)) its.postMessage({ ...describing, garment: self });
            else resolve();
          });
        });
        const port = own as unknown as Port;
        void answer({ kind: 'own draft', key, is: { how: 'running', port } }, () => {});
        await last;
      }
      void answer({ kind: 'own draft', key, is }, () => {});
      expect((await waiting)[0]).toMatchObject({ issues: [{ message: expect.stringMatching(says) }] });
      // And the same code draws once it is handed over again.
      await hand(key, run(wider) as (question: never) => unknown);
      expect((await told(request, 'drafted'))[0]).toMatchObject({ made: { ok: true } });
    });
  });

  test('that is no draft says what it lacks', async () => {
    const files = { 'draft.ts': "export default { name: 'x', title: 'X' };\n" };
    const request = everything[0]?.[2]('none') as PageRequest;
    const early = told(request, 'drafted');
    void hand('none', run(files) as (question: never) => unknown);
    expect((await early)[0]).toMatchObject({
      issues: [{ code: 'draft-mistake', message: expect.stringContaining('lacks choices, shapedBy, draw') }],
    });
  });
});
