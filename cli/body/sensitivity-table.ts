import { measurementWords } from '../../engine/body/measurement-words.ts';
import type { Slope } from '../../engine/sensitivity/sensitivity.ts';
import { type Importance, takeAgain } from '../../engine/sensitivity/take-again.ts';
import { fixed } from '../../engine/text/figure.ts';
import { lengthCell, lengthIn, SIXTEENTHS } from '../../engine/text/length.ts';
import { millimetres, type Unit } from '../../engine/text/units.ts';
import { lengthsLine, type Reader } from '../output/reader.ts';
import { type Column, table } from '../output/table.ts';
import type { SensitivityResult } from '../results/body.ts';

/** What each measurement is moved by for a reader of each unit, mm; for another program as in mm. */
const steps: Readonly<Record<Unit, number>> = { mm: 5, cm: 10, in: millimetres.in };
/** In steps of so much of that moves are told apart, and so many of them are the least that is shown. */
const [GRAIN, LEAST_SHOWN] = [0.02, 3];
/** It names no more seams and levels than this. */
const MOST_NAMED = 5;

const columns: readonly Column[] = [
  { title: 'measurement' },
  { title: 'from' },
  { title: 'likely error', right: true },
  { title: 'girths' },
  { title: 'seams and levels' },
];

/** Which measurements to take again, and how far girths and seams move for a step in each, in the reader's unit. */
export function sensitivityTable(
  garment: string,
  body: string,
  ranked: readonly Importance[],
  reader: Reader,
): string {
  const { units } = reader;
  const rows = ranked.map(({ measurement, from, likelyError, slopes }) => [
    measurement,
    from,
    `± ${lengthCell(likelyError, units, 0, SIXTEENTHS)}`,
    listed(
      slopes.filter(({ kind }) => kind === 'girth'),
      units,
    ),
    listed(
      slopes.filter(({ kind }) => kind === 'seam' || kind === 'level'),
      units,
    ),
  ]);
  return `${garment} for ${body}: how far girths, seams and levels move for ${lengthIn(steps[units], units)} in each measurement; ${lengthsLine(reader)}
${table(columns, rows, reader.columns)}
Each measurement is changed alone: what was estimated from it stays. The shoulder slope counts by how far it lowers the shoulder point. A level moves down its edges; the edge on which it moves most is shown.

${againLines(takeAgain(ranked), units)}`;
}

function againLines(again: readonly Importance[], units: Unit): string {
  if (again.length === 0) return 'Nothing here depends on a measurement.\n';
  const length = (mm: number): string => `${lengthCell(mm, units, 0, SIXTEENTHS)} ${units}`;
  const lines = again.map(({ measurement, from, likelyError, most }, i) => {
    const how = from === 'estimated' ? 'only estimated' : from;
    const off = most ? `; that moves “${most.place.name}” by ${length(most.likelyOff)}` : '';
    return `${i + 1}. ${measurementWords(measurement)}: ${how}, likely to be ${length(likelyError)} off${off}\n`;
  });
  return `Take again before cutting:\n${lines.join('')}`;
}

/** The ones that move most, each name once. */
function listed(slopes: readonly Slope[], units: Unit): string {
  const step = steps[units];
  const moves = slopes
    .map((slope) => ({ ...slope, grains: Math.abs(Math.round(slope.perMm / GRAIN)) }))
    .filter(({ grains }) => grains >= LEAST_SHOWN)
    .toSorted((a, b) => b.grains - a.grains);
  const firsts = moves.filter(({ name }, i) => moves.findIndex((move) => move.name === name) === i);
  return firsts
    .slice(0, MOST_NAMED)
    .map(
      ({ name, perMm }) => `${name} ${perMm > 0 ? '+' : ''}${lengthCell(step * perMm, units, 1, SIXTEENTHS)}`,
    )
    .join('; ');
}

/** The same as data, with every girth, seam, level and edge; mm. */
export const sensitivityResult = (
  ranked: readonly Importance[],
): Pick<SensitivityResult, 'step' | 'takeAgain' | 'measurements'> => ({
  step: steps.mm,
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
  mm: rounded(steps.mm * perMm),
});

/** To a thousandth, beyond which a derivative says nothing. */
const rounded = (mm: number): number => Number(fixed(mm, 3));
