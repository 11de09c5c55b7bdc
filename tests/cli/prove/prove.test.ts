import { describe, expect, it } from 'vitest';
import { beltFolder } from '../own-draft/changed-belt.ts';
import { bodkin } from '../session.ts';

const belt = beltFolder();
const few = ['--tries', '12', '--workers', '1'];
const proved = async (file: string, ...words: readonly string[]) => {
  const ran = await bodkin(['prove', file, ...few, ...words, '--json']);
  return { ...ran, result: JSON.parse(ran.out) };
};

describe('prove', () => {
  it('holds a draft of one’s own to every body and choice, and says that it is true', async () => {
    const { file } = await belt('true');
    const { code, out } = await bodkin(['prove', file, ...few]);
    expect(out).toMatch(
      /^belt, held to \d+ drafts \(seed 1\): \d+ drawn true, 0 refused by name, 0 drawn and not true, 0 thrown\n/,
    );
    expect(out).toContain('points left to the wishes: back top; back bottom');
    expect(code).toBe(0);
  });

  it('tells what is refused, what is not true and what is thrown apart, each with its smallest case', async () => {
    const { file, lineOf } = await belt(
      'four',
      [
        'const frontTop =',
        `if (styling.beltDepth > 95) throw new Error('no cloth');
      if (styling.waistEase > 100) refuse({ code: 'too-loose', severity: 'error', path: 'waistEase', message: 'It would slip.' });
      const frontTop =`,
      ],
      ['styling, sketch, mm, ratio }', 'styling, sketch, mm, ratio, refuse }'],
      [
        'ease: styling.waistEase,',
        "ease: styling.waistEase + (styling.notchType === 'wedge' && styling.seamFinish === 'pinked' ? 9 : 0),",
      ],
    );
    const { code, result } = await proved(file, '--tries', '120');
    expect(code).toBe(1);
    expect(result.ok).toBe(false);
    const said = result.groups.map(
      ({
        outcome,
        code,
        failure,
        smallest,
      }: Record<string, unknown> & { readonly smallest: { styling: object } }) => ({
        outcome,
        code,
        failure,
        choices: Object.keys(smallest.styling).toSorted(),
      }),
    );
    expect(said).toEqual([
      { outcome: 'thrown', code: 'draft-mistake', failure: true, choices: ['beltDepth'] },
      {
        outcome: 'not true',
        code: 'girth-does-not-close',
        failure: true,
        choices: ['notchType', 'seamFinish'],
      },
      { outcome: 'refused', code: 'too-loose', failure: false, choices: ['waistEase'] },
    ]);
    expect(result.groups[0].issue.source).toEqual({ file, line: lineOf('no cloth') });
    for (const { smallest } of result.groups) expect(smallest.body.name).toBe('leading lady');
    const sum = Object.values<number>(result.counts).reduce((a, b) => a + b, 0);
    expect(sum).toBe(result.drafts);
  });

  it('tells what changes nothing: a measurement that shapes it, a choice', async () => {
    const { file } = await belt(
      'idle',
      ["shapedBy: ['waistGirth'", "shapedBy: ['wristGirth', 'waistGirth'"],
      [
        'const choices = [waistEase, depth,',
        "const choices = [waistEase, depth, { ...depth, name: 'buckle' },",
      ],
    );
    const { code, out } = await bodkin(['prove', file, ...few]);
    expect(out).toContain('measurements that shapedBy names, and that change nothing: wristGirth');
    expect(out).toContain('choices that change nothing: buckle; sideAllowance;');
    expect(code).toBe(0);
    const { result } = await proved((await belt('busy')).file);
    // The belt takes all choices of making, and has neither sides nor raw edges.
    const idle = ['sideAllowance', 'centreBackAllowance', 'seamFinish'];
    expect(result.idle).toEqual({ measurements: [], choices: idle });
  });

  it.each([
    [
      'a choice',
      ['styling: chosen,', 'styling: { ...chosen, beltDepth: 50 },'],
      /handed 60 as the choice beltDepth and draws with 50/,
    ],
    [
      'a measurement',
      ['body, solver }', 'body: { ...body, size: { ...body.size, waistGirth: 700 } }, solver }'],
      /handed \d+ as the waist girth and draws with 700/,
    ],
  ] as const)('tells that a draft sets %s itself', async (what, change, says) => {
    const { file } = await belt(`sets ${what}`, change);
    const { code, result } = await proved(file);
    expect(code).toBe(1);
    const group = result.groups.find((each: { code: string }) => each.code === 'draft-given-otherwise');
    expect(group).toMatchObject({ outcome: 'not true', issue: { message: expect.stringMatching(says) } });
    expect(group.issue.source.file).toBe(file);
  });

  it('tells a fault for large bodies only of the one of them that is most like the leading lady', async () => {
    const { file } = await belt('large', [
      'ease: styling.waistEase,',
      'ease: styling.waistEase + (size.hipGirth.value > 1150 && styling.beltDepth > 80 ? 9 : 0),',
    ]);
    const { result } = await proved(file, '--tries', '60');
    expect(result.groups).toMatchObject([
      { code: 'girth-does-not-close', smallest: { body: { name: 'wardrobe mistress' } } },
    ]);
    expect(Object.keys(result.groups[0].smallest.styling)).toEqual(['beltDepth']);
    const { out } = await bodkin(['prove', file, '--tries', '60', '--workers', '1'], { columns: 60 });
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(60);
  });

  it('fails where nobody can be drafted, though each is refused by name', async () => {
    const { file } = await belt('nobody', [
      "isLong('it is evenly deep'",
      "isLong('the top is longer', [upper], top.value + 10),\n        isLong('it is evenly deep'",
    ]);
    const { code, out } = await bodkin(['prove', file, ...few, '--tries', '0']);
    expect(code).toBe(1);
    expect(out).toContain('Nobody can be drafted');
    expect(out).toContain('to be mended, refused by name: draft-cannot-agree');
  });

  it('tells the writer what is said twice and what nothing holds', async () => {
    const { file } = await belt(
      'notes',
      [
        "isLong('it is evenly deep'",
        "isLong('it is deep', [back], styling.beltDepth),\n        isLong('it is evenly deep'",
      ],
      ['const frontTop =', "sketch.length('forgotten', 10);\n      const frontTop ="],
    );
    const { result } = await proved(file, '--tries', '0');
    expect(result.notes ?? result.sketch).toMatchObject({
      redundant: ['it is evenly deep'],
      adrift: ['forgotten'],
    });
  });

  it('tells of two steps of one title, with a line of it', async () => {
    const { file, lineOf } = await belt('titles', ['Half belt, bottom:', 'Half belt, top:']);
    const { code, result } = await proved(file, '--tries', '0');
    expect(result.groups).toMatchObject([
      {
        outcome: 'not true',
        code: 'draft-steps-alike',
        failure: true,
        issue: { path: 'Half belt, top', source: { file, line: lineOf('Half belt, top:') } },
      },
    ]);
    expect(code).toBe(1);
  });

  it('is the same for the same seed, and another for another', async () => {
    const { file } = await belt('seeds');
    const [once, again, other] = [await proved(file), await proved(file), await proved(file, '--seed', '2')];
    expect(again.out).toBe(once.out);
    expect(other.result.seed).toBe(2);
  });

  it('asks for a number where it is given none', async () => {
    const { code, err } = await bodkin(['prove', 'bib', '--tries', 'many']);
    expect(code).toBe(2);
    expect(err).toContain('whole number');
  });

  it('holds a garment of the program to its own cases', async () => {
    const { code, out } = await bodkin(['prove', 'bib', ...few]);
    expect(out).toMatch(/^bib, held to \d+ drafts/);
    expect([0, 1]).toContain(code);
  });
});
