import { expect, it } from 'vitest';
import { boundMisses } from '../../../../engine/constraints/compile/residuals.ts';
import { numbered } from '../../../../engine/constraints/compile/slots.ts';
import { SketchBuilder } from '../../../../engine/constraints/sketch-builder.ts';

it('what lies outside its bounds is told with its sign and in its own unit', () => {
  const draw = new SketchBuilder();
  draw.length('dart', 20, { min: 5, max: 30 });
  draw.angle('slope', 0.3, { min: 0.1, max: 0.5 });
  draw.length('free', 20);
  const slots = numbered(draw.sketch());
  expect(boundMisses(slots, Float64Array.of(32, 0.7, 900))).toEqual([
    { relation: 'bounds of dart', unit: 'mm', error: 2 },
    { relation: 'bounds of slope', unit: 'rad', error: expect.closeTo(0.2, 12) },
  ]);
  expect(boundMisses(slots, Float64Array.of(4, 0.4, -900))).toEqual([
    { relation: 'bounds of dart', unit: 'mm', error: -1 },
    { relation: 'bounds of slope', unit: 'rad', error: 0 },
  ]);
});
