import { plausibleBodies } from '../plausible-bodies.ts';
import { ROUNDS, timesInTurn } from './against.ts';
import { draftsApart, here } from './drafts-apart.ts';
import { figures, table } from './timing.ts';

/** What a trial garment is to take of a dress. */
const GOAL = 0.5;

/**
 * What share of a dress a trial garment takes, measurements to walked pieces: both as they are installed, in one file, each body in turn by
 * both, in processor time of the thread. The least time of each body is what neither garbage nor neighbours disturbed.
 */
export async function benchTrial(count = 50): Promise<string> {
  const { time, end } = await draftsApart(here);
  const runs = ['trial', 'dress'].map((name) => (body: unknown) => time(name, body));
  const [trial, dress] = await timesInTurn(runs, plausibleBodies(count));
  await end();
  if (!trial || !dress) return '';
  const row = (name: string, short: number, long: number): string[] => [
    name,
    figures(short),
    figures(long),
    figures(short / long),
  ];
  return [
    `A trial garment as a share of a dress (goal: less than ${GOAL}), ${count} plausible bodies ${ROUNDS} times in turn`,
    table([
      ['', 'trial, ms', 'dress, ms', 'share'],
      row('mean of each body’s best', trial.best, dress.best),
      row('median', trial.median, dress.median),
    ]),
  ].join('\n');
}
