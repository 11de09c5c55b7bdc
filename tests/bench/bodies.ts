import { execFile, spawn } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { plausibleBodies } from '../plausible-bodies.ts';
import { figures, table } from './timing.ts';

const program = new URL('../../cli/bodkin.js', import.meta.url).pathname;

/** Milliseconds between two looks at how much memory the program holds. */
const pause = 200;

/** `walk --bodies` over ten thousand bodies, on one thread and on two: bodies a second, and memory over time. */
export async function benchBodies(count = 10_000): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  try {
    const file = join(folder, 'bodies.ndjson');
    await writeFile(
      file,
      plausibleBodies(count)
        .map((body) => `${JSON.stringify(body)}\n`)
        .join(''),
    );
    const rows = [];
    for (const workers of [1, 2]) rows.push(await walked(file, workers, count));
    return [`walk dress --bodies, ${count} bodies`, table([head, ...rows])].join('\n');
  } finally {
    await rm(folder, { recursive: true });
  }
}

const head = ['', 'bodies a second', 'memory after a quarter, MB', 'most after that, MB'];

async function walked(file: string, workers: number, count: number): Promise<string[]> {
  const start = performance.now();
  const words = ['walk', 'dress', '--bodies', file, '--workers', String(workers)];
  const child = spawn(process.execPath, [program, ...words], { stdio: ['ignore', 'pipe', 'inherit'] });
  let lines = 0;
  child.stdout.on('data', (part: Buffer) => {
    for (const byte of part) if (byte === 0x0a) lines++;
  });
  const ended = new Promise((resolve) => child.once('close', resolve));
  let [early, late] = [0, 0];
  const watch = setInterval(async () => {
    const held = await megabytes(child.pid);
    if (lines < count / 4) early = Math.max(early, held);
    else late = Math.max(late, held);
  }, pause);
  await ended;
  clearInterval(watch);
  const seconds = (performance.now() - start) / 1000;
  const name = `${workers} worker${workers === 1 ? '' : 's'}`;
  return [name, figures(lines / seconds), figures(early), figures(late)];
}

const ask = promisify(execFile);

/** Memory that a process holds now (its resident set), MB; nothing once it has ended. */
async function megabytes(pid: number | undefined): Promise<number> {
  const asked = await ask('ps', ['-o', 'rss=', '-p', String(pid)]).catch(() => ({ stdout: '0' }));
  return Number(asked.stdout) / 1024;
}
