import { describe, expect, it } from 'vitest';
import { SketchBuilder } from '../../../engine/constraints/sketch-builder.ts';
import { solve } from '../../../engine/constraints/solve.ts';
import * as say from '../../../engine/constraints/statements.ts';
import { curvatureAt, headingAt } from '../../../engine/geometry/evaluate.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { angleOf } from '../../../engine/geometry/vector.ts';
import { placed } from './answers.ts';

describe('statements', () => {
  it('place points: one on another, one on a line, one so far off in a direction', () => {
    const draw = new SketchBuilder();
    draw.fixed('nape', point(0, 0));
    draw.fixed('waist', point(0, 400));
    draw.point('top', point(5, -3));
    draw.point('level', point(20, 150));
    draw.point('shoulder', point(100, 40));
    draw.relation(
      say.isAt('top at the nape', 'top', 'nape'),
      say.liesOn('level on the centre back', 'level', ['nape', 'waist']),
      say.isApart('level below the nape', 'level', 'nape', 187),
      say.isApart('shoulder length', 'shoulder', 'nape', 130),
      say.isHeaded('shoulder slope', 'nape', 'shoulder', Math.PI / 9),
    );
    const answer = solve(draw.sketch());
    expect(answer.status).toBe('solved');
    expect(distance(placed(answer, 'top'), point(0, 0))).toBeLessThan(1e-6);
    expect(distance(placed(answer, 'level'), point(0, 187))).toBeLessThan(1e-6);
    const at = point(130 * Math.cos(Math.PI / 9), 130 * Math.sin(Math.PI / 9));
    expect(distance(placed(answer, 'shoulder'), at)).toBeLessThan(1e-6);
  });

  it('shape curves: two that go on into each other, one that turns one way throughout', () => {
    const draw = new SketchBuilder();
    draw.fixed('side neck', point(0, 0));
    draw.fixed('notch', point(60, 80));
    draw.fixed('underarm', point(150, 90));
    const upper = draw.curve('upper', 'side neck', 'notch', {});
    const lower = draw.curve('lower', 'notch', 'underarm', {});
    draw.relation(
      say.goesOn('armhole at its notch', upper, lower),
      say.keepsTurning('lower armhole is hollow', lower, -1),
    );
    draw.wish(...say.fair([upper, lower], 1));
    const answer = solve(draw.sketch());
    expect(answer.status).toBe('solved');
    const [before, after] = [upper, lower].map((name) => answer.curves[name]);
    if (!before || !after) throw new Error('no curves');
    expect(angleOf(headingAt(before, 1))).toBeCloseTo(angleOf(headingAt(after, 0)), 7);
    for (let t = 0; t <= 1; t += 0.05) expect(curvatureAt(after, t)).toBeLessThan(1e-7);
  });
});
