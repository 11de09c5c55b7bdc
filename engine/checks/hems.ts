import { flatMapped } from '../flat-mapped.ts';
import type { Curve, Edge } from '../geometry/curve.ts';
import { curveCrossings } from '../geometry/curve-crossings.ts';
import {
  edgeEnd,
  edgeLength,
  edgeStart,
  endDirection,
  lengthUpTo,
  startDirection,
} from '../geometry/edge.ts';
import { headingAt } from '../geometry/evaluate.ts';
import { edgeCrossings } from '../geometry/intersect.ts';
import { parallelCurve } from '../geometry/parallel-curve.ts';
import { moved, type Point } from '../geometry/point.ts';
import { HEM_EASE, PARALLEL } from '../geometry/tolerance.ts';
import { outward, scaled, type Vector } from '../geometry/vector.ts';
import type { Issue } from '../issue.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';
import { inMm } from '../text/figure.ts';

/** How near to the edge of the cloth it is measured, as a share of the allowance: on the edge itself nothing crosses. */
const NEAR_EDGE = 0.995;

/**
 * Turns every hem up along its line and lays it on the piece, as cut: its edge must be as wide, from seam to seam, as
 * the piece is where it comes to lie, or it would stand in folds or pull. Both are measured along parallels of the hem,
 * from cutting line to cutting line less the allowances of the seams, each square to the cutting line.
 */
export const hemFaults = (piece: Piece, cut: Edge): Issue[] =>
  flatMapped(piece.edges, (hem, i) => {
    const [before, after] = [piece.edges.at(i - 1), piece.edges[(i + 1) % piece.edges.length]];
    if (hem.turn !== 'hem' || !before || !after) return [];
    // A seam that ends within the hem's depth has nothing above it to lie on.
    if (Math.min(edgeLength(before), edgeLength(after)) < hem.allowance) return [];
    const depth = NEAR_EDGE * hem.allowance;
    const below = stitchedWidth(hem, before, after, depth, cut);
    const above = stitchedWidth(hem, before, after, -depth, cut);
    if (below === undefined || above === undefined || Math.abs(below - above) <= HEM_EASE) return [];
    return [fault(piece, hem, below, above)];
  });

/** The cloth between the seams along the parallel of a hem, `out` mm below its line; nothing where it does not reach both. */
function stitchedWidth(
  hem: PieceEdge,
  before: PieceEdge,
  after: PieceEdge,
  out: number,
  cut: Edge,
): number | undefined {
  const run = 4 * hem.allowance;
  const level = prolonged(
    flatMapped(hem.curves, (curve) => parallelCurve(curve, out, PARALLEL).curves),
    run,
  );
  const middle = edgeLength(level) / 2;
  const met: Met[] = [];
  for (const [i, curve] of level.curves.entries())
    for (const line of cut.curves)
      for (const { t, u, point } of curveCrossings(curve, line))
        met.push({ at: lengthUpTo(level, { curve: i, t }), point, along: headingAt(line, u) });
  const start = met.filter(({ at }) => at < middle).toSorted((a, b) => b.at - a.at)[0];
  const end = met.filter(({ at }) => at > middle).toSorted((a, b) => a.at - b.at)[0];
  if (!start || !end) return undefined;
  return stitchedAt(level, end, after.allowance) - stitchedAt(level, start, before.allowance);
}

/** Where a cutting line meets a level: how far along the level, mm, and with which heading. */
interface Met {
  readonly at: number;
  readonly point: Point;
  readonly along: Vector;
}

/** Where the stitching line meets it, an allowance inside the cutting line, mm along the level. */
function stitchedAt(level: Edge, { at, point, along }: Met, allowance: number): number {
  const through = moved(point, scaled(outward(along), -allowance));
  const places = edgeCrossings(level, { through, heading: along }).map((place) => lengthUpTo(level, place));
  return places.toSorted((a, b) => Math.abs(a - at) - Math.abs(b - at))[0] ?? at;
}

/** A chain of curves with a straight run before and after it, mm. */
function prolonged(curves: readonly Curve[], run: number): Edge {
  const chain = { name: 'level', curves };
  const [from, to] = [edgeStart(chain), edgeEnd(chain)];
  return {
    name: 'level',
    curves: [
      { kind: 'line', from: moved(from, scaled(startDirection(chain), -run)), to: from },
      ...curves,
      { kind: 'line', from: to, to: moved(to, scaled(endDirection(chain), run)) },
    ],
  };
}

function fault(piece: Piece, hem: PieceEdge, below: number, above: number): Issue {
  return {
    code: 'hem-lies-not-flat',
    severity: 'error',
    path: `${piece.name}/${hem.name}`,
    message:
      `Turned up, the hem of ${piece.name} would not lie flat: ${inMm(below)} of its allowance ` +
      `come to lie on ${inMm(above)} of the piece.`,
    value: Math.abs(below - above),
    limits: { max: HEM_EASE, unit: 'mm' },
  };
}
