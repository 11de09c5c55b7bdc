import { describe, expect, it } from 'vitest';
import { hasOwnDraft, runApart } from '../../../cli/apart/run-apart.ts';
import { beltFolder, type Change, leadingLady } from '../own-draft/changed-belt.ts';
import { type Ran, ranBy } from '../session.ts';

const belt = beltFolder();

/** Runs a command line apart, with so many milliseconds to read a draft, and so many MB. */
const apart = (words: readonly string[], reading = 30_000, memory = 200): Promise<Ran> =>
  ranBy((session) => runApart(words, session, { reading, memory }));

const walk = (file: string, ...more: readonly string[]): readonly string[] => [
  ...['walk', 'belt', '--draft', file, '--body', leadingLady],
  ...more,
];

describe('a command line with a draft of one’s own', () => {
  it('is known wherever the draft stands on it', () => {
    expect(hasOwnDraft(['walk', 'belt', '--draft', './b.ts'])).toBe(true);
    expect(hasOwnDraft(['--draft=./b.ts', 'list'])).toBe(true);
    expect(hasOwnDraft(['list', '--draft'])).toBe(true);
    expect(hasOwnDraft(['prove', '--tries', '3', './b.mts'])).toBe(true);
    expect(hasOwnDraft(['prove', 'dress'])).toBe(false);
    expect(hasOwnDraft(['walk', 'dress', '--body', 'a.ts'])).toBe(false);
  });

  it('prints what it prints otherwise, with the same exit code', async () => {
    const { file } = await belt('as-it-is');
    const good = await apart(walk(file));
    expect(good.out).toMatch(/^belt for leading lady: all true\n/);
    expect(good).toMatchObject({ code: 0, err: '' });
    const bad = await apart(walk(file, '--set', 'beltDepth=5000'));
    expect(bad).toMatchObject({
      code: 2,
      out: '',
      err: expect.stringMatching(/^error: “beltDepth” is 5000 mm/),
    });
  }, 60_000);

  const endless: Change = ['const depth = {', 'for (;;) Math.random();\nconst depth = {'];
  const waiting: Change = ['const depth = {', 'await new Promise(() => undefined);\nconst depth = {'];
  const keeping = 'for (const kept: unknown[] = []; ; ) kept.push(new Array(1e6).fill({}));';

  it.each([
    ['runs without end', endless],
    ['waits for what never comes', waiting],
  ])(
    'is refused by name where it %s while it is read',
    async (name, change) => {
      const { file } = await belt(name.replaceAll(' ', '-'), change);
      const ran = await apart(walk(file), 3000);
      const says = 'The draft came to no end in 3 seconds while it was read. Does a loop in it';
      expect(ran).toMatchObject({
        code: 2,
        out: '',
        err: expect.stringContaining(`error: ${file}: ${says}`),
      });
    },
    60_000,
  );

  it.each([
    ['while it is read', ['const depth = {', `${keeping}\nconst depth = {`], ''],
    ['while it draws', ['const top =', `${keeping}\nconst top =`], 'draw: (body'],
  ] as const)(
    'is refused by name, as data too, where it fills the memory %s',
    async (when, change, at) => {
      const { file, lineOf } = await belt(`greedy ${when}`, change);
      const ran = await apart(walk(file, '--json'));
      const source = at ? { source: { file, line: lineOf(at) } } : {};
      expect(JSON.parse(ran.out)).toMatchObject({
        ok: false,
        issues: [{ code: 'draft-fills-memory', ...source }],
      });
      expect(ran.err).toMatch(/filled the memory that it may have, 200 MB/);
      expect(ran.code).toBe(2);
    },
    60_000,
  );
});
