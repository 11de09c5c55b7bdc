import type { Dimension, DimensionPart, PlacedLine, Point, Step } from '../../../../drafts/index.ts';
import { pathData } from '../../../../drafts/index.ts';

/**
 * A number as it lies on a drawing of a lesson: a length straight from one place to another (mm of the body), along a line, or in
 * parts that may lie on others too; or an angle at a place.
 */
export type TaughtDimension = {
  readonly on: string;
  /** What is so long or wide: `numberOf` a number. */
  readonly of: string;
} & (
  | { readonly kind: 'straight'; readonly from: TaughtPlace; readonly to: TaughtPlace }
  | { readonly kind: 'line'; readonly name: string; readonly d: string }
  | {
      readonly kind: 'parts';
      /** How many times as long it is as its parts are together. */
      readonly times: number;
      readonly parts: readonly TaughtPart[];
    }
  | { readonly kind: 'angle'; readonly at: TaughtPlace; readonly from: TaughtPlace; readonly to: TaughtPlace }
);

/** A part of a length: straight, or along a line. */
export type TaughtPart = { readonly on: string } & (
  | { readonly from: TaughtPlace; readonly to: TaughtPlace }
  | { readonly d: string }
);

export interface TaughtPlace {
  readonly x: number;
  readonly y: number;
}

/** What a number is known by wherever it is used: the step that found it, or the measurement, choice or rule. */
export const numberOf = ({ origin, name }: Dimension['of']): string => {
  switch (origin.kind) {
    case 'step':
      return stepNumber(origin.number);
    case 'rule':
      return `rule ${origin.id}`;
    case 'measurement':
      return origin.measurement;
    case 'choice':
    case 'fitting':
      return `${origin.kind} ${name}`;
  }
};

/** What the number is known by that a step comes to. */
export const stepNumber = (number: number): string => `step ${number}`;

/** A shorter length (mm) would be all but a point on the drawing, a narrower angle (radians) all but a line. */
export const SHORTEST = 1;
const NARROWEST = 0.005;

const placeOf = ({ x, y }: Point): TaughtPlace => ({ x, y });

/** The lengths and angles of a construction that lie on one of its drawings, as the draft says of them; lines as they came out. */
export function dimensionsOf(steps: readonly Step[]): readonly TaughtDimension[] {
  const lines = steps.flatMap(({ draws }) => draws?.lines ?? []);
  const drawings = new Set(lines.map(({ on }) => on));
  return steps
    .flatMap(({ dimensions = [] }) => dimensions)
    .filter(({ kind, of }) => Math.abs(of.value ?? 0) >= (kind === 'angle' ? NARROWEST : SHORTEST))
    .map((dimension) => taughtDimension(dimension, lines))
    .filter((dimension) => dimension !== undefined)
    .filter(({ on }) => drawings.has(on));
}

function taughtDimension(dimension: Dimension, lines: readonly PlacedLine[]): TaughtDimension | undefined {
  const of = numberOf(dimension.of);
  if (dimension.kind === 'parts') {
    const parts = dimension.parts.map((part) => taughtPart(part, lines)).filter((part) => part !== undefined);
    const [first] = parts;
    return first && { kind: 'parts', on: first.on, of, times: dimension.times, parts };
  }
  const { on } = dimension;
  if (dimension.kind === 'angle') {
    const { at, from, to } = dimension;
    return { kind: 'angle', on, of, at: placeOf(at), from: placeOf(from), to: placeOf(to) };
  }
  if (dimension.kind === 'straight') {
    const { from, to } = dimension;
    return { kind: 'straight', on, of, from: placeOf(from), to: placeOf(to) };
  }
  const { name } = dimension;
  const line = lineNamed(dimension, lines);
  return line && { kind: 'line', on, of, name, d: pathData(line.curves) };
}

function taughtPart(part: DimensionPart, lines: readonly PlacedLine[]): TaughtPart | undefined {
  const { on } = part;
  if ('from' in part) return { on, from: placeOf(part.from), to: placeOf(part.to) };
  const curves = 'curves' in part ? part.curves : lineNamed(part, lines)?.curves;
  return curves && { on, d: pathData(curves) };
}

const lineNamed = (
  { on, name }: { readonly on: string; readonly name: string },
  lines: readonly PlacedLine[],
): PlacedLine | undefined => lines.find((each) => each.on === on && each.name === name);
