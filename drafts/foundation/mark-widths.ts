import { type Point, point } from '../../engine/geometry/point.ts';
import type { DimensionPart } from '../../engine/pattern/dimension.ts';
import type { Foundation } from './foundation.ts';
import { foundationRules as rules } from './rules.ts';
import type { FoundationTable } from './table.ts';
import type { DraftedGirths } from './take-in.ts';

type Level = keyof DraftedGirths;

/** A panel's width at a level: from one edge of it to the other, level. */
type Panel = Extract<DimensionPart, { readonly from: Point }>;

/**
 * Marks on back and front how the girths were shared: a width is that of the panels, either side of what the princess seam takes
 * in between them; half a girth is back and front together.
 */
export function markWidths(table: FoundationTable, foundation: Foundation): void {
  const { levels, widths, front, back } = foundation;
  const { frontPrincess, backPrincess, shares, below, drafted } = widths;
  const yAt = (level: Level): number => levels[level].value;
  for (const level of ['bust', 'underBust', 'waist'] as const) {
    const takes = backPrincess[level];
    const [from, to] = backEdges(foundation, level);
    table.dimension('back', takes, point(from, yAt(level)), point(to, yAt(level)));
  }
  const [edge, y] = [front.underBust.centre.x, yAt('underBust')];
  table.dimension('front', frontPrincess.underBust, ...level(y, edge, edge + frontPrincess.underBust.value));
  const opens = point(edge + below.princessOpens.value, yAt('waist'));
  table.dimension('front', below.princessOpens, point(edge, opens.y), opens);
  table.angleAt('front', rules.princessLean.quantity, point(edge, y), point(edge, opens.y), opens);
  for (const at of ['bust', 'underBust', 'waist'] as const)
    table.laidOut(widths.finished[at], 2, () => acrossPanels(foundation, at));
  // Seams that a fitting took in or let out leave other widths than those that were shared out.
  if (widths.back !== drafted.back) return;
  table.dimension('back', below.sideUnderBust, ...level(y, back.side.underBust.x, back.side.bust.x));
  const [above, down] = [back.centreBackAt(yAt('bust')), back.centreBackAt(yAt('waist'))];
  table.dimension('back', below.centreBackAtWaist, ...level(yAt('waist'), above, down));
  for (const at of ['bust', 'underBust', 'waist'] as const) {
    table.laidOut(shares[at].back, 1, () => backPanels(foundation, at));
    if (at !== 'bust') table.laidOut(shares[at].front, 1, () => frontPanels(foundation, at));
    // Half the waist is seen on its own curves.
    if (at !== 'waist') table.laidOut(shares[at].half, 1, () => acrossPanels(foundation, at));
  }
}

const acrossPanels = (foundation: Foundation, at: Level): readonly Panel[] => [
  ...backPanels(foundation, at),
  ...frontPanels(foundation, at),
];

const level = (y: number, from: number, to: number): [Point, Point] => [point(from, y), point(to, y)];

/** The edges of the back princess seam at a level, before the curves give way to each other. */
function backEdges({ back, levels, widths }: Foundation, at: Level): readonly [from: number, to: number] {
  const [bust, underBust, waist] = [levels.bust.value, levels.underBust.value, levels.waist.value];
  const share = at === 'bust' ? 0 : at === 'waist' ? 1 : (underBust - bust) / (waist - bust);
  const middle = back.blade.x + share * (back.princessAtWaist.value - back.blade.x);
  const half = widths.backPrincess[at].value / 2;
  return [middle - half, middle + half];
}

function backPanels(foundation: Foundation, at: Level): readonly Panel[] {
  const { back, levels } = foundation;
  const y = levels[at].value;
  const [from, to] = backEdges(foundation, at);
  return [
    { on: 'back', from: point(back.centreBackAt(y), y), to: point(from, y) },
    { on: 'back', from: point(to, y), to: point(back.side[at].x, y) },
  ];
}

function frontPanels({ front, levels, widths }: Foundation, at: Level): readonly Panel[] {
  const y = levels[at].value;
  const side = point(front.side[at].x, y);
  if (at === 'bust') return [{ on: 'front', from: point(0, y), to: side }];
  const edge = point(front[at].centre.x, y);
  const beyond = point(edge.x + widths.frontPrincess[at].value, y);
  return [
    { on: 'front', from: point(0, y), to: edge },
    { on: 'front', from: beyond, to: side },
  ];
}
