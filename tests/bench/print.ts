import { spawnSync } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { figures, table } from './timing.ts';

const root = new URL('../../', import.meta.url).pathname;

/** What a whole process may take, ms. */
const goal = 1500;

/**
 * `print dress` on A4 as a whole process, from the start of Node to the PDF: best and median of some runs, after a
 * first one that finds nothing in the system's caches. The program must be built (`npm run build`).
 */
export async function benchPrint(runs = 5): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  try {
    const body = join(root, 'measurements', 'leading-lady.yaml');
    const words = ['print', 'dress', '--body', body, '--paper', 'a4', '--out', join(folder, 'dress.pdf')];
    const print = (): number => {
      const start = performance.now();
      const { status, stderr } = spawnSync(process.execPath, [join(root, 'cli', 'bodkin.js'), ...words]);
      if (status !== 0) throw new Error(`print ended with ${status}: ${stderr}`);
      return performance.now() - start;
    };
    const first = print();
    const times = Array.from({ length: runs }, print).toSorted((a, b) => a - b);
    const at = (share: number): string => figures(times[Math.floor(share * (runs - 1))] ?? 0);
    return [
      `print dress on a4, the whole process, ${runs} runs`,
      table([
        ['', 'best', 'median', 'goal (median)', 'first run'],
        ['ms', at(0), at(0.5), String(goal), figures(first)],
      ]),
    ].join('\n');
  } finally {
    await rm(folder, { recursive: true });
  }
}
