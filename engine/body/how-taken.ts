import type { MeasurementName } from './body.ts';

/** How each measurement is taken (ISO 8559-1:2017, paraphrased; clauses not read are from memory). */
export const howTaken: Readonly<Record<MeasurementName, string>> = {
  bustGirth: 'Horizontal, at the level of the bust points, over the bra she will wear.',
  underBustGirth: 'Horizontal, directly below the breasts.',
  upperChestGirth: 'High under the armpits and above the breasts, as horizontal as it goes.',
  waistGirth: 'Horizontal, midway between the lowest rib and the top of the hip bone.',
  hipGirth: 'Horizontal, where the seat stands out most.',
  neckBaseGirth: 'Round the base of the neck, over the back neck point and the front neck point.',
  upperArmGirth: 'Midway between shoulder point and elbow, the arm hanging loose.',
  armscyeGirth: 'Over the shoulder point and through the armpit, the arm hanging.',
  elbowGirth: 'Round the elbow and over its point, the arm bent to a right angle.',
  wristGirth: 'Over the wrist bone.',
  shoulderLength: 'From the neck shoulder point to the shoulder point.',
  shoulderSlope: 'How far the shoulder falls below the horizontal. Always in degrees.',
  outerArmLength:
    'From the shoulder point over the elbow to the wrist bone, the fist on the hip and the arm bent to a right angle.',
  backNeckPointToWaist: 'From the bone at the back of the neck down the spine to the waist.',
  neckShoulderPointToBustPoint: 'From the neck shoulder point to the bust point.',
  neckShoulderPointToWaist: 'From the neck shoulder point over the bust point to the waist.',
  bustPointWidth: 'Straight from bust point to bust point.',
  acrossBackWidth: 'Between the folds of the arms at the back, half-way down to the underarm.',
  acrossFrontWidth: 'Between the folds of the arms in front, half-way down to the underarm.',
  scyeDepth: 'From the bone at the back of the neck down to the level of the underarm.',
  waistToHip: 'Along the side, from the waist to the level of the hip girth.',
  waistHeight: 'From the floor to the waist.',
  stature: 'From the floor to the crown, without shoes.',
};

const [round, limb, along, chest] = [
  'Hold it close all round, neither loose nor pressed in, while she breathes quietly.',
  'Hold it close, without pressing in.',
  'Lay it flat along the body, and do not pull.',
  'Hold it taut from the neck to the bust point: it is not pressed in above the breast',
];

/** How the tape is held for each of them (a body is measured without constricting it: ISO 8559-1:2017, from memory; else common practice). */
export const howHeld: Readonly<Record<MeasurementName, string>> = {
  bustGirth: round,
  underBustGirth: round,
  upperChestGirth: round,
  waistGirth: round,
  hipGirth: round,
  neckBaseGirth: 'Stand it on its edge, close, without pressing in.',
  upperArmGirth: limb,
  armscyeGirth: limb,
  elbowGirth: limb,
  wristGirth: limb,
  shoulderLength: along,
  shoulderSlope: 'It needs no tape: lay a straight edge on the shoulder, and read its angle against a level.',
  outerArmLength: along,
  backNeckPointToWaist: along,
  neckShoulderPointToBustPoint: `${chest}.`,
  neckShoulderPointToWaist: `${chest}, and straight from there to the waist, not pressed in below it.`,
  bustPointWidth: 'Hold it taut through the air: it does not sink in between.',
  acrossBackWidth: along,
  acrossFrontWidth: along,
  scyeDepth: along,
  waistToHip: along,
  waistHeight: 'Let it hang plumb, and do not follow the body.',
  stature: 'She stands against a wall; lay a book flat on her head, and read plumb below it.',
};
