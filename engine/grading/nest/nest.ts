import { type Bounds, boundingBox, boundsAbout } from '../../geometry/bounds.ts';
import { pointAlong } from '../../geometry/edge.ts';
import { moved, type Point, point } from '../../geometry/point.ts';
import { movedBy, transformedCurve } from '../../geometry/transform.ts';
import { outward, scaled, vector } from '../../geometry/vector.ts';
import { arrowheads } from '../../render/arrows.ts';
import type { FinishedPiece } from '../../render/finished-piece.ts';
import { stroke } from '../../render/ink.ts';
import type { Size } from '../../render/layout.ts';
import { textSizes } from '../../render/line-types.ts';
import { element, type Node, words } from '../../render/markup.ts';
import { numeral, pathData } from '../../render/path-data.ts';
import { movedPiece } from '../../render/place.ts';
import { svgInk } from '../../render/svg-ink.ts';
import { textWidth } from '../../render/text-size.ts';
import type { LaidSize } from '../laid-size.ts';
import { namePlaces } from './size-names.ts';

/** One piece in several sizes, laid on each other. */
export interface Nest {
  readonly piece: string;
  readonly number: number;
  /** What lies on itself in all sizes. */
  readonly anchor: string;
  /** Each with its place among all sizes, which decides its line. */
  readonly sizes: readonly { readonly name: string; readonly place: number; readonly laid: LaidSize }[];
}

/** Room for the two lines of words above a nest, mm. */
const above = 14;

/** Length of the tick at a notch, mm. */
const tick = 3;

const degrees = 180 / Math.PI;

/** Room that a nest takes with its words, mm, and its bounds in its own coordinates. */
export function nestSize(nest: Nest): Size & { readonly bounds: Bounds } {
  const bounds = boundsAbout(nest.sizes.map(({ laid: { finished } }) => boundingBox(outlineOf(finished))));
  const wide = Math.max(...headingOf(nest).map(({ text, size }) => textWidth(text, size)));
  return {
    bounds,
    width: Math.max(bounds.right - bounds.left, wide),
    height: above + bounds.bottom - bounds.top,
  };
}

const headingOf = ({ piece, number, anchor }: Nest) => [
  { text: `${number} ${piece}`, size: textSizes.heading },
  { text: `laid on: ${anchor}`, size: textSizes.small },
];

/** A nest with its top left corner here: outlines unfilled, notches, names, the anchor as a cross, one grainline. */
export function drawnNest(nest: Nest, corner: Point): Node {
  const { bounds } = nestSize(nest);
  const origin = point(corner.x - bounds.left, corner.y + above - bounds.top);
  const placed = nest.sizes.map((size) => ({
    ...size,
    finished: movedPiece(size.laid.finished, point(0, 0), origin),
  }));
  const names = namePlaces(placed.map(({ finished }) => finished.piece));
  return element('g', { class: 'nest', 'data-piece': nest.piece }, [
    ...headingOf(nest).map(({ text, size }, i) =>
      svgInk({ kind: 'words', text, size, at: point(corner.x, corner.y + 5 + 5 * i) }),
    ),
    ...placed.map(({ name, place, finished }) =>
      element('path', {
        class: `size-${place}`,
        'data-size': name,
        d: pathData(outlineOf(finished), true),
      }),
    ),
    ...placed.flatMap(({ name, place, finished }) => ticks(name, place, finished)),
    ...grain(placed[Math.floor(placed.length / 2)]?.finished),
    ...cross(origin),
    ...placed.flatMap(({ name, place }, i) => (names[i] ?? []).map((where) => sizeName(name, place, where))),
  ]);
}

/** A tick outward from the stitching line at each notch, which a nest shows without its allowances. */
const ticks = (name: string, place: number, { piece }: FinishedPiece): readonly Node[] =>
  piece.notches.flatMap((notch) => {
    const edge = piece.edges.find((one) => one.name === notch.edge);
    if (!edge) return [];
    const { point: foot, direction } = pointAlong(edge, notch.at);
    const line = { kind: 'line', from: foot, to: moved(foot, scaled(outward(direction), tick)) } as const;
    const names = { class: `tick-${place}`, 'data-size': name, 'data-notch': notch.name };
    return [element('path', { ...names, d: pathData([line]) })];
  });

const outlineOf = ({ piece }: FinishedPiece) => piece.edges.flatMap(({ curves }) => curves);

const sizeName = (
  name: string,
  place: number,
  { at, turn }: { readonly at: Point; readonly turn: number },
): Node => {
  const down = textSizes.small / 3;
  return element(
    'text',
    {
      class: `size-name name-${place}`,
      x: numeral(at.x),
      y: numeral(at.y + down),
      'font-size': numeral(textSizes.small),
      transform: `rotate(${numeral(turn * degrees)} ${numeral(at.x)} ${numeral(at.y)})`,
    },
    words(name),
  );
};

function grain(finished: FinishedPiece | undefined): readonly Node[] {
  if (!finished) return [];
  const { from, to } = finished.piece.grain;
  return [stroke('grain', from, to), ...arrowheads(from, to)].map(svgInk);
}

/** A small upright cross. */
const cross = (at: Point): readonly Node[] => {
  const arm = 4;
  const bars = [vector(arm, 0), vector(0, arm)].map((along) => {
    const line = { kind: 'line', from: point(-along.x, -along.y), to: point(along.x, along.y) } as const;
    return transformedCurve(line, movedBy(vector(at.x, at.y)));
  });
  return bars.map((bar) => element('path', { class: 'anchor', d: pathData([bar]) }));
};
