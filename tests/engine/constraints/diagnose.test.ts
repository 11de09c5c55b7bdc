import { describe, expect, it } from 'vitest';
import { diagnose } from '../../../engine/constraints/diagnose.ts';
import type { Relation } from '../../../engine/constraints/relations.ts';
import type { Sketch } from '../../../engine/constraints/sketch.ts';
import { lengthOf, SketchBuilder, scalarOf, xOf, yOf } from '../../../engine/constraints/sketch-builder.ts';
import { solve } from '../../../engine/constraints/solve.ts';
import { lowBending, near } from '../../../engine/constraints/statements.ts';

const apart = (name: string, a: string, b: string, mm: number): Relation => ({
  kind: 'distance',
  name,
  a,
  b,
  mm,
});

/** A triangle pinned at a, with b on its level. */
function triangle(...relations: readonly Relation[]): Sketch {
  const draw = new SketchBuilder();
  draw.fixed('a', { x: 0, y: 0 });
  draw.point('b', { x: 28, y: 0 }, 'x');
  draw.point('c', { x: 10, y: 22 });
  draw.relation(...relations);
  return draw.sketch();
}

const SIDES = [
  apart('side ab', 'a', 'b', 30),
  apart('side bc', 'b', 'c', 40),
  apart('side ca', 'c', 'a', 50),
];

describe('diagnose', () => {
  it('finds nothing to say of a triangle given by its three sides', () => {
    const sketch = triangle(...SIDES);
    expect(diagnose(sketch, solve(sketch))).toEqual({
      degreesOfFreedom: 0,
      redundant: [],
      conflicting: [],
      free: [],
      adrift: [],
    });
  });

  it('names a relation that only repeats what the others say', () => {
    // 3-4-5: the angle at b is a right one already.
    const sketch = triangle(...SIDES, {
      kind: 'sum',
      name: 'c stands over b',
      terms: [xOf('c'), xOf('b', -1)],
      value: 0,
    });
    const answer = solve(sketch);
    expect(answer.status).toBe('solved');
    expect(diagnose(sketch, answer)).toMatchObject({ degreesOfFreedom: 0, redundant: ['c stands over b'] });
  });

  it('names the sides of an over-constrained triangle and leaves out what has no part in it', () => {
    const sketch = triangle(...SIDES, apart('side bc again', 'b', 'c', 45));
    const answer = solve(sketch);
    expect(answer.status).toBe('conflict');
    expect(diagnose(sketch, answer).conflicting).toEqual(['side bc', 'side bc again']);
  });

  it('names all three sides of a triangle that cannot close', () => {
    const sketch = triangle(apart('ab', 'a', 'b', 30), apart('bc', 'b', 'c', 40), apart('ca', 'c', 'a', 75));
    const answer = solve(sketch);
    expect(answer.status).toBe('conflict');
    expect(diagnose(sketch, answer).conflicting).toEqual(['ab', 'bc', 'ca']);
    // The compromise shares the 5 mm that are missing.
    for (const { error } of answer.residuals) expect(Math.abs(error)).toBeCloseTo(5 / 3, 5);
  });

  it('names the bounds that a relation cannot be met within', () => {
    const draw = new SketchBuilder();
    draw.length('waist dart', 20, { min: 5, max: 35 });
    draw.length('side dart', 10, { min: 0, max: 15 });
    draw.length('ease', 10, { min: 0, max: 100 });
    draw.relation(
      { kind: 'sum', name: 'intake', terms: [scalarOf('waist dart'), scalarOf('side dart')], value: 60 },
      { kind: 'sum', name: 'ease', terms: [scalarOf('ease')], value: 12 },
    );
    const sketch = draw.sketch();
    const answer = solve(sketch);
    expect(answer.status).toBe('conflict');
    expect(diagnose(sketch, answer).conflicting).toEqual([
      'intake',
      'bounds of waist dart',
      'bounds of side dart',
    ]);
  });

  it('names a relation between fixed things that is not so', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.fixed('b', { x: 30, y: 0 });
    draw.relation(apart('ab', 'a', 'b', 30), apart('ab too', 'a', 'b', 31));
    const sketch = draw.sketch();
    expect(diagnose(sketch, solve(sketch))).toMatchObject({ redundant: ['ab'], conflicting: ['ab too'] });
  });

  it('lists the points and scalars that can still move', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.point('b', { x: 30, y: 5 });
    draw.point('c', { x: 60, y: 0 });
    draw.length('seam', 40);
    draw.length('hem', 90);
    draw.relation(
      apart('ab', 'a', 'b', 30),
      { kind: 'sum', name: 'c x', terms: [xOf('c')], value: 60 },
      { kind: 'sum', name: 'c y', terms: [yOf('c')], value: 4 },
      { kind: 'sum', name: 'hem', terms: [scalarOf('hem')], value: 91 },
    );
    const sketch = draw.sketch();
    expect(diagnose(sketch, solve(sketch))).toEqual({
      degreesOfFreedom: 2,
      redundant: [],
      conflicting: [],
      free: ['b', 'seam'],
      adrift: ['b', 'seam'],
    });
  });

  it('lists a point that can move one way only, across or down', () => {
    for (const held of [xOf, yOf]) {
      const draw = new SketchBuilder();
      draw.point('b', { x: 30, y: 5 });
      draw.relation({ kind: 'sum', name: 'held', terms: [held('b')], value: 30 });
      const sketch = draw.sketch();
      expect(diagnose(sketch, solve(sketch))).toMatchObject({ degreesOfFreedom: 1, free: ['b'] });
    }
  });

  it('tells what the wishes hold from what nothing holds', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.point('b', { x: 100, y: 5 });
    draw.length('hem', 90);
    draw.curve('edge', 'a', 'b');
    draw.wish(...lowBending(['edge'], 1), near('b lies about here', [xOf('b')], 100, 0.1));
    const sketch = draw.sketch();
    const { free, adrift } = diagnose(sketch, solve(sketch));
    expect(free).toContain('b');
    // Bending alone leaves the far end free to swing and both handles with it, but not how far out it lies.
    expect(adrift).toContain('hem');
    const held = new SketchBuilder();
    held.point('b', { x: 100, y: 5 });
    held.wish(near('across', [xOf('b')], 100, 0.1), near('down', [yOf('b')], 5, 0.1));
    expect(diagnose(held.sketch(), solve(held.sketch()))).toMatchObject({ free: ['b'], adrift: [] });
  });

  it('counts the handles of a curve of given length as free together', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.fixed('b', { x: 100, y: 0 });
    draw.curve('edge', 'a', 'b', { start: { angle: -0.5 }, end: { angle: 0.5 } });
    draw.relation({ kind: 'length', name: 'edge', terms: [lengthOf(['edge'])], mm: 108 });
    const sketch = draw.sketch();
    const { degreesOfFreedom, free } = diagnose(sketch, solve(sketch));
    expect(degreesOfFreedom).toBe(3);
    expect(free).toEqual(['edge start angle', 'edge start length', 'edge end angle', 'edge end length']);
  });
});
