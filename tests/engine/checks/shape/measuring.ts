import { measuredOn } from '../../../../engine/checks/shape/measured.ts';
import { measureShape } from '../../../../engine/checks/shape/measures.ts';
import { tapeFor } from '../../../../engine/checks/tape.ts';
import { arc } from '../../../../engine/geometry/arc.ts';
import type { Curve } from '../../../../engine/geometry/curve.ts';
import { type Point, point } from '../../../../engine/geometry/point.ts';
import { type Transform, transformedEdge, turnedBy } from '../../../../engine/geometry/transform.ts';
import type { Notch, Piece } from '../../../../engine/pattern/piece.ts';
import type { EdgeRef } from '../../../../engine/pattern/seam.ts';
import type { ShapeMeasure } from '../../../../engine/pattern/shape.ts';
import { edge, garment, line, piece } from '../../garments.ts';

/** What a measure finds on some pieces. */
export function figure(measure: ShapeMeasure, ...pieces: readonly Piece[]): number | undefined {
  const made = garment(pieces);
  return measureShape(measure, measuredOn(made, tapeFor(made)))?.value;
}

/** A whole edge, walked with its outline or, `against` it, from its end. */
export const along = (of: string, name: string): EdgeRef => ({ piece: of, edge: name });
export const against = (of: string, name: string): EdgeRef => ({ piece: of, edge: name, reversed: true });

/** An arc that starts at a point heading along x and turns by `turn` radians, clockwise as drawn where more than 0. */
export function arcFrom(from: Point, radius: number, turn: number): readonly Curve[] {
  const below = Math.sign(turn) * radius;
  return arc(point(from.x, from.y + below), { x: 0, y: -below }, turn, 1e-7).curves;
}

/** Where such an arc ends. */
export const arcEnd = (from: Point, radius: number, turn: number): Point =>
  point(from.x + radius * Math.sin(Math.abs(turn)), from.y + Math.sign(turn) * radius * (1 - Math.cos(turn)));

/** A piece whose edge `line` is given, from left to right; its other edges close it far below. */
export function under(name: string, curves: readonly Curve[], notches: readonly Notch[] = []): Piece {
  const [from, to] = [curves[0]?.from ?? point(0, 0), curves.at(-1)?.to ?? point(0, 0)];
  const [left, right] = [point(from.x, 500), point(to.x, 500)];
  return piece(
    name,
    [
      edge('line', curves),
      edge('right', [line(to, right)]),
      edge('foot', [line(right, left)]),
      edge('left', [line(left, from)]),
    ],
    { notches },
  );
}

/** A piece turned by an angle (radians) and moved, as it might lie on another sheet. */
export function laidElsewhere(drawn: Piece, angle: number): Piece {
  const turned = turnedBy(point(31, -17), angle);
  const to: Transform = (p) => point(turned(p).x + 400, turned(p).y - 90);
  return {
    ...drawn,
    edges: drawn.edges.map((each) => transformedEdge(each, to)),
    grain: { from: to(drawn.grain.from), to: to(drawn.grain.to) },
    lines: drawn.lines.map((each) => transformedEdge(each, to)),
  };
}
