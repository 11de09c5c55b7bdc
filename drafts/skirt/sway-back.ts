import type { Mm } from '../../engine/pattern/quantity.ts';
import type { ByGore } from './by-gore.ts';
import type { SkirtTable } from './choices.ts';

/** Waist to hip along the seams behind. */
type Behind = Readonly<Record<'back princess' | 'centre back', Mm>>;

/**
 * The seams behind where the waist of the skirt drops for a hollow back: at the centre all that was pinned, at the side
 * seam nothing, between them in proportion along the waist. Only waist to hip gets shorter, so the hem still hangs
 * level. A fold above the waist is the bodice's: there the skirt stays, as it hangs from the same waist as before.
 */
export function droppedBehind({ mm, fitted }: SkirtTable, toHip: Behind, waist: ByGore<Mm>): Behind {
  const drop = fitted('sway back in skirt');
  if (drop.value === 0) return toHip;
  const [side, centre] = [waist['side back'], waist['centre back']];
  return {
    'back princess': mm`Fitting, waist to hip at the back princess seam: ${toHip['back princess']} - ${drop} x side back waist ${side} / (${side} + centre back waist ${centre}); in proportion along the waist`,
    'centre back': mm`Fitting, waist to hip at the centre back: ${toHip['centre back']} - ${drop}`,
  };
}
