import { execFile, spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { measurements } from '../engine/bib.ts';

const program = new URL('../../cli/bodkin.js', import.meta.url).pathname;
const runFile = promisify(execFile);

let folder = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

describe('the program as installed', () => {
  test('drafts the dress from any folder, in plain text where nobody sees colours', async () => {
    await writeFile(join(folder, 'body.json'), JSON.stringify(measurements));
    const words = ['draft', 'dress', '--body', 'body.json', '--out', 'out'];
    const { stdout, stderr } = await runFile(process.execPath, [program, ...words], { cwd: folder });
    expect(stdout).toMatch(/^dress for prompter: all true\n/);
    expect(stdout + stderr).not.toContain('\u001b');
    expect(await readdir(join(folder, 'out'))).toContain('sheet.svg');
  });

  test.each([
    ['60', 60],
    ['', 80],
    ['many', 80],
  ])('is no wider than COLUMNS=%j allows where nobody knows the terminal', async (COLUMNS, columns) => {
    const env = { ...process.env, COLUMNS };
    const { stdout } = await runFile(process.execPath, [program, 'list', 'dress'], { env });
    const widest = Math.max(...stdout.split('\n').map((line) => line.length));
    expect(widest).toBeLessThanOrEqual(columns);
    expect(widest).toBeGreaterThan(columns - 6);
  });

  test('walks many bodies on two threads as on one', async () => {
    const rows = Array.from({ length: 40 }, (_, i) =>
      JSON.stringify(i % 10 ? { id: i } : { ...measurements, id: i }),
    );
    const file = join(folder, 'many.ndjson');
    await writeFile(file, rows.join('\n'));
    const walk = async (workers: string): Promise<string> => {
      const words = ['walk', 'bodice', '--bodies', file, '--workers', workers];
      const ran = await runFile(process.execPath, [program, ...words]).catch((error) => error);
      expect(ran.code).toBe(2);
      return ran.stdout.replace(/"milliseconds":[\d.]+/g, '');
    };
    const [one, two] = [await walk('1'), await walk('2')];
    expect(one.split('\n')).toHaveLength(41);
    expect(two).toBe(one);
  });

  test.each(['walk', 'wear'])(
    '%s answers for a body over which every thread dies, and for all others',
    async (command) => {
      const lines = Array.from({ length: 4 }, (_, i) =>
        JSON.stringify(i === 1 ? { id: 'deadly' } : { ...measurements, id: `body ${i}` }),
      );
      const file = join(folder, 'deadly.ndjson');
      await writeFile(file, lines.join('\n'));
      // A thread that is handed the body in question ends, as one does that runs out of memory.
      const deadly = join(folder, 'deadly.mjs');
      await writeFile(
        deadly,
        `import { isMainThread, parentPort } from 'node:worker_threads';
if (!isMainThread) {
  const on = parentPort.on.bind(parentPort);
  parentPort.on = (name, hear) =>
    on(name, (batch) => (JSON.stringify(batch).includes('deadly') ? process.exit(9) : hear(batch)));
}`,
      );
      const words = [program, command, 'skirt', '--bodies', file, '--workers', '2'];
      const ran = await runFile(process.execPath, ['--import', deadly, ...words]).catch((error) => error);
      const answers = ran.stdout
        .trim()
        .split('\n')
        .map((line: string) => JSON.parse(line));
      expect(answers.map(({ id }: { id: unknown }) => id)).toEqual(
        lines.map((_, i) => (i === 1 ? i + 1 : `body ${i}`)),
      );
      for (const [i, { ok, issues }] of answers.entries())
        if (i === 1) expect(issues).toMatchObject([{ code: 'program-fault' }]);
        else expect([i, ok]).toEqual([i, true]);
      expect(ran.stderr).toMatch(/a thread stopped \(.*\); what it had in work is taken up again/);
      expect(ran.code).toBe(70);
    },
    // Threads are begun six times over.
    180_000,
  );

  /** The belt as a draft of one's own, in the folder: its file. */
  const ownBelt = async (name: string, change: (source: string) => string = (same) => same) => {
    const source = readFileSync(new URL('../drafts/belt.ts', import.meta.url), 'utf8');
    const file = join(folder, name);
    const own = source.replaceAll(/'\.\.\/\.\.\/(drafts|engine)\/[^']*'/g, "'bodkin'");
    await writeFile(file, `${change(own)}\nexport default belt;\n`);
    return file;
  };

  test('walks many bodies with a draft of one’s own on two threads, which a body that fills one’s memory does not end', async () => {
    const file = await ownBelt('greedy-belt.ts', (source) =>
      source.replace(
        'const top =',
        `if (size.waistGirth.value > 900)
        for (const kept: unknown[][] = []; ; ) kept.push(new Array(1e6).fill({ girth: size.waistGirth }));
      const top =`,
      ),
    );
    const rows = Array.from({ length: 4 }, (_, i) =>
      JSON.stringify({
        ...measurements,
        id: `body ${i}`,
        ...(i === 1 && { waistGirth: 95, hipGirth: 112, bustGirth: 110 }),
      }),
    );
    const bodies = join(folder, 'greedy.ndjson');
    await writeFile(bodies, rows.join('\n'));
    const words = ['walk', 'belt', '--draft', file, '--bodies', bodies, '--workers', '2'];
    const ran = await runFile(process.execPath, [program, ...words]).catch((error) => error);
    const answers = ran.stdout
      .trim()
      .split('\n')
      .map((line: string) => JSON.parse(line));
    expect(answers.map(({ ok }: { ok: unknown }) => ok)).toEqual([true, false, true, true]);
    expect(answers[1].issues).toMatchObject([{ code: 'program-fault' }]);
    expect(ran.stderr).toMatch(/a thread stopped \(.*memory.*\); what it had in work is taken up again/);
    expect(ran.code).toBe(70);
  }, 120_000);

  test('holds a draft of one’s own to everybody on two threads as on one', async () => {
    await ownBelt('my-belt.ts');
    const prove = async (workers: string): Promise<string> => {
      const words = ['prove', './my-belt.ts', '--tries', '8', '--workers', workers];
      return (await runFile(process.execPath, [program, ...words], { cwd: folder })).stdout;
    };
    const [one, two] = [await prove('1'), await prove('2')];
    expect(one).toMatch(/^belt, held to \d+ drafts [^:]*: [^:]* 0 thrown\n/);
    expect(two).toBe(one);
  });

  describe.runIf(process.platform === 'linux')('with an output that is closed', () => {
    const listed = (garment: string, redirected: string) =>
      new Promise<{ code: unknown; stdout: string; stderr: string }>((resolve) => {
        const line = `"$0" "$1" list ${garment} ${redirected}`;
        execFile('sh', ['-c', line, process.execPath, program], (error, stdout, stderr) =>
          resolve({ code: error?.code ?? 0, stdout, stderr }),
        );
      });
    const lost = 'note: standard output is closed, or leads nowhere; what is printed is lost\n';

    test.each([
      ['>&-', 0, lost],
      ['>/dev/null', 0, ''],
      ['2>&-', 0, ''],
      ['>&- 2>&-', 0, ''],
    ])('says so where there is %s', async (redirected, code, stderr) => {
      const ran = await listed('skirt', redirected);
      expect(ran).toMatchObject({ code, stderr });
      expect(ran.stdout === '').toBe(redirected.includes('>/dev') || redirected.startsWith('>&-'));
    });

    test.each(['>&-', '2>&-', '>&- 2>&-'])('has the exit code of a refusal with %s', async (redirected) => {
      expect((await listed('no-such-garment', redirected)).code).toBe(2);
    });
  });

  test('ends quietly when its reader has seen enough', async () => {
    const child = spawn(process.execPath, [program, 'list']);
    child.stdout.destroy();
    let said = '';
    child.stderr.on('data', (part) => {
      said += part;
    });
    expect(await new Promise((resolve) => child.on('close', resolve))).toBe(0);
    expect(said).toBe('');
  });

  // `sh` knows no pipefail: each part of the pipe writes down how it ended.
  test.each([
    ['a refusal', ['walk', 'bodice', '--body', 'nowhere.yaml'], '2\n'],
    ['what is all true', ['walk', 'trial', '--body', 'body.json', '--json'], '0\n'],
  ])('ends with the code of %s though both its outputs are closed', async (_, words, ended) => {
    await writeFile(join(folder, 'body.json'), JSON.stringify(measurements));
    const line = `{ "${process.execPath}" "${program}" ${words.join(' ')} 2>&1; echo $? >ended; } | true`;
    const { stdout, stderr } = await runFile('sh', ['-c', line], { cwd: folder });
    expect(stdout + stderr).toBe('');
    await expect.poll(() => readFile(join(folder, 'ended'), 'utf8'), { timeout: 20_000 }).toBe(ended);
    await rm(join(folder, 'ended'));
  });

  test.skipIf(!existsSync('/dev/full'))('tells that there is no room for its results', async () => {
    const ran = runFile('sh', ['-c', `"${process.execPath}" "${program}" list >/dev/full`]);
    await expect(ran).rejects.toMatchObject({
      code: 74,
      stderr: expect.stringContaining('the disk is full'),
    });
  });
});
