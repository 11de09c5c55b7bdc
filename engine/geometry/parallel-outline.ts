import { boundingBox } from './bounds.ts';
import { asOneLine, cornerJoin, type JoinStyle } from './corner-join.ts';
import { type Curve, type Edge, type Outline, withEnds } from './curve.ts';
import { least } from './curve-crossings.ts';
import { pointAt } from './evaluate.ts';
import { nearestOnEdge } from './nearest.ts';
import { outlineCurves, signedArea } from './outline.ts';
import { parallelPieces } from './parallel-curve.ts';
import { distance, type Point } from './point.ts';
import { COINCIDENCE } from './tolerance.ts';
import { type RawPiece, stretches, type TrimmedStretch } from './trim.ts';

/** Outlines at a distance from another one, and how far they stray from the true parallel (mm). */
export interface ParallelOutline {
  readonly outlines: readonly Outline[];
  readonly deviation: number;
}

/** An edge at a distance from another one, and how far it strays from the true parallel (mm). */
export interface ParallelEdge {
  readonly edge: Edge;
  readonly deviation: number;
}

/**
 * The outline `aside` mm outward of a simple clockwise outline (inward when negative), to within `tolerance` (mm):
 * every point of it is that far from the outline, apart from mitred corners. Cusps and self-crossings are cut away.
 *
 * Its edges carry the names of those they run along; a round corner belongs to the edge before it,
 * the two sides of a mitre to the edges they lengthen. Outward there is one
 * outline (gaps it closes round are left out); inward there may be several, or none where the piece is too narrow.
 */
export function parallelOutline(
  outline: Outline,
  aside: number,
  tolerance: number,
  join: JoinStyle,
): ParallelOutline {
  const raw = rawParallel(outline, aside, tolerance, join, true);
  const all = stretches(raw.pieces, true);
  const names = outline.map(({ name }) => name);
  const loops = trimmedLoops(all, outline, aside, raw.deviation + COINCIDENCE)
    .map((loop) => namedOutline(loop, names))
    .filter((loop) => signedArea(loop) > 0)
    .sort((a, b) => signedArea(b) - signedArea(a));
  return { outlines: aside > 0 ? loops.slice(0, 1) : loops, deviation: raw.deviation };
}

/**
 * The edge `aside` mm outward of an edge (on its left as drawn; inward when negative), to within `tolerance` (mm),
 * with its corners joined and its cusps and self-crossings cut away. Its ends stand square to those of the edge.
 * Throws a RangeError for an edge so crooked that no parallel leads from one end to the other.
 */
export function parallelEdge(edge: Edge, aside: number, tolerance: number, join: JoinStyle): ParallelEdge {
  const raw = rawParallel([edge], aside, tolerance, join, false);
  const all = stretches(raw.pieces, false);
  const path: Curve[] = [];
  const seen = new Set<number>();
  for (let at: number | undefined = 0; at !== undefined && !seen.has(at); ) {
    const stretch: TrimmedStretch | undefined = all[at];
    if (!stretch) break;
    seen.add(at);
    path.push(stretch.curve);
    at = stretch.next;
  }
  if (!seen.has(all.length - 1))
    throw new RangeError(`The edge "${edge.name}" is too crooked for a parallel at ${aside} mm.`);
  return { edge: { name: edge.name, curves: tidied(path, undefined) }, deviation: raw.deviation };
}

interface RawParallel {
  readonly pieces: readonly RawPiece[];
  readonly deviation: number;
}

/** The parallels of all curves and the joins between them, before anything is cut away. */
function rawParallel(
  edges: readonly Edge[],
  aside: number,
  tolerance: number,
  join: JoinStyle,
  closed: boolean,
): RawParallel {
  const sources = edges.flatMap((edge, source) =>
    edge.curves.filter(hasExtent).map((curve) => {
      return { curve, source, parts: parallelPieces(curve, aside, tolerance) };
    }),
  );
  const pieces: RawPiece[] = [];
  let deviation = 0;
  for (const [i, { curve, source, parts }] of sources.entries()) {
    const after = sources[i + 1] ?? (closed ? sources[0] : undefined);
    const corner = after ? cornerJoin(curve, after.curve, aside, tolerance, join) : undefined;
    const afterRuns = after?.parts[0]?.runsOn ?? false;
    for (const [k, { curves, runsOn, deviation: reached }] of parts.entries()) {
      deviation = Math.max(deviation, reached);
      // What runs backward between two cusps is nearer to the outline than the distance: it is never kept.
      if (!runsOn) continue;
      const runsOut =
        k === parts.length - 1 && (corner?.kind === 'filled' || (corner?.kind === 'smooth' && afterRuns));
      for (const [c, own] of curves.entries())
        pieces.push({ curve: own, source, joined: c < curves.length - 1 || runsOut });
    }
    if (corner?.kind !== 'filled') continue;
    deviation = Math.max(deviation, corner.deviation);
    for (const [c, own] of corner.curves.entries()) {
      const last = c === corner.curves.length - 1;
      const owner = last && own.kind === 'line' && after ? after.source : source;
      pieces.push({ curve: own, source: owner, joined: !last || afterRuns });
    }
  }
  return { pieces, deviation };
}

const hasExtent = (curve: Curve): boolean =>
  distance(curve.from, curve.to) > COINCIDENCE || distance(curve.from, pointAt(curve, 0.5)) > COINCIDENCE;

/** The closed walks through the stretches, from one whose middle is the distance away but for `slack` (mm). */
function trimmedLoops(
  all: readonly TrimmedStretch[],
  outline: Outline,
  aside: number,
  slack: number,
): TrimmedStretch[][] {
  const loops: TrimmedStretch[][] = [];
  const seen = all.map(() => false);
  const source = { curves: outlineCurves(outline) };
  const isAway = ({ curve }: TrimmedStretch): boolean =>
    nearestOnEdge(source, pointAt(curve, 0.5)).distance >= Math.abs(aside) - slack;
  for (const start of aside > 0 ? [leftmost(all)] : all.keys()) {
    const first = all[start];
    if (!first || seen[start] || (aside < 0 && !isAway(first))) continue;
    const loop: TrimmedStretch[] = [];
    let at: number | undefined = start;
    while (at !== undefined && !seen[at]) {
      seen[at] = true;
      const stretch: TrimmedStretch | undefined = all[at];
      if (stretch) loop.push(stretch);
      at = stretch?.next;
    }
    if (at === start) loops.push(loop);
  }
  return loops;
}

/** The stretch that reaches farthest left: nothing outward of an outline lies beyond it, so it is never cut away. */
function leftmost(all: readonly TrimmedStretch[]): number {
  let best = 0;
  let left = Infinity;
  for (const [i, { curve }] of all.entries()) {
    if (least(curve, 'x') >= left) continue;
    const own = boundingBox([curve]).left;
    if (own >= left) continue;
    best = i;
    left = own;
  }
  return best;
}

/** A loop of stretches as an outline: one edge for each source, from where it first begins. */
function namedOutline(loop: readonly TrimmedStretch[], names: readonly string[]): Outline {
  const turn = loop.findIndex((stretch, i) => stretch.source !== loop.at(i - 1)?.source);
  const first = Math.max(0, turn);
  const ordered = [...loop.slice(first), ...loop.slice(0, first)];
  const edges: { source: number; curves: Curve[] }[] = [];
  for (const { curve, source } of ordered) {
    const last = edges.at(-1);
    if (last?.source === source) last.curves.push(curve);
    else edges.push({ source, curves: [curve] });
  }
  const start = edges[0]?.curves[0]?.from;
  return edges.map(({ source, curves }, i) => {
    const end = edges[i + 1]?.curves[0]?.from ?? start;
    return { name: names[source] ?? '', curves: tidied(curves, end) };
  });
}

/** A chain of curves without slivers, with straight runs in one, its curves meeting exactly and ending at `end`. */
function tidied(chain: readonly Curve[], end: Point | undefined): Curve[] {
  const curves: Curve[] = [];
  for (const curve of chain) {
    if (!hasExtent(curve)) continue;
    const last = curves.at(-1);
    const merged = last && asOneLine(last, curve);
    if (merged) curves[curves.length - 1] = merged;
    else curves.push(last ? withEnds(curve, last.to, curve.to) : curve);
  }
  const last = curves.at(-1);
  if (last && end) curves[curves.length - 1] = withEnds(last, last.from, end);
  return curves;
}
