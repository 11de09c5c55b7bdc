import type { Mm } from '../../engine/pattern/quantity.ts';
import type { ByGore } from './by-gore.ts';
import type { SkirtTable } from './choices.ts';
import { skirtRules as rules } from './rules.ts';

/**
 * The hip of each gore for the waists it continues. The front half is a little wider than the back half, whatever
 * their waists are: so the side seam hangs straight from a waist that is balanced alike, and no cup moves it.
 */
export function goreHips(
  { mm }: Pick<SkirtTable, 'mm'>,
  halfHip: Mm,
  waist: ByGore<Mm>,
): { readonly front: Mm; readonly back: Mm; readonly gores: ByGore<Mm> } {
  const front = mm`Hip of the front half: (half hip ${halfHip} + ${rules.sideBalance}) / 2`;
  const back = mm`Hip of the back half: (half hip ${halfHip} - ${rules.sideBalance}) / 2`;
  const frontMore = mm`The front gores grow from waist to hip: front half hip ${front} - centre front waist ${waist['centre front']} - side front waist ${waist['side front']}`;
  const backMore = mm`The back gores grow from waist to hip: back half hip ${back} - side back waist ${waist['side back']} - centre back waist ${waist['centre back']}`;
  const gores = {
    'centre front': mm`Hip of the centre front gore: waist ${waist['centre front']} + ${rules.centreFrontHip} of the growth ${frontMore}; half of the gore`,
    'side front': mm`Hip of the side front gore: waist ${waist['side front']} + ${rules.sideFrontHip} of the growth ${frontMore}`,
    'side back': mm`Hip of the side back gore: waist ${waist['side back']} + ${rules.sideBackHip} of the growth ${backMore}`,
    'centre back': mm`Hip of the centre back gore: waist ${waist['centre back']} + ${rules.centreBackHip} of the growth ${backMore}; half of the gore`,
  };
  return { front, back, gores };
}
