import { chordPoints } from './chords.ts';
import type { Edge } from './curve.ts';
import { edgeEnd } from './edge.ts';
import { between, distance, type Point, point } from './point.ts';

/**
 * Places at even distances along an edge, its ends among them: `count` of them, at least 2. Each lies within twice
 * the flatness (mm) of where it should: the edge is walked along its chords, which is many times faster than along
 * its arcs.
 */
export function evenPlaces(edge: Edge, count: number, flatness: number): readonly Point[] {
  const corners = edge.curves.flatMap((curve, i) => {
    const flat = chordPoints(curve, flatness);
    const points = Array.from({ length: flat.length / 2 }, (_, k) =>
      point(flat[2 * k] ?? 0, flat[2 * k + 1] ?? 0),
    );
    return i === 0 ? points : points.slice(1);
  });
  const reached = [0];
  for (const [i, corner] of corners.slice(1).entries())
    reached.push((reached[i] ?? 0) + distance(corners[i] ?? corner, corner));
  const length = reached.at(-1) ?? 0;
  let next = 1;
  return Array.from({ length: count }, (_, i) => {
    const along = (length * i) / (count - 1);
    while (next < reached.length - 1 && (reached[next] ?? 0) < along) next++;
    const [a, b] = [reached[next - 1] ?? 0, reached[next] ?? 0];
    const [from, to] = [corners[next - 1], corners[next]];
    if (!from || !to || b === a) return edgeEnd(edge);
    return between(from, to, (along - a) / (b - a));
  });
}
