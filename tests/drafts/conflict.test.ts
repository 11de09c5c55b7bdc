import { describe, expect, it } from 'vitest';
import { bodice } from '../../drafts/whole-bodice.ts';
import { readBody } from '../../engine/body/read.ts';
import { evaluate } from '../../engine/evaluate.ts';
import type { Issue } from '../../engine/issue.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { resolveStyling } from '../../engine/pattern/styling-values.ts';
import { beltFolder, type Change, leadingLady } from '../cli/own-draft/changed-belt.ts';
import { bodkin } from '../cli/session.ts';
import { surveyBody } from '../plausible-bodies.ts';

const belt = beltFolder();

const also = (statement: string): Change => [
  "isLong('it is evenly deep'",
  `${statement},\n        isLong('it is evenly deep'`,
];

describe('two things that a draft asks and that exclude each other', () => {
  const refused = async (name: string, statement: string): Promise<Issue> => {
    const { file } = await belt(name, also(statement));
    const ran = await bodkin(['walk', 'belt', '--draft', file, '--body', leadingLady, '--json']);
    expect(ran.code).toBe(2);
    return JSON.parse(ran.out).issues[0];
  };

  it('are both named, and no measurement is blamed where each is found from the same ones', async () => {
    const issue = await refused('longer', "isLong('the top is longer', [upper], top.value + 10)");
    expect(issue.code).toBe('draft-cannot-agree');
    expect(issue.message).toMatch(
      /“the top is half the waist” .* and “the top is longer” .* exclude each other/,
    );
    expect(issue.message).not.toMatch(/[Mm]easure again/);
    // The compromise shares the 10 mm.
    expect(issue.relations).toMatchObject(
      ['the top is half the waist', 'the top is longer'].map((name) => ({
        name,
        value: expect.closeTo(name.endsWith('longer') ? -5 : 5, 5),
        unit: 'mm',
        limits: { min: -1e-6, max: 1e-6, unit: 'mm' },
        whose: 'measurement',
        from: [
          { kind: 'measurement', name: 'waistGirth' },
          { kind: 'choice', name: 'waistEase' },
        ],
      })),
    );
  });

  it('are the draft’s fault where it asks for a number of its own, which fits nobody of middle size either', async () => {
    const issue = await refused('fixed', "isLong('the top is as in the book', [upper], 400)");
    expect(issue).toMatchObject({ code: 'draft-cannot-agree', value: 7.5, limits: { unit: 'mm' } });
    expect(issue.message).toMatch(/“the top is as in the book” \(the draft’s own\)/);
    expect(issue.message).toMatch(/woman of middle size/);
    expect(issue.relations?.map(({ name, whose }) => [name, whose])).toEqual([
      ['the top is half the waist', 'measurement'],
      ['the top is as in the book', 'draft'],
    ]);
  });

  it('are a choice’s where one of them was chosen', async () => {
    const issue = await refused('chosen', "isLong('it is as deep once more', [back], 2 * styling.beltDepth)");
    expect(issue.relations).toMatchObject([
      { name: 'it is as deep once more', whose: 'choice', from: [{ kind: 'choice', name: 'beltDepth' }] },
      { name: 'it is evenly deep', whose: 'choice' },
    ]);
    expect(issue.message).not.toMatch(/[Mm]easure again/);
  });
});

describe('a bodice that cannot be drafted', () => {
  // Much room at bust and waist and none between them: the princess lines cannot swing so far out, in, and out again.
  const swung = { bustEase: 160, underBustEase: 0, waistEase: 120, underBustDrop: 40, princessOffset: -20 };
  const body = surveyBody(1);

  it('on account of its styling names what excludes each other with the choices, and what of it is theirs', () => {
    const [issue] = evaluate(bodice as Draft, body, swung).issues;
    expect(issue?.code).toBe('styling-cannot-agree');
    expect(issue?.message).toMatch(/With them “.+” .*exclude each other/);
    expect(issue?.relations?.length).toBeGreaterThan(1);
    const chosen = issue?.relations?.filter(({ whose }) => whose === 'choice') ?? [];
    expect(chosen.length).toBeGreaterThan(0);
    for (const { from } of chosen) expect(from).toContainEqual({ kind: 'choice', name: issue?.path });
  });

  it('for one body and styling names measurements to take again and choices to make otherwise', () => {
    const [read, chosen] = [readBody(body), resolveStyling(bodice.choices, swung)];
    if (!read.ok || !chosen.ok) throw new Error('unreadable');
    const [issue] = (bodice as Draft).draw(read.value, chosen.value).issues;
    expect(issue?.code).toBe('cannot-agree');
    expect(issue?.message).toMatch(
      / exclude each other\. .* Measure again: bust girth \(.*\. Choose otherwise: /,
    );
    expect(issue?.relations?.map(({ whose }) => whose)).toContain('measurement');
    expect(issue?.value).toBe(issue?.relations?.[0]?.value);
  });
});

describe('what is asked with one word of a choice alone', () => {
  it('is that choice’s, by its word', async () => {
    const { file } = await belt(
      'worded',
      [
        'const choices = [waistEase, depth,',
        "const cutChoice = { kind: 'word', name: 'cutOf', default: 'two', words: ['two', 'one'], help: 'of how many parts' } as const;\nconst choices = [cutChoice, waistEase, depth,",
      ],
      also("...(styling.cutOf === 'one' ? [isLong('it is cut of one', [upper], 400)] : [])"),
    );
    const words = ['walk', 'belt', '--draft', file, '--body', leadingLady, '--set', 'cutOf=one', '--json'];
    const ran = await bodkin(words);
    expect(ran.code).toBe(2);
    const [issue] = JSON.parse(ran.out).issues;
    expect(issue.message).toContain('from the choice cutOf: one');
    const one = issue.relations.find(({ name }: { name: string }) => name === 'it is cut of one');
    expect(one).toMatchObject({ whose: 'choice', from: [{ kind: 'choice', name: 'cutOf', word: 'one' }] });
  });
});
