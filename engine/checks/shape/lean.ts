import { vectorBetween } from '../../geometry/point.ts';
import { cross, dot, unit, type Vector } from '../../geometry/vector.ts';
import type { Piece } from '../../pattern/piece.ts';
import { cornerPoint } from './corner-point.ts';
import { levelOf } from './level.ts';
import type { Measured, MeasureOf } from './measured.ts';

/** How far an edge leans from its piece's grain where it leaves a corner, degrees, 0 to 90. */
export function lean({ at }: MeasureOf<'lean'>, { tape }: Measured): number | undefined {
  const piece = tape.piece(at.piece);
  const corner = cornerPoint(at, tape);
  return piece && corner && angleBetween(corner.leaving, grainOf(piece.grain));
}

/** How far a piece's grain is from upright to a level of it, degrees. */
export function grainOffUpright(
  { piece: name, line }: MeasureOf<'grain'>,
  { tape }: Measured,
): number | undefined {
  const piece = tape.piece(name);
  const level = levelOf(name, { kind: 'line', name: line }, tape);
  return piece && level && 90 - angleBetween(level.heading, grainOf(piece.grain));
}

/** The heading of a grainline, one long. */
export const grainOf = ({ from, to }: Piece['grain']): Vector => unit(vectorBetween(from, to));

/** The acute angle between two lines, degrees. */
const angleBetween = (a: Vector, b: Vector): number =>
  (Math.atan2(Math.abs(cross(a, b)), Math.abs(dot(a, b))) * 180) / Math.PI;
