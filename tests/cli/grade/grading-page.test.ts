import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { skirt } from '../../../drafts/skirt/skirt.ts';
import { alignments } from '../../../engine/grading/anchor.ts';
import { EVEN } from '../../../engine/grading/evenness.ts';
import type { Draft } from '../../../engine/pattern/draft.ts';
import { chartOf, draftOf, gradedBy, shippedChart } from '../../engine/grading/charts.ts';
import { bodkin } from '../session.ts';

const url = new URL('../../../cli/grading.md', import.meta.url);
const root = new URL('../../../', import.meta.url).pathname;
const page = readFileSync(url, 'utf8');
const blocks = (language: string): readonly string[] =>
  [...page.matchAll(new RegExp(`\`\`\`${language}\\n([^]*?)\`\`\``, 'g'))].map(([, text = '']) => text);

describe('the page on grading', () => {
  it('shows charts that are read, and drafted true', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
    const [table = ''] = blocks('csv');
    const [chart = ''] = blocks('yaml');
    for (const [name, text] of [
      ['chart.csv', table],
      ['chart.yaml', chart],
    ] as const) {
      const path = join(folder, name);
      await writeFile(path, text);
      const { code, out } = await bodkin(['grade', 'skirt', '--sizes', path], { garments: [skirt as Draft] });
      expect(code).toBe(0);
      expect(out).toContain('all true');
    }
    await rm(folder, { recursive: true });
    const [, beside = ''] = blocks('yaml');
    const { sizes } = parse(beside);
    expect(sizes.at(-1).from).toBeDefined();
    expect(sizes.at(-2).body).toBeDefined();
  });

  it('begins as the command that it shows begins', () => {
    const [shown = ''] = blocks('text');
    const grade = gradedBy(draftOf('dress'), chartOf(shippedChart('workshop-stock.yaml')));
    const uneven = grade.axes.reduce((sum, axis) => sum + axis.uneven.length, 0);
    expect(shown).toContain(
      `dress in ${grade.sizes.length} sizes of ${grade.chart.name}: all true, ${uneven} uneven steps`,
    );
  });

  it('lists the places that nests may lie on, and the bound of what is even', () => {
    for (const name of alignments) expect(page).toContain(`| \`${name}\` |`);
    expect(page).toContain(`may differ by ${EVEN} mm`);
  });

  it('names the charts that ship, options that there are, and links to what is there', async () => {
    const charts = readdirSync(join(root, 'measurements/charts'));
    expect(charts.length).toBeGreaterThan(3);
    const helps = [await bodkin(['grade', '--help']), await bodkin(['lay', '--help'])];
    const help = helps.map(({ out }) => out).join('\n');
    const named = new Set([...page.matchAll(/(?<![\w-])--[a-z][a-z-]+/g)].map(([option]) => option));
    expect([...named].filter((option) => !help.includes(`${option} `))).toEqual([]);
    for (const [, link = ''] of page.matchAll(/\]\(([^)#\s]+)/g))
      expect(existsSync(new URL(link, url))).toBe(true);
    expect(readFileSync(join(root, 'README.md'), 'utf8')).toContain('(cli/grading.md)');
  });
});
