/**
 * Every numerical tolerance of the project, each derived from one base length, with its reason and what happens
 * when it is made larger or smaller. Lengths in mm, angles in radians.
 */

/**
 * The base: a millionth of a millimetre. A garment sums some hundreds of lengths, and their errors together must
 * stay far below the 0.05 mm a seam is walked to. Larger: errors of computing could pass for errors of drafting.
 * Smaller: the rounding of doubles (about 1e-13 mm at 1 m) comes near, and solving takes longer for nothing.
 */
const BASE = 1e-6;

/**
 * Below this, differences of coordinates are rounding: doubles of a few metres in mm are exact to about 1e-12.
 * Larger: fits to very small tolerances would stop early. Smaller: they would chase noise and never end.
 */
export const ROUNDING = BASE / 100_000;

/**
 * Sines, cosines, ratios near 1 and products of unit vectors are exact to about 1e-16, sums of some to this. Larger: a turn
 * of a few turns of a screw would pass for none. Smaller: a quarter circle would be taken for a little more than one.
 */
export const UNIT_ROUNDING = BASE / 1_000_000;

/**
 * Turns (radians) and scales less far than this from none and from 1 are those of rounding in a file or a sum. Larger: a
 * piece turned a little would be left as it lies. Smaller: what is upright would be turned by a hair, and written anew.
 */
export const NO_TURN = BASE / 1_000;

/**
 * A stretch of a curve's parameter, from 0 to 1, shorter than this holds one place or none: doubles cannot tell. Larger: two
 * roots would pass for one. Smaller: halving would never end.
 */
export const NARROWEST = BASE / 10_000_000;

/** Newton's steps on a parameter end when one is shorter than this: the next changes nothing. Larger: a digit is lost. */
export const LAST_STEP = BASE / 1_000_000_000;

/**
 * Lengths and heights of one form in space (mm), and its triangles (mm2), that differ by less are the same: some hundred sums
 * of doubles. Larger: a form would be cut open beside its middle. Smaller: its two halves would be divided differently.
 */
export const IN_SPACE = BASE / 1_000;

/**
 * A parameter this near to an end of a curve is the end: what lies between is shorter than any line means. Larger: a cusp
 * beside an end would be passed over. Smaller: pieces without length would be fitted.
 */
export const BESIDE_END = BASE / 1_000;

/** Arc lengths are this exact. Larger or smaller: see the base. */
export const ARC_LENGTH = BASE;

/** A hard relation between lengths holds to this. Smaller than the arc lengths it compares would be a pretence. */
export const RELATION = BASE;

/**
 * A hard relation between angles holds to this: it moves the end of a handle of 100 mm by one base length.
 * Larger: a long edge would leave its place by more than its length may. Smaller: below what lengths can show.
 */
export const RELATION_ANGLE = BASE / 100;

/**
 * Two places nearer than this are the same place: ten times what two solved relations can put between them.
 * Larger: a real sliver of 0.01 mm would be closed unseen. Smaller: solved corners would count as open.
 */
export const COINCIDENCE = 10 * BASE;

/**
 * A curve that stays this near its chord counts as straight, and its curvature's sign as meaningless.
 * Larger: a shallow hollow would go unnoticed. Smaller: rounding in a straight edge would count as inflections.
 */
export const STRAIGHTNESS = 1_000 * BASE;

/**
 * A stretch of a cutting line shorter than this is left out and its neighbours meet: rounding in a file
 * could turn it round, so that the line would cross itself. Larger: corners would move by what a check sees.
 */
export const SLIVER = 1_000 * BASE;

/**
 * Two places found on a line of a file that differ by less are one: other programs write three digits. Larger: a double
 * notch at the very end would be taken for one beside it. Smaller: a file saved again would have its notches elsewhere.
 */
export const THREE_DIGITS = 1_000 * BASE;

/**
 * Directions that differ by less than this at a joint run on smoothly (G1): ten thousand times the hard angle,
 * a step of 0.01 mm at the end of 100 mm. Larger: a corner of a tenth of a degree would pass as smooth and lose
 * its mitre. Smaller: an edge read back from a file that another program rounded would have a corner at every joint.
 */
export const SMOOTH_ANGLE = 100 * BASE;

/**
 * A parallel curve is refitted to this: a fifth of a fine pencil line, well inside the 0.05 mm the cut line is
 * checked to. Larger: the check of the cut line has no margin. Smaller: more curves than anyone can edit.
 */
export const PARALLEL = 20_000 * BASE;

/**
 * Curves are flattened to this for questions about areas (does it cross, contain, overlap?): half of `PARALLEL`.
 * Larger: nearly touching lines would seem to cross. Smaller: polygons of thousands of corners, slow to compare.
 */
export const FLATNESS = 10_000 * BASE;

/**
 * A place nearer than this to where it was counts as not moved when one drawing is laid on another. Larger: what
 * stayed is smeared by what moved. Smaller: the search settles more slowly, for nothing a pencil could show.
 */
export const LAID_ON = 10_000 * BASE;

/**
 * Two sides of a seam may differ by this when walked: no one can mark, cut or see it. Larger: misfits add up
 * along an edge. Smaller: promises more than printing on paper can keep.
 */
export const WALK = 50_000 * BASE;

/**
 * What a sheet claims may differ by this from what its draft claims again for the same body: mm, degrees, shares. Larger:
 * a figure could be shifted unseen. Smaller: a waist with two answers 0.003 mm apart would be told, should another processor
 * round it to the other.
 */
export const CLAIM = 10_000 * BASE;

/** What is read back from a written file may differ by this; other programs write three digits, printers do worse. */
export const FILE = 100_000 * BASE;

/**
 * A corner inside a curve of a written file, radians: three digits move a handle of 1 mm by as much, and 0.06 degrees are not
 * seen. Larger: a nudged handle passes for a smooth curve. Smaller: a file that another program saved again is refused.
 */
export const FILE_KINK = 1e-3;

/** A finished girth may differ by this from body plus ease. It sums up to ten pieces walked to `WALK`. */
export const GIRTH = 500_000 * BASE;

/**
 * The edge of a hem that is turned up may be so much longer or shorter, between two seams, than the cloth it comes to lie
 * on: woven cloth takes it up unseen. Larger: fullness that has to be eased in by a thread. Smaller: hems that bend
 * unevenly, whose ends are shaped as if they went on as a circle, would be refused.
 */
export const HEM_EASE = 500_000 * BASE;

/**
 * The corner that may be left across a sewn seam, half a degree: 0.09 mm at the end of 10 mm of seam, just
 * below what is seen in cloth. Larger: a visible point in a neckline or a hem. Smaller: no difference in cloth.
 */
export const CORNER = (0.5 * Math.PI) / 180;
