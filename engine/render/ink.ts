import type { Curve } from '../geometry/curve.ts';
import type { Point } from '../geometry/point.ts';
import { type Transform, transformedCurve } from '../geometry/transform.ts';
import type { InkClass } from './line-types.ts';

/** Everything that can be printed, in millimetres of the paper. Each kind of file has one writer for it. */
export type Ink = InkChain | InkCircle | InkBox | InkWords;

/**
 * What a line is called beside its class: its piece, and there its own name under the kind of thing it is (an
 * edge, a notch on an edge, a level, a line, a mark). Names without a value are left out.
 */
export type InkNames = Readonly<Record<string, string | undefined>>;

/** A chain of curves, each starting where the last one ended. */
export interface InkChain {
  readonly kind: 'chain';
  readonly class: InkClass;
  readonly curves: readonly Curve[];
  readonly closed?: boolean;
  readonly names?: InkNames;
}

export interface InkCircle {
  readonly kind: 'circle';
  readonly class: InkClass;
  readonly middle: Point;
  readonly radius: number;
  readonly names?: InkNames;
}

/** An upright rectangle. */
export interface InkBox {
  readonly kind: 'box';
  readonly class: InkClass;
  /** Top left. */
  readonly corner: Point;
  readonly width: number;
  readonly height: number;
}

/** Which part of a text stands at its place. */
export type Anchored = 'start' | 'middle' | 'end';

/** One line of text. */
export interface InkWords {
  readonly kind: 'words';
  readonly text: string;
  /** On the baseline: where the text begins, or the part of it that `anchored` names. */
  readonly at: Point;
  /** Font size, mm. */
  readonly size: number;
  readonly bold?: boolean;
  /** Grey, for what helps to put the paper together and is no part of the pattern. */
  readonly pale?: boolean;
  readonly anchored?: Anchored;
  /** Turned a quarter to read upwards, about this point. */
  readonly turnedAbout?: Point;
}

/** The share of a text that lies before the place where it is set. */
export const shareBefore = (anchored: Anchored = 'start'): number =>
  ({ start: 0, middle: 0.5, end: 1 })[anchored];

/** A straight line. */
export const stroke = (kind: InkClass, from: Point, to: Point, names?: InkNames): InkChain => ({
  kind: 'chain',
  class: kind,
  curves: [{ kind: 'line', from, to }],
  ...(names && { names }),
});

/** Ink moved on the paper, not turned. */
export function movedInk(ink: Ink, move: Transform): Ink {
  switch (ink.kind) {
    case 'chain':
      return { ...ink, curves: ink.curves.map((curve) => transformedCurve(curve, move)) };
    case 'circle':
      return { ...ink, middle: move(ink.middle) };
    case 'box':
      return { ...ink, corner: move(ink.corner) };
    case 'words':
      return {
        ...ink,
        at: move(ink.at),
        ...(ink.turnedAbout && { turnedAbout: move(ink.turnedAbout) }),
      };
  }
}

/** The names that tell lines of one class and piece apart. */
export const ownNames = ['edge', 'notch', 'level', 'line', 'mark'] as const;

/** The own name of a line: that of its edge, line or mark, of a notch with its edge. */
export const ownName = (names: InkNames): string => ownNames.flatMap((own) => names[own] ?? []).join('/');
