import { dress } from '../../drafts/dress.ts';
import { trial } from '../../drafts/trial/trial.ts';
import { bodice } from '../../drafts/whole-bodice.ts';
import { evaluate } from '../../engine/evaluate.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { plausibleBodies } from '../plausible-bodies.ts';
import { ownTime } from './own-time.ts';
import { type Stage, timeSpent } from './time-spent.ts';
import { figures, table } from './timing.ts';

/** What is timed, and the goal for a median body on one warm core, ms: for the trial garment half of a dress. */
const garments: readonly { readonly draft: Draft; readonly goal: number }[] = [
  { draft: dress, goal: 25 },
  { draft: bodice, goal: 10 },
  { draft: trial, goal: 12.5 },
];

const stages: readonly Stage[] = [
  { name: 'read the body', file: 'engine/body/read.ts', function: 'readBody' },
  { name: 'draw', file: 'drafts/draw-garment.ts', function: 'drawGarment' },
  { name: 'solve', file: 'engine/constraints/solve.ts', function: 'solve' },
  { name: 'cutting lines', file: 'engine/finishing/cut-lines.ts', function: 'cuttingLines' },
  { name: 'check the garment', file: 'engine/checks/check-garment.ts', function: 'checkGarment' },
  { name: 'check the cutting lines', file: 'engine/checks/cut-ready.ts', function: 'cutReady' },
];

/**
 * The whole way from measurements to walked pieces, for a thousand plausible bodies on one warm core: median, 99th
 * percentile, how many came out true, and where the time goes.
 */
export async function benchGarment(count = 1000): Promise<string> {
  const bodies = plausibleBodies(count);
  const timed = garments.map(({ draft, goal }) => {
    for (const body of bodies.slice(0, count / 10)) evaluate(draft, body);
    const times: number[] = [];
    let allTrue = 0;
    for (const body of bodies) {
      const start = ownTime();
      const found = evaluate(draft, body);
      times.push(ownTime() - start);
      if (found.ok && found.value.report.ok) allTrue++;
    }
    const sorted = times.toSorted((a, b) => a - b);
    const at = (share: number): string => figures(sorted[Math.floor(share * (sorted.length - 1))] ?? 0);
    return [`${draft.name}, ms`, at(0.5), at(0.99), String(goal), `${allTrue} of ${count}`];
  });
  const spent = await timeSpent(() => {
    for (const body of bodies.slice(0, count / 3)) evaluate(dress, body);
  }, stages);
  return [
    `A garment, measurements to walked pieces, ${count} plausible bodies`,
    table([['', 'median', 'p99', 'goal (median)', 'all true'], ...timed]),
    table([
      ['where the time goes (dress)', 'share'],
      ...[...spent].map(([stage, share]) => [stage, `${(share * 100).toFixed(1)} %`]),
    ]),
  ].join('\n');
}
