import { execFileSync } from 'node:child_process';
import {
  appendFile,
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  rm,
  stat,
  truncate,
  writeFile,
} from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeWhole } from '../../../cli/files/whole-file.ts';
import { startWorkers } from '../../../cli/many-bodies/workers.ts';
import { bodkin, filesBelow, ndjson, orderOf, start, until } from './program.ts';

let folder = '';
let file = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  file = join(folder, 'orders.ndjson');
  await writeFile(
    file,
    ndjson(Array.from({ length: 6 }, (_, i) => orderOf(i, { write: ['report', 'svg'] }))),
  );
});
afterAll(() => rm(folder, { recursive: true }));

/** The orders sent into a store of their own, in chunks of two, and worked off there. */
async function workedOff(name: string): Promise<string> {
  const store = join(folder, name);
  await bodkin(['send', file, '--store', store, '--chunk', '2']);
  expect((await bodkin(['work', '--store', store])).code).toBe(0);
  return store;
}

const collect = (...words: string[]) => bodkin(['collect', ...words, '--json']);

describe('orders on one machine', { timeout: 180_000 }, () => {
  it('are the same files as many bodies drafted, by filter, from a store, and on two threads', async () => {
    const rows = (await readFile(file, 'utf8'))
      .trim()
      .split('\n')
      .map((row) => JSON.parse(row));
    const bodies = join(folder, 'bodies.ndjson');
    await writeFile(bodies, ndjson(rows.map(({ id, body }) => ({ ...body, id }))));
    await bodkin(['draft', 'skirt', '--bodies', bodies, '--out', join(folder, 'drafted')]);
    const drafted = await filesBelow(join(folder, 'drafted'));
    expect(drafted.size).toBe(6 * 6);

    const { out } = await bodkin(['work', '-', '--workers', '2'], {}, await readFile(file, 'utf8'));
    const outs = ['filtered', 'stored'].map((name) => join(folder, name)) as [string, string];
    expect((await bodkin(['collect', '-', '--orders', file, '--out', outs[0]], {}, out)).code).toBe(0);
    const store = await workedOff('one');
    expect((await collect('--store', store, '--out', outs[1])).code).toBe(0);
    for (const each of outs) {
      const collected = await filesBelow(each);
      expect(collected.size).toBe(1 + 36);
      for (const [name, bytes] of drafted) expect(collected.get(join('orders', name))).toBe(bytes);
    }
    expect(await readFile(join(outs[0], 'results.ndjson'), 'utf8')).toBe(
      await readFile(join(outs[1], 'results.ndjson'), 'utf8'),
    );
  });

  it('are refused line by line, and the rest is sent', async () => {
    const odd = join(folder, 'odd.ndjson');
    const long = JSON.stringify(orderOf(8, { id: 'x'.repeat(5_000_000) }));
    await writeFile(
      odd,
      ndjson([
        orderOf(1),
        orderOf(2, { id: '../up' }),
        '',
        'nothing',
        orderOf(3, { id: 'RAIL-1' }),
        long,
        orderOf(4),
      ]),
    );
    const store = join(folder, 'odd');
    const { code, out, err } = await bodkin(['send', odd, '--store', store, '--json']);
    expect(code).toBe(2);
    const sent = JSON.parse(out);
    expect(sent).toMatchObject({ ok: false, orders: 2, refused: 4, chunks: 1, published: 0 });
    expect(sent.issues.map(({ code, path }: { code: string; path: string }) => [path, code])).toEqual([
      ['line 2', 'order-id-unsafe'],
      ['line 4', 'not-json'],
      ['line 5', 'order-id-twice'],
      ['line 6', 'line-too-long'],
    ]);
    expect(err.length).toBeLessThan(2000);
    const listed = await readFile(join(store, 'sets', `${sent.set}.refused.ndjson`), 'utf8');
    expect(listed.trim().split('\n')).toHaveLength(4);

    await bodkin(['work', '--store', store]);
    const collected = await collect('--store', store, '--out', join(folder, 'odd-out'));
    expect(collected.code).toBe(2);
    expect(JSON.parse(collected.out)).toMatchObject({ ok: false, orders: 2, allTrue: 2, refused: 4 });

    // A filter answers every line, and the same lines are left out when its answers are collected.
    const filtered = await bodkin(['work', odd]);
    expect(filtered.code).toBe(2);
    expect(filtered.out.trim().split('\n')).toHaveLength(6);
    const again = ['collect', '-', '--orders', odd, '--out', join(folder, 'odd-again'), '--json'];
    const { out: told } = await bodkin(again, {}, filtered.out);
    expect(JSON.parse(told)).toMatchObject({ orders: 2, allTrue: 2, refused: 4 });
    expect(await readdir(join(folder, 'odd-again', 'orders'))).toEqual(['rail-1', 'rail-4']);
  });

  it('are counted: an answer too many, too few, of another or unreadable is refused', async () => {
    const store = await workedOff('counted');
    const names = (await readdir(join(store, 'answers'))).map((name) => join(store, 'answers', name));
    const [first = '', second = ''] = names;
    const whole = await readFile(first);
    const rows = gunzipSync(whole).toString().split('\n');
    const [a, b] = rows;
    for (const [wrong, words] of [
      [gzipSync(`${a}\n`), 'it ends before'],
      [gzipSync(`${a}\n${b}\n${b}\n`), 'more answers than there are orders'],
      [gzipSync(`${b}\n${a}\n`), 'was ordered'],
      [gzipSync(`${a}\n{"id":"rail-1"}\n`), 'line 2 is no answer'],
      [await readFile(second), 'was ordered'],
      [whole.subarray(0, whole.length - 20), 'unexpected end of file'],
      [Buffer.from('nothing'), 'incorrect header check'],
    ] as const) {
      await writeFile(first, wrong);
      const { code, out } = await collect('--store', store, '--out', join(folder, 'wrong'));
      expect(code).toBe(2);
      expect(JSON.parse(out).issues).toMatchObject([
        { code: 'answers-damaged', path: first, message: expect.stringContaining(words) },
      ]);
      expect(await readdir(join(folder, 'wrong'))).not.toContain('results.ndjson');
    }
    // What was told to be damaged is taken away, and worked off again.
    await rm(first);
    expect(JSON.parse((await collect('--store', store, '--out', join(folder, 'wrong'))).out)).toMatchObject({
      issues: [{ code: 'orders-unfinished' }],
    });
    await bodkin(['work', '--store', store]);
    expect(await readFile(first)).toEqual(whole);
    expect((await collect('--store', store, '--out', join(folder, 'wrong'))).code).toBe(0);
  });

  it('are several sets in one store, told apart by name', async () => {
    const store = await workedOff('sets');
    const other = join(folder, 'other.ndjson');
    await writeFile(other, ndjson([orderOf(99)]));
    await bodkin(['send', other, '--store', store]);
    await bodkin(['work', '--store', store]);
    const out = join(folder, 'sets-out');
    expect(JSON.parse((await collect('--store', store, '--out', out)).out).issues[0].code).toBe(
      'set-not-named',
    );
    const { set } = JSON.parse((await bodkin(['send', other, '--store', store, '--json'])).out);
    expect(JSON.parse((await collect('--store', store, '--set', set, '--out', out)).out)).toMatchObject({
      ok: true,
      orders: 1,
    });
    expect((await collect('--store', store, '--set', 'none', '--out', out)).code).toBe(2);
    expect((await collect('--store', folder, '--out', out)).code).toBe(2);
  });

  it('are a Parquet table when asked for, which another hand reads', async () => {
    const odd = join(folder, 'table.ndjson');
    await writeFile(odd, ndjson([orderOf(1), { ...orderOf(2), body: {} }, orderOf(3, { write: [] })]));
    const { out } = await bodkin(['work', odd]);
    const words = ['collect', '-', '--orders', odd, '--out', join(folder, 'table'), '--parquet'];
    await bodkin(words, {}, out);
    // The reader is the Rust implementation of Apache Parquet, compiled to WebAssembly.
    const { readParquet } = await import('parquet-wasm');
    const { tableFromIPC } = await import('apache-arrow');
    const bytes = await readFile(join(folder, 'table', 'results.parquet'));
    const rows = tableFromIPC(readParquet(bytes).intoIPCStream())
      .toArray()
      .map((row) => row.toJSON());
    const results = (await readFile(join(folder, 'table', 'results.ndjson'), 'utf8')).trim().split('\n');
    expect(rows).toHaveLength(3);
    for (const [i, row] of rows.entries()) {
      const { id, garment, drafted, ok, worst, files } = JSON.parse(results[i] ?? '');
      expect(row).toMatchObject({ id, garment, drafted, ok, files: files.length });
      expect([row.worst_seam_mm, row.worst_join_degrees, row.worst_girth_mm]).toEqual([
        worst.seam,
        worst.join,
        worst.girth,
      ]);
    }
    expect(rows[1]).toMatchObject({ drafted: false, codes: expect.stringContaining('measurement') });
  });
});

describe('a file that is written whole', () => {
  it('is there with all its bytes or not at all', async () => {
    const path = join(folder, 'whole.txt');
    async function* failing() {
      yield Buffer.from('begun');
      throw new Error('broken off');
    }
    await expect(writeWhole(path, failing())).rejects.toThrow('broken off');
    await expect(stat(path)).rejects.toThrow('ENOENT');
    await Promise.all([1, 2, 3].map(() => writeWhole(path, [Buffer.from('a'), Buffer.from('b')])));
    expect(await readFile(path, 'utf8')).toBe('ab');
    expect((await readdir(folder)).filter((name) => name.endsWith('.part'))).toEqual([]);
  });
});

/** A small disk of memory, which only the machine's own administrator may mount. */
function smallDisk(path: string, size: string): boolean {
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${size}`, 'tmpfs', path], { stdio: 'ignore' });
    return true;
  } catch {
    process.stderr.write('No small disk can be mounted here: what a full one does is left out.\n');
    return false;
  }
}

/** Writes a file until there is no room for more. */
async function filled(path: string): Promise<void> {
  for (let room = true; room; )
    room = await appendFile(path, Buffer.alloc(4096)).then(
      () => true,
      () => false,
    );
}

describe('a full disk', { timeout: 180_000 }, () => {
  it('is waited for: nothing is lost, and the bytes are as ever', async ({ skip }) => {
    const disk = join(folder, 'disk');
    await mkdir(disk);
    if (!smallDisk(disk, '600k')) return skip();
    try {
      const store = join(disk, 'store');
      const ballast = join(disk, 'ballast');
      await bodkin(['send', file, '--store', store, '--chunk', '2']);
      // All but a few kilobytes are taken: the first chunk begins, and comes to a stop within.
      await filled(ballast);
      await truncate(ballast, (await stat(ballast)).size - 12_288);
      const worker = start(['work', '--store', store]);
      await until(() => worker.err().includes('no room left'));
      expect(
        (await readdir(join(store, 'answers'))).filter((name) => name.endsWith('.gz')).length,
      ).toBeLessThan(3);
      expect((await collect('--store', store, '--out', join(folder, 'full'))).code).toBe(2);
      await rm(ballast);
      expect((await worker.ended).code).toBe(0);
      expect((await collect('--store', store, '--out', join(folder, 'full'))).code).toBe(0);
      const elsewhere = await workedOff('roomy');
      for (const [name, bytes] of await filesBelow(join(elsewhere, 'answers')))
        expect((await readFile(join(store, 'answers', name))).toString('base64')).toBe(bytes);
      // A sender and a collector say so, and leave nothing half written.
      await filled(ballast);
      const other = join(folder, 'more.ndjson');
      await writeFile(other, ndjson(Array.from({ length: 200 }, (_, i) => orderOf(i, { id: `more-${i}` }))));
      const sent = await bodkin(['send', other, '--store', store, '--json']);
      expect(JSON.parse(sent.out).issues).toMatchObject([{ code: 'cannot-write' }]);
      const out = await collect('--store', store, '--out', join(disk, 'out'));
      expect(JSON.parse(out.out).issues).toMatchObject([{ code: 'cannot-write' }]);
      const left = await readdir(disk, { recursive: true });
      expect(left.filter((name) => name.endsWith('.part') || name.endsWith('results.ndjson'))).toEqual([]);
    } finally {
      execFileSync('umount', [disk]);
    }
  });
});

describe('threads', () => {
  it('that never answer are taken for dead, and what they hang over is answered as a fault', async () => {
    const endless = join(folder, 'endless.ts');
    await writeFile(
      endless,
      `import { defineDraft } from 'bodkin';
      export default defineDraft({ name: 'endless', title: 'Endless', shapedBy: [], choices: [], draw: () => { for (;;); } });`,
    );
    const told: string[] = [];
    const task = { does: 'prove', draft: { garment: 'endless', file: endless } } as const;
    const pool = startWorkers<unknown, string>(
      1,
      task,
      (words) => told.push(words),
      (_, error) => String(error),
      6000,
    );
    const { body } = orderOf(1);
    expect(await pool.work([{ body, styling: {} }])).toEqual([
      expect.stringContaining('longer than 6 seconds'),
    ]);
    expect(told).toEqual([expect.stringContaining('longer than 6 seconds')]);
    await pool.stop();
  });
});
