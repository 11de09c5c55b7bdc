import type { Choice, StylingOf } from '../engine/pattern/styling.ts';
import { commonPractice } from '../engine/sources.ts';

/** Seams with no reason to be wider or narrower: princess, waist, under-bust, strap ends, sleeve seam. */
export const seamAllowance = {
  kind: 'number',
  name: 'seamAllowance',
  unit: 'mm',
  default: 12.7,
  min: 6,
  max: 25,
  help: 'cloth beyond the stitching line of every seam that has no allowance of its own',
  source: 'half an inch on straight seams: course cards on ASTM D6193',
} as const satisfies Choice;

/** The side seams of bodice, skirt, lining and facings: where a dress is let out first. */
export const sideAllowance = {
  kind: 'number',
  name: 'sideAllowance',
  unit: 'mm',
  default: 19.05,
  min: 6,
  max: 40,
  help: 'cloth beyond the side seams, room to let out',
  source: 'three quarters of an inch at side and shoulder: Domestic Art, c. 1911',
} as const satisfies Choice;

/** The centre back seam: where a dress is let out next. */
export const centreBackAllowance = {
  kind: 'number',
  name: 'centreBackAllowance',
  unit: 'mm',
  default: 19.05,
  min: 6,
  max: 40,
  help: 'cloth beyond the centre back, room to let out',
  source: 'as the side seam',
} as const satisfies Choice;

/** Armholes, the caps set into them, and the long edges of the straps that run along them. */
export const armholeAllowance = {
  kind: 'number',
  name: 'armholeAllowance',
  unit: 'mm',
  default: 9.525,
  min: 6,
  max: 25,
  help: 'cloth beyond armhole and sleeve cap, narrow since they are hollow',
  source:
    'three eighths of an inch, between the quarter of Domestic Art, c. 1911, and the five eighths that the Association of Sewing and Design Professionals trims to a quarter',
} as const satisfies Choice;

/** Necklines that lining or facing are sewn to. */
export const necklineAllowance = {
  kind: 'number',
  name: 'necklineAllowance',
  unit: 'mm',
  default: 6.35,
  min: 5,
  max: 25,
  help: 'cloth beyond the neckline, narrow since it is enclosed',
  source:
    'a quarter of an inch at the neck: Domestic Art, c. 1911; in curved seams: course cards on ASTM D6193',
} as const satisfies Choice;

/** The seam that the zip is set into. */
export const zipAllowance = {
  kind: 'number',
  name: 'zipAllowance',
  unit: 'mm',
  default: 25,
  min: 12,
  max: 40,
  help: 'cloth beyond the seam that the zip is set into, never less than that seam has of its own',
  source: commonPractice,
} as const satisfies Choice;

/** The hem of the skirt. */
export const hemAllowance = {
  kind: 'number',
  name: 'hemAllowance',
  unit: 'mm',
  default: 40,
  min: 20,
  max: 50,
  help: 'cloth turned up at the hem of the skirt, room to let down; less for a very full one',
  source:
    'a skirt is turned up by an inch and a half: L. I. Baldt, 1916; 40 to 50 mm straight, 15 to 25 flared, from memory',
} as const satisfies Choice;

/** The hems of the sleeves. */
export const sleeveHemAllowance = {
  kind: 'number or auto',
  name: 'sleeveHemAllowance',
  unit: 'mm',
  default: 'auto',
  min: 10,
  max: 60,
  help: 'cloth turned up at the sleeve hem, never less than a casing takes with its elastic, room and turning',
  source: 'casing: Sewing & Craft Alliance, guideline 12.150',
} as const satisfies Choice;

/** The free edges of facings. */
export const facingAllowance = {
  kind: 'number',
  name: 'facingAllowance',
  unit: 'mm',
  default: 6.35,
  min: 3,
  max: 13,
  help: 'by how much the free edge of a facing is turned under',
  source: commonPractice,
} as const satisfies Choice;

type General = StylingOf<readonly [typeof seamAllowance, typeof sideAllowance, typeof centreBackAllowance]>;

/** What a garment that opens says of its zip. */
type Opening = StylingOf<readonly [typeof zipAllowance]> & { readonly opening: 'back' | 'side' };

/** Allowances by kind of edge, mm. Edges sewn to each other are of one kind, so that their ends lie flush. */
export interface Allowances {
  readonly seam: number;
  readonly side: number;
  readonly centreBack: number;
}

/** What panels and gores are cut with: wide at the sides and the centre back, and wide enough for a zip where it is. */
export function allowances(styling: General & Partial<Opening>): Allowances {
  const { seamAllowance: seam, sideAllowance: side, centreBackAllowance: centreBack } = styling;
  const forZip = (seamOfZip: Opening['opening']): number =>
    styling.opening === seamOfZip ? (styling.zipAllowance ?? 0) : 0;
  return {
    seam,
    side: Math.max(side, forZip('side')),
    centreBack: Math.max(centreBack, forZip('back')),
  };
}

type Curved = StylingOf<readonly [typeof armholeAllowance, typeof necklineAllowance]>;

/** The same with the narrow allowances of armhole and neckline. */
export interface BodiceAllowances extends Allowances {
  readonly armhole: number;
  readonly neckline: number;
}

/** What the panels of a bodice are cut with. */
export const bodiceAllowances = (styling: General & Curved & Partial<Opening>): BodiceAllowances => ({
  ...allowances(styling),
  armhole: styling.armholeAllowance,
  neckline: styling.necklineAllowance,
});
