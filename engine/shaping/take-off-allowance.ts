import type { Curve } from '../geometry/curve.ts';
import { curveCrossings } from '../geometry/curve-crossings.ts';
import {
  edgeEnd,
  edgeStart,
  endDirection,
  lengthUpTo,
  pointAlong,
  startDirection,
} from '../geometry/edge.ts';
import { inflectionCount } from '../geometry/inflections.ts';
import { isSimple } from '../geometry/inside.ts';
import { nearestOnEdge } from '../geometry/nearest.ts';
import { signedArea } from '../geometry/outline.ts';
import { parallelEdge } from '../geometry/parallel-outline.ts';
import { distance, moved, type Point } from '../geometry/point.ts';
import { part } from '../geometry/split.ts';
import { COINCIDENCE, PARALLEL, WALK } from '../geometry/tolerance.ts';
import { scaled } from '../geometry/vector.ts';
import type { Result } from '../issue.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';
import { fixedMm } from '../text/figure.ts';
import { levelLine } from './reassemble.ts';
import { refused } from './refusal.ts';

/** A corner of the stitching line lies no farther from that of the cutting line than so many allowances. */
const SHARPEST = 6;

/**
 * A piece whose outline is its cutting line, drawn again along its stitching line: every edge goes in by its own
 * allowance, to 0.02 mm, and neighbours are cut off, or lengthened straight on, where they meet. Folds stay. Notches
 * go straight in; level lines end on the new outline.
 *
 * Issues: `allowance-too-wide`, where an edge or the whole piece has not so much to lose; `allowance-no-corner`, where
 * two edges no longer meet.
 */
export function takeOffAllowance(piece: Piece): Result<Piece> {
  if (piece.edges.every(({ allowance }) => allowance === 0)) return { ok: true, value: piece, issues: [] };
  const sides: (readonly Curve[])[] = [];
  for (const edge of piece.edges) {
    const side = inside(edge, piece.edges);
    if (!side) return tooWide(edge);
    sides.push(side);
  }
  const corners: Meeting[] = [];
  for (const [i, edge] of piece.edges.entries()) {
    const next = (i + 1) % piece.edges.length;
    const meeting = meetingOf(edge, piece.edges[next] ?? edge, sides[i] ?? [], sides[next] ?? []);
    if (!meeting) return noCorner(edge, piece.edges[next] ?? edge);
    corners.push(meeting);
  }
  const edges: PieceEdge[] = [];
  for (const [i, edge] of piece.edges.entries()) {
    const curves = betweenCorners(sides[i] ?? [], corners.at(i - 1)?.after, corners[i]?.before);
    if (!curves) return tooWide(edge);
    edges.push({ ...edge, curves, inflections: inflectionCount({ name: '', curves }) });
  }
  if (signedArea(edges) <= 0 || !isSimple(edges)) return tooWide(widest(piece.edges));
  return { ok: true, value: redrawn(piece, edges), issues: [] };
}

/** A place on a chain of curves. */
interface SearchedPlace {
  readonly curve: number;
  readonly t: number;
  readonly point: Point;
}

/** Where the parallels of two neighbours meet: on the one before, and on the one after. */
interface Meeting {
  readonly before: SearchedPlace;
  readonly after: SearchedPlace;
}

/** The parallel of an edge with straight runs before and after it; nothing when it bends too sharply to have one. */
function inside(edge: PieceEdge, edges: readonly PieceEdge[]): readonly Curve[] | undefined {
  const run = SHARPEST * Math.max(...edges.map(({ allowance }) => allowance));
  const side = parallelOf(edge);
  if (!side) return undefined;
  const [from, to] = [edgeStart(side), edgeEnd(side)];
  return [
    { kind: 'line', from: moved(from, scaled(startDirection(side), -run)), to: from },
    ...side.curves,
    { kind: 'line', from: to, to: moved(to, scaled(endDirection(side), run)) },
  ];
}

function parallelOf(edge: PieceEdge) {
  if (edge.allowance === 0) return edge;
  try {
    return parallelEdge(edge, -edge.allowance, PARALLEL, 'mitre').edge;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** Where two parallels meet nearest to the corner they came from. */
function meetingOf(
  edge: PieceEdge,
  next: PieceEdge,
  before: readonly Curve[],
  after: readonly Curve[],
): Meeting | undefined {
  const corner = edgeEnd(edge);
  const [end, start] = [before.at(-1)?.from, after[0]?.to];
  if (end && start && distance(end, start) <= WALK)
    return {
      before: { curve: before.length - 2, t: 1, point: end },
      after: { curve: 1, t: 0, point: end },
    };
  const met = before.flatMap((one, i) =>
    after.flatMap((other, j) =>
      curveCrossings(one, other).map(({ t, u, point }): Meeting => {
        return { before: { curve: i, t, point }, after: { curve: j, t: u, point } };
      }),
    ),
  );
  const away = ({ before: { point } }: Meeting): number => distance(point, corner);
  const reach = SHARPEST * Math.max(edge.allowance, next.allowance);
  return met.filter((meeting) => away(meeting) <= reach).toSorted((a, b) => away(a) - away(b))[0];
}

/** What is left of a parallel between its corners; nothing when they have passed each other. */
function betweenCorners(
  side: readonly Curve[],
  from: SearchedPlace | undefined,
  to: SearchedPlace | undefined,
): readonly Curve[] | undefined {
  if (!from || !to || from.curve + from.t >= to.curve + to.t) return undefined;
  const kept = side.flatMap((curve, i): readonly Curve[] => {
    if (i < from.curve || i > to.curve) return [];
    const [t0, t1] = [i === from.curve ? from.t : 0, i === to.curve ? to.t : 1];
    return t1 > t0 ? [part(curve, t0, t1)] : [];
  });
  const whole = kept.filter((curve) => distance(curve.from, curve.to) > COINCIDENCE);
  if (whole.length === 0) return undefined;
  return whole.map((curve, i) => ({
    ...curve,
    from: i === 0 ? from.point : curve.from,
    to: whole[i + 1]?.from ?? to.point,
  }));
}

function redrawn(piece: Piece, edges: readonly PieceEdge[]): Piece {
  const notches = piece.notches.map((notch) => {
    const place = piece.edges.findIndex(({ name }) => name === notch.edge);
    const [was, is] = [piece.edges[place], edges[place]];
    if (!was || !is) return notch;
    return { ...notch, at: lengthUpTo(is, nearestOnEdge(is, pointAlong(was, notch.at).point)) };
  });
  const lines = piece.lines.flatMap((line) => {
    const y = line.curves[0]?.from.y;
    return line.kind === 'level' && y !== undefined ? levelLine(line, edges, y) : [line];
  });
  return { ...piece, edges, notches, lines };
}

const widest = (edges: readonly PieceEdge[]): PieceEdge | undefined =>
  edges.toSorted((a, b) => b.allowance - a.allowance)[0];

const tooWide = (edge: PieceEdge | undefined) =>
  refused(
    'allowance-too-wide',
    edge?.name ?? 'outline',
    `The outline cannot lose ${fixedMm(edge?.allowance ?? 0, 1)} at “${edge?.name}”: nothing would be left of it there. Is it the cutting line, and the allowance right?`,
    { value: edge?.allowance ?? 0 },
  );

const noCorner = (edge: PieceEdge, next: PieceEdge) =>
  refused(
    'allowance-no-corner',
    edge.name,
    `With their allowances taken off, “${edge.name}” and “${next.name}” do not meet any more. Are both allowances right?`,
  );
