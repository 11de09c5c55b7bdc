import type { Edge } from '../geometry/curve.ts';
import { edgeEnd, edgeStart, reversedEdge } from '../geometry/edge.ts';
import { signedArea } from '../geometry/outline.ts';
import { type Point, point, vectorBetween } from '../geometry/point.ts';
import { type Transform, transformedEdge } from '../geometry/transform.ts';
import { angleOf } from '../geometry/vector.ts';
import type { Issue } from '../issue.ts';
import type { Way } from '../lay/problem.ts';
import type { CutCount, Piece } from '../pattern/piece.ts';
import { type Cloth, oneWay } from './cloth.ts';
import { halfBelow, outwardPolygon } from './outward.ts';

/** What stands for a cutting line when it is laid: a polygon, none where the line has no such. */
export type OutlineOf = (line: Edge) => readonly Point[] | undefined;

/** A piece as it is laid on a cloth: its grain along x, so and so often. mm. */
export interface LaidPiece {
  readonly piece: string;
  readonly number: number;
  /** What is cut, clockwise; of a piece on the fold the half that lies on the strip, its fold on y = 0. */
  readonly line: Edge;
  readonly grain: { readonly from: Point; readonly to: Point };
  /** What no other may overlap: a polygon round the line. */
  readonly outline: readonly Point[];
  readonly onFold: boolean;
  /** Turned over against the pattern as it is drawn: the other of a pair on open cloth. */
  readonly turnedOver: boolean;
  readonly count: number;
  /** How many pieces each one laid gives: two through both layers of folded cloth, else one. */
  readonly gives: 1 | 2;
  readonly ways: readonly Way[];
  /** On stripes: how far behind the beginning of a repeat its origin lies; none on cloth without. */
  readonly phase?: number;
  /** On stripes along the cloth: the same across it, as the line lies here; turned over it lies as far ahead. */
  readonly phaseAcross?: number;
}

/** Folds and grain may differ from straight and level by this much, mm over the whole fold. */
const level = 0.01;

/**
 * What has to be laid for one line of a piece's cutting instructions:
 *
 * - on the fold: the half, its fold on that of folded cloth; on open cloth, or when its fold runs across the grain, the whole;
 * - in pairs: once through both layers; on open cloth as drawn and turned over;
 * - any other: on one layer, turned over if its printed side is to face down. Of folded cloth that is the upper layer, where the
 *   chalk is, and its wrong side is up: there each lies the other way over than on open cloth.
 *
 * Without nap or stripes a piece may also lie the other way up. `outlineOf` gives the polygon that no other may overlap.
 */
export function laidPieces(
  piece: Piece,
  cutLine: Edge,
  cut: CutCount,
  cloth: Cloth,
  outlineOf: OutlineOf = (line) => outwardPolygon(line, cloth.gap),
): { readonly laid: readonly LaidPiece[]; readonly issues: readonly Issue[] } {
  const straight = alongX(piece);
  const fold = cut.onFold ? piece.edges.filter(({ turn }) => turn === 'fold') : [];
  const line = transformedEdge(cutLine, straight);
  const grain = { from: straight(piece.grain.from), to: straight(piece.grain.to) };
  const ends = fold.flatMap((edge) => [straight(edgeStart(edge)), straight(edgeEnd(edge))]);
  const base = { piece: piece.name, number: piece.number, grain };
  const turns = oneWay(cloth) ? [0] : [0, 180];
  const both = (mirrored: readonly boolean[]): Way[] =>
    mirrored.flatMap((m) => turns.map((turn) => ({ turn, mirrored: m })));
  const asDrawn = both([false]);
  if (ends.length === 0) {
    const outline = outlineOf(line);
    if (!outline) return refused(piece, noOutline);
    const whole = { ...base, line, outline, onFold: false };
    if (cut.pair && cloth.folded)
      return kept([
        { ...whole, turnedOver: false, count: cut.count / 2, gives: 2, ways: both([false, true]) },
      ]);
    if (cut.pair)
      return kept([
        { ...whole, turnedOver: false, count: cut.count / 2, gives: 1, ways: asDrawn },
        { ...whole, turnedOver: true, count: cut.count / 2, gives: 1, ways: both([true]) },
      ]);
    const turnedOver = (cut.printedSide === 'down') !== cloth.folded;
    return kept([{ ...whole, turnedOver, count: cut.count, gives: 1, ways: both([turnedOver]) }]);
  }
  const upright = ends.every(({ x }) => Math.abs(x - at(ends, 0).x) < level);
  const along = ends.every(({ y }) => Math.abs(y - at(ends, 0).y) < level);
  const whole = along || upright ? unfolded(line, at(ends, 0), along) : undefined;
  if (!whole) return refused(piece, noFold);
  const outline = outlineOf(whole);
  if (!outline) return refused(piece, noOutline);
  if (!cloth.folded || !along) {
    const shape = { ...base, line: whole, outline, onFold: false, turnedOver: false, ways: asDrawn };
    const doubled = cloth.folded ? Math.floor(cut.count / 2) : 0;
    return kept([
      { ...shape, count: doubled, gives: 2 },
      { ...shape, count: cut.count - 2 * doubled, gives: 1 },
    ]);
  }
  // The half goes where y is positive, its fold on y = 0; as both layers are alike it may be turned over for that.
  const foldY = at(ends, 0).y;
  const over = signOf(line, foldY);
  const onto: Transform = ({ x, y }) => point(x, over * (y - foldY));
  return kept([
    {
      ...base,
      grain: { from: onto(grain.from), to: onto(grain.to) },
      line: clockwise(levelled(transformedEdge(line, onto))),
      outline: halfBelow(outline.map(onto)),
      onFold: true,
      turnedOver: false,
      count: cut.count,
      gives: 1,
      ways: oneWay(cloth)
        ? [{ turn: 0, mirrored: false }]
        : [
            { turn: 0, mirrored: false },
            { turn: 180, mirrored: true },
          ],
    },
  ]);
}

const at = (points: readonly Point[], i: number): Point => points[i] ?? point(0, 0);

const kept = (laid: readonly LaidPiece[]) => ({ laid: laid.filter(({ count }) => count > 0), issues: [] });

const noFold = 'its fold is not straight along or across the grain';

const noOutline = 'no line can be drawn round it at half the gap. Ask for a smaller gap';

const refused = ({ name }: Piece, why: string) => ({
  laid: [],
  issues: [
    {
      code: 'piece-not-laid',
      severity: 'error',
      path: name,
      message: `The ${name} cannot be laid: ${why}.`,
    } as const,
  ],
});

/** Turns a piece so that its grain runs along x, the top first. */
export function alongX({ grain }: Piece): Transform {
  const angle = -angleOf(vectorBetween(grain.from, grain.to));
  // An upright grain, the usual, is turned without rounding.
  if (grain.from.x === grain.to.x)
    return ({ x, y }) => (grain.to.y > grain.from.y ? point(y, -x) : point(-y, x));
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return ({ x, y }) => point(x * c - y * s, x * s + y * c);
}

/** On which side of the level of the fold a line lies: 1 where y is greater. */
function signOf(line: Edge, foldY: number): 1 | -1 {
  const sum = line.curves.reduce((total, { to }) => total + to.y - foldY, 0);
  return sum < 0 ? -1 : 1;
}

/** Ends within `level` of y = 0 put there. */
const levelled = (line: Edge): Edge =>
  transformedEdge(line, (p) => (Math.abs(p.y) < level ? point(p.x, 0) : p));

const clockwise = (line: Edge): Edge => (signedArea([line]) < 0 ? reversedEdge(line) : line);

/** The whole of which a line is one half, its fold (through `through`, level or upright) opened. */
function unfolded(line: Edge, through: Point, along: boolean): Edge | undefined {
  const off = (p: Point): number => Math.abs(along ? p.y - through.y : p.x - through.x);
  const isFold = (i: number): boolean => {
    const curve = line.curves[(i + line.curves.length) % line.curves.length];
    return curve?.kind === 'line' && off(curve.from) < level && off(curve.to) < level;
  };
  const { length } = line.curves;
  const first = line.curves.findIndex((_, i) => !isFold(i) && isFold(i - 1));
  if (first < 0) return undefined;
  const half = [...line.curves.slice(first), ...line.curves.slice(0, first)].filter(
    (_, i) => !isFold(first + i),
  );
  if (half.length === length) return undefined;
  const put: Transform = (p) =>
    off(p) < level ? (along ? point(p.x, through.y) : point(through.x, p.y)) : p;
  const mirror: Transform = (p) =>
    along ? point(p.x, 2 * through.y - p.y) : point(2 * through.x - p.x, p.y);
  const edge = transformedEdge({ name: line.name, curves: half }, put);
  const other = reversedEdge(transformedEdge(edge, mirror));
  return clockwise({ name: line.name, curves: [...edge.curves, ...other.curves] });
}
