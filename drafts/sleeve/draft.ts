import type { Body } from '../../engine/body/body.ts';
import type { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { edgeLength } from '../../engine/geometry/edge.ts';
import { distance } from '../../engine/geometry/point.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';
import { bodiceAllowances } from '../allowances.ts';
import type { BodicePlan } from '../bodice/bodice.ts';
import type { BodiceStyling } from '../bodice/choices.ts';
import { bodiceRules, leastRadius } from '../bodice/rules.ts';
import type { Cut } from '../draw-garment.ts';
import { solvedCurves } from '../piece-edges.ts';
import type { SleeveStyling } from './choices.ts';
import { sleeveFigures } from './figures.ts';
import { hemElastic } from './hem-elastic.ts';
import { selfLined } from './self-lined.ts';
import { sleeveSewing } from './sewing.ts';
import { planSleeve } from './sleeve-lines.ts';
import { sleevePiece } from './sleeve-piece.ts';
import { sleeveGirths, sleeveJoins, sleeveSeams } from './sleeve-seams.ts';

/** Plans the puff sleeve into the armhole of a planned bodice. */
export function planPuffSleeve(
  sketch: SketchBuilder,
  body: Body,
  styling: SleeveStyling & BodiceStyling,
  { front, back, frontLines, backLines }: BodicePlan,
  log: ConstructionLog,
): Cut {
  const strap = front.strap.length + back.strap.length;
  const chords = distance(front.strapOuter, front.underarm) + distance(back.strap.outer, back.underarm);
  const sleeve = planSleeve(
    sketch,
    body,
    styling,
    {
      front: frontLines.armhole,
      back: backLines.armhole,
      strap,
      frontFlat: bodiceRules.frontNotch.value,
      backFlat: bodiceRules.backNotch.value,
      leastRadius: leastRadius(styling.armholeAllowance),
      guess: strap + 1.1 * chords,
    },
    log,
  );
  const elastic = hemElastic(body, styling, log);
  return (solution) => {
    const lengthOf = (name: string): number => edgeLength({ name, curves: solvedCurves(solution, [name]) });
    const backArmhole = lengthOf(backLines.armhole);
    const armhole = backArmhole + strap + lengthOf(frontLines.armhole);
    const toShoulder = backArmhole * (1 - bodiceRules.backNotch.value) + back.strap.length;
    const armText = `upper arm: finished girth ${figure(body.size.upperArmGirth + styling.upperArmEase)} mm`;
    const piece = sleevePiece(sleeve, solution, styling, bodiceAllowances(styling), toShoulder, {
      arm: armText,
      elastic: elastic.text,
    });
    return {
      pieces: [styling.sleeveLining === 'self' ? selfLined(piece) : piece],
      seams: sleeveSeams(styling.sleeveFullness),
      joins: sleeveJoins,
      girths: sleeveGirths(body, styling),
      notions: [elastic.notion],
      figures: sleeveFigures(sleeve, solution, body, styling, armhole, elastic),
      sewing: sleeveSewing(styling),
    };
  };
}
