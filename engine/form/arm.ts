import type { Body } from '../body/body.ts';
import { overElbow } from '../body/survey-knowledge.ts';
import type { LaidTape, Place } from './form.ts';
import type { Frame } from './frame/frame.ts';
import { AROUND, axisAt, type Limb, lengthOf, limbLoop, roundEnd } from './limbs.ts';
import { at, profileThrough } from './profile.ts';
import type { Rings } from './rings.ts';
import { COLUMNS } from './section.ts';

/** Girth of the straight elbow by that of the bent one, which is what is measured; judged. */
const straightElbow = 0.94;

/** The upper arm's share of the arm; judged from the survey's drawings. */
const upperShare = 0.54;

/** The elbow hangs bent forward by so much. */
const elbowBend = (12 * Math.PI) / 180;

/** An arm keeps this far from the body it hangs beside, mm. */
const clear = 4;

/** The most an arm is pushed aside by the body beneath it. */
const mostAside = (32 * Math.PI) / 180;

/** A polygon of so many sides round a limb is shorter than the circle through its corners. */
const inscribed = Math.PI / AROUND / Math.sin(Math.PI / AROUND);

/** The left arm, the tapes round it and its wrist bone. */
export interface LeftArm extends Limb {
  readonly tapes: readonly LaidTape[];
  readonly wrist: Place;
}

/**
 * The left arm from the shoulder to the wrist, hanging as close as the body lets it and then raised by `rise` degrees. Its
 * girths are those measured at the middle of the upper arm, at the elbow and at the wrist.
 */
export function armOf(size: Body['size'], frame: Frame, rings: Rings, rise: number): LeftArm {
  const { levels } = frame;
  const shoulder = at(frame.halfBreadth, levels.shoulder);
  const shoulderHeight = at(frame.sideHeight, levels.shoulder);
  const radius = (inscribed * size.upperArmGirth) / (2 * Math.PI);
  const elbow = (straightElbow * size.elbowGirth) / (2 * Math.PI);
  const wrist = (inscribed * size.wristGirth) / (2 * Math.PI);
  const length = size.outerArmLength / overElbow;
  // The axis begins where the arm's rounded top lies just under the shoulder point.
  const start = [
    Math.max(shoulder - 0.4 * radius, at(frame.halfBreadth, levels.underarm) + 0.1 * radius),
    shoulderHeight - 5,
    0.5 * at(frame.side, (levels.underarm + levels.shoulder) / 2) + 0.5 * at(frame.side, levels.shoulder),
  ] as const;
  const jointsAt = (aside: number) => {
    const way = (forward: number) =>
      [Math.sin(aside) * Math.cos(forward), -Math.cos(aside) * Math.cos(forward), Math.sin(forward)] as const;
    const [upper, lower] = [way(-0.02), way(elbowBend)];
    const [first, second] = [upperShare * length, (1 - upperShare) * length];
    const bent = start.map(
      (value, k) => value + first * (upper[k] as number),
    ) as unknown as Limb['joints'][number];
    const end = bent.map(
      (value, k) => value + second * (lower[k] as number),
    ) as unknown as Limb['joints'][number];
    return [start, bent, end] as const;
  };
  const round = profileThrough([
    ...roundEnd(1.15 * radius, 1.04 * radius),
    [1.15 * radius, 1.04 * radius],
    [0.5 * upperShare * length, radius],
    [upperShare * length, elbow],
    [(upperShare + 0.1) * length, 1.02 * elbow],
    [length - 14, wrist],
    ...roundEnd(12, wrist)
      .toReversed()
      .map(([place, half]) => [length - place, half] as const),
  ]);
  const hanging = hangs(frame, rings, start, round, length, size.scyeDepth);
  const joints = jointsAt(Math.min(mostAside, hanging) + (rise * Math.PI) / 180);
  // The muscle over the shoulder is deeper than it is broad.
  const deep = profileThrough(
    round.places.map((place, i) => [
      place,
      (round.values[i] as number) * (1 + 0.16 * Math.max(0, 1 - (place / (0.5 * upperShare * length)) ** 2)),
    ]),
  );
  const limb: Limb = { joints, halfBreadth: round, halfDepth: deep, roundness: 2, length: lengthOf(joints) };
  const wristAt = length - 14;
  const tape = (measurement: 'upperArmGirth' | 'wristGirth', along: number): LaidTape => {
    const points = limbLoop(limb, along);
    const length = points.reduce((sum, [x, y, z], i) => {
      const [a, b, c] = points.at(i - 1) as Place;
      return sum + Math.hypot(x - a, y - b, z - c);
    }, 0);
    return { measurement, closed: true, points, length };
  };
  return {
    ...limb,
    tapes: [tape('upperArmGirth', 0.5 * upperShare * length), tape('wristGirth', wristAt)],
    wrist: limbLoop(limb, wristAt)[AROUND / 4] ?? axisAt(limb, wristAt).at,
  };

  /** The least angle from straight down at which the arm, from well below the armpit on, is clear of the body. */
  function hangs(
    { levels: { underarm } }: Frame,
    { points }: Rings,
    [x, y]: readonly [number, number, number],
    half: Limb['halfBreadth'],
    reach: number,
    scye: number,
  ): number {
    let most = 0.02;
    for (let ring = 0; ring * 3 * COLUMNS < points.length; ring += 2) {
      const height = points[3 * COLUMNS * ring + 1] as number;
      if (height > underarm - 0.3 * scye || height < y - reach) continue;
      let widest = 0;
      for (let j = 0; j < COLUMNS; j++) widest = Math.max(widest, points[3 * (ring * COLUMNS + j)] as number);
      const down = y - height;
      most = Math.max(most, Math.atan((widest + clear + at(half, Math.min(down, reach - 15)) - x) / down));
    }
    return most;
  }
}
