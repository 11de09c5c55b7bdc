import type { Mm } from '../../engine/pattern/quantity.ts';
import { sayPinned, sayTaken } from '../fitting/say-taken.ts';
import { type ByGore, byGore } from './by-gore.ts';
import type { SkirtTable } from './choices.ts';

/** What a fitting took from the gores at one level, half gores at the centres, and from the whole girth. */
export interface TakenFromGores {
  readonly gores: ByGore<Mm>;
  readonly girth: Mm;
}

/**
 * What a fitting took from each gore at the waist or the hip, for the seams run on from the bodice; nothing where it
 * pinned nothing there.
 */
export function takenFromGores(
  { mm, takenIn }: Pick<SkirtTable, 'mm' | 'takenIn'>,
  level: 'waist' | 'hip',
): TakenFromGores | undefined {
  const front = takenIn('front princess seam', level);
  const side = takenIn('side seam', level);
  const back = takenIn('back princess seam', level);
  const centre = takenIn('centre back seam', level);
  if ([front, side, back, centre].every(({ value }) => value === 0)) return undefined;
  return {
    gores: {
      'centre front': front,
      'side front': mm`Fitting, taken from the side front gore at the ${level}: front princess seam ${front} + side seam ${side}`,
      'side back': mm`Fitting, taken from the side back gore at the ${level}: side seam ${side} + back princess seam ${back}`,
      'centre back': mm`Fitting, taken from the centre back gore at the ${level}: back princess seam ${back} + centre back seam ${centre}`,
    },
    girth: mm`Fitting, taken from the ${level}: 4 x (front princess seam ${front} + side seam ${side} + back princess seam ${back}) + 2 x centre back seam ${centre}`,
  };
}

/** The gores without what a fitting took from them at a level. */
export const takenIn = (
  { mm }: Pick<SkirtTable, 'mm'>,
  level: 'waist' | 'hip',
  gores: ByGore<Mm>,
  taken: TakenFromGores | undefined,
): ByGore<Mm> =>
  taken
    ? byGore((name) => mm`Fitting, ${level} of the ${name} gore: ${gores[name]} - ${taken.gores[name]}`)
    : gores;

/** Tells what was pinned at a level, and what its finished girth becomes, which it returns. */
export function sayTakenIn(
  table: Pick<SkirtTable, 'body' | 'mm' | 'say' | 'remark'>,
  level: 'waist' | 'hip',
  drafted: Mm,
  body: Mm,
  taken: TakenFromGores | undefined,
): Mm {
  sayPinned(table, [level]);
  return taken ? sayTaken(table, level, drafted, body, taken.girth) : drafted;
}
