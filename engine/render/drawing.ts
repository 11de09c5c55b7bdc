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
import { label } from './label.ts';
import { labelWords } from './label-words.ts';
import { levelWords, wordsOf } from './level-words.ts';
import type { LineClass } from './line-types.ts';
import { element, type Node } from './markup.ts';
import { numeral, pathData } from './path-data.ts';

/**
 * Everything that is printed of one piece, as SVG in millimetres of the paper. No path carries a transform, so
 * that each can be measured as it stands.
 */
export function drawing(finished: FinishedPiece, garment: Garment, date: string | undefined): Node {
  const { piece, cut, notches } = finished;
  const name = piece.name;
  const signs = foldSigns(piece);
  const signed = withLines(
    piece,
    signs.flatMap(({ curves }) => curves),
  );
  const levels = piece.lines.filter(({ kind }) => kind === 'level');
  const placed = levels.map((line) => levelWords(line, signed));
  const onLevels = placed.flatMap((found) => found ?? []);
  const unplaced = levels.filter((_, i) => !placed[i]).map(wordsOf);
  const crowded = withLines(
    signed,
    onLevels.flatMap(({ box }) => diagonals(box)),
  );
  return element('g', { class: 'piece', 'data-piece': name }, [
    element('path', { class: 'cut', 'data-piece': name, d: pathData(cut, true) }),
    ...piece.edges.map((edge, i) => stitch(name, edge, piece.edges.at(i - 1))),
    ...piece.lines.map((line) => inside(name, line)),
    ...grain(piece),
    ...notches.flatMap((marked) => notch(name, marked)),
    ...piece.marks.flatMap((mark) => drawnMark(name, mark)),
    ...signs.flatMap((sign) => foldSign(name, sign)),
    ...onLevels.map(({ node }) => node),
    label(crowded, labelWords(garment, piece, unplaced, date)),
  ]);
}

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
function stitch(piece: string, edge: PieceEdge, before: PieceEdge | undefined): Node {
  const corner = before?.curves.at(-1)?.to;
  const [first, ...others] = edge.curves;
  const joined = first && corner && distance(first.from, corner) <= COINCIDENCE;
  return element('path', {
    class: 'stitch',
    'data-piece': piece,
    'data-edge': edge.name,
    'data-turn': edge.turn,
    d: pathData(joined ? [{ ...first, from: corner }, ...others] : edge.curves),
  });
}

/** The class of each kind of inside line. */
export const insideClass: Readonly<Record<InsideLine['kind'], LineClass>> = {
  level: 'level',
  casing: 'casing',
  gathering: 'gather',
  slash: 'slash',
  fold: 'fold',
};

function inside(piece: string, line: InsideLine): Node {
  const name = line.kind === 'level' ? { 'data-level': line.name } : { 'data-line': line.name };
  return element('path', {
    class: insideClass[line.kind],
    'data-piece': piece,
    ...name,
    'data-fullness': line.fullness === undefined ? undefined : numeral(line.fullness),
    d: pathData(line.curves),
  });
}

function grain({ name, grain: { from, to } }: Piece): readonly Node[] {
  const line = element('path', {
    class: 'grain',
    'data-piece': name,
    d: pathData([{ kind: 'line', from, to }]),
  });
  return [line, ...arrowheads(from, to)];
}

const notch = (piece: string, { notch: marked, strokes }: NotchStrokes): readonly Node[] =>
  strokes.map((curves) =>
    element('path', {
      class: 'notch',
      'data-piece': piece,
      'data-edge': marked.edge,
      'data-notch': marked.name,
      'data-kind': marked.mark,
      d: pathData(curves),
    }),
  );

/** Radius of the circle that stands for a drill hole, and length of the bars at a buttonhole's ends, mm. */
const drillRadius = 1.5;
const buttonholeBar = 4;

function drawnMark(piece: string, mark: Mark): readonly Node[] {
  const known = { class: mark.kind, 'data-piece': piece, 'data-mark': mark.name };
  if (mark.kind === 'drill') {
    const at = { cx: numeral(mark.at.x), cy: numeral(mark.at.y), r: numeral(drillRadius) };
    return [element('circle', { ...known, ...at })];
  }
  const along = heading(mark.angle);
  const from = moved(mark.at, scaled(along, -mark.length / 2));
  const to = moved(mark.at, scaled(along, mark.length / 2));
  const bar = (end: Point): Node => {
    const across = scaled(outward(along), buttonholeBar / 2);
    const d = pathData([{ kind: 'line', from: moved(end, across), to: moved(end, scaled(across, -1)) }]);
    return element('path', { class: 'bar', d });
  };
  return [element('path', { ...known, d: pathData([{ kind: 'line', from, to }]) }), bar(from), bar(to)];
}

const foldSign = (piece: string, { curves, tips, towards }: FoldSign): readonly Node[] => [
  element('path', { class: 'fold', 'data-piece': piece, d: pathData(curves) }),
  ...tips.map((tip) => arrowhead(tip, towards)),
];
