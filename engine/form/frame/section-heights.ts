import { type Profile, profileThrough } from '../profile.ts';
import { type FrameLevels, heldBetween, partWay } from './levels.ts';
import type { NeckAndShoulder } from './neck-and-shoulder.ts';

/** The heights of a section at its front, back and sides: above the underarm sections no longer lie level; mm. */
export interface SectionHeights {
  readonly frontHeight: Profile;
  readonly backHeight: Profile;
  readonly sideHeight: Profile;
}

/** How much of the way from the front neck point to the underarm level the shoulder's section lies down the front and back. */
const shoulderDown = { front: 0.45, back: 0.5 } as const;

/** The heights of the sections of a torso with this neck and these shoulders. */
export function sectionHeightsOf(
  levels: FrameLevels,
  { neckHeight, frontNeckHeight, sideNeckHeight, shoulderHeight }: NeckAndShoulder,
): SectionHeights {
  const { underarm, shoulder, neck, top } = levels;
  const { ridge, middle } = heldBetween(levels);
  const sideHeight = profileThrough(
    [
      [underarm, underarm],
      [shoulder, shoulderHeight],
      // The line of the shoulder is a little hollow; the tape lies straight over it.
      ...ridge.map(
        ({ place, share }, i) =>
          [place, partWay(sideNeckHeight, shoulderHeight, share) - (i === 1 ? 2.5 : 1.8)] as const,
      ),
      [neck, sideNeckHeight],
      [middle, sideNeckHeight + 40],
      [top, sideNeckHeight + 78],
    ],
    { first: 1 },
  );
  const frontHeight = profileThrough(
    [
      [underarm, underarm],
      [shoulder, partWay(frontNeckHeight, underarm, shoulderDown.front)],
      [neck, frontNeckHeight],
      [middle, frontNeckHeight + 68],
      [top, frontNeckHeight + 122],
    ],
    { first: 1 },
  );
  const backHeight = profileThrough(
    [
      [underarm, underarm],
      [shoulder, partWay(neckHeight, underarm, shoulderDown.back)],
      [neck, neckHeight],
      [middle, neckHeight + 34],
      [top, neckHeight + 66],
    ],
    { first: 1 },
  );
  return { frontHeight, backHeight, sideHeight };
}
