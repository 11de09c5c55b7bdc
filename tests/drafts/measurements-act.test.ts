import { expect, test } from 'vitest';
import { garments } from '../../drafts/garments.ts';
import { measurementNames } from '../../engine/body/body.ts';

test('every measurement that is asked for shapes some garment', () => {
  const shaping = new Set(garments.flatMap(({ shapedBy }) => shapedBy));
  expect(measurementNames.filter((name) => !shaping.has(name))).toEqual([]);
});
