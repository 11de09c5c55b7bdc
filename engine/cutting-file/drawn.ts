import type { Curve } from '../geometry/curve.ts';
import type { Point } from '../geometry/point.ts';
import type { Anchored } from '../render/ink.ts';
import type { LayerName } from './layers.ts';

/** Something in a cutting file, mm, y upwards. */
export type DxfDrawing = DxfLine | DrawnSpline | DrawnCircle | DrawnText;

interface OnLayer {
  readonly layer: LayerName;
  /** What it is called, such as `edge: side seam`; kept with it where readers of other programs do not look. */
  readonly names: readonly string[];
}

/** A chain of straight lines. */
export interface DxfLine extends OnLayer {
  readonly kind: 'line';
  readonly points: readonly Point[];
  readonly closed: boolean;
  /** What it was drawn for, from its first point, and back to that where it is closed. */
  readonly curves: readonly Curve[];
}

/** A cubic, by its ends and handles. */
export interface DrawnSpline extends OnLayer {
  readonly kind: 'spline';
  readonly control: readonly Point[];
}

export interface DrawnCircle extends OnLayer {
  readonly kind: 'circle';
  readonly middle: Point;
  readonly radius: number;
}

export interface DrawnText extends OnLayer {
  readonly kind: 'text';
  readonly text: string;
  /** On the baseline: where it begins, or what of it `anchored` names. */
  readonly at: Point;
  /** Of capital letters, mm. */
  readonly height: number;
  readonly anchored: Anchored;
  /** Reads upwards. */
  readonly upwards: boolean;
}

/** What is said of a block in words: tags with their values, in order. */
export type Attributes = readonly (readonly [tag: string, value: string])[];

/** A piece as a block: drawn once, inserted once. */
export interface DxfBlock {
  readonly name: string;
  readonly drawn: readonly DxfDrawing[];
  readonly attributes: Attributes;
  /** Where its own 0, 0 stands in the drawing. */
  readonly place: Point;
}

/** A whole cutting file, before it is written. */
export interface CuttingDrawing {
  readonly blocks: readonly DxfBlock[];
  /** What stands beside the pieces. */
  readonly beside: readonly DxfDrawing[];
  readonly width: number;
  readonly height: number;
}
