import { describe, expect, it } from 'vitest';
import { type MeasurementName, measurementNames } from '../../engine/body/body.ts';
import { drafted, shippedBody } from './drafted.ts';

/** How far a measurement is moved: mm; the shoulder slope in degrees, which lower its point by about as much. */
const STEP = 5;
const SLOPE_STEP = 2;

/** Measurements that are asked for and move no line of any garment. One that comes to move a line leaves the list. */
const idle: readonly MeasurementName[] = [
  'upperChestGirth',
  'armscyeGirth',
  'wristGirth',
  'shoulderLength',
  'acrossBackWidth',
  'acrossFrontWidth',
];

/** Garments and choices that together use every measurement that any of them uses. */
const garments: readonly (readonly [garment: string, styling?: Readonly<Record<string, string>>])[] = [
  ['dress'],
  ['dress', { sleeve: 'long puff', skirtTo: 'ankle' }],
  ['bodice'],
  ['skirt'],
];

/** The leading lady with every measurement given, so that none is estimated from another. */
const { size } = drafted('dress', shippedBody('leading-lady')).body;
const given = Object.fromEntries(
  measurementNames.map((name) => [
    name,
    name === 'shoulderSlope' ? (size[name] * 180) / Math.PI : size[name],
  ]),
);

/** What is cut and what is bought for each garment: everything but words and bands. */
const made = (measurements: Readonly<Record<string, number>>): readonly string[] =>
  garments.map(([name, styling]) => {
    const { garment } = drafted(name, { name: 'leading lady', units: 'mm', ...measurements }, styling);
    return JSON.stringify([garment.pieces, garment.notions]);
  });

const asMeasured = made(given);

const moved = (name: MeasurementName): readonly string[] =>
  made({ ...given, [name]: (given[name] ?? 0) + (name === 'shoulderSlope' ? SLOPE_STEP : STEP) });

describe('a measurement that is asked for', () => {
  it.each(measurementNames.filter((name) => !idle.includes(name)))(
    'moves a line of some garment: %s',
    (name) => {
      expect(moved(name)).not.toEqual(asMeasured);
    },
  );

  it.each([...idle])('stays on the list of the idle only while it moves nothing: %s', (name) => {
    expect(moved(name)).toEqual(asMeasured);
  });
});
