import type { Curve, Edge } from '../geometry/curve.ts';
import { edgeEnd, edgeLength, edgeStart, reversedEdge } from '../geometry/edge.ts';
import { isStraight } from '../geometry/inflections.ts';
import { crossings } from '../geometry/intersect.ts';
import { distance, moved, type Point, vectorBetween } from '../geometry/point.ts';
import { part, reversed } from '../geometry/split.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { mirroredIn, type Transform, transformedCurve, transformedEdge } from '../geometry/transform.ts';
import { angleOf, cross, dot, scaled, unit, type Vector } from '../geometry/vector.ts';
import type { InsideLine, Mark, Notch, Piece } from '../pattern/piece.ts';
import type { FinishedPiece } from '../render/finished-piece.ts';

/** Fold edges, and the cutting line on them, lie on one straight line within this, mm. */
const STRAIGHT = 0.01;

/** The line a piece is folded on. */
interface Fold {
  readonly from: Point;
  readonly along: Vector;
  readonly mirror: Transform;
}

/**
 * A piece that is cut on the fold, unfolded, so that it can be cut from one layer: its other half is the mirror image of the
 * first, to the last digit, and the fold becomes a line across it. Edges and notches of the other half are called “... (other half)”.
 *
 * Where the fold runs along the grain the halves are a left and a right: lines inside go on across the fold, and marks
 * are there twice. Where it runs across the grain the cloth is laid double, and lines and marks stay on the layer
 * they are drawn on. Every other piece, and one whose fold is not straight, is left as it is.
 */
export function wholePiece(finished: FinishedPiece): FinishedPiece {
  const { piece } = finished;
  const fold = foldOf(piece);
  if (!fold) return finished;
  const half = offFold(finished.cut, fold);
  if (!half) return finished;
  const own = piece.edges.filter(({ turn }) => turn !== 'fold');
  const others = own.toReversed().map((edge) => ({ ...mirrored(edge, fold), name: otherName(edge.name) }));
  const lengths = new Map(own.map((edge) => [edge.name, edgeLength(edge)]));
  const other = (notch: Notch): Notch => ({
    ...notch,
    name: otherName(notch.name),
    edge: otherName(notch.edge),
    at: (lengths.get(notch.edge) ?? 0) - notch.at,
  });
  const isDouble = Math.abs(dot(fold.along, unit(vectorBetween(piece.grain.from, piece.grain.to)))) < 0.5;
  const folds = piece.edges.filter(({ turn }) => turn === 'fold');
  const notches = finished.notches.filter(({ notch }) => lengths.has(notch.edge));
  return {
    piece: {
      ...piece,
      edges: [...own, ...others],
      notches: [...notches.map(({ notch }) => notch), ...notches.map(({ notch }) => other(notch))],
      lines: [
        ...(isDouble ? piece.lines : piece.lines.flatMap((line) => across(line, fold))),
        ...folds.map(({ name, curves }): InsideLine => ({ name, kind: 'fold', curves })),
      ],
      marks: isDouble ? piece.marks : piece.marks.flatMap((mark) => bothSides(mark, fold)),
      cut: piece.cut.map((count) => ({ ...count, onFold: false })),
    },
    cut: [...half, ...mirrored({ name: 'cut', curves: half }, fold).curves],
    notches: [
      ...finished.notches,
      ...notches.flatMap(({ notch, strokes }) => {
        const away = strokes.filter((stroke) => !stroke.every((curve) => liesOn(curve, fold)));
        const there = away.map((stroke) => mirrored({ name: notch.name, curves: stroke }, fold).curves);
        return there.length > 0 ? [{ notch: other(notch), strokes: there }] : [];
      }),
    ],
    lettering: [],
  };
}

const otherName = (name: string): string => `${name} (other half)`;

/** The fold of a piece that is cut on it and no other way. */
function foldOf({ edges, cut }: Piece): Fold | undefined {
  const folded = edges.filter(({ turn }) => turn === 'fold');
  if (folded.length === 0 || !cut.every(({ onFold }) => onFold)) return undefined;
  const ends = folded.flatMap((edge) => [edgeStart(edge), edgeEnd(edge)]);
  const [from] = ends;
  const to = from && ends.reduce((far, p) => (distance(from, p) > distance(from, far) ? p : far), from);
  if (!from || !to || distance(from, to) <= STRAIGHT) return undefined;
  const fold = { from, along: unit(vectorBetween(from, to)), mirror: mirroredIn(from, to) };
  return folded.every(({ curves }) => curves.every((curve) => liesOn(curve, fold))) ? fold : undefined;
}

const awayFrom = ({ from, along }: Fold, p: Point): number => Math.abs(cross(along, vectorBetween(from, p)));

const liesOn = (curve: Curve, fold: Fold): boolean =>
  awayFrom(fold, curve.from) <= STRAIGHT &&
  awayFrom(fold, curve.to) <= STRAIGHT &&
  isStraight(curve, STRAIGHT);

/** The image of a chain, walked so that it goes on from the chain's end. */
const mirrored = <E extends Edge>(edge: E, fold: Fold): E => reversedEdge(transformedEdge(edge, fold.mirror));

/** The cutting line without the fold, from it to it; undefined where it does not run along the fold just once. */
function offFold(cut: readonly Curve[], fold: Fold): readonly Curve[] | undefined {
  const runs = cut.map((curve) => liesOn(curve, fold));
  const starts = runs.flatMap((onIt, i) => (!onIt && runs.at(i - 1) ? [i] : []));
  const [start] = starts;
  if (start === undefined || starts.length > 1) return undefined;
  const turned = [...cut.slice(start), ...cut.slice(0, start)];
  const open = turned.slice(0, runs.filter((onIt) => !onIt).length);
  const backwards = (curves: readonly Curve[]): readonly Curve[] => curves.toReversed().map(reversed);
  return backwards(fromFold(backwards(fromFold(open, fold)), fold)).map((curve) =>
    transformedCurve(curve, onto(fold)),
  );
}

/**
 * A cutting line that begins at the fold, without what lies beyond it: an allowance at a point on the fold ends there square
 * to its edge, and where cloth is folded, or the other half begins, there is no more of it.
 */
function fromFold(curves: readonly Curve[], fold: Fold): readonly Curve[] {
  const side = (p: Point): number => cross(fold.along, vectorBetween(fold.from, p));
  const cloth = Math.sign(curves.reduce((sum, { to }) => sum + side(to), 0));
  const back = curves.findIndex(({ to }) => cloth * side(to) > STRAIGHT);
  const strays = curves.slice(0, back).some(({ to }) => cloth * side(to) < -STRAIGHT);
  const crossing = curves[back];
  if (!strays || !crossing) return curves;
  const met = crossings(crossing, { through: fold.from, heading: fold.along }).at(-1);
  return met ? [part(crossing, met.t, 1), ...curves.slice(back + 1)] : curves;
}

/** Puts what lies on the fold on it exactly, so that the halves meet. */
const onto =
  ({ from, along }: Fold): Transform =>
  (p) => {
    const off = cross(along, vectorBetween(from, p));
    if (Math.abs(off) > STRAIGHT) return p;
    return moved(from, scaled(along, dot(along, vectorBetween(from, p))));
  };

/** A line inside on both halves: one line where it meets the fold, else two. */
function across(line: InsideLine, fold: Fold): readonly InsideLine[] {
  const [start, end] = [line.curves[0]?.from, line.curves.at(-1)?.to];
  if (!start || !end || line.curves.every((curve) => liesOn(curve, fold))) return [line];
  const other = mirrored(line, fold).curves;
  const whole = line.fullness === undefined ? line : { ...line, fullness: 2 * line.fullness };
  if (awayFrom(fold, start) <= STRAIGHT) return [{ ...whole, curves: [...other, ...line.curves] }];
  if (awayFrom(fold, end) <= STRAIGHT) return [{ ...whole, curves: [...line.curves, ...other] }];
  const { text: _, ...unsaid } = line;
  return [line, { ...unsaid, name: otherName(line.name), curves: other }];
}

/** A mark on both halves; one on the fold once. */
function bothSides(mark: Mark, fold: Fold): readonly Mark[] {
  if (awayFrom(fold, mark.at) <= COINCIDENCE) return [mark];
  const angle = 2 * angleOf(fold.along) - mark.angle;
  return [mark, { ...mark, name: otherName(mark.name), at: fold.mirror(mark.at), angle }];
}
