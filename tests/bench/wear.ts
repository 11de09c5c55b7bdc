import { spawnSync } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bodice } from '../../drafts/whole-bodice.ts';
import type { WovenCloth } from '../../engine/cloth/cloth.ts';
import { cloths } from '../../engine/cloth/cloths.ts';
import { evaluate } from '../../engine/evaluate.ts';
import { bodyForm } from '../../engine/form/body-form.ts';
import { wornViewNames } from '../../engine/render/form/view.ts';
import { findingsOf } from '../../engine/wear/findings.ts';
import { shownWorn } from '../../engine/wear/shown/shown-worn.ts';
import { wornPicture } from '../../engine/wear/shown/worn-picture.ts';
import { standOfForm } from '../../engine/wear/stand-of-form.ts';
import { worn } from '../../engine/wear/worn.ts';
import { shippedBody } from '../drafts/drafted.ts';
import { type Stage, timeSpent } from './time-spent.ts';
import { figures, table } from './timing.ts';

const root = new URL('../../', import.meta.url).pathname;

const stages: readonly Stage[] = [
  { name: 'draft', file: 'engine/evaluate.ts', function: 'evaluate' },
  { name: 'form', file: 'engine/form/body-form.ts', function: 'bodyForm' },
  {
    name: 'distances to the form',
    file: 'engine/form/distance/distance-field.ts',
    function: 'distanceField',
  },
  { name: 'mesh and sew', file: 'engine/wear/sewn.ts', function: 'sewn' },
  { name: 'lay round', file: 'engine/wear/place.ts', function: 'laidRound' },
  { name: 'stretch', file: 'engine/cloth/membrane.ts', function: 'add' },
  { name: 'bending', file: 'engine/cloth/bending.ts', function: 'add' },
  { name: 'contact', file: 'engine/cloth/contact.ts', function: 'add' },
  { name: 'energy', file: 'engine/cloth/equilibrium.ts', function: 'energy' },
  { name: 'forces together', file: 'engine/cloth/equilibrium.ts', function: '#assemble' },
  { name: 'factor', file: 'engine/numeric/sparse/sparse-cholesky.ts', function: 'factor' },
  { name: 'find', file: 'engine/wear/findings.ts', function: 'findingsOf' },
  { name: 'draw', file: 'engine/wear/shown/worn-picture.ts', function: 'wornSide' },
];

/** What the whole process may take on one core of its own, ms. */
const goals: readonly (readonly [words: readonly string[], goal: number])[] = [
  [['--quick'], 1000],
  [[], 6000],
];

/**
 * A bodice with insert and straps put on: the whole process, from the start of Node to the files (best of some runs, and the
 * processor's time in them), with the most memory it held; and where the time goes. The program must be built.
 */
export async function benchWear(runs = 3): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  try {
    const whole = goals.map(([words, goal]) => wholeProcess(words, folder, goal, runs));
    const spent = await timeSpent(putOn, stages);
    return [
      `wear bodice, the whole process, ${runs} runs`,
      table([['', 'best, ms', 'of the processor', 'goal', 'memory, MB'], ...whole]),
      table([
        ['where the time goes (12 mm)', 'share'],
        ...[...spent].map(([stage, share]) => [stage, `${(share * 100).toFixed(1)} %`]),
      ]),
    ].join('\n');
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** Tells on its last line what a program took of processor and memory. */
const told = `process.on('exit', () => { const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage(); console.error(JSON.stringify([(userCPUTime + systemCPUTime) / 1000, maxRSS / 1000])); });`;

function wholeProcess(
  words: readonly string[],
  folder: string,
  goal: number,
  runs: number,
): readonly string[] {
  const body = join(root, 'measurements', 'leading-lady.yaml');
  const line = ['wear', 'bodice', '--body', body, '--out', folder, ...words];
  const preload = `data:text/javascript,${encodeURIComponent(told)}`;
  const taken = Array.from({ length: runs }, () => {
    const start = performance.now();
    const program = ['--import', preload, join(root, 'cli', 'bodkin.js'), ...line];
    const { status, stderr } = spawnSync(process.execPath, program, { encoding: 'utf8' });
    if (status !== 0) throw new Error(`wear ended with ${status}: ${stderr}`);
    const [processor = 0, memory = 0] = JSON.parse(stderr.trim().split('\n').at(-1) ?? '') as number[];
    return [performance.now() - start, processor, memory] as const;
  });
  const least = (k: 0 | 1): string => figures(Math.min(...taken.map((run) => run[k])));
  const memory = figures(Math.max(...taken.map(([, , held]) => held)));
  return [['wear', ...words].join(' '), least(0), least(1), String(goal), memory];
}

function putOn(): void {
  const made = evaluate(bodice, shippedBody('leading-lady'));
  if (!made.ok) throw new Error('not drafted');
  const { garment, body } = made.value;
  const form = bodyForm(body);
  const stand = standOfForm(form);
  const hung = worn(garment, cloths[1] as WovenCloth, stand, 12);
  findingsOf(garment, hung, stand);
  const shown = shownWorn(form, hung, stand);
  for (const view of wornViewNames) {
    wornPicture(shown, view, garment.name);
    wornPicture(shown, view, garment.name, 'lines');
  }
}
