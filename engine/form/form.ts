import type { MeasurementName } from '../body/body.ts';
import type { FormChoiceName } from './choices.ts';

/** mm; x to the wearer's left, y up from the floor, z forward. */
export type Place = readonly [x: number, y: number, z: number];

export const partNames = ['torso', 'left arm', 'right arm', 'left leg', 'right leg'] as const;

export type PartName = (typeof partNames)[number];

/** A stretch of a surface's points and triangles that belongs to one part: a closed surface of its own. */
export interface Part {
  readonly name: PartName;
  readonly firstPoint: number;
  readonly points: number;
  readonly firstTriangle: number;
  readonly triangles: number;
}

/**
 * The body's surface: closed parts, each free of crossings, wound so that normals point outward. Arms and legs begin inside
 * the torso; the body is what lies in any of them.
 */
export interface Surface {
  /** x, y, z of each point. */
  readonly points: Float64Array;
  /** Three points of each triangle, by number. */
  readonly triangles: Uint32Array;
  readonly parts: readonly Part[];
}

export const landmarkNames = [
  'backNeckPoint',
  'frontNeckPoint',
  'neckShoulderPoint',
  'shoulderPoint',
  'bustPoint',
  'underarmPoint',
  'backFold',
  'frontFold',
  'waistCentreFront',
  'waistPrincess',
  'waistSide',
  'waistCentreBack',
  'hipCentreFront',
  'hipSide',
  'hipCentreBack',
  'wristPoint',
  'crotch',
] as const;

/** Places on the body; of what she has twice, the left one: the right is its mirror image in x = 0. */
export type LandmarkName = (typeof landmarkNames)[number];

/** A tape on the form: where it lies, and what it reads. */
export interface Tape {
  readonly measurement: MeasurementName;
  /** It closes on itself: the last point joins the first. */
  readonly closed: boolean;
  readonly points: readonly Place[];
  readonly length: number;
}

/** What a tape reads beside what was given. */
export interface TapeReading {
  readonly measurement: MeasurementName;
  readonly given: number;
  readonly taken: number;
  /** Within what the form should give it back, mm. */
  readonly bound: number;
  readonly held: boolean;
}

/** Something that measurements leave open, and what it was taken to be. */
export interface Assumption {
  readonly name: FormChoiceName;
  readonly says: string;
  readonly value: number;
  readonly unit: 'mm' | 'degrees' | 'share';
  /** Where it lies for nine women in ten; nothing where it is purely as one likes. */
  readonly likely: readonly [least: number, most: number] | undefined;
  readonly how: 'chosen' | 'found likeliest' | 'assumed';
  readonly source: string;
}

/** A breadth or depth of the form beside what the survey expects of such a woman. */
export interface SectionReading {
  readonly name: string;
  readonly taken: number;
  readonly expected: number;
  /** One standard deviation. */
  readonly spread: number;
}

export interface FormReport {
  readonly tapes: readonly TapeReading[];
  readonly assumed: readonly Assumption[];
  readonly sections: readonly SectionReading[];
  /** Measurements that no tape is laid for, and why. */
  readonly notTaken: Readonly<Partial<Record<MeasurementName, string>>>;
}

/** Heights of the levels that a cutter knows, mm from the floor. */
export interface FormLevels {
  readonly underarm: number;
  readonly bust: number;
  readonly underBust: number;
  readonly waist: number;
  readonly hip: number;
  readonly crotch: number;
}

/** A body computed from its measurements: plain data. */
export interface Form {
  readonly body: string;
  readonly surface: Surface;
  readonly landmarks: Readonly<Record<LandmarkName, Place>>;
  readonly levels: FormLevels;
  readonly tapes: readonly Tape[];
  readonly report: FormReport;
}
