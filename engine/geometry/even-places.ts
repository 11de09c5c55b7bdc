import { chordPoints } from './chords.ts';
import type { Edge } from './curve.ts';
import { headingAt, pointAt } from './evaluate.ts';
import type { Point } from './point.ts';
import type { Vector } from './vector.ts';

/** A place on an edge, and the unit heading of the edge there. */
export interface HeadingOnEdge {
  readonly point: Point;
  readonly direction: Vector;
}

/** A place between two chords' ends: how far along the edge, on which curve, at which parameter. */
interface Stop {
  readonly along: number;
  readonly curve: number;
  readonly t: number;
}

/**
 * Places at even distances along an edge, its ends among them: `count` of them, at least 2. Each lies on the edge,
 * within a few times the flatness (mm) of where it should: distances are walked along the edge's chords, which is many
 * times faster than along its arcs.
 */
export function evenPlaces(edge: Edge, count: number, flatness: number): readonly HeadingOnEdge[] {
  const stops = stopsAlong(edge, flatness);
  const length = stops.at(-1)?.along ?? 0;
  let next = 1;
  return Array.from({ length: count }, (_, i) => {
    const along = (length * i) / (count - 1);
    while (next < stops.length - 1 && (stops[next]?.along ?? 0) < along) next++;
    const [from, to] = [stops[next - 1], stops[next]];
    const curve = edge.curves[to?.curve ?? 0];
    if (!from || !to || !curve) throw new RangeError(`The edge "${edge.name}" has no curves.`);
    const start = from.curve === to.curve ? from.t : 0;
    const share = to.along > from.along ? Math.min(1, (along - from.along) / (to.along - from.along)) : 1;
    const t = start + (to.t - start) * share;
    return { point: pointAt(curve, t), direction: headingAt(curve, t) };
  });
}

/** The ends of an edge's chords; where one curve follows another, the end of the first. */
function stopsAlong(edge: Edge, flatness: number): readonly Stop[] {
  const stops: Stop[] = [{ along: 0, curve: 0, t: 0 }];
  let along = 0;
  for (const [curve, drawn] of edge.curves.entries()) {
    const flat = chordPoints(drawn, flatness);
    const chords = flat.length / 2 - 1;
    for (let i = 1; i <= chords; i++) {
      const x = (flat[2 * i] as number) - (flat[2 * i - 2] as number);
      const y = (flat[2 * i + 1] as number) - (flat[2 * i - 1] as number);
      along += Math.sqrt(x * x + y * y);
      stops.push({ along, curve, t: i / chords });
    }
  }
  return stops;
}
