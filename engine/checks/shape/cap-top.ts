import { edgeEnd, edgeStart, pointAlong } from '../../geometry/edge.ts';
import { farthestAlong } from '../../geometry/farthest.ts';
import { type Point, vectorBetween } from '../../geometry/point.ts';
import { dot, scaled } from '../../geometry/vector.ts';
import { alongChain, asDrawn } from './chain.ts';
import { grainOf } from './lean.ts';
import type { Measured, MeasureOf } from './measured.ts';

/**
 * How far a cap's highest place along the grain, or its grainline, lies from a notch on it: across the grain, mm, more
 * than 0 towards the end of the chain.
 */
export function capTop({ of, notch, say }: MeasureOf<'cap top'>, { tape }: Measured): number | undefined {
  const cap = asDrawn({ edges: of.edges }, tape);
  const along = alongChain(of, notch, tape);
  if (!cap || along === undefined) return undefined;
  const { piece, line } = cap;
  const [start, end] = [edgeStart(line), edgeEnd(line)];
  const at = pointAlong(line, along).point;
  const grain = grainOf(piece.grain);
  const side = { x: -grain.y, y: grain.x };
  const [up, across] = [
    dot(grain, vectorBetween(start, at)) > 0 ? grain : scaled(grain, -1),
    dot(side, vectorBetween(start, end)) > 0 ? side : scaled(side, -1),
  ];
  const past = (p: Point): number => dot(across, vectorBetween(at, p));
  return past(say === 'top' ? farthestAlong(line, up) : piece.grain.from);
}
