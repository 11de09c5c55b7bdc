import { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import type { Solution } from '../../engine/constraints/solution.ts';
import { type Solver, solve } from '../../engine/constraints/solve.ts';
import { point } from '../../engine/geometry/point.ts';
import type { Result } from '../../engine/issue.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import { leastRadius } from '../bodice/turnable.ts';
import { conflictIssue } from '../conflict.ts';
import { solvedPoint } from '../piece-edges.ts';
import { drawnBefore } from '../suspects.ts';
import { usually } from '../usual.ts';
import { type Armhole, scaledArmhole } from './armhole.ts';
import { type CapLines, type CapShape, planCap } from './cap-lines.ts';
import type { SleeveTable } from './choices.ts';

/** A cap that has been fitted into its armhole. */
export interface FittedCap {
  readonly lines: CapLines;
  readonly solution: Solution;
  readonly armhole: Armhole;
  /** Width of the sleeve at the underarm, before anything is spread, and its room around the arm. */
  readonly width: Mm;
  readonly ease: Mm;
  /** What it is spread by, mm; nothing in a plain sleeve. */
  readonly spread: number;
  /** From the underarm to its top. */
  readonly height: Mm;
  /** Along the crown from the back notch to the shoulder, mm. */
  readonly toShoulder: number;
}

/** What a cap is asked for: crown for each mm of armhole, its height (mm) where it is spread, and room around the arm. */
interface AskedOfCap {
  readonly fullness: number;
  readonly height?: number;
  readonly easeOf: (table: SleeveTable) => Mm;
}

/**
 * Fits a cap into the armholes a bodice came out with, `fullness` mm of crown for each mm of armhole, and `height` mm
 * high where it is spread. Nothing in a bodice depends on its sleeve, so the sleeve is solved after it, in a sketch of
 * its own.
 */
export function fitCap(
  table: SleeveTable,
  armhole: Armhole,
  cut: PanelCut,
  { fullness, height, easeOf }: AskedOfCap,
  solver: Solver = solve,
): Result<FittedCap> {
  const ease = easeOf(table);
  const width = table.mm`Sleeve width, fitted: upper arm girth ${table.size.upperArmGirth} + ease ${ease}`;
  const shape: CapShape = {
    width: width.value,
    fullness,
    leastRadius: leastRadius(cut.allowance.armhole),
    ...(height === undefined ? {} : { height }),
  };
  const planned = (asked: Partial<CapShape>, into = armhole) => {
    const sketch = new SketchBuilder();
    const lines = planCap(sketch, into, { ...shape, ...asked });
    return { lines, sketch: sketch.sketch() };
  };
  const { lines, sketch: written } = planned({});
  const sketch = usually(written, table.styling);
  const solution = solver(sketch);
  if (solution.status !== 'solved') {
    const sketchOf = (other: SleeveTable) =>
      planned({ width: other.size.upperArmGirth.value + easeOf(other).value }).sketch;
    const drawn = [
      drawnBefore('armhole', (times) => planned({}, scaledArmhole(armhole, times)).sketch),
      drawnBefore('crown for each mm of armhole', (times) => planned({ fullness: fullness * times }).sketch),
      ...(height === undefined
        ? []
        : [drawnBefore('cap height', (times) => planned({ height: height * times }).sketch)]),
    ];
    return { ok: false, issues: [conflictIssue(table, { sketch, solution }, sketchOf, drawn)] };
  }
  table.say`Cap: below the notches the armhole once more, underarm laid on underarm; above them as long as the armhole and its fullness, from each notch to the shoulder`;
  const top = solvedPoint(solution, lines.top);
  const cap: FittedCap = {
    lines,
    solution,
    armhole,
    width,
    ease,
    spread: solution.scalars[lines.spread] ?? 0,
    height: table.measured('Cap height', 'on the drawing', -top.y, width),
    toShoulder: armhole.back.upper * fullness,
  };
  table.dimension('sleeve', cap.height, point(top.x, 0), top);
  return { ok: true, value: cap, issues: [] };
}
