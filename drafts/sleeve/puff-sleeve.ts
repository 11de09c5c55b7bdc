import { type Solver, solve } from '../../engine/constraints/solve.ts';
import { type Point, point } from '../../engine/geometry/point.ts';
import type { Result } from '../../engine/issue.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import type { BodiceAllowances } from '../allowances.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import type { Parts } from '../parts.ts';
import { drawEdges, straight } from '../piece-edges.ts';
import { usualArmEase } from './arm-ease.ts';
import { laidDown } from './armhole.ts';
import type { PuffSleeveTable } from './choices.ts';
import { puffFigures } from './figures.ts';
import { type FittedCap, fitCap } from './fitted-cap.ts';
import { hemElastic } from './hem-elastic.ts';
import { sleeveRules as rules } from './rules.ts';
import { selfLined } from './self-lined.ts';
import { puffSewing } from './sewing.ts';
import { sleeveShapes } from './shapes.ts';
import { type BelowCap, isCapEdge, sleeveHem, sleevePiece, sleeveSeamEdge } from './sleeve-piece.ts';
import { armholeRefs, sleeveGirths, sleeveJoins, sleeveSeams } from './sleeve-seams.ts';

/** Draws the puff sleeve: a cap spread between its notches and raised, gathered into the armhole and at the hem. */
export function drawPuffSleeve(table: PuffSleeveTable, cut: PanelCut, solver: Solver = solve): Result<Parts> {
  const { choice, styling } = table;
  table.heading('The puff sleeve');
  const armhole = laidDown(cut.armholes);
  const girth = table.measured(
    'Armhole',
    'all round, on the drawing',
    armhole.girth,
    cut.plan.foundation.levels.underarm,
  );
  const { plan } = cut;
  table.laidOut(girth, 1, () => [
    ...plan.back.armhole.map((name) => ({ on: 'back', name })),
    ...plan.front.armhole.map((name) => ({ on: 'front', name })),
  ]);
  const fullness = table.ratio`Crown for each mm of armhole: ${choice.sleeveFullness}`;
  const height = table.mm`Cap height, puffed: ${rules.capShare} of armhole ${girth} + ${choice.puffHeight}`;
  const fitted = fitCap(
    table,
    armhole,
    cut,
    { fullness: fullness.value, height: height.value, easeOf: usualArmEase },
    solver,
  );
  if (!fitted.ok) return fitted;
  const cap = fitted.value;
  const usual = styling.sleeve === 'long puff' ? rules.longPuffLength : rules.puffLength;
  const length =
    choice.sleeveLength === 'auto'
      ? table.mm`Sleeve seam: ${usual}; a ${styling.sleeve} sleeve`
      : table.mm`Sleeve seam: ${choice.sleeveLength}; as chosen`;
  const elastic = hemElastic(table);
  const piece = sleevePiece(cap, belowPuff(table, cap, length, cut.allowance, elastic.text), cut.allowance);
  const spread = table.measured(
    'Sleeve spread',
    'until the crown is long enough',
    cap.spread,
    fullness,
    height,
  );
  table.say`Puffed cap: the two sides of the cap moved apart by ${spread} mm, the crown raised between them`;
  drawEdges(table, piece, isCapEdge);
  table.dimension('sleeve', spread, point(-spread.value / 2, 0), point(spread.value / 2, 0));
  table.say`Sleeve below its cap: as wide as that, straight down, its seam ${length} mm long`;
  drawEdges(table, piece, (name) => !isCapEdge(name));
  table.dimension('sleeve', length, 'front seam');
  const crown = { ease: 0, ratio: fullness.value };
  const sleeve = styling.sleeveLining === 'self' ? selfLined(piece) : piece;
  const parts: Parts = {
    pieces: [sleeve],
    seams: sleeveSeams(armholeRefs(cut), crown, piece),
    joins: sleeveJoins(sleeve),
    girths: sleeveGirths(table, cap),
    notions: [elastic.notion],
    shapes: [...puffFigures(table, cap, elastic), ...sleeveShapes(cut)],
    sewing: puffSewing(styling),
  };
  return { ok: true, value: parts, issues: [] };
}

/** Straight down from the underarm to a hem that is a casing. */
function belowPuff(
  { styling }: PuffSleeveTable,
  { width, spread }: FittedCap,
  length: Mm,
  allowance: BodiceAllowances,
  text: string,
): BelowCap {
  const half = (width.value + spread) / 2;
  const hem = length.value;
  const casing = styling.elasticWidth + rules.casingRoom.value;
  const asked = styling.sleeveHemAllowance === 'auto' ? 0 : styling.sleeveHemAllowance;
  const [right, left] = [1, -1].map(
    (side) =>
      (y: number): Point =>
        point(side * half, y),
  ) as [(y: number) => Point, (y: number) => Point];
  return {
    length: hem,
    edges: [
      sleeveSeamEdge('front seam', right(0), right(hem), allowance),
      sleeveHem(straight(right(hem), left(hem)), Math.max(asked, casing + rules.turnUnder.value)),
      sleeveSeamEdge('back seam', left(hem), left(0), allowance),
    ],
    lines: [
      { name: 'casing', kind: 'casing', text, curves: straight(left(hem - casing), right(hem - casing)) },
    ],
  };
}
