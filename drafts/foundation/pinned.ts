import type { Mm } from '../../engine/pattern/quantity.ts';
import type { Levels } from './levels.ts';
import type { FoundationTable } from './table.ts';

/** What a fitting took each edge of a seam in, by its level; less than nothing where it let it out. */
export interface PinnedSeams {
  readonly side: { readonly bust: Mm; readonly waist: Mm };
  readonly front: { readonly underBust: Mm; readonly waist: Mm };
  readonly back: { readonly bust: Mm; readonly underBust: Mm; readonly waist: Mm };
  readonly centreBack: Mm;
  /** How much wider half the back is by a broad back, or narrower. */
  readonly wider: Mm;
}

/** What was pinned at the seams of the bodice; nothing where none of it was. */
export function pinned(table: FoundationTable): PinnedSeams | undefined {
  const { takenIn, fitted } = table;
  const side = { bust: takenIn('side seam', 'bust'), waist: takenIn('side seam', 'waist') };
  const front = {
    underBust: takenIn('front princess seam', 'under-bust'),
    waist: takenIn('front princess seam', 'waist'),
  };
  const back = {
    bust: takenIn('back princess seam', 'bust'),
    underBust: takenIn('back princess seam', 'under-bust'),
    waist: takenIn('back princess seam', 'waist'),
  };
  const centreBack = takenIn('centre back seam', 'waist');
  const [broad, narrow] = [fitted('broad back'), fitted('narrow back')];
  const seams = [...Object.values(side), ...Object.values(front), ...Object.values(back), centreBack];
  if ([...seams, broad, narrow].every(({ value }) => value === 0)) return undefined;
  const wider = table.mm`Fitting, half the back is wider by: (broad back ${broad} - narrow back ${narrow}) / 2`;
  return { side, front, back, centreBack, wider };
}

/** What a fitting took from half the girth at each level; less than nothing where it let out. */
export interface TakenFromHalf {
  readonly bust: Mm;
  readonly underBust: Mm;
  readonly waist: Mm;
}

/** Adds up what was pinned at each level; a seam runs straight on between the levels where it was. */
export function takenFromHalf(
  { mm }: FoundationTable,
  { side, front, back, centreBack, wider }: PinnedSeams,
  { bust, underBust, waist, sideWaist }: Levels,
): TakenFromHalf {
  const sideUnderBust = mm`Fitting, side seam taken in under the bust: at the bust ${side.bust} + (at the waist ${side.waist} - at the bust ${side.bust}) x (under-bust level ${underBust} - bust level ${bust}) / (waist level at the side seam ${sideWaist} - bust level ${bust})`;
  return {
    bust: mm`Fitting, taken from half the bust: 2 x (side seam ${side.bust} + back princess seam ${back.bust}) + centre back seam ${centreBack} x bust level ${bust} / waist level ${waist} - what the back is wider ${wider}`,
    underBust: mm`Fitting, taken from half the under-bust: 2 x (side seam ${sideUnderBust} + front princess seam ${front.underBust} + back princess seam ${back.underBust}) + centre back seam ${centreBack} x under-bust level ${underBust} / waist level ${waist}`,
    waist: mm`Fitting, taken from half the waist: 2 x (side seam ${side.waist} + front princess seam ${front.waist} + back princess seam ${back.waist}) + centre back seam ${centreBack}`,
  };
}
