import type { Body } from '../../engine/body/body.ts';
import type { Solution } from '../../engine/constraints/solution.ts';
import type { BodiceAllowances } from '../allowances.ts';
import type { Parts } from '../parts.ts';
import { cutArmholes } from './armhole-stretches.ts';
import { backPieces } from './back-pieces.ts';
import type { BodicePlan } from './bodice.ts';
import { bodiceJoins } from './bodice-joins.ts';
import { bodiceGirths, bodiceSeams } from './bodice-seams.ts';
import { levelTexts } from './ease-left.ts';
import { bodiceFigures } from './figures.ts';
import { frontPieces } from './front-pieces.ts';
import type { PanelCut } from './panel-cut.ts';
import { bodiceRules as rules } from './rules.ts';
import { bodiceShapes } from './shapes.ts';

/** What the panels are cut from, once the sketch is solved; `plain` where a plain sleeve is set in. */
export function panelCut(
  plan: BodicePlan,
  solution: Solution,
  body: Body,
  allowance: BodiceAllowances,
  plain: boolean,
): PanelCut {
  const notch = plain ? rules.plainNotch : rules.puffNotch;
  return {
    plan,
    solution,
    armholes: cutArmholes(plan, solution, notch.value),
    allowance,
    texts: levelTexts(body, plan.foundation),
  };
}

/** The panels as they are sewn to each other; an insert's gathers end `gathersEndAt` mm before the princess seam. */
export const panelParts = (
  cut: PanelCut,
  body: Body,
  plain: boolean,
  gathersEndAt: number,
): Omit<Parts, 'sewing'> => ({
  pieces: [...frontPieces(cut, gathersEndAt), ...backPieces(cut)],
  seams: bodiceSeams(cut),
  joins: bodiceJoins(cut),
  girths: bodiceGirths(body, cut.plan.foundation, cut.plan.lines.style),
  notions: [],
  shapes: [...bodiceFigures(cut, body), ...bodiceShapes(cut, body, plain)],
});
