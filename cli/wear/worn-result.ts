import { changeWords, type FittingChange } from '../../engine/body/fitting.ts';
import type { Findings } from '../../engine/wear/findings.ts';
import type { Judged } from '../../engine/wear/judged.ts';
import type { Worn } from '../../engine/wear/worn.ts';

/** What was found on a worn garment and what is made of it, as data. */
export const foundResult = (
  hung: Worn,
  { bustPoint, side, hem, arms, ...findings }: Findings,
  verdicts: readonly Judged[],
  fitting: readonly FittingChange[],
) => ({
  mesh: {
    spacing: hung.spacing,
    points: hung.sewn.sheet.count,
    triangles: hung.sewn.sheet.triangles.length / 3,
  },
  rest: {
    reached: hung.settled.atRest,
    stopped: hung.stopped,
    steps: hung.settled.steps,
    residual: hung.settled.residual,
    net: hung.settled.net,
  },
  ...findings,
  // What was not found is left out.
  ...(bustPoint && { bustPoint }),
  ...(side && { side }),
  ...(hem && { hem }),
  ...(arms && { arms }),
  judged: verdicts.map(({ change, ...figures }) => ({
    ...figures,
    alter: change ? changeWords(change) : null,
    by: change?.mm ?? null,
  })),
  fitting: fitting.map((change) => ({ alter: changeWords(change), by: change.mm })),
});
