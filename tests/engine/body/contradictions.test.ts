import { describe, expect, it } from 'vitest';
import type { MeasurementName } from '../../../engine/body/body.ts';
import { contradictions } from '../../../engine/body/contradictions.ts';

const regular: Readonly<Partial<Record<MeasurementName, number>>> = {
  bustGirth: 920,
  underBustGirth: 750,
  upperChestGirth: 870,
  waistGirth: 740,
  hipGirth: 990,
  neckBaseGirth: 370,
  upperArmGirth: 290,
  armscyeGirth: 400,
  elbowGirth: 250,
  wristGirth: 155,
  shoulderLength: 130,
  outerArmLength: 595,
  backNeckPointToWaist: 405,
  neckShoulderPointToBustPoint: 275,
  neckShoulderPointToWaist: 465,
  bustPointWidth: 190,
  acrossBackWidth: 350,
  acrossFrontWidth: 330,
  scyeDepth: 187,
  waistToHip: 205,
  waistHeight: 1040,
  stature: 1670,
};

describe('measurements that contradict each other', () => {
  it('are none in a regular body', () => {
    expect(contradictions(regular, 'mm')).toEqual([]);
  });

  it('are none where only one of the two was measured', () => {
    expect(contradictions({ scyeDepth: 400 }, 'mm')).toEqual([]);
  });

  it.each<[MeasurementName, number, string]>([
    ['underBustGirth', 1000, 'bust girth'],
    ['waistGirth', 1500, 'hip girth'],
    ['hipGirth', 480, 'bust girth'],
    ['neckBaseGirth', 700, 'bust girth'],
    ['upperArmGirth', 600, 'bust girth'],
    ['armscyeGirth', 280, 'upper-arm girth'],
    ['elbowGirth', 440, 'upper-arm girth'],
    ['wristGirth', 310, 'upper-arm girth'],
    ['wristGirth', 260, 'elbow girth'],
    ['outerArmLength', 840, 'stature'],
    ['bustPointWidth', 330, 'bust girth'],
    ['acrossBackWidth', 600, 'bust girth'],
    ['shoulderLength', 240, 'across back width'],
    ['scyeDepth', 390, 'back neck point to waist'],
    ['neckShoulderPointToWaist', 290, 'back neck point to waist'],
    ['neckShoulderPointToBustPoint', 470, 'neck shoulder point to waist'],
    ['backNeckPointToWaist', 720, 'stature'],
    ['waistHeight', 1500, 'stature'],
    ['waistToHip', 600, 'waist height'],
  ])('refuse a %s of %d mm and name the %s', (name, value, other) => {
    const issues = contradictions({ ...regular, [name]: value }, 'mm');
    const found = issues.find(({ path, message }) => path === name && message.includes(other));
    expect(found).toMatchObject({ code: 'measurements-contradict', severity: 'error', value });
    expect(found?.limits?.unit).toBe('mm');
  });

  it('refuse a bust level above the underarm, and name all that make it', () => {
    const [issue, ...others] = contradictions({ ...regular, neckShoulderPointToBustPoint: 200 }, 'mm');
    expect(others).toEqual([]);
    expect(issue?.path).toBe('neckShoulderPointToBustPoint');
    expect(issue?.message).toContain('neck shoulder point to waist of 465 mm');
    expect(issue?.message).toContain('back neck point to waist of 405 mm');
    expect(issue?.message).toContain('scye depth of 187 mm');
    // 465 - 405 + 0.9 x 187 = 228.3
    expect(issue?.limits?.min).toBeCloseTo(228.3, 6);
  });

  it('say a bust point below the waist once', () => {
    const issues = contradictions({ ...regular, neckShoulderPointToBustPoint: 480 }, 'mm');
    expect(issues.map(({ path }) => path)).toEqual(['neckShoulderPointToBustPoint']);
  });

  it('are written in the unit of the file', () => {
    const [issue] = contradictions({ ...regular, underBustGirth: 1016 }, 'in');
    expect(issue?.value).toBe(40);
    expect(issue?.limits?.unit).toBe('in');
    expect(issue?.message).toContain('40 in');
  });
});
