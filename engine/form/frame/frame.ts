import type { FormGiven, Unknowns } from '../unknowns.ts';
import { depthsOf } from './depths.ts';
import { crotchBelow, type FrameLevels, levelsOf } from './levels.ts';
import { neckAndShoulderOf } from './neck-and-shoulder.ts';
import { type Outlines, outlinesOf } from './outlines.ts';
import { type SectionHeights, sectionHeightsOf } from './section-heights.ts';
import { bladeOf, breastOf, type Swelling, seatOf } from './swellings.ts';

/**
 * The torso as profiles over `place`, which is the height wherever the sections lie level (below the underarm) and runs on
 * from there over the shoulder and up the neck, where sections rise from front to back and dip from the shoulders. mm; x to
 * the wearer's left, y up, z forward.
 */
export interface Frame extends Outlines, SectionHeights {
  /** The places of the levels. */
  readonly levels: FrameLevels;
  readonly crotch: number;
  readonly breast: Swelling;
  /** Seat and shoulder blades. */
  readonly behind: readonly Swelling[];
}

/** The frame of a body; everything about it follows from what is given and from the unknowns. */
export function frameOf(given: FormGiven, unknowns: Unknowns): Frame {
  const depths = depthsOf(unknowns);
  const shoulders = neckAndShoulderOf(given, unknowns, depths);
  const levels = levelsOf(given, unknowns, shoulders);
  const outlines = outlinesOf(unknowns, levels, depths, shoulders);
  const crotch = crotchBelow(levels.hip, given.crotchHeight);
  return {
    levels,
    crotch,
    ...outlines,
    ...sectionHeightsOf(levels, shoulders),
    breast: breastOf(unknowns, levels, outlines, shoulders),
    behind: [seatOf(unknowns, levels, outlines, crotch), bladeOf(unknowns, levels, outlines, shoulders)],
  };
}
