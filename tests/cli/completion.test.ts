import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { garments } from '../../drafts/garments.ts';
import { bodkin } from './session.ts';

const has = (shell: string): boolean => spawnSync(shell, ['-c', 'true']).status === 0;

let folder = '';
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'bodkin-'));
  writeFileSync(join(folder, 'prompter.yaml'), '');
  for (const shell of ['bash', 'zsh', 'fish']) {
    const { out, code } = await bodkin(['completion', shell], { garments });
    expect(code).toBe(0);
    writeFileSync(join(folder, shell), out);
  }
});
afterAll(() => rmSync(folder, { recursive: true }));

const say = (shell: string, ...words: readonly string[]): readonly string[] =>
  execFileSync(shell, ['-c', ...words], { cwd: folder, encoding: 'utf8' })
    .split('\n')
    .filter(Boolean);

/** What bash answers to a line, its cursor at the end. */
const inBash = (line: string): readonly string[] =>
  say(
    'bash',
    `source ./bash; COMP_LINE=$1 COMP_POINT=$2; _bodkin; printf '%s\\n' "\${COMPREPLY[@]}"`,
    'bash',
    line,
    `${line.length}`,
  );

const inFish = (line: string): readonly string[] =>
  say('fish', `source ./fish; complete -C '${line}'`).map((each) => each.split('\t')[0] ?? '');

const lines: readonly (readonly [string, readonly string[]])[] = [
  ['bodkin dr', ['draft']],
  ['bodkin draft tr', ['trial']],
  ['bodkin draft dress --bef', ['--before']],
  ['bodkin draft dress --body pro', ['prompter.yaml']],
  ['bodkin print dress --paper let', ['letter']],
  ['bodkin body x --garment tr', ['trial']],
  ['bodkin completion z', ['zsh']],
  ['bodkin help sens', []],
  ['bodkin explain seam-', ['seam-does-not-walk']],
];

describe.skipIf(!has('bash'))('bash', () => {
  test.each(lines)('completes “%s”', (line, words) => {
    expect(inBash(line)).toEqual(words);
  });

  test('completes the choices of the garment on the line, and their words', () => {
    expect(inBash('bodkin draft dress --body x --set necklineGa')).toEqual(['necklineGathers=']);
    expect(inBash('bodkin draft skirt --body x --set necklineGa')).toEqual([]);
    expect(inBash('bodkin draft --set necklineGa')).toEqual(['necklineGathers=']);
    // Bash has broken the line at the sign, so only what stands behind it is answered.
    expect(inBash('bodkin draft dress --set necklineGathers=f')).toEqual(['fixed']);
  });

  test('offers every command', () => {
    expect(inBash('bodkin ')).toEqual(expect.arrayContaining(['draft', 'walk', 'explain', 'help']));
  });
});

describe.skipIf(!has('fish'))('fish', () => {
  test.each(lines)('completes “%s”', (line, words) => {
    expect(inFish(line)).toEqual(words);
  });

  test('completes the choices of the garment on the line, and their words', () => {
    expect(inFish('bodkin draft dress --set necklineGathers=f')).toEqual(['necklineGathers=fixed']);
    expect(inFish('bodkin draft skirt --set necklineGa')).toEqual([]);
  });
});

describe.skipIf(!has('zsh'))('zsh', () => {
  test('takes the script', () => {
    expect(say('zsh', 'autoload -U compinit; compinit -D; source ./zsh; print $_comps[bodkin]')).toEqual([
      '_bodkin',
    ]);
  });
});
