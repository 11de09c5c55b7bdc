import { describe, expect, it } from 'vitest';
import { limitsMet } from '../../../engine/constraints/limits-met.ts';
import { SketchBuilder, scalarOf } from '../../../engine/constraints/sketch-builder.ts';
import { solve } from '../../../engine/constraints/solve.ts';

/** A curve over 100 mm that starts at an angle of 0.5, and ends at one that is wished for, kept hollow. */
function hollowCurve(wished: number): readonly string[] {
  const draw = new SketchBuilder();
  draw.fixed('a', { x: 0, y: 0 });
  draw.fixed('b', { x: 100, y: 0 });
  const curve = draw.curve('edge', 'a', 'b', { start: { angle: -0.5 }, end: { angle: 0.5 } });
  draw.relation({ kind: 'no inflection', name: 'hollow', curve, turns: 1 });
  const wish = (name: string, value: number) =>
    draw.wish({ kind: 'near', name, terms: [scalarOf(name)], value, weight: 1e4 });
  wish('edge start angle', -0.5);
  wish('edge end angle', wished);
  const sketch = draw.sketch();
  const solution = solve(sketch);
  expect(solution.status).toBe('solved');
  return limitsMet(sketch, solution);
}

describe('what a solution rests on', () => {
  it('is nothing while a curve is hollow by itself', () => {
    expect(hollowCurve(0.5)).toEqual([]);
  });

  it('is the relation of which one residual is spent, though its others have room', () => {
    expect(hollowCurve(-0.5)).toContain('hollow');
  });

  it('is no least radius while the tightest place of a curve is wider', () => {
    const rests = (mm: number): readonly string[] => {
      const draw = new SketchBuilder();
      draw.fixed('a', { x: 0, y: 0 });
      draw.fixed('b', { x: 100, y: 0 });
      const curve = draw.curve('edge', 'a', 'b', { start: { angle: -0.5 }, end: { angle: 0.5 } });
      draw.relation({ kind: 'least radius', name: 'room', curve, mm });
      draw.wish({
        kind: 'near',
        name: 'hollow',
        terms: [scalarOf('edge start angle')],
        value: -0.8,
        weight: 1e4,
      });
      draw.wish({
        kind: 'near',
        name: 'hollower',
        terms: [scalarOf('edge end angle')],
        value: 0.8,
        weight: 1e4,
      });
      const sketch = draw.sketch();
      const solution = solve(sketch);
      expect(solution.status).toBe('solved');
      return limitsMet(sketch, solution);
    };
    expect(rests(20)).toEqual([]);
    expect(rests(110)).toEqual(['room']);
  });

  it('is the bound of a length that would go on, and not that of one that is known', () => {
    const draw = new SketchBuilder();
    draw.length('dart', 20, { min: 5, max: 30 });
    draw.length('other', 20, { min: 5, max: 30 });
    draw.fixedLength('third', 30);
    draw.wish({ kind: 'near', name: 'wide', terms: [scalarOf('dart')], value: 90, weight: 1 });
    draw.wish({ kind: 'near', name: 'as it is', terms: [scalarOf('other')], value: 20, weight: 1 });
    const sketch = draw.sketch();
    expect(limitsMet(sketch, solve(sketch))).toEqual(['bounds of dart']);
  });
});
