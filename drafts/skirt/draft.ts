import { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { type Solver, solve } from '../../engine/constraints/solve.ts';
import { point } from '../../engine/geometry/point.ts';
import type { Result } from '../../engine/issue.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import { figure } from '../../engine/text/figure.ts';
import { allowances } from '../allowances.ts';
import { conflictIssue } from '../conflict.ts';
import { type Parts, together } from '../parts.ts';
import { usually } from '../usual.ts';
import { type ByGore, byGore, goreNames, seamsOf } from './by-gore.ts';
import type { SkirtTable } from './choices.ts';
import { skirtFigures } from './figures.ts';
import { shorter } from './gore-frame.ts';
import { type GoreLines, planGore } from './gore-lines.ts';
import { gorePiece } from './gore-piece.ts';
import { type GoreSizes, goreSizes } from './gore-sizes.ts';
import { skirtLining } from './lining.ts';
import { skirtRules as rules } from './rules.ts';
import { skirtSewing } from './sewing.ts';
import { skirtShapes } from './shapes.ts';
import { skirtGirths, skirtJoins, skirtSeams } from './skirt-seams.ts';

/** A skirt planned on a table. */
interface SkirtPlan {
  readonly sizes: GoreSizes;
  readonly gores: ByGore<GoreLines>;
}

function planSkirt(table: SkirtTable, waist: ByGore<Mm>): SkirtPlan {
  const sizes = goreSizes(table, waist);
  return { sizes, gores: byGore((name) => planGore(table, name, sizes)) };
}

/** About the waists that the gores would have for another body, where they were given for the first. */
function waistsFor(other: SkirtTable, first: SkirtTable, waist: ByGore<Mm>): ByGore<Mm> {
  const times = other.size.waistGirth.value / first.size.waistGirth.value;
  return byGore((name) => ({ ...waist[name], value: waist[name].value * times }));
}

/**
 * Draws the gored skirt to the waists the bodice panels came out with. Nothing in a bodice depends on its skirt, so
 * the skirt is solved after it, in a sketch of its own.
 */
export function drawSkirt(onto: SkirtTable, waist: ByGore<Mm>, solver: Solver = solve): Result<Parts> {
  const table = { ...onto, sketch: new SketchBuilder() };
  const { sizes, gores } = planSkirt(table, waist);
  const refusals = table.refusals();
  if (refusals.length > 0) return { ok: false, issues: refusals };
  const { body, styling } = table;
  const sketch = usually(table.sketch.sketch(), styling);
  const solution = solver(sketch);
  if (solution.status !== 'solved') {
    const sketchOf = (other: SkirtTable) => {
      planSkirt(other, waistsFor(other, table, waist));
      return other.sketch.sketch();
    };
    return { ok: false, issues: [conflictIssue(table, { sketch, solution }, sketchOf)] };
  }
  table.solved(solution);
  const hipText = `hip: finished girth ${figure(body.size.hipGirth + sizes.hipEase)} mm`;
  const cutGores = (up: number): readonly Piece[] =>
    goreNames.map((name, i) => {
      const [left, right] = seamsOf[name];
      return gorePiece(shorter(gores[name], name, up), solution, {
        name: `skirt ${name}`,
        number: 8 + i,
        left,
        right,
        allowance: allowances(styling),
        hem: styling.hemAllowance,
        hipText,
      });
    });
  const parts: Parts = {
    pieces: cutGores(0),
    seams: skirtSeams,
    joins: skirtJoins,
    girths: skirtGirths(body.size.hipGirth, sizes),
    notions: [],
    shapes: [...skirtFigures(body, sizes), ...skirtShapes],
    sewing: skirtSewing(styling),
  };
  if (styling.skirtLining === 'none') return { ok: true, value: parts, issues: [] };
  table.heading('The lining of the skirt');
  const up = table.mm`Lining of the skirt: shorter at the hem by ${rules.liningShorter}; the gores once more, held at the waist`;
  const hem = gores['centre front'].hemLeft;
  table.dimension('skirt centre front', up, point(hem.x, hem.y - up.value), hem);
  const lining = skirtLining(cutGores(up.value), body.size.hipGirth, sizes, styling);
  return { ok: true, value: together(parts, lining), issues: [] };
}
