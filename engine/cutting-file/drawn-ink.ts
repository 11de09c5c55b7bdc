import { chordPoints } from '../geometry/chords.ts';
import type { Curve } from '../geometry/curve.ts';
import { outwardPoints } from '../geometry/outward-chords.ts';
import { distance, type Point, point } from '../geometry/point.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { type Transform, transformedCurve } from '../geometry/transform.ts';
import { type Ink, type InkChain, type InkWords, ownNames } from '../render/ink.ts';
import type { DxfDrawing } from './drawn.ts';
import type { Flavour } from './flavour.ts';
import { type LayerName, layerOf } from './layers.ts';

/** How far the polyline of a cutting line may lie outside it, mm: with the digits it is written in, up to 0.05. */
const OUTWARD = 0.0499;

/** How far any other polyline may stray, mm: ten seams of a girth are then walked to far less than 0.1 mm. */
const FOLLOWED = 0.02;

/** Height of capitals, which this format counts by, as a share of the font size. */
const CAPITALS = 0.7;

/**
 * Ink as it is drawn in a cutting file; `to` takes the ink's own place, y down, to its place in the file, y up. Curves become
 * polylines or splines, straight lines never do.
 */
export function drawnInk(ink: readonly Ink[], flavour: Flavour, to: Transform): readonly DxfDrawing[] {
  let before: LayerName | undefined;
  return ink.flatMap((one) => {
    const layer = layerOf(one, before);
    before = layer;
    return drawn(one, layer, flavour, to);
  });
}

function drawn(ink: Ink, layer: LayerName, flavour: Flavour, to: Transform): readonly DxfDrawing[] {
  switch (ink.kind) {
    case 'chain':
      return flavour === 'polylines' || ink.curves.every(({ kind }) => kind === 'line')
        ? asLine(ink, layer, to)
        : asCurves(ink, layer, to);
    case 'circle':
      return [
        { kind: 'circle', layer, names: namesOf(ink.names), middle: to(ink.middle), radius: ink.radius },
      ];
    case 'box': {
      const { corner, width, height } = ink;
      const across = [corner.x, corner.x + width, corner.x + width, corner.x];
      const points = across.map((x, i) => to(point(x, i < 2 ? corner.y : corner.y + height)));
      const curves = points.map(
        (from, i): Curve => ({ kind: 'line', from, to: points[(i + 1) % 4] ?? from }),
      );
      return [{ kind: 'line', layer, names: [], points, closed: true, curves }];
    }
    case 'words':
      return [asText(ink, layer, to)];
  }
}

function asLine(chain: InkChain, layer: LayerName, to: Transform): readonly DxfDrawing[] {
  const { curves, closed = false } = chain;
  const points = distinct(chain.class === 'cut' ? outwardPoints(curves, OUTWARD) : followed(curves));
  const [first, last] = [points[0], points.at(-1)];
  const meets = first && last && points.length > 2 && distance(first, last) <= COINCIDENCE;
  const corners = closed && meets ? points.slice(0, -1) : points;
  if (corners.length < 2) return [];
  const drawnFor = [...curves, ...(closed ? gapOf(curves) : [])].map((curve) => transformedCurve(curve, to));
  return [
    {
      kind: 'line',
      layer,
      names: namesOf(chain.names),
      points: corners.map(to),
      closed,
      curves: drawnFor,
    },
  ];
}

/** The straight from the end of a closed chain to its start; of no length where they meet. */
function gapOf(curves: readonly Curve[]): readonly Curve[] {
  const [first, last] = [curves[0], curves.at(-1)];
  return first && last ? [{ kind: 'line', from: last.to, to: first.from }] : [];
}

/** The curves one by one, so that each is what it is in the draft to the last digit. */
function asCurves(
  { curves, closed, names: own }: InkChain,
  layer: LayerName,
  to: Transform,
): readonly DxfDrawing[] {
  const names = namesOf(own);
  return [...curves, ...(closed ? gapOf(curves) : [])].flatMap((curve): readonly DxfDrawing[] => {
    const control = (
      curve.kind === 'line' ? [curve.from, curve.to] : [curve.from, curve.handle1, curve.handle2, curve.to]
    ).map(to);
    if (distinct(control).length < 2) return [];
    return curve.kind === 'line'
      ? [
          {
            kind: 'line',
            layer,
            names,
            points: control,
            closed: false,
            curves: [transformedCurve(curve, to)],
          },
        ]
      : [{ kind: 'spline', layer, names, control }];
  });
}

/** Places along a chain of curves that the straight lines between them follow it by. */
function followed(curves: readonly Curve[]): readonly Point[] {
  const points = curves.flatMap((curve) => {
    const ends = chordPoints(curve, FOLLOWED);
    return Array.from({ length: ends.length / 2 - 1 }, (_, i) =>
      point(ends[2 * i] ?? 0, ends[2 * i + 1] ?? 0),
    );
  });
  const last = curves.at(-1);
  return last ? [...points, last.to] : points;
}

/** No two neighbours at one place. */
const distinct = (points: readonly Point[]): readonly Point[] =>
  points.filter((p, i) => {
    const before = points[i - 1];
    return !before || distance(before, p) > COINCIDENCE;
  });

function asText(
  { text, at, size, anchored = 'start', turnedAbout: pivot }: InkWords,
  layer: LayerName,
  to: Transform,
): DxfDrawing {
  // A quarter turn to the left takes (x, y) from the pivot to (y, -x).
  const turned = pivot ? point(pivot.x + (at.y - pivot.y), pivot.y - (at.x - pivot.x)) : at;
  return {
    kind: 'text',
    layer,
    names: [],
    text,
    at: to(turned),
    height: CAPITALS * size,
    anchored,
    upwards: pivot !== undefined,
  };
}

const kept: readonly string[] = [...ownNames, 'turn', 'kind'];

/** Names of a line beside its piece's, which its block has. */
const namesOf = (names: InkChain['names'] = {}): readonly string[] =>
  Object.entries(names).flatMap(([key, name]) =>
    name === undefined || !kept.includes(key) ? [] : [`${key}: ${name}`],
  );
