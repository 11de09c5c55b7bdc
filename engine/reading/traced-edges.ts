import type { Curve } from '../geometry/curve.ts';
import { directionAt } from '../geometry/evaluate.ts';
import { signedArea } from '../geometry/outline.ts';
import { distance } from '../geometry/point.ts';
import { reversed } from '../geometry/split.ts';
import { cross, dot } from '../geometry/vector.ts';
import type { TracedEdge } from '../shaping/traced.ts';

/** Curves shorter than this are slips of the pen, mm; dropping one moves its neighbour by no more. */
const SLIP = 0.01;

/** A closed chain of curves made to run clockwise as drawn, without curves of no length. */
export function clockwise(chain: readonly Curve[]): readonly Curve[] {
  const kept: Curve[] = [];
  for (const curve of chain) {
    const from = kept.at(-1)?.to ?? curve.from;
    if (extent(curve) > SLIP) kept.push({ ...curve, from });
  }
  const [first, last] = [kept[0], kept.at(-1)];
  if (first && last) kept[kept.length - 1] = { ...last, to: first.from };
  return signedArea([{ name: '', curves: kept }]) < 0 ? kept.toReversed().map(reversed) : kept;
}

const extent = (curve: Curve): number =>
  curve.kind === 'line'
    ? distance(curve.from, curve.to)
    : Math.max(
        distance(curve.from, curve.to),
        distance(curve.from, curve.handle1),
        distance(curve.handle2, curve.to),
      );

/**
 * A clockwise chain as edges, one from each corner to the next, numbered from the corner nearest the top left. A
 * corner is a joint that turns by more than `corner` (radians). A chain without corners is one edge.
 */
export function edgesAtCorners(chain: readonly Curve[], corner: number): readonly TracedEdge[] {
  const starts = chain.flatMap((curve, i) =>
    Math.abs(turnInto(chain.at(i - 1) ?? curve, curve)) > corner ? [i] : [],
  );
  const topLeft = (i: number): number => (chain[i]?.from.x ?? 0) + (chain[i]?.from.y ?? 0);
  const first = starts.reduce((best, i) => (topLeft(i) < topLeft(best) ? i : best), starts[0] ?? 0);
  const from = starts.indexOf(first);
  const order = from < 0 ? [0] : [...starts.slice(from), ...starts.slice(0, from)];
  return order.map((start, i) => {
    const end = order[i + 1] ?? order[0] ?? start;
    const curves = end > start ? chain.slice(start, end) : [...chain.slice(start), ...chain.slice(0, end)];
    return { name: `edge ${i + 1}`, curves };
  });
}

function turnInto(before: Curve, after: Curve): number {
  const [into, outOf] = [directionAt(before, 'end'), directionAt(after, 'start')];
  return Math.atan2(cross(into, outOf), dot(into, outOf));
}
