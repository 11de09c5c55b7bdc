import { moved, type Point, vectorBetween } from '../geometry/point.ts';
import { outward, plus, scaled, unit, type Vector } from '../geometry/vector.ts';
import type { InkChain } from './ink.ts';

/** Length and half width of an arrowhead, mm. */
const headLength = 5;
const headHalfWidth = 1.5;

/** A filled arrowhead with its tip at `tip`, pointing along `direction` (a unit vector). */
export function arrowhead(tip: Point, direction: Vector): InkChain {
  const back = scaled(direction, -headLength);
  const side = scaled(outward(direction), headHalfWidth);
  const left = moved(tip, plus(back, side));
  const right = moved(tip, plus(back, scaled(side, -1)));
  return {
    kind: 'chain',
    class: 'arrow',
    curves: [
      { kind: 'line', from: tip, to: left },
      { kind: 'line', from: left, to: right },
    ],
    closed: true,
  };
}

/** Arrowheads at both ends of a line. */
export function arrowheads(from: Point, to: Point): readonly InkChain[] {
  const along = unit(vectorBetween(from, to));
  return [arrowhead(from, scaled(along, -1)), arrowhead(to, along)];
}
