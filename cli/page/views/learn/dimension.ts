import type { Dimension, Point, Step } from '../../../../drafts/index.ts';
import { pathData } from '../../../../drafts/index.ts';

/**
 * A number as it lies on a drawing of a lesson: a length straight from one place to another (mm of the body) or along a line, or
 * an angle at a place.
 */
export type TaughtDimension = {
  readonly on: string;
  /** What is so long or wide: `numberOf` a number. */
  readonly of: string;
} & (
  | { readonly kind: 'straight'; readonly from: TaughtPlace; readonly to: TaughtPlace }
  | { readonly kind: 'line'; readonly name: string; readonly d: string }
  | { readonly kind: 'angle'; readonly at: TaughtPlace; readonly from: TaughtPlace; readonly to: TaughtPlace }
);

interface TaughtPlace {
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
const [SHORTEST, NARROWEST] = [1, 0.005];

const placeOf = ({ x, y }: Point): TaughtPlace => ({ x, y });

/** The lengths and angles of a construction that lie on one of its drawings, as the draft says of them; lines as they came out. */
export function dimensionsOf(steps: readonly Step[]): readonly TaughtDimension[] {
  const lines = steps.flatMap(({ draws }) => draws?.lines ?? []);
  const drawings = new Set(lines.map(({ on }) => on));
  return steps
    .flatMap(({ dimensions = [] }) => dimensions)
    .filter(({ on }) => drawings.has(on))
    .filter(({ kind, of }) => Math.abs(of.value ?? 0) >= (kind === 'angle' ? NARROWEST : SHORTEST))
    .flatMap((dimension): readonly TaughtDimension[] => {
      const [on, of] = [dimension.on, numberOf(dimension.of)];
      if (dimension.kind === 'straight') {
        const { from, to } = dimension;
        return [{ kind: 'straight', on, of, from: placeOf(from), to: placeOf(to) }];
      }
      if (dimension.kind === 'angle') {
        const { at, from, to } = dimension;
        return [{ kind: 'angle', on, of, at: placeOf(at), from: placeOf(from), to: placeOf(to) }];
      }
      const { name } = dimension;
      const line = lines.find((each) => each.on === on && each.name === name);
      return line ? [{ kind: 'line', on, of, name, d: pathData(line.curves) }] : [];
    });
}
