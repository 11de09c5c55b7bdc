import type { Notion } from '../../engine/pattern/garment.ts';
import type { Girth } from '../../engine/pattern/seam.ts';
import type { SewingStep, State } from '../../engine/pattern/sewing.ts';
import { goreNames } from '../skirt/by-gore.ts';
import { amounts } from '../workroom-rules.ts';
import type { Additions } from './additions.ts';
import type { OpenedTable, OpeningStyling } from './choices.ts';
import { openingRules as rules } from './rules.ts';

/** What either kind of stay is called among the notions. */
export const stayNames = { tape: 'waist stay tape', ribbon: 'waist stay ribbon' } as const;

/** What keeps the waist from stretching, as long as the waist is finished, or as long as it is on the body and its ends. */
export function stayNotion(
  { mm, measured, laidOut, size, styling: { waistStay } }: OpenedTable,
  { body, ease }: Girth,
): readonly Notion[] {
  if (waistStay === 'none') return [];
  if (waistStay === 'tape') {
    const tape = measured('Waist stay tape', 'as long as the finished waist', body + ease, size.waistGirth);
    laidOut(tape, 2, () =>
      goreNames.map((name) => ({ on: name.endsWith('front') ? 'front' : 'back', name: `${name} waist` })),
    );
    const note = 'twill tape or selvedge, sewn into the waist seam';
    return [{ name: stayNames.tape, count: 1, length: tape.value, note }];
  }
  const { value } =
    mm`Waist stay ribbon: waist girth ${size.waistGirth} + 2 x ${rules.stayTurned}; its ends turned under`;
  const note = 'firm ribbon, and a hook and eye for it';
  return [{ name: stayNames.ribbon, count: 1, length: value, note }];
}

/** A tape is sewn in with the waist seam. */
export const stayAdded = ({ waistStay }: OpeningStyling): Additions =>
  waistStay === 'tape'
    ? {
        'waist, centre front': {
          uses: [stayNames.tape],
          how: [
            'Lay the tape over the seam on the side of the bodice, and stitch it to the allowance close to the seam, without stretching either.',
          ],
        },
      }
    : {};

/** A ribbon hangs inside once the zip is in, and takes the weight. */
export const stayRibbon = (needs: readonly State[]): SewingStep => ({
  title: 'Sew in the waist stay',
  needs,
  uses: [stayNames.ribbon],
  stitch: '200',
  seamClass: 7,
  how: [
    'Turn both ends of the ribbon under and sew a hook and an eye to them. Sew it to the allowance of the waist seam at the princess and side seams only, its ends free beside the zip: closed first, it takes the weight of the skirt off the zip.',
  ],
  amounts: amounts(rules.stayTurned),
});
