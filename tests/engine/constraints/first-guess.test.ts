import { describe, expect, it } from 'vitest';
import { firstGuess, usualFrom } from '../../../engine/constraints/first-guess.ts';
import { SketchBuilder } from '../../../engine/constraints/sketch-builder.ts';
import { point } from '../../../engine/geometry/point.ts';

function arch() {
  const sketch = new SketchBuilder();
  sketch.fixed('left', point(0, 0));
  sketch.point('right', point(90, 0), 'x');
  sketch.curve('arch', 'left', 'right', { start: { angle: -1 }, end: { angle: 1 } });
  return sketch.sketch();
}

describe('a first guess', () => {
  it('moves a point along its free axes only', () => {
    const { points } = firstGuess(arch(), usualFrom({ 'left x': 5, 'right x': 10, 'right y': 7 }));
    expect(points.get('left')?.at).toEqual(point(0, 0));
    expect(points.get('right')?.at).toEqual(point(100, 0));
  });

  it('turns an angle, and gives a handle its share of the chord as that lies then', () => {
    const { scalars } = firstGuess(
      arch(),
      usualFrom({
        'right x': 10,
        'arch start angle': 30,
        'arch start length': 0.4,
      }),
    );
    expect(scalars.get('arch start angle')?.at).toBeCloseTo(-1 + Math.PI / 6, 12);
    expect(scalars.get('arch start length')?.at).toBeCloseTo(40, 12);
  });

  it('keeps within the bounds, and leaves what is not named where it was', () => {
    const before = arch();
    const { scalars, points } = firstGuess(before, usualFrom({ 'arch end length': 2 }));
    expect(scalars.get('arch end length')?.at).toBe(before.scalars.get('arch end length')?.max);
    expect(scalars.get('arch start length')?.at).toBe(30);
    expect(points).toEqual(before.points);
  });
});
