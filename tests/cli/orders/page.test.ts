import { execFileSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readOrder } from '../../../cli/orders/order.ts';
import { longestId } from '../../../cli/orders/order-id.ts';
import { mostTries } from '../../../cli/orders/queue.ts';
import { order, writings } from '../../../cli/results/orders.ts';
import { bodkin as bodkinHere } from '../session.ts';
import { filesBelow, ndjson, orderOf } from './program.ts';

const root = new URL('../../../', import.meta.url).pathname;
const page = readFileSync(join(root, 'cli/orders.md'), 'utf8');
const blocks = (language: string): readonly string[] =>
  [...page.matchAll(new RegExp(`\`\`\`${language}\\n([^]*?)\`\`\``, 'g'))].map(([, text = '']) => text);

describe('the page on orders', () => {
  it('shows orders that are taken', () => {
    const rows = (blocks('ndjson')[0] ?? '').trim().split('\n');
    expect(rows).toHaveLength(3);
    for (const [i, row] of rows.entries()) expect(readOrder(i + 1, row)).toHaveProperty('order');
  });

  it('names every field, everything that can be written, and the limits', () => {
    for (const field of Object.keys(order.shape)) expect(page).toMatch(new RegExp(`^\\|.*\`${field}\``, 'm'));
    for (const word of writings) expect(page).toContain(`\`${word}\``);
    expect(page).toContain(`at most ${longestId} plain letters`);
    expect(page).toContain('over which five whole workers died');
    expect(mostTries).toBe(5);
  });

  it('names options that there are, and links to what is there', async () => {
    const helps = await Promise.all(['send', 'work', 'collect'].map((name) => bodkinHere([name, '--help'])));
    const help = helps.map(({ out }) => out).join('');
    for (const line of blocks('sh')
      .join('')
      .split('\n')
      .filter((line) => /bodkin (send|work|collect)/.test(line)))
      for (const [option] of line.matchAll(/(?<![\w-])--[a-z][a-z-]+/g)) expect(help).toContain(option);
    for (const [, link = ''] of page.matchAll(/\]\((?!http)([^)#]+)/g))
      expect(existsSync(join(root, 'cli', link)), link).toBe(true);
  });
});

describe('the recipes of the page', { timeout: 180_000 }, () => {
  let folder = '';
  let env: NodeJS.ProcessEnv = {};
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'bodkin-'));
    mkdirSync(join(folder, 'bin'));
    symlinkSync(join(root, 'cli/bodkin.js'), join(folder, 'bin', 'bodkin'));
    env = { ...process.env, PATH: `${join(folder, 'bin')}:${process.env.PATH}` };
    const rows = Array.from({ length: 5 }, (_, i) => orderOf(i));
    writeFileSync(join(folder, 'orders.ndjson'), ndjson([...rows, { ...orderOf(5), body: {} }]));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  /** Runs a script in a folder of its own, with two orders a part, and tells what was collected. */
  function collectedBy(name: string, script: string): Promise<ReadonlyMap<string, string>> {
    const here = join(folder, name);
    mkdirSync(here);
    symlinkSync(join(folder, 'orders.ndjson'), join(here, 'orders.ndjson'));
    const small = script.replaceAll('-l 2000', '-l 2');
    try {
      execFileSync('bash', ['-c', small], { cwd: here, env, stdio: ['ignore', 'ignore', 'pipe'] });
    } catch (error) {
      // One body cannot be drafted, and the collector says so.
      expect((error as { readonly status: number }).status).toBe(2);
    }
    return filesBelow(join(here, 'out'));
  }

  it('of an array job and a parallel shell are five lines each, and collect the same files', async () => {
    const array = blocks('sh').find((block) => block.includes('ARRAY_TASK_ID')) ?? '';
    const parallel = blocks('sh').find((block) => block.includes('parallel one')) ?? '';
    expect([array, parallel].map((block) => block.trim().split('\n').length)).toEqual([5, 5]);
    writeFileSync(join(folder, 'job.sh'), array);
    const collect = parallel.trim().split('\n').at(-1) ?? '';
    const jobs = [0, 1, 2, 1].map((i) => `SLURM_ARRAY_TASK_ID=${i} sh ../job.sh || exit 9`);
    const cut = 'split -d -a 5 -l 2 orders.ndjson part-';
    const byArray = await collectedBy('array', [cut, ...jobs, collect].join('\n'));
    // GNU parallel may not be here; xargs hands out lines likewise.
    const stand = `parallel() { xargs -P 2 -I{} bash -c "$1 {}"; }\n`;
    const byShell = await collectedBy('shell', stand + parallel);
    expect([...byShell.keys()].sort()).toEqual([
      ...[0, 1, 2, 3, 4].map((i) => `orders/rail-${i}/report.json`),
      'results.ndjson',
    ]);
    expect(byArray).toEqual(byShell);
  });
});
