import { changeWords, type FittingChange } from '../../engine/body/fitting.ts';
import { fixed } from '../../engine/text/figure.ts';
import { lengthCell, lengthIn } from '../../engine/text/length.ts';
import type { Unit } from '../../engine/text/units.ts';
import type { ArmsRaised, Findings } from '../../engine/wear/findings.ts';
import type { Judged } from '../../engine/wear/judged.ts';
import { LIFTED } from '../../engine/wear/raised.ts';
import type { Reader } from '../output/reader.ts';
import { type Column, table } from '../output/table.ts';

/** A table in words: its columns, and its rows. */
export interface WornRows {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
}

/** Every figure of a worn garment, lengths in the reader's unit. */
export function findingsRows(found: Findings, units: Unit): WornRows {
  const mm = (length: number): string => lengthCell(length, units);
  const rows: (readonly string[])[] = [
    ...found.ease.map(({ level, worn: now, drafted }) => [
      `ease at the ${level}`,
      mm(now),
      `drafted ${mm(drafted)}`,
    ]),
    ...found.waistLevel.map(({ at, above }) => [`waist seam above the waist, ${at}`, mm(above), '']),
    ...(found.bustPoint
      ? [
          ['bust point, to the side of hers', mm(found.bustPoint.across), ''],
          ['bust point, above hers', mm(found.bustPoint.up), ''],
        ]
      : []),
    ...(found.side
      ? [
          ['side seam at the waist, forward of her side', mm(found.side.atWaist), ''],
          ['side seam leans forward, degrees', fixed(found.side.lean, 1), ''],
        ]
      : []),
    ...found.gaps.map(({ edge, most, mean, longer }) => [
      `${edge} off the body, at most`,
      mm(most),
      `on average ${mm(mean)}; ${mm(longer)} longer than the body beneath`,
    ]),
    ...found.strain.map(({ grain, most, over }) => [
      `stretched along the ${grain}, %`,
      fixed(100 * most, 1),
      `${fixed(100 * over, 1)} % of the cloth by more than 1 %`,
    ]),
    ...(found.hem
      ? [
          ['hem above the floor, on average', mm(found.hem.mean), ''],
          ['hem lower in one place than in another', mm(found.hem.highest - found.hem.lowest), ''],
        ]
      : []),
    ...(found.arms ? armRows(found.arms, units) : []),
    ['pressure, kPa', fixed(found.pressure, 2), ''],
  ];
  return { columns: [{ title: 'finding' }, { title: 'worn', right: true }, { title: '' }], rows };
}

function armRows({ to, lift, free }: ArmsRaised, units: Unit): readonly (readonly string[])[] {
  const rises =
    free < to
      ? [
          'arms rise before the waist lifts, degrees',
          fixed(free, 0),
          `by ${lengthIn(LIFTED, units)} anywhere`,
        ]
      : ['arms rise and the waist stays, degrees', fixed(free, 0), 'as far as they were raised'];
  return [
    rises,
    ...lift.map(({ at, by }) => [
      `waist seam lifts with the arms, ${at}`,
      lengthCell(by, units),
      `raised to ${to}°`,
    ]),
  ];
}

/** What is not as it should be, how sure that is, and what a fitter would alter. */
export function judgedRows(findings: readonly Judged[], units: Unit): WornRows {
  const cell = (value: number, { unit }: Judged): string =>
    unit === 'mm' ? lengthCell(value, units) : fixed(value, 1);
  const rows = findings
    .filter(({ verdict }) => verdict !== 'well')
    .map((each) => [
      each.unit === 'mm' ? each.finding : `${each.finding}, ${each.unit}`,
      cell(each.worn, each),
      cell(each.should, each),
      `± ${cell(each.band, each)}`,
      `± ${cell(each.within, each)}`,
      `${each.verdict}${each.change ? `: ${alteration(each.change, units)}` : ''}${each.restsOn === 'measurements' ? '' : ` (rests on an ${each.restsOn})`}`,
    ]);
  const columns: readonly Column[] = [
    { title: 'outside its band' },
    { title: 'worn', right: true },
    { title: 'should be', right: true },
    { title: 'band', right: true },
    { title: 'sure to', right: true },
    { title: 'what to do' },
  ];
  return { columns, rows };
}

/** What is said where nothing is outside its band. */
export const nothingOff = 'nothing is outside its band: nothing to alter';

export function findingsTable(found: Findings, { units, columns: width }: Reader): string {
  const { columns, rows } = findingsRows(found, units);
  return table(columns, rows, width);
}

export function judgedTable(findings: readonly Judged[], { units, columns: width }: Reader): string {
  const { columns, rows } = judgedRows(findings, units);
  return rows.length === 0 ? `${nothingOff}\n` : table(columns, rows, width);
}

/** A change of a fitting with its amount: `take in the side seam at the waist by 9 mm on each layer`. */
export const alteration = (change: FittingChange, unit: Unit): string =>
  `${changeWords(change)} by ${lengthIn(change.mm, unit)}${'seam' in change ? ' on each layer' : ''}`;
