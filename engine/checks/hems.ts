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
import { parallelCurve } from '../geometry/parallel-curve.ts';
import { moved } from '../geometry/point.ts';
import { HEM_EASE, PARALLEL } from '../geometry/tolerance.ts';
import { cross, scaled } from '../geometry/vector.ts';
import type { Issue } from '../issue.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';
import { inMm } from './words.ts';

/** Depths at which a turned up hem is laid on the piece, as shares of its allowance: half way, and at its edge. */
const DEPTHS = [0.5, 0.995] as const;

/**
 * Turns every hem up along its line and lays it on the piece, as cut: at each depth the cloth between the two seams must
 * be as wide below the hem line as it is above, or it would stand in folds or pull. Both are measured along parallels of
 * the hem, from cutting line to cutting line less the allowances of the seams, each square to the cutting line.
 */
export const hemFaults = (piece: Piece, cut: Edge): Issue[] =>
  piece.edges.flatMap((hem, i) => {
    const [before, after] = [piece.edges.at(i - 1), piece.edges[(i + 1) % piece.edges.length]];
    if (hem.turn !== 'hem' || !before || !after) return [];
    // A seam that ends within the hem's depth has nothing above it to lie on.
    if (Math.min(edgeLength(before), edgeLength(after)) < hem.allowance) return [];
    const gaps = DEPTHS.flatMap((share) => {
      const depth = share * hem.allowance;
      const [below, above] = [depth, -depth].map((out) => stitchedWidth(hem, before, after, out, cut));
      return below === undefined || above === undefined ? [] : [{ below, above }];
    });
    const off = ({ below, above }: { below: number; above: number }): number => Math.abs(below - above);
    const worst = gaps.toSorted((a, b) => off(b) - off(a))[0];
    return worst && off(worst) > HEM_EASE ? [fault(piece, hem, worst.below, worst.above)] : [];
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
    hem.curves.flatMap((curve) => parallelCurve(curve, out, PARALLEL).curves),
    run,
  );
  const middle = edgeLength(level) / 2;
  const met = level.curves.flatMap((curve, i) =>
    cut.curves.flatMap((line) =>
      curveCrossings(curve, line).map(({ t, u }) => ({
        at: lengthUpTo(level, { curve: i, t }),
        sine: Math.abs(cross(headingAt(curve, t), headingAt(line, u))),
      })),
    ),
  );
  const start = met.filter(({ at }) => at < middle).toSorted((a, b) => b.at - a.at)[0];
  const end = met.filter(({ at }) => at > middle).toSorted((a, b) => a.at - b.at)[0];
  if (!start || !end) return undefined;
  return end.at - start.at - before.allowance / start.sine - after.allowance / end.sine;
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
