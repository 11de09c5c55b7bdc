import type { Curve } from '../../geometry/curve.ts';
import type { Point } from '../../geometry/point.ts';

/** A path on a page of a PDF, in millimetres from its top left corner. */
export interface PdfPath {
  /** The marked content it stands in: class, piece and own name (`line-tag.ts`). */
  readonly tag: string | undefined;
  readonly curves: readonly Curve[];
  readonly closed: boolean;
  /** Corners of the rectangle outside which it is not printed. */
  readonly clip: readonly [Point, Point] | undefined;
}

export interface PdfPage {
  /** Units of 1/72 in. */
  readonly width: number;
  readonly height: number;
  readonly paths: readonly PdfPath[];
}
