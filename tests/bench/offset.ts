import { Clipper, EndType, JoinType } from 'clipper2-ts';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import { pointAt } from '../../engine/geometry/evaluate.ts';
import { nearestOnEdge } from '../../engine/geometry/nearest.ts';
import { outlineCurves } from '../../engine/geometry/outline.ts';
import { parallelOutline } from '../../engine/geometry/parallel-outline.ts';
import { between, type Point } from '../../engine/geometry/point.ts';
import { polygonOf } from '../../engine/geometry/polygon.ts';
import { PARALLEL } from '../../engine/geometry/tolerance.ts';
import { CURVED_OUTLINE } from './curves.ts';
import { figures, table, timedTogether } from './timing.ts';

const ALLOWANCE = 12.7;

/**
 * The parallel of a closed outline with curved sides, half an inch outward, round at the corners, to 0.02 mm: ours
 * in cubics, the others in corners of a polygon. Flattening the outline for the others is not counted. Their arcs
 * have as many steps as the deviation allows.
 */
export function offsetBench(): string {
  const flat = polygonOf(CURVED_OUTLINE, PARALLEL);
  const path = flat.map(({ x, y }) => ({ x, y }));
  const factory = new GeometryFactory();
  const ring = [...flat, ...flat.slice(0, 1)].map(({ x, y }) => new Coordinate(x, y));
  const polygon = factory.createPolygon(factory.createLinearRing(ring), []);
  const quarter = Math.ceil(Math.PI / 4 / Math.acos(1 - PARALLEL / ALLOWANCE));
  const parameters = new BufferParameters(quarter);

  const ours = () => parallelOutline(CURVED_OUTLINE, ALLOWANCE, PARALLEL, 'round');
  const jsts = () => BufferOp.bufferOp(polygon, ALLOWANCE, parameters);
  const clipper = () =>
    Clipper.inflatePathsD([path], ALLOWANCE, JoinType.Round, EndType.Polygon, 2, 4, PARALLEL);
  const [own, buffer, inflate] = timedTogether([ours, jsts, clipper]);

  const curves = ours().outlines.flatMap(outlineCurves);
  const steps = Array.from({ length: 200 }, (_, i) => i / 200);
  const buffered: Point[] = jsts().getCoordinates().slice(1);
  const inflated: Point[] = clipper()[0] ?? [];
  const row = (name: string, time: number, p99: number, count: number, points: readonly Point[]) => [
    name,
    figures(time),
    figures(p99),
    String(count),
    strayOf(points).toFixed(4),
    figures(time / (own?.median ?? 1)),
  ];
  return [
    `Parallel outline, ${ALLOWANCE} mm outward of ${outlineCurves(CURVED_OUTLINE).length} curves (${flat.length} corners once flattened)`,
    table([
      ['', 'us median', 'us p99', 'curves or corners', 'deviation mm', 'times as long'],
      row(
        'parallelOutline',
        own?.median ?? 0,
        own?.p99 ?? 0,
        curves.length,
        curves.flatMap((curve) => steps.map((t) => pointAt(curve, t))),
      ),
      row('JSTS buffer', buffer?.median ?? 0, buffer?.p99 ?? 0, buffered.length, chords(buffered)),
      row('clipper2-ts', inflate?.median ?? 0, inflate?.p99 ?? 0, inflated.length, chords(inflated)),
    ]),
  ].join('\n');
}

/** Points along the sides of a closed polygon, eight a side. */
const chords = (corners: readonly Point[]): Point[] =>
  corners.flatMap((corner, i) =>
    Array.from({ length: 8 }, (_, k) => between(corner, corners[(i + 1) % corners.length] ?? corner, k / 8)),
  );

/** How far points that should lie one allowance away from the outline do not. */
function strayOf(points: readonly Point[]): number {
  const curves = { curves: outlineCurves(CURVED_OUTLINE) };
  return Math.max(...points.map((p) => Math.abs(nearestOnEdge(curves, p).distance - ALLOWANCE)));
}
