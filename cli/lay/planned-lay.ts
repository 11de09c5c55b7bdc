import type { Issue } from '../../engine/issue.ts';
import type { Lay } from '../../engine/lay/problem.ts';
import { layPage, laySvg } from '../../engine/lay-plan/lay-drawing.ts';
import { type LayPlan, type LayTask, layPlan, piecesAsked } from '../../engine/lay-plan/lay-plan.ts';
import { provePlan } from '../../engine/lay-plan/prove-plan.ts';
import type { WordTable } from '../../engine/materials/words.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import type { Fonts } from '../../engine/render/pdf/fonts.ts';
import { pdfOf } from '../../engine/render/pdf/write-pdf.ts';
import { fixed } from '../../engine/text/figure.ts';
import { lengthCell } from '../../engine/text/length.ts';
import { lengthToBuy } from '../../engine/text/length-to-buy.ts';
import type { Unit } from '../../engine/text/units.ts';

/** A plan with what is to be bought for it, drawn. */
export interface PlannedLay {
  readonly plan: LayPlan;
  readonly toBuy: string;
  readonly svg: string;
}

/** The plan of a lay, drawn in the reader's unit. */
export function plannedLay(task: LayTask, lay: Lay, garment: Garment, units: Unit): PlannedLay {
  const plan = layPlan(task, lay, garment);
  const toBuy = lengthToBuy(plan.needed, units);
  return { plan, toBuy, svg: laySvg(plan, toBuy, units) };
}

/** What is wrong with a plan as it was drawn, read back from its lines; nothing is a proof. */
export const layFaults = ({ plan, svg }: PlannedLay, garment: Garment): readonly Issue[] =>
  provePlan(svg, plan.pieces, piecesAsked(garment, plan.clothName));

/** Every plan as SVG, and all of them as a PDF, by file name. */
export const layFiles = async (
  plans: readonly PlannedLay[],
  garment: Garment,
  units: Unit,
  fonts: Fonts,
): Promise<ReadonlyMap<string, string | Uint8Array>> =>
  new Map<string, string | Uint8Array>([
    ...plans.map(({ plan, svg }) => [`lay-${plan.clothName}.svg`, svg] as const),
    [
      'lay.pdf',
      await pdfOf(
        plans.map(({ plan, toBuy }) => layPage(plan, toBuy, units)),
        `${garment.name} for ${garment.body}: lays`,
        fonts,
      ),
    ],
  ]);

/** What each plan takes. */
export const layTable = (plans: readonly Pick<PlannedLay, 'plan' | 'toBuy'>[], units: Unit): WordTable => ({
  titles: ['cloth', 'width', 'laid', 'pieces', 'length', 'no lay under', 'used', 'buy'],
  rows: plans.map(({ plan, toBuy }) => [
    plan.clothName,
    lengthCell(plan.cloth.width, units),
    plan.cloth.folded ? 'folded' : 'open',
    String(plan.copies.length),
    lengthCell(plan.length, units),
    lengthCell(plan.leastLength, units),
    `${fixed(100 * plan.used, 1)} %`,
    toBuy,
  ]),
});

/** At which seams stripes meet, and at which they cannot, where the cloth has any. */
export function stripeLines(plans: readonly Pick<PlannedLay, 'plan'>[]): readonly string[] {
  const plan = plans[0]?.plan;
  const named = (what: string, seams: readonly string[] = []): readonly string[] =>
    seams.length > 0 ? [`${what}: ${seams.join('; ')}`] : [];
  return [
    ...named('stripes meet at', plan?.matched?.matched),
    ...named('at one place, being eased or gathered, at', plan?.matched?.matchedOnce),
    ...named('they cannot also meet at', plan?.matched?.unmatched),
    ...named('stripes along the cloth meet at', plan?.matchedAlong?.matched),
    ...named('at one place, being eased or gathered, at', plan?.matchedAlong?.matchedOnce),
    ...named('they do not meet at', plan?.matchedAlong?.unmatched),
  ];
}

/** The share of the time that a cloth gets: as its copies to all copies. */
export function shareOf(task: LayTask, all: readonly LayTask[]): number {
  const copies = ({ pieces }: LayTask): number => pieces.reduce((sum, { count }) => sum + count, 0);
  return copies(task) / all.reduce((sum, other) => sum + copies(other), 0);
}
