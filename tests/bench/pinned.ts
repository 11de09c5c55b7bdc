import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { plausibleBodies } from '../plausible-bodies.ts';
import { figures, table } from './timing.ts';

const program = new URL('../../cli/bodkin.js', import.meta.url).pathname;

/** A pinned run, which prints when it has ended its seconds of a processor: its own, and the system's for it. Some bodies are refused. */
const timed =
  'TIMEFORMAT="%U %S"; time taskset -c "$1" "$2" "$3" walk dress --bodies "$4" --workers 1 >/dev/null || true';

const run = promisify(execFile);

/**
 * `walk --bodies` by one worker, and by two that share the bodies, each kept to one core with all threads that V8 has beside it. One that
 * is not kept so takes up to 1.4 cores, and two of them have no more than two. The time that a worker has had of its core is
 * how long it would have had an idle one, so that a busy machine gives nearly the figures of a quiet one.
 */
export async function benchPinned(count = 10_000): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  try {
    const lines = plausibleBodies(count).map((body) => `${JSON.stringify(body)}\n`);
    const parts = [lines, lines.slice(0, count / 2), lines.slice(count / 2)];
    const files = parts.map((_, i) => join(folder, `bodies-${i}.ndjson`));
    for (const [i, file] of files.entries()) await writeFile(file, parts[i]?.join('') ?? '');
    const [all = '', first = '', second = ''] = files;
    const one = await seconds(all, 0);
    const two = Math.max(...(await Promise.all([seconds(first, 0), seconds(second, 1)])));
    return [
      `walk dress --bodies, ${count} bodies, each worker kept to one core`,
      table([
        ['', 'seconds of its core', 'bodies a second', 'times one'],
        ['one worker', figures(one), figures(count / one), '1'],
        ['two workers', figures(two), figures(count / two), figures(one / two)],
      ]),
    ].join('\n');
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** Seconds of its core that a worker kept to one takes for the bodies in a file. */
async function seconds(file: string, core: number): Promise<number> {
  const { stderr } = await run('bash', ['-c', timed, 'bash', String(core), process.execPath, program, file]);
  const [user = '', system = ''] = stderr.trim().split('\n').at(-1)?.split(' ') ?? [];
  return Number(user) + Number(system);
}
