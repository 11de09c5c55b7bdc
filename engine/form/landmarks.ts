import type { LeftArm } from './arm.ts';
import type { LandmarkName, Place } from './form.ts';
import type { Frame } from './frame/frame.ts';
import { ringPoint } from './ring-cuts.ts';
import type { Rings } from './rings.ts';
import { HALF, SIDE } from './section.ts';
import { bustPoint, foldPlaces, waistBelowBust } from './tapes.ts';

/** The landmarks of a frame, all of them on its sections. */
export function landmarksOf(frame: Frame, rings: Rings, arm: LeftArm): Readonly<Record<LandmarkName, Place>> {
  const { index } = rings;
  const [back, front] = foldPlaces(frame, rings);
  const [, , crotchFront] = ringPoint(rings, 0, 0);
  const [, , crotchBack] = ringPoint(rings, 0, HALF);
  return {
    backNeckPoint: ringPoint(rings, index.neck, HALF),
    frontNeckPoint: ringPoint(rings, index.neck, 0),
    neckShoulderPoint: ringPoint(rings, index.neck, SIDE),
    shoulderPoint: ringPoint(rings, index.shoulder, SIDE),
    bustPoint: bustPoint(frame),
    underarmPoint: ringPoint(rings, index.underarm, SIDE),
    backFold: back,
    frontFold: front,
    waistCentreFront: ringPoint(rings, index.waist, 0),
    waistPrincess: waistBelowBust(frame, rings),
    waistSide: ringPoint(rings, index.waist, SIDE),
    waistCentreBack: ringPoint(rings, index.waist, HALF),
    hipCentreFront: ringPoint(rings, index.hip, 0),
    hipSide: ringPoint(rings, index.hip, SIDE),
    hipCentreBack: ringPoint(rings, index.hip, HALF),
    wristPoint: arm.wrist,
    crotch: [0, frame.crotch, (crotchFront + crotchBack) / 2],
  };
}
