import { strokes } from '../../finishing/label.ts';
import { distanceToStroke } from '../../finishing/rectangle.ts';
import type { Curve } from '../../geometry/curve.ts';
import { pointAt } from '../../geometry/evaluate.ts';
import { distance, moved, type Point, point, vectorBetween } from '../../geometry/point.ts';
import { movedBy, transformedCurve } from '../../geometry/transform.ts';
import type { Vector } from '../../geometry/vector.ts';
import { cellOn, margin } from '../../render/tiles/tile-page.ts';
import { type PdfPage, unit } from './pdf-page.ts';

/** A named line as it lies once the tiles are joined. */
export interface JoinedLine {
  readonly tag: string;
  readonly curves: readonly Curve[];
  readonly closed: boolean;
  /** The windows through which the copies of this line show. */
  readonly windows: readonly (readonly [Point, Point])[];
  /** How far the copies on different tiles lie apart, mm. */
  readonly apart: number;
}

export interface Joined {
  readonly lines: readonly JoinedLine[];
  /** How far the worst crossing mark misses its other half, mm. */
  readonly worstCrossing: number;
  readonly crossings: number;
}

/** Far enough that heaps of tiles that no mark connects lie apart, mm. */
const apart = 3_000;

/**
 * Joins printed tiles as it is done on the floor: the first lies where it is, every other is laid so that a
 * crossing mark it shares with a tile that lies already comes upon the other one's.
 */
export function joinTiles(pages: readonly PdfPage[]): Joined {
  const marks = pages.map(crossingsOn);
  const laid = new Map<number, Vector>();
  for (const [start] of pages.entries()) {
    if (laid.has(start)) continue;
    laid.set(start, { x: start * apart, y: 0 });
    const open = [start];
    for (let page = open.pop(); page !== undefined; page = open.pop()) {
      for (const [other] of pages.entries()) {
        const shared = laid.has(other) ? undefined : firstShared(marks[page], marks[other]);
        const here = laid.get(page);
        if (!shared || !here) continue;
        laid.set(other, vectorBetween(shared[1], moved(shared[0], here)));
        open.push(other);
      }
    }
  }
  const places = new Map<string, Point[]>();
  for (const [page, found] of marks.entries())
    for (const [name, at] of found)
      places.set(name, [...(places.get(name) ?? []), moved(at, laid.get(page) ?? { x: 0, y: 0 })]);
  const misses = Array.from(places.values(), ([a, b]) => (a && b ? distance(a, b) : Infinity));
  return {
    lines: linesOf(pages, laid),
    worstCrossing: Math.max(0, ...misses),
    crossings: places.size,
  };
}

/** The middles of the crossing marks of a page, by name. */
function crossingsOn(page: PdfPage): ReadonlyMap<string, Point> {
  const strokes = page.paths.filter(({ tag }) => tag?.startsWith('crossing|'));
  const middles = new Map<string, Point>();
  for (const { tag = '', curves } of strokes) {
    const [line] = curves;
    if (line) middles.set(tag, point((line.from.x + line.to.x) / 2, (line.from.y + line.to.y) / 2));
  }
  return middles;
}

function firstShared(
  a: ReadonlyMap<string, Point> | undefined,
  b: ReadonlyMap<string, Point> | undefined,
): readonly [Point, Point] | undefined {
  for (const [name, at] of a ?? []) {
    const there = b?.get(name);
    if (there) return [at, there];
  }
  return undefined;
}

/** Copies nearer than this are the same line; two lines of one name, such as a double notch, lie farther; mm. */
const same = 1;

/** A line on the very edge of a cell lies on it to the digits of the file, mm. */
const rounding = 1e-4;

function linesOf(pages: readonly PdfPage[], laid: ReadonlyMap<number, Vector>): readonly JoinedLine[] {
  const found: JoinedLine[] = [];
  for (const [index, page] of pages.entries()) {
    const to = laid.get(index) ?? { x: 0, y: 0 };
    for (const { tag, curves: drawn, closed, clip } of page.paths) {
      if (tag === undefined || tag.startsWith('crossing|') || (clip && !runsThrough(drawn, page))) continue;
      const curves = drawn.map((curve) => transformedCurve(curve, movedBy(to)));
      const windows = clip ? [[moved(clip[0], to), moved(clip[1], to)] as const] : [];
      const known = found.findIndex((line) => line.tag === tag && gap(line.curves, curves) < same);
      const line = found[known];
      if (!line) found.push({ tag, curves, closed, windows, apart: 0 });
      else
        found[known] = {
          ...line,
          windows: [...line.windows, ...windows],
          apart: Math.max(line.apart, gap(line.curves, curves)),
        };
    }
  }
  return found;
}

/**
 * Whether a line runs through the cell of a tile, and not only through what the tile shows of its neighbours: the strips for glue,
 * and beside its edges half the width of a line. There it is theirs, and they need not be joined to this one for it.
 */
function runsThrough(curves: readonly Curve[], page: PdfPage): boolean {
  const { width, height } = cellOn({ width: page.width * unit, height: page.height * unit });
  const middle = point(margin + width / 2, margin + height / 2);
  const cell = { middle, width: width + 2 * rounding, height: height + 2 * rounding };
  return curves.some((curve) => strokes(curve).some((chord) => distanceToStroke(cell, chord) === 0));
}

/** The farthest that control points of two copies of a line lie apart, mm. */
const gap = (a: readonly Curve[], b: readonly Curve[]): number =>
  a.length !== b.length ? Infinity : Math.max(...a.map((curve, i) => curveGap(curve, b[i] ?? curve)));

function curveGap(a: Curve, b: Curve): number {
  const ends = Math.max(distance(a.from, b.from), distance(a.to, b.to));
  if (a.kind === 'line' || b.kind === 'line') return a.kind === b.kind ? ends : Infinity;
  return Math.max(ends, distance(a.handle1, b.handle1), distance(a.handle2, b.handle2));
}

/** Whether every part of a line shows in the window of some tile. */
export const isShown = ({ curves, windows }: JoinedLine): boolean =>
  curves.every((curve) =>
    Array.from({ length: 101 }, (_, i) => pointAt(curve, i / 100)).every((p) =>
      windows.some(
        ([a, b]) => p.x >= a.x - 0.01 && p.x <= b.x + 0.01 && p.y >= a.y - 0.01 && p.y <= b.y + 0.01,
      ),
    ),
  );
