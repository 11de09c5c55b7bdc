import { type Solver, solve } from '../../engine/constraints/solve.ts';
import type { Issue, Result } from '../../engine/issue.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import { figure } from '../../engine/text/figure.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import type { Parts } from '../parts.ts';
import { drawEdges } from '../piece-edges.ts';
import { drawArm, markArm } from './arm.ts';
import { plainArmEase } from './arm-ease.ts';
import { belowPlainCap, turnUpOf } from './arm-edges.ts';
import { laidDown } from './armhole.ts';
import type { PlainSleeveTable, SleeveTable } from './choices.ts';
import { capFigures } from './figures.ts';
import { fitCap } from './fitted-cap.ts';
import { sleeveRules as rules } from './rules.ts';
import { plainSewing } from './sewing.ts';
import { sleeveShapes } from './shapes.ts';
import { isCapEdge, sleevePiece } from './sleeve-piece.ts';
import { armholeRefs, sleeveGirths, sleeveJoins, sleeveSeams } from './sleeve-seams.ts';

/** Draws the plain sleeve, set in with a little ease between its notches: short, to the elbow or to the wrist. */
export function drawPlainSleeve(
  table: PlainSleeveTable,
  cut: PanelCut,
  solver: Solver = solve,
): Result<Parts> {
  const { choice, styling } = table;
  table.heading('The plain sleeve');
  const armhole = laidDown(cut.armholes);
  const above = table.measured(
    'Armhole above the notches',
    'on the drawing',
    armhole.front.upper + armhole.back.upper,
    cut.plan.foundation.levels.underarm,
  );
  const crown = table.mm`Crown from notch to notch: armhole ${above} + ease ${choice.capEase}`;
  const fullness = table.ratio`Crown for each mm of armhole: crown ${crown} / armhole ${above}`;
  const easeOf = (of: SleeveTable): Mm => plainArmEase(of, armhole, crown);
  const fitted = fitCap(table, armhole, cut, { fullness: fullness.value, easeOf }, solver);
  if (!fitted.ok) return fitted;
  const cap = fitted.value;
  const arm = drawArm(table, cap);
  const short = tooShort(arm.length.value, turnUpOf(styling));
  if (short) return { ok: false, issues: [short] };
  const piece = sleevePiece(cap, belowPlainCap(table, arm, cut.allowance), cut.allowance);
  table.say`Plain cap: as it came out, its crown from notch to notch over the shoulder`;
  drawEdges(table, piece, isCapEdge);
  table.say`Sleeve below its cap: its seam ${arm.length} mm long, at the top ${arm.width} mm wide and at the hem ${arm.hem} mm`;
  drawEdges(table, piece, (name) => !isCapEdge(name));
  markArm(table, arm);
  const seams = sleeveSeams(armholeRefs(cut), { ease: styling.capEase, ratio: 1 }, piece);
  const parts: Parts = {
    pieces: [piece],
    seams,
    joins: sleeveJoins(piece),
    girths: sleeveGirths(table, cap),
    notions: [],
    shapes: [...capFigures(table, cap), ...sleeveShapes(cut)],
    sewing: plainSewing(seams, styling),
  };
  return { ok: true, value: parts, issues: [] };
}

/** A sleeve whose seam (mm) leaves its hem no room to taper above it. */
function tooShort(seam: number, turnUp: number): Issue | undefined {
  const least = turnUp + rules.aboveHem.value;
  if (seam >= least) return undefined;
  return {
    code: 'sleeve-too-short',
    severity: 'error',
    path: 'sleeveLength',
    value: seam,
    limits: { min: least, unit: 'mm' },
    message: `A plain sleeve with a seam of ${figure(seam)} mm has no room to taper above a hem of ${figure(turnUp)} mm. Make its seam at least ${figure(least)} mm long (sleeveLength), or its hem narrower (sleeveHemAllowance).`,
  };
}
