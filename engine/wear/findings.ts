import type { Garment } from '../pattern/garment.ts';
import { type Ease, easeOf } from './ease-as-worn.ts';
import { type Gap, gapsOf } from './gaps.ts';
import type { Stand } from './stand.ts';
import { pressureOf, type Strain, strainOf } from './strain-as-worn.ts';
import {
  type BustPointOff,
  bustPointOf,
  type HemHeight,
  hemOf,
  type SideAsWorn,
  sideOf,
  type WaistAt,
  waistLevels,
} from './where-seams-lie.ts';
import type { Worn } from './worn.ts';

/** What became of the waist seam when both arms were raised, mm and degrees from where they hang. */
export interface ArmsRaised {
  readonly to: number;
  /** How much higher the waist seam then lay, place by place. */
  readonly lift: readonly { readonly at: string; readonly by: number }[];
  /** How far they may be raised before it lies higher by 10 mm anywhere; as far as they were raised, where it never did. */
  readonly free: number;
}

/** What is found on a worn garment, in a fitting's terms; mm and degrees, the wearer's left where there are two. */
export interface Findings {
  readonly ease: readonly Ease[];
  readonly waistLevel: readonly WaistAt[];
  readonly bustPoint: BustPointOff | undefined;
  readonly side: SideAsWorn | undefined;
  readonly strain: readonly Strain[];
  /** The greatest pressure of the cloth on the body, kPa. */
  readonly pressure: number;
  readonly gaps: readonly Gap[];
  readonly hem?: HemHeight | undefined;
  /** None where there are no sleeves, or no arm was raised. */
  readonly arms?: ArmsRaised | undefined;
}

/** Everything that is found on a worn garment. */
export const findingsOf = (garment: Garment, worn: Worn, stand: Stand): Findings => ({
  ease: easeOf(garment, worn, stand),
  waistLevel: waistLevels(garment, worn, stand),
  bustPoint: bustPointOf(garment, worn, stand),
  side: sideOf(worn, stand),
  strain: strainOf(worn),
  pressure: pressureOf(worn),
  gaps: gapsOf(worn, stand),
  hem: hemOf(garment, worn),
});
