import type { Curve } from '../../geometry/curve.ts';
import type { Point } from '../../geometry/point.ts';

/** Millimetres in a unit of PDF (ISO 32000-1:2008, 8.3.2.3). */
export const unit = 25.4 / 72;

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
  /** In units of PDF. */
  readonly width: number;
  readonly height: number;
  readonly paths: readonly PdfPath[];
}
