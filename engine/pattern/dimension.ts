import { DraftMistake } from '../draft-mistake.ts';
import type { Curve } from '../geometry/curve.ts';
import { edgeLength } from '../geometry/edge.ts';
import { distance, type Point, vectorBetween } from '../geometry/point.ts';
import { CLAIM, COINCIDENCE, RELATION_ANGLE } from '../geometry/tolerance.ts';
import { cross, dot } from '../geometry/vector.ts';
import { figure } from '../text/figure.ts';
import { listed } from '../text/listed.ts';
import type { Ground, Mm, Quantity } from './quantity.ts';

/**
 * Where a number lies on the drawings of a construction. What is so long or wide is a measurement, a choice, a rule, or a step:
 * a length from one place straight to another, or along a line of a step, by its name; a length that lies in parts, on one
 * drawing or on several, so many `times` as long as they are together; an angle at a place, between the ways to two others.
 */
export type Dimension = { readonly of: Ground } & (
  | ({ readonly kind: 'straight' } & Straight)
  | ({ readonly kind: 'line' } & OnLine)
  | { readonly kind: 'parts'; readonly times: number; readonly parts: readonly DimensionPart[] }
  | {
      readonly kind: 'angle';
      readonly on: string;
      readonly at: Point;
      readonly from: Point;
      readonly to: Point;
    }
);

/** A part of a length: straight, a whole line, or curves that are no line of a step. */
export type DimensionPart = Straight | OnLine | { readonly on: string; readonly curves: readonly Curve[] };

interface Straight {
  readonly on: string;
  readonly from: Point;
  readonly to: Point;
}

interface OnLine {
  readonly on: string;
  readonly name: string;
}

/** A line as it came out, by its name on its drawing. */
interface DrawnLine extends OnLine {
  readonly curves: readonly Curve[];
}

/** A length that lies straight between two places or along a line. Throws a `DraftMistake` for one that is not as long. */
export function lengthLies(
  on: string,
  of: Mm,
  where: readonly [from: Point, to: Point] | readonly [line: string],
): Dimension {
  if (where.length === 1) return { kind: 'line', on, of, name: where[0] };
  const [from, to] = where;
  holdLength(of, distance(from, to), on, COINCIDENCE);
  return { kind: 'straight', on, of, from, to };
}

/** An angle that lies at a place. Throws a `DraftMistake` for one that is not as wide. */
export function angleLies(
  on: string,
  of: Quantity,
  at: Point,
  [from, to]: readonly [Point, Point],
): Dimension {
  const [one, other] = [vectorBetween(at, from), vectorBetween(at, to)];
  const between = Math.atan2(Math.abs(cross(one, other)), dot(one, other));
  // Over half a turn two ways lie as far apart as the rest of the turn.
  const lies = Math.abs(Math.atan2(Math.sin(of.value), Math.cos(of.value)));
  if (Math.abs(between - lies) > RELATION_ANGLE)
    throw new DraftMistake(
      `${of.name} is ${inDegrees(of.value)}, and is shown on the ${on} as an angle of ${inDegrees(between)}.`,
      [],
    );
  return { kind: 'angle', on, of, at, from, to };
}

/**
 * A length that lies in parts. Throws a `DraftMistake` where they are not as long together, once all lines are known; nothing where
 * one of them was not drawn.
 */
export function partsLie(
  of: Mm,
  times: number,
  parts: readonly DimensionPart[],
  lines: readonly DrawnLine[],
): Dimension | undefined {
  let sum = 0;
  for (const part of parts) {
    const length = partLength(part, lines);
    if (length === undefined) return undefined;
    sum += length;
  }
  holdLength(of, times * sum, listed(parts.map(({ on }) => on)), CLAIM);
  return { kind: 'parts', of, times, parts };
}

function partLength(part: DimensionPart, lines: readonly DrawnLine[]): number | undefined {
  if ('from' in part) return distance(part.from, part.to);
  if ('curves' in part) return edgeLength({ name: '', curves: part.curves });
  const line = lines.find(({ on, name }) => on === part.on && name === part.name);
  return line && edgeLength(line);
}

function holdLength(of: Mm, length: number, on: string, within: number): void {
  if (Math.abs(length - Math.abs(of.value)) <= within) return;
  throw new DraftMistake(
    `${of.name} is ${figure(of.value)} mm, and is shown on the ${on} as a length of ${figure(length)} mm.`,
    [],
  );
}

const inDegrees = (radians: number): string => `${figure((radians * 180) / Math.PI)}°`;
