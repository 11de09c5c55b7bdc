import { measurementWords } from '../engine/body/words.ts';
import type { Slope } from '../engine/sensitivity/sensitivity.ts';
import { type Importance, takeAgain } from '../engine/sensitivity/take-again.ts';
import type { SensitivityResult } from './results/body.ts';
import { type Column, fixed, table } from './table.ts';

/** What each measurement is moved by, mm. */
const STEP = 5;
/** The table leaves out what moves less than this, mm. */
const LEAST_SHOWN = 0.3;
/** It names no more seams and levels than this. */
const MOST_NAMED = 5;

const columns: readonly Column[] = [
  { title: 'measurement' },
  { title: 'from' },
  { title: 'likely error', right: true },
  { title: 'girths' },
  { title: 'seams and levels' },
];

/** Which measurements to take again, and how far girths and seams move for 5 mm in each; mm. */
export function sensitivityTable(garment: string, body: string, ranked: readonly Importance[]): string {
  const rows = ranked.map(({ measurement, from, likelyError, slopes }) => [
    measurement,
    from,
    `± ${fixed(likelyError, 0)}`,
    listed(slopes.filter(({ kind }) => kind === 'girth')),
    listed(slopes.filter(({ kind }) => kind === 'seam' || kind === 'level')),
  ]);
  return `${garment} for ${body}: how far girths, seams and levels move for ${STEP} mm in each measurement, in mm

${table(columns, rows)}
Each measurement is changed alone: what was estimated from it stays. The shoulder slope counts by how far it
lowers the shoulder point. A level moves down its edges; the edge on which it moves most is shown.

${againLines(takeAgain(ranked))}`;
}

function againLines(again: readonly Importance[]): string {
  if (again.length === 0) return 'Nothing here depends on a measurement.\n';
  const lines = again.map(({ measurement, from, likelyError, most }, i) => {
    const how = from === 'estimated' ? 'only estimated' : from;
    const off = most ? `; that moves “${most.place.name}” by ${fixed(most.likelyOff, 0)} mm` : '';
    return `${i + 1}. ${measurementWords(measurement)}: ${how}, likely to be ${fixed(likelyError, 0)} mm off${off}\n`;
  });
  return `Take again before cutting:\n${lines.join('')}`;
}

/** The ones that move most, each name once. */
function listed(slopes: readonly Slope[]): string {
  const moves = slopes
    .map(({ name, perMm }) => ({ name, mm: Number(fixed(STEP * perMm, 1)) }))
    .filter(({ mm }) => Math.abs(mm) >= LEAST_SHOWN)
    .toSorted((a, b) => Math.abs(b.mm) - Math.abs(a.mm));
  const firsts = moves.filter(({ name }, i) => moves.findIndex((move) => move.name === name) === i);
  return firsts
    .slice(0, MOST_NAMED)
    .map(({ name, mm }) => `${name} ${mm > 0 ? '+' : ''}${fixed(mm, 1)}`)
    .join('; ');
}

/** The same as data, with every girth, seam, level and edge; mm. */
export const sensitivityResult = (
  ranked: readonly Importance[],
): Pick<SensitivityResult, 'step' | 'takeAgain' | 'measurements'> => ({
  step: STEP,
  takeAgain: takeAgain(ranked).map(({ measurement }) => measurement),
  measurements: ranked.map(({ measurement, from, likelyError, most, slopes }) => ({
    measurement,
    from,
    likelyError: rounded(likelyError),
    movesMost: most ? { ...moved(most.place), likelyOff: rounded(most.likelyOff) } : null,
    moves: slopes.map(moved),
  })),
});

const moved = ({ kind, name, on, perMm }: Slope) => ({
  kind,
  name,
  on: on || null,
  mm: rounded(STEP * perMm),
});

/** To a thousandth, beyond which a derivative says nothing. */
const rounded = (mm: number): number => Number(fixed(mm, 3));
