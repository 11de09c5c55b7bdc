import type { Bounds } from '../../geometry/bounds.ts';
import type { Vector } from '../../geometry/vector.ts';
import type { Ink } from '../ink.ts';

/** One page as it is printed, 1:1, in millimetres from its top left corner. */
export interface Page {
  readonly width: number;
  readonly height: number;
  readonly parts: readonly PagePart[];
  /** Lines are drawn this many times as wide as on paper; once unless said otherwise. */
  readonly weight?: number;
}

/** Ink on a page. */
export interface PagePart {
  readonly ink: readonly Ink[];
  /** What lies outside, in millimetres of the page, is not printed. */
  readonly clip?: Bounds;
  /** From the ink's own place to its place on the page. */
  readonly shift: Vector;
}

/** Ink that already stands where it is printed. */
export const onPage = (ink: readonly Ink[]): PagePart => ({ ink, shift: { x: 0, y: 0 } });
