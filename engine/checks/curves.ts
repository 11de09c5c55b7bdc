import { flatMapped } from '../flat-mapped.ts';
import type { Curve } from '../geometry/curve.ts';
import { derivativeAt } from '../geometry/evaluate.ts';
import { inflectionCount, joints } from '../geometry/inflections.ts';
import { distance, type Point, vectorBetween } from '../geometry/point.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { dot, magnitude } from '../geometry/vector.ts';
import type { Issue } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';
import { inDegrees, inMm } from '../text/figure.ts';

/**
 * Looks along every edge of a piece: no kinks, no more changes from hollow to round than the edge declares, and
 * no curve that is broken, without length, or with a point in its middle.
 */
export const curveFaults = (piece: Piece, kinkBound: number): Issue[] =>
  flatMapped(piece.edges, (edge) => edgeFaults(piece, edge, kinkBound));

function edgeFaults(piece: Piece, edge: PieceEdge, kinkBound: number): Issue[] {
  const path = `${piece.name}/${edge.name}`;
  const named = `The edge "${edge.name}" of ${piece.name}`;
  const fault = (code: IssueCode, message: string, rest: Partial<Issue> = {}): Issue => ({
    code,
    severity: 'error',
    path,
    message: `${named} ${message}`,
    ...rest,
  });
  const shape = shapeFault(edge.curves);
  if (shape) return [fault('broken-curve', shape)];

  const faults: Issue[] = [];
  const kink = joints(edge).reduce((worst, { angle }) => Math.max(worst, Math.abs(angle)), 0);
  if (!(kink <= kinkBound)) {
    const degrees = (kink * 180) / Math.PI;
    faults.push(
      fault('kink-in-edge', `has a kink of ${inDegrees(degrees)} where it should run smoothly.`, {
        value: kink,
        limits: { max: kinkBound, unit: 'rad' },
      }),
    );
  }
  const inflections = inflectionCount(edge);
  if (inflections > edge.inflections) {
    faults.push(
      fault(
        'stray-inflection',
        `changes ${times(inflections)} between hollow and round, ${declared(edge)}.`,
        {
          value: inflections,
          limits: { max: edge.inflections, unit: 'count' },
        },
      ),
    );
  }
  return faults;
}

/** What is wrong with the curves themselves, in words; undefined when they are sound. */
function shapeFault(curves: readonly Curve[]): string | undefined {
  if (curves.length === 0) return 'has nothing drawn in it.';
  for (const [i, curve] of curves.entries()) {
    const places =
      curve.kind === 'line' ? [curve.from, curve.to] : [curve.from, curve.handle1, curve.handle2, curve.to];
    if (!places.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))) {
      return 'runs to a place that is no place: a measurement went wrong.';
    }
    const next = curves[i + 1];
    if (next && distance(curve.to, next.from) > COINCIDENCE) {
      return `is broken: ${inMm(distance(curve.to, next.from))} are missing between two of its curves.`;
    }
    if (distance(curve.from, curve.to) <= COINCIDENCE) return 'holds a curve without length.';
    if (slowest(curve) < SLOWEST * distance(curve.from, curve.to)) return 'comes to a point in its middle.';
  }
  return undefined;
}

/** A curve slower than this share of its chord (per unit of t) somewhere has a cusp there, or nearly one. */
const SLOWEST = 0.01;

/** Places tried between a curve's ends; its ends themselves may have no speed, where a handle has no length. */
const TRIES = 32;

/** The least speed of a curve between its ends, or what it never falls below, where that is fast enough. */
function slowest(curve: Curve): number {
  const chord = vectorBetween(curve.from, curve.to);
  if (curve.kind === 'line') return magnitude(chord);
  const { from, handle1, handle2, to } = curve;
  // Its speed along the chord is a mean of those of the legs of its control polygon.
  const onward = (a: Point, b: Point): number => (3 * dot(vectorBetween(a, b), chord)) / magnitude(chord);
  const never = Math.min(onward(from, handle1), onward(handle1, handle2), onward(handle2, to));
  if (never >= SLOWEST * magnitude(chord)) return never;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < TRIES; i++) least = Math.min(least, magnitude(derivativeAt(curve, i / TRIES)));
  return least;
}

const times = (count: number): string => (count === 1 ? 'once' : count === 2 ? 'twice' : `${count} times`);

const declared = ({ inflections }: PieceEdge): string =>
  inflections === 0 ? 'and should not' : `and should no more than ${times(inflections)}`;
