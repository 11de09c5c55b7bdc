import { planLay } from '../../engine/lay/plan-lay.ts';
import { densityOf } from '../../engine/lay/problem.ts';
import { shapesOf } from '../engine/lay/instances.ts';
import { table } from './timing.ts';

/**
 * The best densities published for these instances: record files kept with the solver of arXiv 2509.13329 (2025).
 */
const published = { shirts: 0.9092, trousers: 0.9261 } as const;

/** Processor time of this process so far, seconds: on a shared machine the clock says little. */
const processorTime = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

/** Density against processor time. `npx tsx tests/bench/lay.ts SECONDS SEED NAME`; 60, 1 and both unless said otherwise. */
function benchLay(name: 'shirts' | 'trousers', seconds: number, seed: number): string {
  const problem = shapesOf(name);
  const start = processorTime();
  const spent = (): number => processorTime() - start;
  const moments = [1, 2, 5, 10, 20, 30, 60, 120, 300, 600, seconds].filter((s) => s <= seconds);
  const due = [...new Set(moments)].toSorted((a, b) => a - b);
  const rows = [['seconds', 'rounds', 'density', 'below the best published']];
  const row = (at: number, rounds: number, density: number): string[] => [
    at.toFixed(0),
    String(rounds),
    density.toFixed(4),
    `${(100 * (1 - density / published[name])).toFixed(2)} %`,
  ];
  let last = { rounds: 0, density: 0 };
  for (const { rounds, best } of planLay(problem, seed, () => spent() / seconds)) {
    last = { rounds, density: best ? densityOf(problem, best.length) : 0 };
    while (due.length > 1 && spent() >= (due[0] ?? 0)) rows.push(row(due.shift() ?? 0, rounds, last.density));
  }
  rows.push(row(due.at(-1) ?? seconds, last.rounds, last.density));
  return `${name}, seed ${seed}\n${table(rows)}`;
}

const [seconds = '60', seed = '1', only] = process.argv.slice(2);
for (const name of ['shirts', 'trousers'] as const)
  if (only === undefined || only === name) console.log(`${benchLay(name, Number(seconds), Number(seed))}\n`);
