import type { BodicePlan } from './bodice.ts';

/**
 * Why a figure usually lies outside its band. The bands are those of a fitted dress with sleeves on a regular adult: a style
 * that departs from it is the reason on every body, and only what is left is this body's.
 */
export const thisBody = 'this body differs from the regular adult that the band is for';

/** What the reasons are told from: the style, and whether sleeves are set in. */
type Drawn = Pick<BodicePlan, 'lines' | 'foundation'>;

const sleeveless = 'without sleeves the underarm lies higher, and the armhole is shorter';

/** Why the armhole lies nearer or further, or is longer or shorter, than usual. */
export function armholeOutside({ lines: { style }, foundation }: Drawn): string {
  if (style.shoulder === 'strap')
    return 'the armhole runs along a strap, which lies nearer to the neck than the shoulder point of a plain bodice';
  return foundation.sleeves ? thisBody : sleeveless;
}

/** Why the front is not as wide as usual at the middle of its armhole. */
export const acrossFrontOutside = (drawn: Drawn): string =>
  drawn.lines.style.shoulder === 'strap'
    ? armholeOutside(drawn)
    : 'the middle of the armhole lies below the fold of the arm, where the armhole already turns out: more the longer it is';

/** Why the underarm lies higher or lower than usual. */
export const underarmOutside = ({ foundation }: Drawn): string =>
  foundation.sleeves ? thisBody : sleeveless;

/** Why the bust dart is wider or narrower than usual. */
export const bustDartOutside = ({ foundation }: Drawn): string =>
  foundation.held
    ? 'it also takes in what would gape at an armhole without sleeves, or the measured front length asks for it'
    : 'the measured front length asks for it, or the cup is outside A to E';

/** Why the front princess seam takes in more or less than usual at the waist. */
export const princessOutside =
  'all that the breast asks for is taken in here, so that no cup moves the side seam: more the fuller the bust, less the smaller';

/** Why the princess edge is fuller or flatter than usual, between its ends. */
export const beyondChordOutside = ({ lines: { style } }: Drawn): string =>
  style.princess.front === 'neckline'
    ? 'the edge follows the breast down to where it ends, and stands out further the fuller that is'
    : `the edge goes on up to the ${style.princess.front}, and so stands out further between its ends than one from a neckline`;

/** Why more or less is sewn in over the bust than is asked for. */
export const sewnInOutside = ({ lines: { style } }: Drawn): string =>
  style.front === 'gathered'
    ? 'the cloth has more or less room for the bust than cup and front length ask for'
    : 'both edges run smoothly from bust to ribs, and so are steeper halfway than the straight cones that this is reckoned from: more where the cup is full. Try the trial bodice on, and let the seam out under the bust where it stands off';

/** Why the neckline is not as high above the bust as usual. */
export function necklineOutside({ lines: { style }, foundation }: Drawn): string {
  if (style.neckline === 'natural') return 'a trial bodice goes up to the base of the neck';
  if (foundation.held) return 'on straps without sleeves it lies as low as the raised underarm lets it';
  return thisBody;
}
