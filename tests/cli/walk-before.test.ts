import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { garments } from '../../drafts/garments.ts';
import { measurements } from '../engine/bib.ts';
import { bodkin } from './session.ts';

let folder = '';
let before = '';
let after = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  [before, after] = [join(folder, 'before.json'), join(folder, 'after.json')];
  const fitting = [{ 'take in': 'side seam', level: 'waist', by: 1 }];
  await writeFile(before, JSON.stringify(measurements));
  await writeFile(after, JSON.stringify({ ...measurements, fitting }));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

const walk = (...words: readonly string[]) =>
  bodkin(['walk', 'dress', '--body', after, ...words], { garments });

describe('walk --before', () => {
  test('prints what moved, by how much and on which pieces, and what did not', async () => {
    const { code, out } = await walk('--before', before);
    expect(code).toBe(0);
    expect(out).toMatch(/^side front +waist +[\d.]+ +[\d.]+ +-(9|10)\.\d +\d/m);
    expect(out).toMatch(/^not moved: .*strap/m);
    expect(out).not.toMatch(/^insert +neckline/m);
  });

  test('as JSON adds the moves to what walk prints', async () => {
    const { out } = await walk('--before', before, '--json');
    const { moves, ok } = JSON.parse(out);
    expect(ok).toBe(true);
    expect(moves[0]).toMatchObject({ kind: 'redrawn', piece: 'centre front' });
    expect(Object.keys(moves[0].edges[0])).toEqual(['edge', 'before', 'after', 'moved']);
  });

  test('says that nothing moved when nothing did', async () => {
    const { out } = await bodkin(['walk', 'dress', '--body', before, '--before', before], { garments });
    expect(out).toMatch(/since .*before\.json.*\n\n\nnot moved: centre front, /);
  });

  test('names the earlier file when that cannot be read', async () => {
    const { code, err } = await walk('--before', join(folder, 'none.yaml'));
    expect(code).toBe(2);
    expect(err).toContain('none.yaml');
  });
});
