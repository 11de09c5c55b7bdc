import type { Mm } from '../../engine/pattern/quantity.ts';
import { sayPinned, sayTaken } from '../fitting/say-taken.ts';
import type { Levels } from './levels.ts';
import type { FoundationTable } from './table.ts';
import type { SharedWidths } from './widths.ts';

/** The widths once seams were taken in or let out at a fitting. */
export interface Widths extends SharedWidths {
  /** As shared out before the fitting: the princess lines stay where that puts them. */
  readonly drafted: SharedWidths;
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
  const { body } = table;
  const nothing = { bust: 0, underBust: 0, waist: 0 };
  if (body.fitting.length === 0) return { ...shared, drafted: shared, taken: nothing };
  const side = { bust: table.takenIn('side seam', 'bust'), waist: table.takenIn('side seam', 'waist') };
  const front = {
    underBust: table.takenIn('front princess seam', 'under-bust'),
    waist: table.takenIn('front princess seam', 'waist'),
  };
  const back = {
    bust: table.takenIn('back princess seam', 'bust'),
    underBust: table.takenIn('back princess seam', 'under-bust'),
    waist: table.takenIn('back princess seam', 'waist'),
  };
  const centreBack = table.takenIn('centre back seam', 'waist');
  const broader = (table.fitted('broad back').value - table.fitted('narrow back').value) / 2;
  sayPinned(table, ['bust', 'under-bust', 'waist']);

  const share = (levels.underBust.value - levels.bust.value) / (levels.waist.value - levels.bust.value);
  const sideUnderBust = side.bust.value + share * (side.waist.value - side.bust.value);
  const centreBackAt = (level: Mm): number => (centreBack.value * level.value) / levels.waist.value;
  const taken = {
    bust: 2 * (side.bust.value + back.bust.value) + centreBackAt(levels.bust) - broader,
    underBust:
      2 * (sideUnderBust + front.underBust.value + back.underBust.value) + centreBackAt(levels.underBust),
    waist: 2 * (side.waist.value + front.waist.value + back.waist.value) + centreBack.value,
  };
  const girth = (level: string, mm: number): Mm =>
    table.measured(
      `Fitting, taken from the girth at the ${level}`,
      'all seams, both layers, left and right',
      mm,
      ...Object.values({ ...side, ...front, ...back, centreBack }),
    );
  const { size } = table;
  if (taken.bust !== 0) sayTaken(table, 'bust', drafted.bust, size.bustGirth, girth('bust', 2 * taken.bust));
  if (taken.underBust !== 0)
    sayTaken(
      table,
      'under-bust',
      drafted.underBust,
      size.underBustGirth,
      girth('under-bust', 2 * taken.underBust),
    );
  if (taken.waist !== 0)
    sayTaken(table, 'waist', drafted.waist, size.waistGirth, girth('waist', 2 * taken.waist));
  if (Object.values(taken).every((mm) => mm === 0) && broader === 0)
    return { ...shared, drafted: shared, taken };

  const wider = table.measured(
    'Fitting, half the back is wider by',
    'broad or narrow back, half of it',
    broader,
    table.fitted('broad back'),
    table.fitted('narrow back'),
  );
  const halfTaken = table.measured(
    'Fitting, taken from half the waist',
    'all seams',
    taken.waist,
    side.waist,
    front.waist,
    back.waist,
    centreBack,
  );
  return {
    front: table.mm`Fitting, front width at bust level: ${shared.front} - side seam ${side.bust}`,
    back: table.mm`Fitting, back width at bust level: ${shared.back} + ${wider} - side seam ${side.bust} - 2 x back princess seam ${back.bust} - centre back seam ${centreBack} x ${levels.bust} / ${levels.waist}; a broad back moves its side seam whole, and the back princess seam makes up for it below the bust`,
    sideAtWaist: table.mm`Fitting, side seam takes in at the waist: ${shared.sideAtWaist} + ${side.waist} - ${side.bust}`,
    sideUnderBust: shared.sideUnderBust,
    centreBackAtWaist: table.mm`Fitting, centre back takes in at the waist: ${shared.centreBackAtWaist} + ${centreBack}`,
    frontPrincess: {
      underBust: table.mm`Fitting, front princess takes in under the bust: ${shared.frontPrincess.underBust} + 2 x ${front.underBust}`,
      waist: table.mm`Fitting, front princess takes in at the waist: ${shared.frontPrincess.waist} + 2 x ${front.waist}`,
    },
    backPrincess: {
      bust: table.mm`Fitting, back princess takes in at bust level: ${shared.backPrincess.bust} + 2 x ${back.bust}`,
      underBust: table.mm`Fitting, back princess takes in under the bust: ${shared.backPrincess.underBust} + ${wider} + 2 x ${back.underBust}`,
      waist: table.mm`Fitting, back princess takes in at the waist: ${shared.backPrincess.waist} + ${wider} + 2 x ${back.waist}`,
    },
    halfWaist: table.mm`Fitting, half waist: ${shared.halfWaist} - ${halfTaken}`,
    drafted: shared,
    taken,
  };
}
