import { existsSync, readFileSync } from 'node:fs';
import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { cuttingLines } from '../../../engine/finishing/cut-lines.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import { layTasks, piecesAsked } from '../../../engine/lay-plan/lay-plan.ts';
import { provePlan } from '../../../engine/lay-plan/prove-plan.ts';
import { threadFactors, threadLost } from '../../../engine/materials/thread.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';
import { bodkin } from '../session.ts';

const url = new URL('../../../cli/laying.md', import.meta.url);
const root = new URL('../../../', import.meta.url).pathname;
const page = readFileSync(url, 'utf8');

describe('the page on laying out', () => {
  test('shows a plan of the dress as it is drafted now, proven', () => {
    const { garment } = drafted('dress', shippedBody('leading-lady'));
    const cloth = { width: 1400, folded: true, nap: false, selvedge: 10, gap: 0, shrink: 0, stripe: 0 };
    const tasks = layTasks(garment, cuttingLines(garment, PARALLEL), cloth);
    const [task] = tasks.ok ? tasks.value : [];
    const picture = readFileSync(new URL('laying.svg', url), 'utf8');
    expect(task && provePlan(picture, task.pieces, piecesAsked(garment, 'self'))).toEqual([]);
  });

  test('names options that there are, and links to what is there', async () => {
    const { out: help } = await bodkin(['lay', '--help']);
    const named = new Set([...page.matchAll(/(?<![\w-])--[a-z][a-z-]+/g)].map(([option]) => option));
    expect([...named].filter((option) => !help.includes(`${option} `))).toEqual([]);
    for (const [, link = ''] of page.matchAll(/\]\(([^)#\s]+)/g))
      expect(existsSync(new URL(link, url))).toBe(true);
    const readme = readFileSync(join(root, 'README.md'), 'utf8');
    expect(readme).toContain('(cli/laying.md)');
    expect(readme).toContain('(cli/laying.svg)');
  });

  test('says how much thread the stitches take', () => {
    for (const [stitch, factor] of Object.entries(threadFactors))
      expect(page).toMatch(new RegExp(`\\| ${stitch} [^|]*\\| ${Number(factor.toFixed(1))} m \\|`));
    expect(threadLost).toBe(0.25);
  });

  test('shows shapes that can be laid', async () => {
    const [, shapes = ''] = /```json\n([\s\S]*?)```/.exec(page) ?? [];
    const file = join(await mkdtemp(join(tmpdir(), 'lay-')), 'shapes.json');
    await writeFile(file, shapes);
    const { code, out } = await bodkin(['lay', '--shapes', file, '--rounds', '5']);
    expect(code).toBe(0);
    expect(out).toContain('3 shapes on');
  });
});
