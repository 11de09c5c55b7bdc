import { type Bounds, boundingBox, boundsAbout } from '../../geometry/bounds.ts';
import type { Curve } from '../../geometry/curve.ts';
import { pointAlong } from '../../geometry/edge.ts';
import { moved, type Point, point } from '../../geometry/point.ts';
import { outward, scaled } from '../../geometry/vector.ts';
import { arrowheads } from '../../render/arrows.ts';
import type { FinishedPiece } from '../../render/finished-piece.ts';
import { type Ink, stroke } from '../../render/ink.ts';
import type { Size } from '../../render/layout.ts';
import { textSizes } from '../../render/line-types.ts';
import { movedPiece } from '../../render/place.ts';
import { textWidth } from '../../render/text-size.ts';
import type { LaidSize } from '../laid-size.ts';
import type { NestInk } from './nest-ink.ts';
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

/** Length of the tick at a notch, and of each arm of the cross at the anchor, mm. */
const tick = 3;
const arm = 4;

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
export function nestInk(nest: Nest, corner: Point): readonly NestInk[] {
  const { bounds } = nestSize(nest);
  const origin = point(corner.x - bounds.left, corner.y + above - bounds.top);
  const placed = nest.sizes.map((size) => ({
    ...size,
    finished: movedPiece(size.laid.finished, point(0, 0), origin),
  }));
  const places = namePlaces(placed.map(({ finished }) => finished.piece));
  const middle = placed[Math.floor(placed.length / 2)];
  return [
    ...headingOf(nest).map(({ text, size }, i): Ink => {
      const at = point(corner.x, corner.y + 5 + 5 * i);
      return { kind: 'words', text, size, at };
    }),
    ...placed.map(({ name, place, finished }): NestInk => {
      return { kind: 'outline', place, size: name, curves: outlineOf(finished), closed: true };
    }),
    ...placed.flatMap(({ name, place, finished }) => ticks(name, place, finished)),
    ...(middle ? grain(middle.finished) : []),
    ...cross(origin),
    ...placed.flatMap(({ name, place }, i) =>
      (places[i] ?? []).map((where): NestInk => ({ kind: 'size name', place, size: name, ...where })),
    ),
  ];
}

/** A tick outward from the stitching line at each notch, which a nest shows without its allowances. */
const ticks = (size: string, place: number, { piece }: FinishedPiece): readonly NestInk[] =>
  piece.notches.flatMap((notch): readonly NestInk[] => {
    const edge = piece.edges.find((one) => one.name === notch.edge);
    if (!edge) return [];
    const { point: foot, direction } = pointAlong(edge, notch.at);
    const line = { kind: 'line', from: foot, to: moved(foot, scaled(outward(direction), tick)) } as const;
    return [{ kind: 'tick', place, size, notch: notch.name, curves: [line] }];
  });

const outlineOf = ({ piece }: FinishedPiece): readonly Curve[] => piece.edges.flatMap(({ curves }) => curves);

function grain({ piece }: FinishedPiece): readonly Ink[] {
  const { from, to } = piece.grain;
  return [stroke('grain', from, to), ...arrowheads(from, to)];
}

/** A small upright cross. */
const cross = ({ x, y }: Point): readonly Ink[] => [
  stroke('cross', point(x - arm, y), point(x + arm, y)),
  stroke('cross', point(x, y - arm), point(x, y + arm)),
];
