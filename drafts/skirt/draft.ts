import type { Body } from '../../engine/body/body.ts';
import { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { type Solver, solve } from '../../engine/constraints/solve.ts';
import type { Result } from '../../engine/issue.ts';
import { type ConstructionLog, constructionLog, figure } from '../../engine/pattern/construction-log.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import { allowances } from '../allowances.ts';
import { conflictIssue } from '../conflict.ts';
import { type Parts, together } from '../draw-garment.ts';
import type { MakingStyling } from '../making-choices.ts';
import type { SkirtStyling } from './choices.ts';
import { skirtFigures } from './figures.ts';
import { type GoreLines, planGore, shorter } from './gore-lines.ts';
import { gorePiece } from './gore-piece.ts';
import {
  type ByGore,
  type GoreName,
  type GoreSeam,
  type GoreSizes,
  goreNames,
  goreSizes,
} from './gore-sizes.ts';
import { skirtLining } from './lining.ts';
import { skirtRules as rules } from './rules.ts';
import { skirtSewing } from './sewing.ts';
import { skirtGirths, skirtJoins, skirtSeams } from './skirt-seams.ts';

/** The seams of each gore, left and right as drawn. The back gores are drawn like the front, centre on the left. */
const seamsOf: Readonly<Record<GoreName, readonly [left: GoreSeam, right: GoreSeam]>> = {
  'centre front': ['centre front', 'front princess'],
  'side front': ['front princess', 'side'],
  'side back': ['back princess', 'side'],
  'centre back': ['centre back', 'back princess'],
};

/** A skirt planned in a sketch of its own. */
interface SkirtPlan {
  readonly sizes: GoreSizes;
  readonly sketch: SketchBuilder;
  readonly gores: readonly {
    readonly name: GoreName;
    readonly left: GoreSeam;
    readonly right: GoreSeam;
    readonly lines: GoreLines;
  }[];
}

function planSkirt(body: Body, styling: SkirtStyling, waist: ByGore, log: ConstructionLog): SkirtPlan {
  const sizes = goreSizes(body, styling, waist, log);
  const sketch = new SketchBuilder();
  const gores = goreNames.map((name) => {
    const [left, right] = seamsOf[name];
    const lines = planGore(sketch, {
      name: `skirt ${name}`,
      half: name === 'centre front' || name === 'centre back',
      waist: sizes.waist[name],
      hip: sizes.hip[name],
      hem: sizes.hem[name],
      leftToHip: sizes.toHip[left],
      rightToHip: sizes.toHip[right],
      belowHip: sizes.belowHip,
    });
    return { name, left, right, lines };
  });
  log.say(
    'Gores',
    'below the hip every seam runs straight and leans out by one angle, with the hem an arc square to it; above, it curves to the waist, which is square to it and as long as the bodice',
    'sector of a cone',
  );
  return { sizes, sketch, gores };
}

/**
 * Draws the gored skirt to the waists the bodice panels came out with. Nothing in a bodice depends on its skirt, so
 * the skirt is solved after it, in a sketch of its own.
 */
export function drawSkirt(
  body: Body,
  styling: SkirtStyling & MakingStyling,
  waist: ByGore,
  log: ConstructionLog,
  solver: Solver = solve,
): Result<Parts> {
  const { sizes, sketch, gores } = planSkirt(body, styling, waist, log);
  const refusals = log.refusals();
  if (refusals.length > 0) return { ok: false, issues: refusals };
  const solution = solver(sketch.sketch());
  if (solution.status !== 'solved') {
    const again = (other: Body) => solve(planSkirt(other, styling, waist, constructionLog()).sketch.sketch());
    return { ok: false, issues: [conflictIssue(body, solution, again)] };
  }
  const hipText = `hip: finished girth ${figure(body.size.hipGirth + sizes.hipEase)} mm`;
  const cutGores = (up: number): readonly Piece[] =>
    gores.map(({ name, left, right, lines }, i) =>
      gorePiece(shorter(lines, up), solution, {
        name: `skirt ${name}`,
        number: 8 + i,
        left,
        right,
        allowance: allowances(styling),
        hem: styling.hemAllowance,
        hipText,
      }),
    );
  const parts: Parts = {
    pieces: cutGores(0),
    seams: skirtSeams,
    joins: skirtJoins,
    girths: skirtGirths(body.size.hipGirth, sizes),
    notions: [],
    figures: skirtFigures(body, sizes),
    sewing: skirtSewing(styling),
  };
  if (styling.skirtLining === 'none') return { ok: true, value: parts, issues: [] };
  const up = log.mm(
    'Lining of the skirt',
    'the gores once more, held at the waist; at the hem shorter by',
    rules.liningShorter.value,
    rules.liningShorter,
  );
  const lining = skirtLining(cutGores(up), body.size.hipGirth, sizes, styling);
  return { ok: true, value: together(parts, lining), issues: [] };
}
