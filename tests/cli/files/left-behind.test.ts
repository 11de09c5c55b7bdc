import { execFile } from 'node:child_process';
import { appendFileSync } from 'node:fs';
import { lstat, mkdir, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { promisify } from 'node:util';
import { build } from 'esbuild';
import { beforeAll, describe, expect, it } from 'vitest';
import { clearLeftBehind, setName } from '../../../cli/files/left-behind.ts';
import { leavingName, thisRun, type WritingRun } from '../../../cli/files/run-name.ts';
import { takingTurns } from '../../../cli/files/taking-turns.ts';
import { writeFiles } from '../../../cli/files/write-files.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const place = temporaryFolder();
let made = 0;
const folder = async (): Promise<string> => {
  const at = place.at(`out-${++made}`);
  await mkdir(at);
  return at;
};

const before = { 'a.svg': 'old a', 'b.svg': 'old b' };
const after = { 'a.svg': 'new a', 'b.svg': 'new b', 'c.svg': 'new c' };

/** What a reader finds under the names of both sets; nothing where there is nothing to read. */
const read = async (at: string): Promise<Record<string, string>> => {
  const found = await Promise.all(
    Object.keys(after).map(async (name) => [name, await readFile(join(at, name), 'utf8').catch(() => '')]),
  );
  return Object.fromEntries(found.filter(([, text]) => text !== ''));
};

const program = (): string => place.at('killed-while-writing.mjs');
const asleep = (): string => place.at('asleep-while-writing.mjs');
beforeAll(async () => {
  await build({
    entryPoints: ['killed-while-writing.ts', 'asleep-while-writing.ts'].map(
      (name) => new URL(name, import.meta.url).pathname,
    ),
    outdir: place.at('.'),
    outExtension: { '.js': '.mjs' },
    bundle: true,
    platform: 'node',
    format: 'esm',
    logLevel: 'silent',
  });
});

/** True once a process has been stopped, as Linux says of it. */
async function standsStill(pid: number): Promise<boolean> {
  for (;;) {
    const state = await readFile(`/proc/${pid}/stat`, 'utf8').catch(() => '');
    if (/\) T /.test(state)) return true;
    await setTimeout(5);
  }
}

/** Runs the writer, killed before that step; how many steps there were, if it came to its end. */
const killedAt = async (at: string, step: number, links: string): Promise<number | undefined> => {
  const files = await place.file('after.json', JSON.stringify(after));
  const ran = promisify(execFile)(process.execPath, [program(), at, files, String(step), links]);
  return ran.then(
    ({ stdout }) => Number(stdout),
    () => undefined,
  );
};

/** No process has this number. */
const dead = 2 ** 22 + 1;

describe('a set of files that takes the place of another', () => {
  it.each([['links'], ['none']])(
    'is the old one or the new one wherever the run is killed, and in order after the next (links: %s)',
    { timeout: 120_000 },
    async (links) => {
      let [steps, turned] = [Number.POSITIVE_INFINITY, false];
      for (let step = 1; step <= steps; step++) {
        const at = await folder();
        await writeFile(join(at, 'notes.txt'), 'mine');
        await writeFiles(at, new Map(Object.entries(before)));
        const ended = await killedAt(at, step, links);
        if (ended !== undefined) steps = ended;
        const found = await read(at);
        // Where there are no links names are taken one by one, and only the next run makes the set whole.
        if (links === 'links') expect([before, after], `killed at step ${step}`).toContainEqual(found);
        await clearLeftBehind(at);
        const settled = await read(at);
        expect([before, after], `put in order after step ${step}`).toContainEqual(settled);
        if (links === 'links') expect(settled).toEqual(found);
        expect(await readFile(join(at, 'notes.txt'), 'utf8')).toBe('mine');
        expect((await readdir(at)).toSorted()).toEqual([...Object.keys(settled), 'notes.txt']);
        for (const name of await readdir(at)) expect((await lstat(join(at, name))).isFile()).toBe(true);
        // Once it is the new set it is never the old one again.
        const isNew = 'c.svg' in settled;
        expect(isNew || !turned).toBe(true);
        turned = isNew;
      }
      expect(steps).toBeGreaterThan(10);
      expect(turned).toBe(true);
    },
  );

  it('is told, and the old one kept, where a file is held by another program and there are no links', async () => {
    const at = await folder();
    await writeFiles(at, new Map(Object.entries(before)));
    const files = await place.file('after.json', JSON.stringify(after));
    await expect(promisify(execFile)(process.execPath, [program(), at, files, '0', 'held'])).rejects.toThrow(
      'open in another program',
    );
    expect(await read(at)).toEqual(before);
    expect((await readdir(at)).toSorted()).toEqual(Object.keys(before));
  });

  it('waits for another run that is writing there, and not for one that was killed', async () => {
    const at = await folder();
    const theirs = join(at, `.bodkin.${process.ppid}.turn`);
    await writeFile(theirs, '');
    await writeFile(join(at, `.bodkin.${dead}.turn`), '');
    let isDone = false;
    const written = writeFiles(at, new Map(Object.entries(after))).then(() => {
      isDone = true;
    });
    await setTimeout(100);
    expect(isDone).toBe(false);
    expect(await read(at)).toEqual({});
    await rm(theirs);
    await written;
    expect((await readdir(at)).toSorted()).toEqual(Object.keys(after));
  });

  it('waits for a run of another machine for as long as its flag is heard of, and then tidies up after it', async () => {
    const at = await folder();
    const other: WritingRun = { machine: 'costume-shop', pid: 7 };
    const flag = join(at, leavingName(other, 'turn'));
    const left = join(at, leavingName(other, 'set'), 'new');
    await mkdir(left, { recursive: true });
    await writeFile(flag, '');
    const beating = setInterval(() => appendFileSync(flag, '.'), 20);
    let isDone = false;
    const written = takingTurns(
      at,
      async ({ isAlive }) => {
        isDone = true;
        await clearLeftBehind(at, isAlive);
      },
      { run: { machine: 'workroom', pid: 9 }, silence: 200 },
    );
    await setTimeout(500);
    expect(isDone).toBe(false);
    expect(await readdir(at)).toContain(leavingName(other, 'set'));
    clearInterval(beating);
    await written;
    expect(isDone).toBe(true);
    expect(await readdir(at)).toEqual([]);
  });

  it('is at it alone among runs of several machines, whichever begins when', async () => {
    const at = await folder();
    let [inside, most, done] = [0, 0, 0];
    const runs = ['a', 'b', 'c'].flatMap((machine) => [1, 2].map((pid): WritingRun => ({ machine, pid })));
    await Promise.all(
      runs.map(async (run, i) => {
        for (let turn = 0; turn < 4; turn++) {
          await setTimeout((7 * i + 3 * turn) % 11);
          const act = async () => {
            inside += 1;
            most = Math.max(most, inside);
            await setTimeout(3);
            inside -= 1;
            done += 1;
          };
          await takingTurns(at, act, { run, silence: 15_000 });
        }
      }),
    );
    expect(done).toBe(24);
    expect(most).toBe(1);
    expect(await readdir(at)).toEqual([]);
  });

  it('is whole wherever a run of another machine sleeps so long that it is taken for gone, and wakes', {
    timeout: 120_000,
  }, async () => {
    const theirs = await place.file('theirs.json', JSON.stringify(after));
    const ours = { 'a.svg': 'our a', 'b.svg': 'our b', 'd.svg': 'our d' };
    let steps = Number.POSITIVE_INFINITY;
    let slept = 0;
    for (let step = 1; step <= steps; step++) {
      const at = await folder();
      await writeFiles(at, new Map(Object.entries(before)));
      const run = execFile(process.execPath, [asleep(), at, theirs, String(step)]);
      const ended = new Promise<string>((resolve) => {
        let said = '';
        run.stdout?.on('data', (text: string) => {
          said += text;
        });
        run.on('close', (code) => resolve(code === 0 ? said : ''));
      });
      const isAsleep = await Promise.race([ended.then(() => false), standsStill(run.pid ?? 0)]);
      if (!isAsleep) {
        steps = Number(await ended);
        continue;
      }
      slept++;
      await writeFiles(at, new Map(Object.entries(ours)), { run: thisRun, silence: 100 });
      const between = await Promise.all(
        Object.keys(ours).map(async (name) => readFile(join(at, name), 'utf8')),
      );
      expect(between, `taken over at step ${step}`).toEqual(Object.values(ours));
      run.kill('SIGCONT');
      // It begins again, and is then the last that wrote; or it had written all, and only its flag was still up.
      expect(Number(await ended), `woken at step ${step}`).toBeGreaterThan(0);
      const found = await read(at);
      const isWhole = [after, { 'a.svg': 'our a', 'b.svg': 'our b', 'c.svg': 'new c' }];
      expect(isWhole, `woken at step ${step}`).toContainEqual(found);
      expect(await readFile(join(at, 'd.svg'), 'utf8')).toBe('our d');
      for (const name of await readdir(at)) expect(name).toMatch(/^[a-d]\.svg$/);
      for (const name of await readdir(at)) expect((await lstat(join(at, name))).isFile()).toBe(true);
    }
    expect(slept).toBeGreaterThan(10);
  });

  it('is whole where many runs write theirs into one folder at once', { timeout: 60_000 }, async () => {
    const at = await folder();
    const names = Array.from({ length: 40 }, (_, i) => `${i}.svg`);
    const sets = await Promise.all(
      ['a', 'b', 'c', 'd'].map((text) =>
        place.file(`${text}.json`, JSON.stringify(Object.fromEntries(names.map((name) => [name, text])))),
      ),
    );
    await Promise.all(
      sets.map((set) => promisify(execFile)(process.execPath, [program(), at, set, '0', 'links'])),
    );
    expect(new Set(await Promise.all(names.map((name) => readFile(join(at, name), 'utf8')))).size).toBe(1);
    expect((await readdir(at)).toSorted()).toEqual(names.toSorted());
  });

  it('keeps what a link that lay there leads to', async () => {
    const at = await folder();
    await place.file('elsewhere', 'theirs');
    await symlink('../elsewhere', join(at, 'a.svg'));
    await writeFiles(at, new Map(Object.entries(after)));
    expect(await read(at)).toEqual(after);
    expect(await readFile(place.at('elsewhere'), 'utf8')).toBe('theirs');
  });
});

describe('what is no file', () => {
  it('keeps its place, for it is a device or a pipe that others use, or the way to standard output', async () => {
    const at = await folder();
    await promisify(execFile)('mkfifo', [join(at, 'a.svg')]);
    await symlink('/dev/null', join(at, 'b.svg'));
    await symlink('/proc/self/fd/1', join(at, 'c.svg'));
    for (const name of Object.keys(after))
      await expect(writeFiles(at, new Map([[name, 'x']]))).rejects.toThrow(/is no file but a device/);
    expect((await lstat(join(at, 'a.svg'))).isFIFO()).toBe(true);
    expect((await lstat(join(at, 'b.svg'))).isSymbolicLink()).toBe(true);
    expect((await lstat(join(at, 'c.svg'))).isSymbolicLink()).toBe(true);
    expect((await readdir(at)).toSorted()).toEqual(Object.keys(after));
  });
});

describe('a folder after a run that was killed', () => {
  it('is put in order by the next run that writes there', async () => {
    const out = await folder();
    await writeFile(join(out, 'sheet.svg'), 'old');
    await mkdir(join(out, setName({ ...thisRun, pid: dead }), 'new'), { recursive: true });
    await writeFile(join(out, setName({ ...thisRun, pid: dead }), 'new', 'sheet.svg'), 'ne');
    await writeFiles(out, new Map([['other.txt', 'x']]));
    expect((await readdir(out)).toSorted()).toEqual(['other.txt', 'sheet.svg']);
    expect(await readFile(join(out, 'sheet.svg'), 'utf8')).toBe('old');
  });

  it('keeps what a run still at work has written', async () => {
    const out = await folder();
    const name = setName({ ...thisRun, pid: process.ppid });
    await mkdir(join(out, name, 'new'), { recursive: true });
    await writeFiles(out, new Map([['other.txt', 'x']]));
    expect(await readdir(out)).toContain(name);
  });

  it('is put in order where one of the same number was killed before', async () => {
    const out = await folder();
    await mkdir(join(out, setName({ ...thisRun, pid: process.pid }), 'new'), { recursive: true });
    await writeFiles(out, new Map([['other.txt', 'x']]));
    expect(await readdir(out)).toEqual(['other.txt']);
  });
});

describe('a folder that cannot be made', () => {
  it('is told at once, in a file system that makes none', async () => {
    await expect(writeFiles('/proc/self/none', new Map([['a', 'b']]))).rejects.toThrow();
  });
});
