import type { Solution } from '../engine/constraints/solution.ts';
import { DraftMistake, perhapsMeant } from '../engine/draft-mistake.ts';
import type { Curve } from '../engine/geometry/curve.ts';
import type { Point } from '../engine/geometry/point.ts';
import type { CutCount, InsideLine, Mark, Piece, PieceEdge } from '../engine/pattern/piece.ts';
import type { StepLog } from '../engine/pattern/step-log.ts';

/** The curve that the solved sketch gives this name. A name it does not know is a draft's mistake. */
export function solvedCurve(solution: Solution, name: string): Curve {
  const curve = solution.curves[name];
  if (!curve) throw missing('The sketch has no curve', name, Object.keys(solution.curves));
  return curve;
}

/** The curves that it gives these names, in order. */
export const solvedCurves = (solution: Solution, names: readonly string[]): readonly Curve[] =>
  names.map((name) => solvedCurve(solution, name));

/** The point that the solved sketch gives this name. A name it does not know is a draft's mistake. */
export function solvedPoint(solution: Solution, name: string): Point {
  const at = solution.points[name];
  if (!at) throw missing('The sketch has no point', name, Object.keys(solution.points));
  return at;
}

/** The edge of a piece by its name. A name it does not know is a draft's mistake. */
export function edgeNamed(piece: Piece, name: string): PieceEdge {
  const edge = piece.edges.find((candidate) => candidate.name === name);
  if (!edge) throw missing(`The ${piece.name} has no edge`, name, namesOf(piece.edges));
  return edge;
}

/** One of several pieces by its name. A name they do not know is a draft's mistake. */
export function pieceNamed(pieces: readonly Piece[], name: string): Piece {
  const piece = pieces.find((candidate) => candidate.name === name);
  if (!piece) throw missing('There is no piece', name, namesOf(pieces));
  return piece;
}

const missing = (what: string, name: string, known: readonly string[]): DraftMistake =>
  new DraftMistake(`${what} called “${name}”.${perhapsMeant(name, known)}`, [name]);

const namesOf = (things: readonly { readonly name: string }[]): readonly string[] =>
  things.map(({ name }) => name);

/** The latest step draws those edges of a piece, on a drawing of its name. */
export function drawEdges(
  { line }: Pick<StepLog, 'line'>,
  { name: on, edges }: Pick<Piece, 'name' | 'edges'>,
  are: (edge: string) => boolean = () => true,
): void {
  for (const { name, curves } of edges) if (are(name)) line(on, name, curves);
}

/** A straight line as the only curve of an edge. */
export const straight = (from: Point, to: Point): readonly Curve[] => [{ kind: 'line', from, to }];

/** An edge that is sewn to another. */
export const seamEdge = (
  name: string,
  curves: readonly Curve[],
  allowance: number,
  rank: number,
  inflections = 0,
): PieceEdge => ({ name, curves, turn: 'seam', allowance, rank, inflections });

/** Length of the arms of a cross, mm. */
const CROSS = 8;

/** A cross at a place that is looked for on the cloth, such as a bust point. */
export const crossMark = (name: string, at: Point): Mark => ({
  name,
  kind: 'cross',
  at,
  angle: 0,
  length: CROSS,
});

/** The line of a girth's level across a piece, with what it has to say. */
export const levelLine = (level: string, from: Point, to: Point, text: string): InsideLine => ({
  name: `${level} level`,
  kind: 'level',
  curves: straight(from, to),
  girth: level,
  text,
});

/** Cut in mirrored pairs, a left and a right. */
export const cutPair = (cloth: CutCount['cloth']): readonly CutCount[] => [
  { cloth, count: 2, onFold: false, pair: true },
];

/** Cut once, its centre on the fold of the cloth. */
export const cutOnFold = (cloth: CutCount['cloth']): readonly CutCount[] => [
  { cloth, count: 1, onFold: true, pair: false },
];
