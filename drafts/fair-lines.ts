import type { SketchBuilder } from '../engine/constraints/sketch-builder.ts';
import { fair, lowBending } from '../engine/constraints/statements.ts';

/** What change of bend counts for, where bend itself counts one: enough to keep the handles even. */
const CHANGE_OF_BEND = 0.3;

/** Wishes that a line be fair: bend little, `straightness` times as much as usual, and change its bend little. */
export function fairLine(sketch: SketchBuilder, curve: string, straightness = 1): void {
  sketch.wish(...lowBending([curve], straightness), ...fair([curve], CHANGE_OF_BEND));
}

/** The same for several lines. */
export function fairLines(sketch: SketchBuilder, curves: readonly string[]): void {
  for (const curve of curves) fairLine(sketch, curve);
}
