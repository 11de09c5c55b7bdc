import { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { type Solver, solve } from '../../engine/constraints/solve.ts';
import type { Result } from '../../engine/issue.ts';
import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import { figure } from '../../engine/pattern/written.ts';
import type { armholeAllowance, seamAllowance } from '../allowances.ts';
import { armholeLower, armholeUpper } from '../bodice/bodice-seams.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import { leastRadius } from '../bodice/rules.ts';
import { conflictIssue } from '../conflict.ts';
import type { Parts } from '../draw-garment.ts';
import { solvedPoint } from '../piece-edges.ts';
import { drawArm } from './arm.ts';
import { laidDown } from './armhole.ts';
import { type CapShape, planCap } from './cap-lines.ts';
import type { sleeveChoices } from './choices.ts';
import { sleeveFigures } from './figures.ts';
import { hemElastic } from './hem-elastic.ts';
import { sleeveRules as rules } from './rules.ts';
import { selfLined } from './self-lined.ts';
import { sleeveSewing } from './sewing.ts';
import { sleeveShapes } from './shapes.ts';
import { sleevePiece } from './sleeve-piece.ts';
import { sleeveGirths, sleeveJoins, sleeveSeams } from './sleeve-seams.ts';

export type SleeveTable = DraftingTable<
  readonly [...typeof sleeveChoices, typeof seamAllowance, typeof armholeAllowance]
>;

/**
 * Draws the sleeve into the armholes the bodice came out with. Nothing in a bodice depends on its sleeve, so the
 * sleeve is solved after it, in a sketch of its own.
 */
export function drawSleeve(table: SleeveTable, cut: PanelCut, solver: Solver = solve): Result<Parts> {
  const { body, size, choice, styling } = table;
  table.heading('Sleeve');
  const armhole = laidDown(cut.armholes);
  const girth = table.measured('Armhole', 'all round, on the drawing', armhole.girth);
  const plain = styling.sleeve === 'plain';
  const width = body.size.upperArmGirth + styling.upperArmEase;
  const above = table.measured(
    'Armhole above the notches',
    'on the drawing',
    armhole.front.upper + armhole.back.upper,
  );
  const fullness = plain
    ? table.ratio`Crown for each mm of armhole: (${above} + ${choice.capEase}) / ${above}`
    : table.ratio`Crown for each mm of armhole: ${choice.sleeveFullness}`;
  const least = leastRadius(styling.armholeAllowance);
  const shape: CapShape = plain
    ? { width, fullness: fullness.value, leastRadius: least }
    : {
        width,
        fullness: fullness.value,
        leastRadius: least,
        height: table.mm`Cap height, puffed: ${rules.capShare} of armhole ${girth} + ${choice.puffHeight}`
          .value,
      };
  const sketch = new SketchBuilder();
  const lines = planCap(sketch, armhole, shape);
  const solution = solver(sketch.sketch());
  if (solution.status !== 'solved') {
    const again = (other: typeof body) => {
      const retried = new SketchBuilder();
      planCap(retried, armhole, { ...shape, width: other.size.upperArmGirth + styling.upperArmEase });
      return solve(retried.sketch());
    };
    return { ok: false, issues: [conflictIssue(body, solution, again)] };
  }
  table.say`Cap: below the notches the armhole once more, underarm laid on underarm; above them as long as the armhole and its fullness, from each notch to the shoulder`;
  const arm = drawArm(table, -solvedPoint(solution, lines.top).y);
  const armText = `upper arm: finished girth ${figure(size.upperArmGirth.value + styling.upperArmEase)} mm`;
  const toShoulder = armhole.back.upper * fullness.value;
  const elastic = plain ? undefined : hemElastic(table);
  const piece = sleevePiece({
    lines,
    solution,
    arm,
    styling,
    allowance: cut.allowance,
    toShoulder,
    armText,
    elasticText: elastic?.text ?? '',
  });
  const seams = sleeveSeams(
    { upper: armholeUpper(cut), front: armholeLower(cut, 'front'), back: armholeLower(cut, 'back') },
    plain ? { ease: styling.capEase, ratio: 1 } : { ease: 0, ratio: styling.sleeveFullness },
    piece,
  );
  const parts: Parts = {
    pieces: [styling.sleeveLining === 'self' && !plain ? selfLined(piece) : piece],
    seams,
    joins: sleeveJoins,
    girths: sleeveGirths(body, styling),
    notions: elastic ? [elastic.notion] : [],
    shapes: [
      ...sleeveFigures({ table, solution, lines, arm, armhole, elastic }),
      ...sleeveShapes(cut),
    ],
    sewing: sleeveSewing(styling, seams),
  };
  return { ok: true, value: parts, issues: [] };
}
