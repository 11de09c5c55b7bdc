import { describe, expect, it } from 'vitest';
import type { Relation } from '../../../engine/constraints/relations.ts';
import {
  endOf,
  lengthOf,
  SketchBuilder,
  scalarOf,
  startOf,
  xOf,
  yOf,
} from '../../../engine/constraints/sketch-builder.ts';
import { solve } from '../../../engine/constraints/solve.ts';
import { arcLength } from '../../../engine/geometry/arc-length.ts';
import { curvatureAt } from '../../../engine/geometry/evaluate.ts';
import { distance, type Point } from '../../../engine/geometry/point.ts';
import { placed, valued } from './answers.ts';

const apart = (name: string, a: string, b: string, mm: number): Relation => ({
  kind: 'distance',
  name,
  a,
  b,
  mm,
});

describe('tangent circles', () => {
  it('meet the fourth circle of Descartes: k4 = k1 + k2 + k3 + 2 sqrt(k1 k2 + k2 k3 + k3 k1)', () => {
    // Descartes, letter to Elisabeth of Bohemia, 1643; Soddy, "The Kiss Precise", Nature 137 (1936).
    const [r1, r2, r3] = [30, 45, 70];
    const [k1, k2, k3] = [1 / r1, 1 / r2, 1 / r3];
    const r4 = 1 / (k1 + k2 + k3 + 2 * Math.sqrt(k1 * k2 + k2 * k3 + k3 * k1));
    const draw = new SketchBuilder();
    draw.fixed('c1', { x: 0, y: 0 });
    draw.point('c2', { x: 70, y: 0 }, 'x');
    draw.point('c3', { x: 30, y: 90 });
    draw.point('c4', { x: 30, y: 20 });
    draw.relation(
      apart('1 touches 2', 'c1', 'c2', r1 + r2),
      apart('2 touches 3', 'c2', 'c3', r2 + r3),
      apart('1 touches 3', 'c1', 'c3', r1 + r3),
      apart('4 touches 1', 'c4', 'c1', r1 + r4),
      apart('4 touches 2', 'c4', 'c2', r2 + r4),
    );
    const answer = solve(draw.sketch());
    expect(answer.status).toBe('solved');
    expect(distance(placed(answer, 'c4'), placed(answer, 'c3'))).toBeCloseTo(r3 + r4, 9);
  });

  it('leave the outer tangent of two circles sqrt(d^2 - (r1 - r2)^2) long', () => {
    const [r1, r2, d] = [60, 25, 130];
    const draw = new SketchBuilder();
    const o1 = draw.fixed('o1', { x: 0, y: 0 });
    const o2 = draw.fixed('o2', { x: d, y: 0 });
    const t1 = draw.point('t1', { x: 20, y: -50 });
    const t2 = draw.point('t2', { x: 135, y: -20 });
    draw.line('radius 1', o1, t1);
    draw.line('radius 2', o2, t2);
    draw.line('tangent', t1, t2);
    draw.relation(
      apart('t1 on circle 1', o1, t1, r1),
      apart('t2 on circle 2', o2, t2, r2),
      {
        kind: 'turn',
        name: 'square to radius 1',
        from: endOf('radius 1'),
        to: startOf('tangent'),
        angle: Math.PI / 2,
      },
      { kind: 'turn', name: 'radii in line', from: endOf('radius 1'), to: endOf('radius 2'), angle: 0 },
    );
    const answer = solve(draw.sketch());
    expect(answer.status).toBe('solved');
    const length = distance(placed(answer, t1), placed(answer, t2));
    expect(length).toBeCloseTo(Math.sqrt(d * d - (r1 - r2) ** 2), 8);
  });

  it('find the circle through three points by its centre: R = abc / (4 area)', () => {
    const corners: readonly Point[] = [
      { x: 0, y: 0 },
      { x: 120, y: 10 },
      { x: 40, y: 90 },
    ];
    const draw = new SketchBuilder();
    const names = corners.map((corner, i) => draw.fixed(`corner ${i}`, corner));
    draw.point('centre', { x: 50, y: 30 });
    for (const name of names) draw.line(`radius to ${name}`, 'centre', name);
    const radius = (i: number) => lengthOf([`radius to corner ${i}`]);
    draw.relation(
      {
        kind: 'length',
        name: 'as far from 0 as from 1',
        terms: [radius(0), { ...radius(1), times: -1 }],
        mm: 0,
      },
      {
        kind: 'length',
        name: 'as far from 1 as from 2',
        terms: [radius(1), { ...radius(2), times: -1 }],
        mm: 0,
      },
    );
    const answer = solve(draw.sketch());
    const [a = 0, b = 0, c = 0] = [
      [0, 1],
      [1, 2],
      [2, 0],
    ].map(([i = 0, j = 0]) => distance(corners[i] ?? { x: 0, y: 0 }, corners[j] ?? { x: 0, y: 0 }));
    const s = (a + b + c) / 2;
    const area = Math.sqrt(s * (s - a) * (s - b) * (s - c));
    expect(distance(placed(answer, 'centre'), { x: 0, y: 0 })).toBeCloseTo((a * b * c) / (4 * area), 8);
  });
});

describe('curves of given length', () => {
  it('make a cubic as long as the arc, with handles as known for the quarter circle', () => {
    const radius = 100;
    const length = (radius * Math.PI) / 2;
    const draw = new SketchBuilder();
    draw.fixed('from', { x: 0, y: 0 });
    draw.fixed('to', { x: radius, y: radius });
    draw.fixedAngle('level', 0);
    draw.fixedAngle('upright', Math.PI / 2);
    const curve = draw.curve('quarter', 'from', 'to', {
      start: { angle: 'level' },
      end: { angle: 'upright' },
    });
    draw.relation({ kind: 'length', name: 'as long as the arc', terms: [lengthOf([curve])], mm: length });
    draw.wish({ kind: 'fair', name: 'fair', curve, weight: 1 });
    const answer = solve(draw.sketch());
    expect(answer.status).toBe('solved');
    const quarter = answer.curves[curve];
    expect(quarter && arcLength(quarter, 1e-9)).toBeCloseTo(length, 6);
    // The usual 4/3 (sqrt(2) - 1) touches the circle at its middle; the arc's length asks for a hair less.
    expect(valued(answer, 'quarter start length') / radius).toBeCloseTo((4 / 3) * (Math.SQRT2 - 1), 2);
    expect(valued(answer, 'quarter start length')).toBeCloseTo(valued(answer, 'quarter end length'), 6);
  });

  it('make two edges equal, one of them gathered by a ratio', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.fixed('b', { x: 200, y: 0 });
    draw.fixed('c', { x: 0, y: 100 });
    draw.point('d', { x: 280, y: 100 }, 'x');
    const short = draw.curve('short', 'a', 'b', { start: { angle: -0.4 }, end: { angle: 0.4 } });
    const long = draw.curve('long', 'c', 'd', { start: { angle: -0.3 }, end: { angle: 0.3 } });
    draw.relation(
      { kind: 'length', name: 'short', terms: [lengthOf([short])], mm: 207 },
      { kind: 'length', name: 'gathered', terms: [lengthOf([long]), lengthOf([short], -1.5)], mm: 0 },
    );
    draw.wish(
      { kind: 'low bending', name: 'short', curve: short, weight: 1 },
      { kind: 'low bending', name: 'long', curve: long, weight: 1 },
    );
    const answer = solve(draw.sketch());
    expect(answer.status).toBe('solved');
    const [one, other] = [answer.curves[short], answer.curves[long]];
    expect(one && arcLength(one, 1e-9)).toBeCloseTo(207, 6);
    expect(other && arcLength(other, 1e-9)).toBeCloseTo(310.5, 6);
  });
});

describe('joints', () => {
  it('run on with one curvature where G2 is asked for', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.fixed('b', { x: 80, y: 40 });
    draw.fixed('c', { x: 120, y: 130 });
    const [one = '', other = ''] = draw.smoothLine('line', ['a', 'b', 'c']);
    draw.relation({ kind: 'curvature', name: 'runs on', a: endOf(one), b: startOf(other) });
    draw.wish(
      { kind: 'fair', name: 'one', curve: one, weight: 1 },
      { kind: 'fair', name: 'other', curve: other, weight: 1 },
    );
    const answer = solve(draw.sketch());
    expect(answer.status).toBe('solved');
    const [first, second] = [answer.curves[one], answer.curves[other]];
    expect(first && second && curvatureAt(first, 1) - curvatureAt(second, 0)).toBeCloseTo(0, 9);
  });

  it('have no corner across a seam when the two angles add up to a straight one', () => {
    // Two pieces drawn apart, whatever way their seam edges lean.
    const draw = new SketchBuilder();
    draw.fixed('a1', { x: 0, y: 0 });
    draw.fixed('a2', { x: 100, y: 10 });
    draw.fixed('a3', { x: 120, y: 200 });
    draw.line('neckline a', 'a1', 'a2');
    draw.line('seam a', 'a2', 'a3');
    draw.fixed('b1', { x: 300, y: 200 });
    draw.fixed('b2', { x: 310, y: 0 });
    draw.point('b3', { x: 400, y: 60 }, 'y');
    draw.line('seam b', 'b1', 'b2');
    draw.line('neckline b', 'b2', 'b3');
    draw.relation({
      kind: 'smooth across seam',
      name: 'neckline',
      a: { from: endOf('neckline a'), to: startOf('seam a') },
      b: { from: endOf('seam b'), to: startOf('neckline b') },
    });
    const answer = solve(draw.sketch());
    expect(answer.status).toBe('solved');
    const heading = (from: Point, to: Point): number => Math.atan2(to.y - from.y, to.x - from.x);
    const inside = (before: Point, corner: Point, after: Point): number =>
      Math.PI - (heading(corner, after) - heading(before, corner));
    const angleA = inside({ x: 0, y: 0 }, { x: 100, y: 10 }, { x: 120, y: 200 });
    const angleB = inside({ x: 300, y: 200 }, { x: 310, y: 0 }, placed(answer, 'b3'));
    expect(Math.cos(angleA + angleB)).toBeCloseTo(-1, 12);
  });

  it('say the same of a seam whose curves are drawn against the outline', () => {
    const build = (reversed: boolean): number => {
      const draw = new SketchBuilder();
      draw.fixed('a1', { x: 0, y: 0 });
      draw.fixed('a2', { x: 100, y: 10 });
      draw.fixed('a3', { x: 120, y: 200 });
      draw.line('neckline a', 'a1', 'a2');
      if (reversed) draw.line('seam a', 'a3', 'a2');
      else draw.line('seam a', 'a2', 'a3');
      draw.fixed('b1', { x: 300, y: 200 });
      draw.fixed('b2', { x: 310, y: 0 });
      draw.point('b3', { x: 400, y: 60 }, 'y');
      draw.line('seam b', 'b1', 'b2');
      draw.line('neckline b', 'b2', 'b3');
      draw.relation({
        kind: 'smooth across seam',
        name: 'neckline',
        a: { from: endOf('neckline a'), to: reversed ? endOf('seam a') : startOf('seam a') },
        b: { from: endOf('seam b'), to: startOf('neckline b') },
      });
      return placed(solve(draw.sketch()), 'b3').y;
    };
    expect(build(true)).toBeCloseTo(build(false), 9);
  });

  it('hold sums of coordinates, lengths and angles', () => {
    const draw = new SketchBuilder();
    draw.point('p', { x: 10, y: 20 });
    draw.length('width', 50);
    draw.angle('slope', 0.2);
    draw.fixedAngle('twice', 0.7);
    draw.relation(
      { kind: 'sum', name: 'x and width', terms: [xOf('p'), scalarOf('width', 0.5)], value: 100 },
      { kind: 'sum', name: 'y', terms: [yOf('p', 2)], value: 30 },
      { kind: 'sum', name: 'width', terms: [scalarOf('width')], value: 80 },
      { kind: 'sum', name: 'half of it', terms: [scalarOf('slope', 2), scalarOf('twice', -1)], value: 0 },
    );
    const answer = solve(draw.sketch());
    expect(answer.status).toBe('solved');
    expect(placed(answer, 'p').x).toBeCloseTo(60, 9);
    expect(placed(answer, 'p').y).toBeCloseTo(15, 9);
    expect(valued(answer, 'slope')).toBeCloseTo(0.35, 10);
    expect(answer.residuals.map(({ unit }) => unit)).toEqual(['mm', 'mm', 'mm', 'rad']);
  });
});
