import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { answer } from '../../../cli/page/answers.ts';
import type { DraftAnswer, DraftRequest, PageAnswer, PageRequest } from '../../../cli/page/messages.ts';
import { garments } from '../../../drafts/index.ts';
import { bodkin } from '../session.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const folder = temporaryFolder();
const lady = new URL('../../../measurements/leading-lady.yaml', import.meta.url);

const answerTo = (request: PageRequest): Promise<PageAnswer> =>
  new Promise((resolve) => {
    void answer(request, resolve);
  });

const opened = async (text: string, file = 'leading-lady.yaml'): Promise<PageAnswer> =>
  answerTo({ kind: 'open', file, text });

const ladyData = async (): Promise<Readonly<Record<string, unknown>>> => {
  const answer = await opened(await readFile(lady, 'utf8'));
  if (answer.kind !== 'opened') throw new Error('not opened');
  return answer.body;
};

const draft = async (wanted: Partial<DraftRequest>): Promise<DraftAnswer> => {
  const answer = await answerTo({
    ...{ kind: 'draft', number: 7, body: {}, garment: 'bodice', choices: {}, parts: [] },
    ...wanted,
  });
  if (answer.kind !== 'drafted') throw new Error('not drafted');
  return answer;
};

describe('a draft on the page', () => {
  test.each([
    ['cm', {}],
    ['cm', { front: 'plain', waistEase: '1 1/4 in', notchType: 'wedge' }],
    ['in', { strapWidth: '40' }],
  ])('is to the byte what the command line writes (%s, %j)', async (units, choices) => {
    const { shoulderSlope, ...lengths } = await ladyData();
    const inches = (value: unknown) => (typeof value === 'number' ? value / 2.54 : value);
    const body =
      units === 'cm'
        ? { ...lengths, shoulderSlope }
        : {
            ...Object.fromEntries(Object.entries(lengths).map(([name, value]) => [name, inches(value)])),
            ...{ units, age: 31, name: 'leading lady' },
          };
    const saved = await answerTo({ kind: 'write', as: 'yaml', body });
    if (saved.kind !== 'written') throw new Error('not written');
    const file = await folder.file(saved.file.name, saved.file.text);
    const out = folder.at(`out-${units}-${Object.keys(choices).length}`);
    const sets = Object.entries(choices).flatMap(([name, value]) => ['--set', `${name}=${value}`]);
    const { code, err } = await bodkin(['draft', 'bodice', '--body', file, '--out', out, ...sets], {
      garments: Object.values(garments),
    });
    expect(code, err).toBe(0);
    const { made } = await draft({ body, choices, parts: ['files'] });
    const files = made?.parts.files ?? [];
    expect(files.length).toBeGreaterThan(5);
    for (const { name, text } of files)
      expect(text === (await readFile(`${out}/${name}`, 'utf8')), name).toBe(true);
  });

  test('says how far off an estimate may be, in her unit', async () => {
    const body = { units: 'in', bustGirth: '36 1/4', waistGirth: 29, hipGirth: 39, backNeckPointToWaist: 16 };
    const { sizes, made } = await draft({ body });
    expect(made?.ok).toBe(true);
    expect(sizes?.bustGirth).toEqual({ text: '36 1/4', from: 'measured' });
    expect(sizes?.scyeDepth).toMatchObject({ from: 'estimated' });
    expect(sizes?.scyeDepth.spread).toMatch(/^[\d /]+$/);
  });

  test('that is refused says why, in the words of the command line', async () => {
    const { sizes, made, issues } = await draft({ body: { units: 'cm', bustGirth: 'wide' } });
    expect([sizes, made]).toEqual([undefined, undefined]);
    expect(issues).toContainEqual(
      expect.objectContaining({ path: 'bustGirth', message: expect.stringContaining('wide is no number') }),
    );
    const unknown = await draft({ body: await ladyData(), choices: { strapWidth: '900' } });
    expect(unknown.sizes?.bustGirth.text).toBe('92.0');
    expect(unknown.issues).toMatchObject([{ path: 'strapWidth', severity: 'error' }]);
  });

  test('brings what is wanted of the last that could be drawn, where it could not be drawn itself', async () => {
    const body = await ladyData();
    const { made } = await draft({ body, parts: ['lines', 'lesson'] });
    await draft({ body, parts: ['lesson'] });
    const wrong = { body, choices: { strapWidth: '900' } };
    const { ofLast, ...refused } = await draft({ ...wrong, parts: ['lines', 'lesson', 'files'] });
    expect(refused.made).toBeUndefined();
    expect(ofLast).toEqual({ lines: made?.parts.lines });
    // Once, and whatever it is that stands in the way.
    expect((await draft({ ...wrong, parts: ['lines'] })).ofLast).toEqual({});
    const unread = await draft({ body: { ...body, waistGirth: 'wide' }, parts: ['lines', 'seams'] });
    expect(Object.keys(unread.ofLast ?? {})).toEqual(['seams']);
  });
});

describe('a file on the page', () => {
  test.each([
    ['a list', '- 1\n- 2\n'],
    ['nothing', ''],
    ['a slip', 'units: cm\nbustGirth:92\n'],
    ['no YAML', '{{{{'],
    ['a bomb of aliases', `a: &a [x,x,x,x,x,x,x,x,x]\nb: [${'*a,'.repeat(50)}]`],
    ['too much', 'x'.repeat(100_001)],
  ])('that holds %s is refused in a sentence', async (_, text) => {
    expect(await opened(text, 'a.yaml')).toMatchObject({
      kind: 'refused',
      message: expect.stringMatching(/^a\.yaml/),
    });
  });

  test('gives its name to a body that has none', async () => {
    expect(await opened('units: cm', 'stage hand.yaml')).toMatchObject({ body: { name: 'stage hand' } });
  });

  test.each(['yaml', 'json'] as const)('is written as %s and read again the same', async (as) => {
    const body = { ...(await ladyData()), name: 'Lady “../<b>”', bustGirth: '36 1/4', sure: ['bustGirth'] };
    const saved = await answerTo({ kind: 'write', as, body });
    if (saved.kind !== 'written') throw new Error('not written');
    expect(saved.file.name).toBe(`lady-b.${as}`);
    expect(await opened(saved.file.text, saved.file.name)).toMatchObject({ body });
  });
});
