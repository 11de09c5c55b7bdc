import type { NotchStrokes } from '../finishing/notches.ts';
import { distance, moved, type Point } from '../geometry/point.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { heading, outward, scaled } from '../geometry/vector.ts';
import type { InsideLine, Mark, Piece, PieceEdge } from '../pattern/piece.ts';
import { arrowhead, arrowheads } from './arrows.ts';
import type { FinishedPiece } from './finished-piece.ts';
import { type FoldSign, foldSigns } from './fold-sign.ts';
import { type Ink, type InkChain, stroke } from './ink.ts';
import type { LineClass } from './line-types.ts';
import { numeral } from './path-data.ts';

/** Everything that is printed of one piece, what lies lowest first. */
export function drawing({ piece, cut, notches, lettering, earlier = [] }: FinishedPiece): readonly Ink[] {
  const names = { piece: piece.name };
  return [
    ...earlier.map((curves): Ink => ({ kind: 'chain', class: 'earlier', names, curves, closed: true })),
    { kind: 'chain', class: 'cut', names, curves: cut, closed: true },
    ...piece.edges.map((edge, i) => stitch(piece.name, edge, piece.edges.at(i - 1))),
    ...piece.lines.map((line) => inside(piece.name, line)),
    ...grain(piece),
    ...notches.flatMap((marked) => notch(piece.name, marked)),
    ...piece.marks.flatMap((mark) => drawnMark(piece.name, mark)),
    ...foldSigns(piece).flatMap((sign) => foldSign(piece.name, sign)),
    ...lettering,
  ];
}

/** The edge starts at the very point where the one before it ends, so that rounding cannot open the corner. */
function stitch(piece: string, edge: PieceEdge, before: PieceEdge | undefined): InkChain {
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

function inside(piece: string, line: InsideLine): InkChain {
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
