import { type Bounds, boundingBox, boundsAbout } from '../../geometry/bounds.ts';
import type { Curve, Edge } from '../../geometry/curve.ts';
import { pointAlong } from '../../geometry/edge.ts';
import { nearestOnEdge } from '../../geometry/nearest.ts';
import { moved, type Point, point, vectorBetween } from '../../geometry/point.ts';
import { outward, scaled, unit, type Vector } from '../../geometry/vector.ts';
import { arrowheads } from '../../render/arrows.ts';
import { type FinishedPiece, lineAround } from '../../render/finished-piece.ts';
import { type Ink, stroke } from '../../render/ink.ts';
import type { Size } from '../../render/layout.ts';
import { textSizes } from '../../render/line-types.ts';
import { movedPiece } from '../../render/place.ts';
import { textWidth } from '../../render/text-size.ts';
import type { LaidSize } from '../laid-size.ts';
import type { NestInk } from './nest-ink.ts';
import { type NamePlace, namePlaces } from './size-names.ts';

/** Which line of a piece is drawn: the one it is sewn on, or the one it is cut on. */
export const nestLines = ['stitching', 'cutting'] as const;

export type NestLine = (typeof nestLines)[number];

/** One piece in several sizes, laid on each other. */
export interface Nest {
  readonly line: NestLine;
  readonly piece: string;
  readonly number: number;
  /** What lies on itself in all sizes. */
  readonly anchor: string;
  /** Each with its place among all sizes, which decides its line. */
  readonly sizes: readonly { readonly name: string; readonly place: number; readonly laid: LaidSize }[];
}

/** Room for the two lines of words above a nest, mm. */
const above = 16;

/** Length of the tick at a notch, and of each arm of the cross at the anchor, mm. */
const tick = 3;
const arm = 4;

/** Room that a nest takes with its words, mm, and its bounds in its own coordinates. */
export function nestSize(nest: Nest): Size & { readonly bounds: Bounds } {
  const bounds = boundsAbout(
    nest.sizes.map(({ laid: { finished } }) => boundingBox(outlineOf(finished, nest.line))),
  );
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
  const places = namesOn(placed, nest.line);
  const middle = placed[Math.floor(placed.length / 2)];
  return [
    ...headingOf(nest).map(({ text, size }, i): Ink => {
      const at = point(corner.x, corner.y + 5 + 5 * i);
      return { kind: 'words', text, size, at };
    }),
    ...placed.map(({ name, place, finished }): NestInk => {
      return { kind: 'outline', place, size: name, curves: outlineOf(finished, nest.line), closed: true };
    }),
    ...placed.flatMap(({ name, place, finished }) => ticks(name, place, finished, nest.line)),
    ...(middle ? grain(middle.finished) : []),
    ...cross(origin),
    ...placed.flatMap(({ name, place }, i) =>
      (places[i] ?? []).flatMap(({ at, turn, leader }): readonly NestInk[] => [
        ...(leader
          ? [{ kind: 'leader', place, size: name, curves: [{ kind: 'line', ...leader }] } as const]
          : []),
        { kind: 'size name', place, size: name, at, turn },
      ]),
    ),
  ];
}

/** Where names stand on the lines that are drawn: beside each other on the stitching lines, and as far out as the others lie. */
function namesOn(
  sizes: readonly { readonly name: string; readonly finished: FinishedPiece }[],
  line: NestLine,
): readonly (readonly NamePlace[])[] {
  const places = namePlaces(
    sizes.map(({ finished }) => finished.piece),
    sizes.map(({ name }) => name),
  );
  if (line === 'stitching') return places;
  return sizes.map(({ finished }, i) => {
    const around = { name: 'cutting line', curves: outlineOf(finished, line) };
    return (places[i] ?? []).map(({ at, turn, leader }): NamePlace => {
      if (!leader) return { at: nearestOnEdge(around, at).point, turn };
      const by = outTo(around, leader);
      return { at: moved(at, by), turn, leader: { from: moved(leader.from, by), to: moved(leader.to, by) } };
    });
  });
}

/** Near enough to a line, less than its width; no cutting line lies farther out. mm */
const onLine = 0.05;
const widestAllowance = 200;

/** From where a leader begins to the line around it, in the leader's own direction: step by step as far as the line is away. */
function outTo(around: Edge, { from, to }: { readonly from: Point; readonly to: Point }): Vector {
  const out = unit(vectorBetween(from, to));
  let gone = 0;
  for (;;) {
    const { distance } = nearestOnEdge(around, moved(from, scaled(out, gone)));
    if (distance < onLine || gone + distance > widestAllowance) return scaled(out, gone);
    gone += distance;
  }
}

/** A tick outward from the stitching line at each notch; on the cutting line the notch as it is cut. */
const ticks = (
  size: string,
  place: number,
  { piece, notches }: FinishedPiece,
  line: NestLine,
): readonly NestInk[] =>
  line === 'cutting'
    ? notches.flatMap(({ notch, strokes }) =>
        strokes.map((curves): NestInk => ({ kind: 'tick', place, size, notch: notch.name, curves })),
      )
    : piece.notches.flatMap((notch): readonly NestInk[] => {
        const edge = piece.edges.find((one) => one.name === notch.edge);
        if (!edge) return [];
        const { point: foot, direction } = pointAlong(edge, notch.at);
        const end = moved(foot, scaled(outward(direction), tick));
        const curves = [{ kind: 'line', from: foot, to: end }] as const;
        return [{ kind: 'tick', place, size, notch: notch.name, curves }];
      });

const outlineOf = (finished: FinishedPiece, line: NestLine): readonly Curve[] =>
  line === 'cutting' ? lineAround(finished) : finished.piece.edges.flatMap(({ curves }) => curves);

function grain({ piece }: FinishedPiece): readonly Ink[] {
  const { from, to } = piece.grain;
  return [stroke('grain', from, to), ...arrowheads(from, to)];
}

/** A small upright cross. */
const cross = ({ x, y }: Point): readonly Ink[] => [
  stroke('cross', point(x - arm, y), point(x + arm, y)),
  stroke('cross', point(x, y - arm), point(x, y + arm)),
];
