import { describe, expect, test } from 'vitest';
import { toldIssues } from '../../../cli/page/requests/told-issues.ts';
import { evaluate, garments, readBody } from '../../../drafts/index.ts';

const lady = {
  name: 'leading lady',
  units: 'cm',
  bustGirth: 92,
  waistGirth: 74,
  hipGirth: 98,
  backNeckPointToWaist: 41,
};

/** A name as files write it: nobody on the page has typed one. */
const fileWords = /\b[a-z]+[A-Z]|sure:|reconcile:|units:/;

const saidOf = (body: object): readonly string[] =>
  toldIssues(readBody({ ...lady, ...body }).issues, 'cm').map(({ message }) => message);

describe('what is said on the page', () => {
  test('offers the tick for what was taken twice, not a line of a file', () => {
    const [said] = saidOf({ waistGirth: 47 });
    expect(said).toContain('tick “Taken twice: let it stand”');
    expect(said).not.toMatch(fileWords);
  });

  test('speaks of units as they are chosen there', () => {
    const said = saidOf({ bustGirth: 920, waistGirth: 740, hipGirth: 980, backNeckPointToWaist: 410 });
    expect(said).toEqual(['These numbers look like millimetres, but cm is chosen as her unit. Choose mm.']);
  });

  test.each([
    { sleeve: 'plain', sleeveLength: 5, sleeveHemAllowance: 40 },
    { hemSweep: 9000 },
    { necklineFullness: 3 },
    { front: 'gathered', neckline: 'round' },
    { strapWidth: 400 },
    { neckline: 'octagonal' },
  ])('calls a choice by its name there (%o)', (styling) => {
    const made = evaluate(garments.dress, lady, styling);
    const issues = made.ok ? made.value.report.issues : made.issues;
    const said = toldIssues(issues, 'cm').map(({ message }) => message);
    expect(said.length).toBeGreaterThan(0);
    for (const message of said) expect(message).not.toMatch(fileWords);
  });

  test('keeps the names of code, where code is what is spoken of', () => {
    const message = 'There is no `bustGrith`: did you mean `bustGirth`?';
    const [said] = toldIssues([{ code: 'draft-mistake', severity: 'error', path: '', message }], 'cm');
    expect(said?.message).toBe(message);
  });
});
