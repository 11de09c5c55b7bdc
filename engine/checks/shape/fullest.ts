import { edgeEnd, edgeStart } from '../../geometry/edge.ts';
import { farthestAlong } from '../../geometry/farthest.ts';
import { vectorBetween } from '../../geometry/point.ts';
import { cross, outward, unit } from '../../geometry/vector.ts';
import { asDrawn } from './chain.ts';
import { levelOf } from './level.ts';
import type { Measured, MeasureOf } from './measured.ts';

/**
 * Where a line on one piece stands out farthest beyond its chord, away from the cloth: how far past a level of the piece
 * it lies, in the direction in which the line runs, or how far from the chord; mm.
 */
export function fullestPlace(
  { of, line: level, say }: MeasureOf<'fullest'>,
  { tape }: Measured,
): number | undefined {
  const drawn = asDrawn(of, tape);
  const found = drawn && levelOf(drawn.piece.name, { kind: 'line', name: level }, tape);
  if (!found) return undefined;
  const [start, end] = [edgeStart(drawn.line), edgeEnd(drawn.line)];
  const along = unit(vectorBetween(start, end));
  const left = outward(along);
  const away = of.edges[0]?.reversed ? { x: -left.x, y: -left.y } : left;
  const fullest = farthestAlong(drawn.line, away);
  if (say === 'beyond chord') return Math.abs(cross(along, vectorBetween(start, fullest)));
  const past = (p: typeof start): number => cross(found.heading, vectorBetween(found.through, p));
  return past(fullest) * Math.sign(past(end) - past(start));
}
