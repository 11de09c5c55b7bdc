import { expectedBustPointWidth } from './bust.ts';
import { type Essential, estimated, type FoundSize, type FoundSizes } from './found.ts';
import { underBustForBust, upperChestForBust, upperChestForUnderBust } from './size-table.ts';

/** Girths and widths that the survey of 2012 did not take. */
interface Girths {
  readonly underBustGirth: FoundSize;
  readonly upperChestGirth: FoundSize;
  readonly bustPointWidth: FoundSize;
  readonly acrossFrontWidth: FoundSize;
  readonly armscyeGirth: FoundSize;
  readonly elbowGirth: FoundSize;
}

/** How far the under-bust girths of twelve women lie from the line, root mean square (ASRAN 2015, read), mm. */
export const underBustSpread = 15.5;

/**
 * Width across the front as a share of the upper chest girth: 32.4 cm at a bust of 88 and 37.2 cm at one of 104
 * (a textbook's table, from memory), where ASTM D5585-11e1 has upper chests of 88.4 and 101.3 cm. Taken on the
 * upper chest because a larger cup does not set the arms further apart.
 */
export const acrossFrontShare = 0.367;

/** Armscye girth as a share of the upper chest girth: 37.13 cm at a bust of 90.71 (NATICK/TR-89/044, means). */
export const armscyeShare = 371.3 / upperChestForBust.at(907.1);

/** An armscye goes round the top of the arm; it is larger than the arm by at least this, mm. */
const armscyeBeyondArm = 30;

/**
 * Girth of the bent elbow as a share of the mean of upper-arm and wrist girth: 24.8 cm where they are 28.3 and 15.9
 * (a size table, from memory).
 */
export const elbowShare = 1.12;

/** What the girths are estimated from, given or estimated before. */
type Before = FoundSizes & Essential & { readonly upperArmGirth: FoundSize; readonly wristGirth: FoundSize };

/** From published size tables and proportions. */
export function estimateGirths(given: Before): Girths {
  const bust = given.bustGirth.value;
  const underBust =
    given.underBustGirth ??
    estimated(
      underBustForBust.at(bust),
      'from bust girth: ASTM D5585-11e1 and the 1988 survey of 2,208 women',
      underBustSpread,
    );
  const upperChest =
    given.upperChestGirth ??
    estimated(
      (upperChestForBust.at(bust) + upperChestForUnderBust.at(underBust.value)) / 2,
      'from bust and under-bust girth: ASTM D5585-11e1; likely error judged',
      25,
    );
  return {
    underBustGirth: underBust,
    upperChestGirth: upperChest,
    bustPointWidth: estimated(expectedBustPointWidth(bust), 'from bust girth: common practice', 15),
    acrossFrontWidth: estimated(
      acrossFrontShare * upperChest.value,
      'from upper chest girth: textbook proportion',
      18,
    ),
    armscyeGirth: estimated(
      Math.max(armscyeShare * upperChest.value, given.upperArmGirth.value + armscyeBeyondArm),
      'from upper chest girth: proportion of the 1988 survey of 2,208 women',
      18,
    ),
    elbowGirth: estimated(
      (elbowShare * (given.upperArmGirth.value + given.wristGirth.value)) / 2,
      'from upper-arm and wrist girth: proportion of a size table (from memory)',
      12,
    ),
  };
}
