import type { NotchStrokes } from '../finishing/notches.ts';
import type { Rectangle } from '../finishing/rectangle.ts';
import type { Curve } from '../geometry/curve.ts';
import { distance, moved, type Point, point } from '../geometry/point.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { heading, outward, scaled } from '../geometry/vector.ts';
import type { Garment } from '../pattern/garment.ts';
import type { InsideLine, Mark, Piece, PieceEdge } from '../pattern/piece.ts';
import { arrowhead, arrowheads } from './arrows.ts';
import type { FinishedPiece } from './finished-piece.ts';
import { type FoldSign, foldSigns } from './fold-sign.ts';
import { type Chain, type Ink, stroke, type Words } from './ink.ts';
import { label } from './label.ts';
import { labelWords } from './label-words.ts';
import type { LineClass } from './line-types.ts';
import { numeral } from './path-data.ts';
import { type WordedLine, wordsAlong } from './words-along.ts';

/** Everything that is printed of one piece. */
export function drawing(
  { piece, cut, notches }: FinishedPiece,
  garment: Garment,
  date: string | undefined,
): readonly Ink[] {
  const signs = foldSigns(piece);
  const signed = withLines(
    piece,
    signs.flatMap(({ curves }) => curves),
  );
  const { words: onLines, unplaced, crowded } = placedWords(signed, worded(piece));
  return [
    { kind: 'chain', class: 'cut', names: { piece: piece.name }, curves: cut, closed: true },
    ...piece.edges.map((edge, i) => stitch(piece.name, edge, piece.edges.at(i - 1))),
    ...piece.lines.map((line) => inside(piece.name, line)),
    ...grain(piece),
    ...notches.flatMap((marked) => notch(piece.name, marked)),
    ...piece.marks.flatMap((mark) => drawnMark(piece.name, mark)),
    ...signs.flatMap((sign) => foldSign(piece.name, sign)),
    ...onLines,
    ...label(crowded, labelWords(garment, piece, unplaced, date)),
  ];
}

/** Words on the lines of a piece, one after the other, each clear of the others. */
function placedWords(piece: Piece, said: readonly WordedLine[]) {
  const words: Words[] = [];
  const unplaced: string[] = [];
  let crowded = piece;
  for (const line of said) {
    const placed = wordsAlong(line, crowded);
    if (placed) {
      words.push(placed.words);
      crowded = withLines(crowded, diagonals(placed.box));
    } else if (line.matters) unplaced.push(line.text);
  }
  return { words, unplaced, crowded };
}

/** The words that stand on lines of a piece: beside crosses, on level lines, and on others that carry any. */
const worded = ({ lines, marks }: Piece): readonly WordedLine[] => [
  ...marks
    .filter(({ kind }) => kind === 'cross')
    .map(({ name, at }) => ({ curves: acrossCross(at), text: name, matters: false })),
  ...lines
    .filter(({ kind, text }) => kind === 'level' || text !== undefined)
    .map(({ name, curves, text }) => ({ curves, text: text ?? name, matters: true })),
];

/** The name of a cross stands within so much of its middle, mm. */
const besideCross = 25;

const acrossCross = ({ x, y }: Point): readonly Curve[] => [
  { kind: 'line', from: point(x - besideCross, y), to: point(x + besideCross, y) },
];

/** The piece with more lines inside, for words to keep clear of. */
const withLines = (piece: Piece, curves: readonly Curve[]): Piece => ({
  ...piece,
  lines: [...piece.lines, { name: 'taken', kind: 'fold', curves }],
});

/** Two lines across a box, which nothing can lie in without meeting one of them unless it is far smaller. */
function diagonals({ middle, width, height }: Rectangle): readonly Curve[] {
  const corner = (x: number, y: number): Point =>
    point(middle.x + (x * width) / 2, middle.y + (y * height) / 2);
  return [
    { kind: 'line', from: corner(-1, -1), to: corner(1, 1) },
    { kind: 'line', from: corner(-1, 1), to: corner(1, -1) },
  ];
}

/** The edge starts at the very point where the one before it ends, so that rounding cannot open the corner. */
function stitch(piece: string, edge: PieceEdge, before: PieceEdge | undefined): Chain {
  const corner = before?.curves.at(-1)?.to;
  const [first, ...others] = edge.curves;
  const joined = first && corner && distance(first.from, corner) <= COINCIDENCE;
  return {
    kind: 'chain',
    class: 'stitch',
    names: { piece, edge: edge.name, turn: edge.turn },
    curves: joined ? [{ ...first, from: corner }, ...others] : edge.curves,
  };
}

/** The class of each kind of inside line. */
export const insideClass: Readonly<Record<InsideLine['kind'], LineClass>> = {
  level: 'level',
  casing: 'casing',
  gathering: 'gather',
  slash: 'slash',
  fold: 'fold',
};

function inside(piece: string, line: InsideLine): Chain {
  const name = line.kind === 'level' ? { level: line.name } : { line: line.name };
  const fullness = line.fullness === undefined ? undefined : numeral(line.fullness);
  return {
    kind: 'chain',
    class: insideClass[line.kind],
    names: { piece, ...name, fullness },
    curves: line.curves,
  };
}

const grain = ({ name, grain: { from, to } }: Piece): readonly Ink[] => [
  stroke('grain', from, to, { piece: name }),
  ...arrowheads(from, to),
];

const notch = (piece: string, { notch: marked, strokes }: NotchStrokes): readonly Ink[] =>
  strokes.map((curves) => ({
    kind: 'chain',
    class: 'notch',
    names: { piece, edge: marked.edge, notch: marked.name, kind: marked.mark },
    curves,
  }));

/** Radius of the circle that stands for a drill hole, and length of the bars at a buttonhole's ends, mm. */
const drillRadius = 1.5;
const buttonholeBar = 4;

function drawnMark(piece: string, mark: Mark): readonly Ink[] {
  const names = { piece, mark: mark.name };
  if (mark.kind === 'drill')
    return [{ kind: 'circle', class: 'drill', names, middle: mark.at, radius: drillRadius }];
  const along = heading(mark.angle);
  const from = moved(mark.at, scaled(along, -mark.length / 2));
  const to = moved(mark.at, scaled(along, mark.length / 2));
  const long = mark.kind === 'cross' ? mark.length : buttonholeBar;
  const across = scaled(outward(along), long / 2);
  const bar = (end: Point): Ink => stroke('bar', moved(end, across), moved(end, scaled(across, -1)));
  if (mark.kind === 'cross') return [stroke('cross', from, to, names), bar(mark.at)];
  return [stroke('buttonhole', from, to, names), bar(from), bar(to)];
}

const foldSign = (piece: string, { curves, tips, towards }: FoldSign): readonly Ink[] => [
  { kind: 'chain', class: 'fold', names: { piece }, curves },
  ...tips.map((tip) => arrowhead(tip, towards)),
];
