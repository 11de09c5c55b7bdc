import type { Comparison } from '../../engine/comparison/compare.ts';
import type { Fate } from '../../engine/comparison/fate.ts';
import type { InsideMove } from '../../engine/comparison/inside-moves.ts';
import type { KnownSeam } from '../../engine/comparison/known-draft.ts';
import type { Change, EdgeMove, NotchMove, PieceMove } from '../../engine/comparison/piece-moves.ts';
import type { TakenMeasurement } from '../../engine/comparison/taken.ts';
import { cutWords } from '../../engine/render/label-words.ts';
import { fixed, rounded } from '../../engine/text/figure.ts';
import { lengthCell, SIXTEENTHS } from '../../engine/text/length.ts';
import type { Unit } from '../../engine/text/units.ts';

/** The cells of a row: what it is of, which part of that, before, after, more by, and how far it moved. */
export type ChangeRow = readonly string[];

/** Lines on paper that moved by less than this (mm) are left out: a pencil line is as wide. */
const UNSEEN = 0.5;

/** How a figure is shown: a length in the reader's unit, a plain number, or one behind whose point nothing small is lost. */
type Show = (value: number) => string;

const lengthsIn =
  (units: Unit): Show =>
  (mm) =>
    lengthCell(mm, units, 1, SIXTEENTHS);

const tenths: Show = (value) => fixed(value, 1);
const thousandths: Show = (value) => fixed(value, 3);

/** Any other figure is written with one digit behind the point, and left out where that would not show it. */
const UNWRITTEN = 0.05;

/** What moved on a piece, edge by edge; no row where nothing did. */
export function pieceRows(move: PieceMove, units: Unit): readonly ChangeRow[] {
  const length = lengthsIn(units);
  if (move.kind !== 'redrawn') return [[move.piece, move.kind === 'new' ? 'a new piece' : 'no longer there']];
  const { piece, laidBy, number, cut, stitchingLine, cuttingLine, grain } = move;
  const lay = laidBy === 'grain' ? ', laid by its grain and centre, for no edge has its old name' : '';
  const cutOf = (counts: typeof cut.before): string => counts.map(cutWords).join('; ');
  const rows: readonly ChangeRow[] = [
    ...moved(`stitching line, at most${lay}`, stitchingLine, length),
    ...(cuttingLine === undefined
      ? [['cutting line: in one of the drafts only']]
      : moved('cutting line, at most', cuttingLine, length)),
    ...(Math.abs(grain) < UNWRITTEN ? [] : [['grain, turned by °', '', '', fixed(grain, 1)]]),
    ...changed('number', number, String),
    ...changed('to cut', { before: cutOf(cut.before), after: cutOf(cut.after) }, String),
    ...move.edges.flatMap((edge) => edgeRows(edge, length)),
    ...move.notches.flatMap((notch) => notchRows(notch, length)),
    ...move.inside.flatMap((line) => insideRows(line, length)),
  ];
  return rows.map((row) => [piece, ...row]);
}

const moved = (what: string, by: number, length: Show): readonly ChangeRow[] =>
  by < UNSEEN ? [] : [[what, '', '', '', length(by)]];

const changed = <T>(
  what: string,
  { before, after }: Change<T>,
  shown: (value: T) => string,
): readonly ChangeRow[] => (before === after ? [] : [[what, shown(before), shown(after)]]);

const came = (kind: 'new' | 'gone'): string => (kind === 'new' ? 'new' : 'gone');

function edgeRows(move: EdgeMove, length: Show): readonly ChangeRow[] {
  if (move.kind !== 'redrawn')
    return [
      [
        `${move.edge}: ${came(move.kind)}`,
        ...(move.kind === 'new' ? ['', length(move.length)] : [length(move.length)]),
      ],
    ];
  const { edge, was, before, after, allowance, turn } = move;
  const by = after - before;
  const name = was === undefined ? edge : `${edge} (was ${was})`;
  const still = was === undefined && Math.max(move.moved, Math.abs(by)) < UNSEEN;
  return [
    ...(still ? [] : [[name, ...numbers(before, after, length), length(move.moved)]]),
    ...(Math.abs(allowance.after - allowance.before) < UNWRITTEN
      ? []
      : [[`allowance of ${edge}`, ...numbers(allowance.before, allowance.after, length)]]),
    ...changed(`${edge} is a`, turn, String),
  ];
}

function notchRows(move: NotchMove, length: Show): readonly ChangeRow[] {
  const name = `notch on ${move.edge}: ${move.notch}`;
  if (move.kind !== 'redrawn') return [[`${name}: ${came(move.kind)}`]];
  const { before, after, mark } = move;
  const by = Math.abs(after - before);
  return [
    ...(by < UNSEEN ? [] : [[name, ...numbers(before, after, length), length(by)]]),
    ...changed(`${name}, kind`, mark, String),
  ];
}

function insideRows(move: InsideMove, length: Show): readonly ChangeRow[] {
  const name = `${move.what}: ${move.name}`;
  return move.kind === 'redrawn' ? moved(name, move.moved, length) : [[`${name}: ${came(move.kind)}`]];
}

const numbers = (before: number, after: number, show: Show): readonly string[] =>
  [before, after, after - before].map(show);

/** Rows of one kind of figure, and how many figures of that kind were compared. */
export interface Section {
  readonly title: string;
  readonly rows: readonly ChangeRow[];
  readonly count: number;
}

/** Where a measurement came from, before and now, as far as it is said. */
function cameFrom(before: TakenMeasurement['from'], now: TakenMeasurement['from']): string {
  if (before === undefined || before === now) return now ?? '';
  return now === undefined ? before : `${before}, now ${now}`;
}

/** What differs in what the drafts were made from, and in what they come to. */
export function figureRows(
  comparison: Comparison,
  units: Unit,
): {
  readonly from: readonly Section[];
  readonly figures: readonly Section[];
} {
  const length = lengthsIn(units);
  // What a choice counts is not known here.
  const asChosen = units === 'mm' ? '' : 'as chosen, lengths in mm';
  const { measurements, fitting, styling, seams, joins, girths, shapes, notions } = comparison;
  return {
    from: [
      section('measurements', measurements, (name, { value, unit, from }, is) =>
        figure(
          name,
          [unit === 'degrees' ? '°' : '', cameFrom(from, is.from)].filter(Boolean).join(', '),
          value,
          is.value,
          unit === 'degrees' ? tenths : length,
        ),
      ),
      section('changes of the fitting', fitting, (name, was, is) => figure(name, '', was.mm, is.mm, length)),
      section('styling choices', styling, (name, was, is) =>
        was.value === is.value
          ? []
          : typeof was.value === 'number' && typeof is.value === 'number'
            ? [[name, asChosen, written(was.value), written(is.value), written(is.value - was.value)]]
            : [[name, '', String(was.value), String(is.value)]],
      ),
    ],
    figures: [
      section('seams', seams, (name, was, is) => seamRows(name, was, is, length)),
      section('corners over seams', joins, (name, was, is) => figure(name, '°', was.angle, is.angle, tenths)),
      section('finished girths', girths, (name, was, is) => [
        ...figure(name, 'body', was.body, is.body, length),
        ...figure(name, 'ease', was.ease, is.ease, length),
        ...figure(name, 'finished', was.finished, is.finished, length),
      ]),
      section('shapes', shapes, (name, was, is) => {
        const isSmall = is.unit === 'share' || is.unit === 'ratio';
        return figure(
          name,
          is.unit === 'mm' ? is.piece : `${is.piece}, ${is.unit}`,
          was.value,
          is.value,
          isSmall ? thousandths : is.unit === 'mm' ? length : tenths,
        );
      }),
      section('notions', notions, (name, was, is) => [
        ...figure(name, 'how many', was.count, is.count, tenths),
        ...figure(name, 'length', was.length, is.length, length),
      ]),
    ],
  };
}

function section<T>(
  title: string,
  list: readonly Fate<T>[],
  rowsOf: (name: string, before: T, after: T) => readonly ChangeRow[],
): Section {
  const rows = list.flatMap((fate) =>
    fate.kind === 'kept' ? rowsOf(fate.name, fate.before, fate.after) : [[fate.name, came(fate.kind)]],
  );
  return { title, rows, count: list.length };
}

function figure(
  name: string,
  detail: string,
  before: number,
  after: number,
  show: Show,
): readonly ChangeRow[] {
  const least = show === thousandths ? UNWRITTEN / 100 : UNWRITTEN;
  return before === after || Math.abs(after - before) < least
    ? []
    : [[name, detail, ...numbers(before, after, show)]];
}

function seamRows(name: string, was: KnownSeam, is: KnownSeam, length: Show): readonly ChangeRow[] {
  // An edge that is folded on itself stands on both sides of its seam.
  const sewn = ({ a, b }: KnownSeam): readonly string[] => [
    ...new Set([...a, ...b].map(({ piece, edge }) => `${piece}/${edge}`)),
  ];
  const [before, after] = [sewn(was), sewn(is)];
  return [
    ...after.filter((edge) => !before.includes(edge)).map((edge) => [name, `sews ${edge}`, '', 'new']),
    ...before.filter((edge) => !after.includes(edge)).map((edge) => [name, `sews ${edge}`, 'gone']),
    ...figure(name, 'side a', was.lengthA, is.lengthA, length),
    ...figure(name, 'side b', was.lengthB, is.lengthB, length),
    ...figure(name, 'ease', was.ease, is.ease, length),
    ...figure(name, 'gathers, to 1', was.gatherRatio, is.gatherRatio, thousandths),
  ];
}

const written = (value: number): string => String(rounded(value, 4));
