import type { Curve } from '../engine/geometry/curve.ts';
import { parallelCurve } from '../engine/geometry/parallel-curve.ts';
import { PARALLEL } from '../engine/geometry/tolerance.ts';
import type { InsideLine } from '../engine/pattern/piece.ts';
import { workroomRules } from './workroom-rules.ts';

/** The two rows of long stitches by which an edge is gathered, one on either side of the stitching line. */
export const gatheringRows = (name: string, curves: readonly Curve[]): readonly InsideLine[] =>
  [0.5, -0.5].map((share, i) => ({
    name: `${name}, gathering row ${i + 1}`,
    kind: 'gathering',
    curves: curves.flatMap(
      (curve) => parallelCurve(curve, share * workroomRules.rowsApart.value, PARALLEL).curves,
    ),
  }));
