import { changeWords, type FittedLevel, type FittingChange } from '../../engine/body/fitting.ts';
import type { Issue } from '../../engine/issue.ts';
import type { Piece } from '../../engine/pattern/piece.ts';

/** Notes for the changes of a fitting that a garment has no piece for: a skirt on its own knows nothing of a strap. */
export const withoutPlace = (changes: readonly FittingChange[], pieces: readonly Piece[]): readonly Issue[] =>
  changes.flatMap((change) => {
    const places = placesFor(change);
    return pieces.some(({ name }) => places.includes(name))
      ? []
      : [
          {
            code: 'fitting-without-place',
            severity: 'note',
            path: 'fitting',
            message: `"${changeWords(change)}" changes nothing here: this garment has no ${places[0]}.`,
          },
        ];
  });

/** The pieces a change shows on, the first of them in any garment that has it. */
function placesFor(change: FittingChange): readonly string[] {
  if (change.kind === 'more upper arm') return ['sleeve'];
  if (change.kind === 'sway back in skirt') return ['skirt centre back'];
  if (change.kind === 'shorten strap' || change.kind === 'lengthen strap') return ['front strap'];
  if (!('seam' in change)) return ['side front'];
  return placesAt[change.level];
}

const placesAt: Readonly<Record<FittedLevel, readonly string[]>> = {
  bust: ['side front'],
  'under-bust': ['side front'],
  waist: ['side front', 'skirt side front'],
  hip: ['skirt side front'],
};
