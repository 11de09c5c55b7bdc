import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { codesByTopic, explanations, knownCodes } from '../../engine/issue-codes/issue-codes.ts';

const root = new URL('../../', import.meta.url).pathname;

const sources = ['engine', 'drafts', 'cli']
  .flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts') && !file.startsWith('issue-codes'))
      .map((file) => readFileSync(join(root, folder, file), 'utf8')),
  )
  .join('\n');

/** The codes that are put together of two words, where they are raised. */
const composed = ['sewing-seam-left-out', 'sewing-edge-left-out', 'sewing-seam-twice', 'sewing-edge-twice'];

/** What tests say, but for the sheets that are looked at and the list of codes itself. */
const tested = readdirSync(join(root, 'tests'), { recursive: true, encoding: 'utf8' })
  .filter(
    (file) => file.endsWith('.ts') && !file.startsWith('snapshots') && !file.endsWith('issue-codes.test.ts'),
  )
  .map((file) => readFileSync(join(root, 'tests', file), 'utf8'))
  .join('\n');

describe('the codes of issues', () => {
  it.each(knownCodes)('stand each in a test: %s', (code) => {
    expect(new RegExp(`(?<![\\w-])${code}(?![\\w-])`).test(tested)).toBe(true);
  });

  it('stand each under one topic', () => {
    const all = Object.values(codesByTopic).flatMap((codes) => Object.keys(codes));
    expect(all.filter((code, i) => all.indexOf(code) !== i)).toEqual([]);
    expect([...knownCodes].sort()).toEqual(all.sort());
  });

  it('are short names in kebab case, none marked as a draft’s own', () => {
    for (const code of knownCodes) expect(code).toMatch(/^(?!own-)[a-z]+(-[a-z]+)*$/);
  });

  it.each(knownCodes.filter((code) => !composed.includes(code)))('are all raised somewhere: %s', (code) => {
    expect(sources).toContain(`'${code}'`);
  });

  it.each(knownCodes)('say in a line what they mean and what to do: %s', (code) => {
    const says = explanations[code];
    expect(says).toMatch(/^[A-Z].*\.$/);
    expect(says.length).toBeGreaterThan(30);
    expect(says.length).toBeLessThanOrEqual(160);
    expect(says).not.toContain('|');
  });
});
