import type { FittedLevel } from '../../engine/body/fitting.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import { sayPinned, sayTaken } from '../fitting/say-taken.ts';
import type { Levels } from './levels.ts';
import { type PinnedSeams, pinned, takenFromHalf } from './pinned.ts';
import type { FoundationTable } from './table.ts';
import type { SharedWidths } from './widths.ts';

/** The widths once seams were taken in or let out at a fitting. */
export interface Widths extends SharedWidths {
  /** As shared out before the fitting: the princess lines stay where that puts them. */
  readonly drafted: SharedWidths;
  /** The girths as the fitting left them. */
  readonly finished: DraftedGirths;
  /** What the fitting took from half the girth at each level, mm; less than nothing where it let out. */
  readonly taken: { readonly bust: number; readonly underBust: number; readonly waist: number };
}

/** The girths before the fitting, ease in. */
export interface DraftedGirths {
  readonly bust: Mm;
  readonly underBust: Mm;
  readonly waist: Mm;
}

/**
 * Takes the panels in, or lets them out, where a fitting pinned them: each edge of the seam by as much, at its level,
 * and in proportion where the seam runs straight on. The other seams stay, so the finished girth changes. A broader
 * back moves its side seam out whole; what that adds below the bust, the back princess seam takes up again.
 */
export function takeIn(
  table: FoundationTable,
  shared: SharedWidths,
  levels: Levels,
  drafted: DraftedGirths,
): Widths {
  sayPinned(table, ['bust', 'under-bust', 'waist']);
  const found = pinned(table);
  if (!found)
    return { ...shared, drafted: shared, finished: drafted, taken: { bust: 0, underBust: 0, waist: 0 } };
  const taken = takenFromHalf(table, found, levels);
  const { size } = table;
  const says = (level: FittedLevel, girth: Mm, body: Mm, half: Mm): Mm => {
    if (half.value === 0) return girth;
    return sayTaken(
      table,
      level,
      girth,
      body,
      table.mm`Fitting, taken from the girth at the ${level}: 2 x ${half}`,
    );
  };
  const finished = {
    bust: says('bust', drafted.bust, size.bustGirth, taken.bust),
    underBust: says('under-bust', drafted.underBust, size.underBustGirth, taken.underBust),
    waist: says('waist', drafted.waist, size.waistGirth, taken.waist),
  };
  return {
    ...fittedWidths(table, shared, levels, found),
    halfWaist: table.mm`Fitting, half waist: ${shared.halfWaist} - ${taken.waist}`,
    shares: shared.shares,
    below: shared.below,
    drafted: shared,
    finished,
    taken: { bust: taken.bust.value, underBust: taken.underBust.value, waist: taken.waist.value },
  };
}

/** The widths of the panels, and what their seams take in, with what was pinned. */
function fittedWidths(
  { mm }: FoundationTable,
  shared: SharedWidths,
  levels: Levels,
  { side, front, back, centreBack, wider }: PinnedSeams,
): Omit<SharedWidths, 'halfWaist' | 'shares' | 'below'> {
  return {
    front: mm`Fitting, front width at bust level: ${shared.front} - side seam ${side.bust}`,
    back: mm`Fitting, back width at bust level: ${shared.back} + ${wider} - side seam ${side.bust} - 2 x back princess seam ${back.bust} - centre back seam ${centreBack} x ${levels.bust} / ${levels.waist}; a broad back moves its side seam whole, and the back princess seam makes up for it below the bust`,
    sideAtWaist: mm`Fitting, side seam takes in at the waist: ${shared.sideAtWaist} + ${side.waist} - ${side.bust}`,
    sideUnderBust: shared.sideUnderBust,
    centreBackAtWaist: mm`Fitting, centre back takes in at the waist: ${shared.centreBackAtWaist} + ${centreBack}`,
    frontPrincess: {
      underBust: mm`Fitting, front princess takes in under the bust: ${shared.frontPrincess.underBust} + 2 x ${front.underBust}`,
      waist: mm`Fitting, front princess takes in at the waist: ${shared.frontPrincess.waist} + 2 x ${front.waist}`,
    },
    backPrincess: {
      bust: mm`Fitting, back princess takes in at bust level: ${shared.backPrincess.bust} + 2 x ${back.bust}`,
      underBust: mm`Fitting, back princess takes in under the bust: ${shared.backPrincess.underBust} + ${wider} + 2 x ${back.underBust}`,
      waist: mm`Fitting, back princess takes in at the waist: ${shared.backPrincess.waist} + ${wider} + 2 x ${back.waist}`,
    },
  };
}
