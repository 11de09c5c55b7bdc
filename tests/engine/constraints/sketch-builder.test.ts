import { describe, expect, it } from 'vitest';
import { endOf, SketchBuilder, startOf, xOf, yOf } from '../../../engine/constraints/sketch-builder.ts';
import { solve } from '../../../engine/constraints/solve.ts';
import * as say from '../../../engine/constraints/statements.ts';
import { arcLength } from '../../../engine/geometry/arc-length.ts';
import { distance } from '../../../engine/geometry/point.ts';
import { placed, valued } from './answers.ts';

describe('a sketch written step by step', () => {
  it('hands out what stays as it is, whatever is written after', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.fixed('b', { x: 3, y: 4 });
    draw.line('line', 'a', 'b');
    const before = draw.sketch();
    draw.length('more', 5);
    draw.relation(say.isLong('long', ['line'], 5));
    const after = draw.sketch();
    expect([...before.points.keys(), ...before.scalars.keys(), before.relations.length]).toEqual([
      'a',
      'b',
      0,
    ]);
    expect([...after.points.keys(), ...after.scalars.keys(), after.relations.length]).toEqual([
      'a',
      'b',
      'more',
      1,
    ]);
    expect(draw.sketch()).toEqual(after);
  });

  it('guesses a curve along its chord, with handles of a third of it that keep to a twentieth and nine tenths', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.fixed('b', { x: 0, y: 60 });
    draw.curve('edge', 'a', 'b');
    const { scalars } = draw.sketch();
    expect(scalars.get('edge start angle')).toEqual({ at: Math.PI / 2, unit: 'rad', free: true });
    expect(scalars.get('edge end length')).toEqual({ at: 20, unit: 'mm', free: true, min: 3, max: 54 });
  });

  it('shares one angle where the cubics of a smooth line meet', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.fixed('b', { x: 40, y: 10 });
    draw.fixed('c', { x: 80, y: 0 });
    const [first = '', second = ''] = draw.smoothLine('line', ['a', 'b', 'c'], { start: { angle: 0.5 } });
    const { curves, scalars } = draw.sketch();
    expect(curves.get(first)).toMatchObject({ startAngle: 'line 1 start angle', endAngle: 'line at b' });
    expect(curves.get(second)).toMatchObject({ startAngle: 'line at b', endAngle: 'line 2 end angle' });
    expect(scalars.get('line 1 start angle')?.at).toBe(0.5);
    expect(scalars.get('line at b')?.at).toBe(0);
  });

  it('ends a smooth line as it is told to', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.fixed('b', { x: 40, y: 10 });
    draw.fixed('c', { x: 80, y: 0 });
    draw.smoothLine('line', ['a', 'b', 'c'], { start: { angle: 0.5 }, end: { angle: -0.6 } });
    expect(draw.sketch().scalars.get('line 2 end angle')?.at).toBe(-0.6);
  });

  it('keeps lengths and angles that are known as they are', () => {
    const draw = new SketchBuilder();
    expect(draw.fixedLength('depth', 30)).toBe('depth');
    expect(draw.fixedAngle('grain', 0.25)).toBe('grain');
    const { scalars } = draw.sketch();
    expect(scalars.get('depth')).toEqual({ at: 30, unit: 'mm', free: false });
    expect(scalars.get('grain')).toEqual({ at: 0.25, unit: 'rad', free: false });
  });

  it('refuses a curve between points that are not there yet', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    expect(() => draw.curve('edge', 'a', 'b')).toThrow('there is no point “b” yet');
  });

  it('reads as statements: level, upright, square, sewn with ease, of a length, near a place', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.point('b', { x: 95, y: 8 });
    draw.point('c', { x: 90, y: 70 });
    draw.point('d', { x: 5, y: 80 });
    draw.line('top', 'a', 'b');
    draw.line('side', 'b', 'c');
    draw.line('foot', 'd', 'c');
    draw.relation(
      say.level('a and b level', 'a', 'b'),
      say.isLong('top', ['top'], 100),
      say.square('corner', endOf('top'), startOf('side'), 1),
      say.sum('d under a', [xOf('d'), xOf('a', -1)], 0),
      say.sewnEqual('foot eased to top', ['foot'], ['top'], { ease: 6 }),
    );
    draw.wish(say.near('c across', [xOf('c')], 90, 1), say.near('c down', [yOf('c')], 70, 1));
    const answer = solve(draw.sketch());
    expect(answer.status).toBe('solved');
    expect(placed(answer, 'b').y).toBeCloseTo(0, 7);
    expect(placed(answer, 'c').x).toBeCloseTo(100, 7);
    expect(placed(answer, 'd').x).toBeCloseTo(0, 7);
    expect(distance(placed(answer, 'd'), placed(answer, 'c'))).toBeCloseTo(106, 6);
  });

  it('turns by a quarter of a circle where a curve stands square to another, either way', () => {
    const [from, to] = [endOf('front'), startOf('hem')];
    expect(say.square('corner', from, to, 1)).toEqual({
      kind: 'turn',
      name: 'corner',
      from,
      to,
      angle: Math.PI / 2,
    });
    expect(say.square('corner', from, to, -1)).toMatchObject({ angle: -Math.PI / 2 });
  });

  it('gathers one edge to another by a ratio, fairly', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.fixed('b', { x: 100, y: 0 });
    draw.fixed('c', { x: 0, y: 50 });
    draw.point('d', { x: 150, y: 50 }, 'x');
    draw.line('seam', 'a', 'b');
    const edge = draw.curve('gathered', 'c', 'd', { start: { angle: -0.3 }, end: { angle: 0.3 } });
    draw.relation(say.sewnEqual('gathers', [edge], ['seam'], { ratio: 1.6 }));
    draw.wish(...say.lowBending([edge], 1), ...say.fair([edge], 1));
    const answer = solve(draw.sketch());
    const gathered = answer.curves[edge];
    expect(gathered && arcLength(gathered, 1e-9)).toBeCloseTo(160, 6);
    expect(valued(answer, 'gathered start length')).toBeGreaterThan(0);
  });
});
