import type { Curve } from '../engine/geometry/curve.ts';
import { parallelCurve } from '../engine/geometry/parallel-curve.ts';
import { PARALLEL } from '../engine/geometry/tolerance.ts';
import type { InsideLine } from '../engine/pattern/piece.ts';

/** Two gathering rows lie a quarter inch apart, one on either side of the stitching line: lesson pages, second-hand. */
const ROWS_APART = 6.35;

/** The two rows of long stitches by which an edge is gathered. */
export const gatheringRows = (name: string, curves: readonly Curve[]): readonly InsideLine[] =>
  [ROWS_APART / 2, -ROWS_APART / 2].map((beyond, i) => ({
    name: `${name}, gathering row ${i + 1}`,
    kind: 'gathering',
    curves: curves.flatMap((curve) => parallelCurve(curve, beyond, PARALLEL).curves),
  }));
