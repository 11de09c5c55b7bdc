/**
 * What a bust of a given cup does to a bodice where the front lengths were not measured. Lengths in mm, angles in
 * radians. Common practice, no source, except where named.
 */

/** Bust point to bust point: 19 cm at a bust of 92, growing more slowly than the bust. */
export const expectedBustPointWidth = (bustGirth: number): number =>
  clamp(190 + 0.13 * (bustGirth - 920), 145, 280);

/** The bust dart's angle at the bust point: 12.5 degrees in the middle of an A cup, 3.2 more with every cup. */
export const expectedDartAngle = (cupDifference: number): number =>
  (clamp(0.16 * cupDifference - 8.3, 6, 45) * Math.PI) / 180;

/** From here on (mm, a bust of about 103) the leg counts half: the same cup lies flatter on a larger frame. */
const legOfRegularFrame = 180;

/**
 * From the bust point to the side seam along the bust level, in a bodice with some ease. Counted in full on a large
 * frame, a full cup would ask for a dart that no armhole has room for.
 */
export function expectedDartLeg(bustGirth: number, bustPointWidth: number): number {
  const leg = Math.max(40, bustGirth / 4 - bustPointWidth / 2 + 25);
  return leg - Math.max(0, leg - legOfRegularFrame) / 2;
}

/** The front armhole hangs this much shorter than the back, for the shoulder leans forward (mm). */
export const frontHang = 20;

/** The underarm lies at least this far above the bust level, so that the bust girth can be measured there (mm). */
export const underarmAboveBust = 8;

/** A bust dart smaller than this is no dart, and one larger does not lie flat in one seam (degrees). */
export const [leastBustDart, greatestBustDart] = [2, 50];

/**
 * How much longer the front is than the back, from side neck to waist, over the bust: the side seam's dart, as
 * textbooks take it, less what the front armhole hangs shorter.
 */
export const expectedFrontExcess = (
  bustGirth: number,
  cupDifference: number,
  bustPointWidth: number,
): number =>
  2 * expectedDartLeg(bustGirth, bustPointWidth) * Math.sin(expectedDartAngle(cupDifference) / 2) - frontHang;

/**
 * What a seam over the bust must take up for the cloth to lie on it, radians: two cones, each a quarter turn about the
 * body, that meet at bust level. The upper one opens by the bust dart, which the front length asks for. The lower one
 * grows from under-bust to bust by half the cup difference within `depth` (mm, straight down): a cone that grows by x in
 * radius for each mm of height opens, over a quarter turn, by a quarter turn times x / sqrt(1 + x^2), the sine of its
 * slope. Construction; closed form of the developed cone.
 */
export function angleOverBust(dartAngle: number, cupDifference: number, depth: number): number {
  const quarter = Math.PI / 2;
  const growth = cupDifference / 2 / quarter / depth;
  return dartAngle + (quarter * growth) / Math.sqrt(1 + growth * growth);
}

const clamp = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);
