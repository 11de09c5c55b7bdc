import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Element } from '../../../engine/constraints/compile/equations.ts';
import { compiled } from '../../../engine/constraints/compile/program.ts';
import type { Relation, Wish } from '../../../engine/constraints/relations.ts';
import { endOf, SketchBuilder, startOf } from '../../../engine/constraints/sketch-builder.ts';
import type { Point } from '../../../engine/geometry/point.ts';
import { uniform } from '../../uniform.ts';

const RELATIONS: readonly Relation[] = [
  { kind: 'coincident', name: 'coincident', a: 'p', b: 'q' },
  { kind: 'on line', name: 'on line', point: 'p', through: ['q', 'r'] },
  { kind: 'distance', name: 'distance', a: 'p', b: 'q', mm: 30 },
  { kind: 'heading', name: 'heading', a: 'p', b: 'q', angle: 0.4 },
  { kind: 'turn', name: 'turn, line to cubic', from: startOf('line'), to: endOf('one'), angle: 0.3 },
  { kind: 'turn', name: 'turn, cubic to line', from: startOf('two'), to: endOf('line'), angle: -0.3 },
  {
    kind: 'sum',
    name: 'sum',
    terms: [
      { point: 'p', axis: 'x', times: 2 },
      { point: 'q', axis: 'y', times: -0.5 },
      { scalar: 'one start length', times: 3 },
    ],
    value: 7,
  },
  {
    kind: 'length',
    name: 'length',
    terms: [
      { curves: ['one', 'line'], times: 1 },
      { curves: ['two'], times: -1.5 },
    ],
    mm: 3,
  },
  { kind: 'length', name: 'length of one', terms: [{ curves: ['one'], times: -1.5 }], mm: 3 },
  { kind: 'tangent', name: 'tangent', a: endOf('one'), b: startOf('line') },
  { kind: 'tangent', name: 'tangent, both ends', a: endOf('one'), b: endOf('two') },
  { kind: 'curvature', name: 'curvature, end to start', a: endOf('one'), b: startOf('two') },
  { kind: 'curvature', name: 'curvature, start to start', a: startOf('one'), b: startOf('two') },
  { kind: 'curvature', name: 'curvature, line to end', a: startOf('line'), b: endOf('two') },
  {
    kind: 'smooth across seam',
    name: 'smooth across seam',
    a: { from: endOf('one'), to: startOf('line') },
    b: { from: startOf('two'), to: endOf('line') },
  },
  { kind: 'no inflection', name: 'no inflection, clockwise', curve: 'one', turns: 1 },
  { kind: 'no inflection', name: 'no inflection, the other way', curve: 'one', turns: -1 },
  { kind: 'least radius', name: 'least radius', curve: 'one', mm: 25 },
];

const WISHES: readonly Wish[] = [
  { kind: 'near', name: 'near', terms: [{ point: 'p', axis: 'y', times: 2 }], value: 3, weight: 4 },
  { kind: 'low bending', name: 'low bending', curve: 'one', weight: 2 },
  { kind: 'fair', name: 'fair', curve: 'two', weight: 0.5 },
];

/** Near a cusp a curvature is steeper than differences can follow. */
const CUSP = 1e4;

const place = fc.record({
  x: uniform(-100, 100),
  y: uniform(-100, 100),
});
const angle = uniform(-Math.PI, Math.PI);
const lean = uniform(-0.8, 0.8);
const share = fc.double({ min: 0.2, max: 0.45, noNaN: true });
const handle = fc.double({ min: 20, max: 120, noNaN: true });

interface Shape {
  readonly p: Point;
  readonly q: Point;
  readonly r: Point;
  readonly angles: readonly [number, number, number];
  readonly handles: readonly [number, number, number, number];
}

const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
const headingOf = (a: Point, b: Point): number => Math.atan2(b.y - a.y, b.x - a.x);

const corners = fc
  .record({ p: place, q: place, r: place })
  .filter(({ p, q, r }) => apart(p, q) > 20 && apart(q, r) > 20 && apart(p, r) > 20);

/** Every kind of relation and wish over two cubics that meet, a line and three points. */
const equations = fc
  .record({
    at: corners,
    angles: fc.tuple(angle, angle, angle),
    handles: fc.tuple(handle, handle, handle, handle),
  })
  .map(({ at, angles, handles }): Shape => ({ ...at, angles, handles }))
  // A straight cubic has its least radius at a kink, where no derivative is right.
  .filter(({ p, q, angles: [start] }) => Math.abs(Math.sin(start - headingOf(p, q))) > 0.05)
  .map(equationsOn);

/** The same, but the first cubic runs without sharp turns, for which a few Gauss nodes do. */
const evenEquations = fc
  .record({ at: corners, leans: fc.tuple(lean, lean, lean), shares: fc.tuple(share, share, share, share) })
  .map(({ at, leans, shares }): Shape => {
    const { p, q, r } = at;
    const [first, second] = [apart(p, q), apart(q, r)];
    return {
      ...at,
      angles: [headingOf(p, q) + leans[0], headingOf(p, q) + leans[1], headingOf(q, r) + leans[2]],
      handles: [shares[0] * first, shares[1] * first, shares[2] * second, shares[3] * second],
    };
  })
  .map(equationsOn);

function equationsOn({ p, q, r, angles, handles }: Shape) {
  const draw = new SketchBuilder();
  draw.point('p', p);
  draw.point('q', q);
  draw.point('r', r);
  draw.line('line', 'p', 'r');
  draw.angle('joint', angles[1]);
  draw.curve('one', 'p', 'q', {
    start: { angle: angles[0], length: handles[0] },
    end: { angle: 'joint', length: handles[1] },
  });
  draw.curve('two', 'q', 'r', {
    start: { angle: 'joint', length: handles[2] },
    end: { angle: angles[2], length: handles[3] },
  });
  draw.relation(...RELATIONS);
  draw.wish(...WISHES);
  const { slots, relations, parts } = compiled(draw.sketch());
  const wishes = parts.flatMap((part) => part.wishes.map((wish) => wish.equations));
  return { x: slots.guess, all: [...relations, ...wishes] };
}

describe('the derivatives of every kind of relation and wish', () => {
  for (const { name } of [...RELATIONS, ...WISHES])
    it(`agree with central differences: ${name}`, () => {
      fc.assert(
        fc.property(equations, ({ x, all }) => {
          const one = all.find((equation) => equation.name === name);
          expect(one).toBeDefined();
          for (const element of one?.elements ?? []) expectDerivatives(element, one?.rows ?? 0, x);
        }),
        { numRuns: 40 },
      );
    });
});

describe('what is said of a relation or wish', () => {
  const shapeOf = (by: number): Shape => ({
    p: { x: 0, y: by },
    q: { x: 60 + by, y: 20 },
    r: { x: 130, y: -10 - by },
    angles: [0.9 + by / 50, -0.4, 0.7],
    handles: [22 + by, 25, 30, 35 - by],
  });
  const [here, there] = [equationsOn(shapeOf(0)), equationsOn(shapeOf(3))];
  const slopes = (element: Element, rows: number, x: Float64Array): readonly number[] => {
    const jacobian = new Float64Array(rows * element.slots.length);
    element.evaluate(x, new Float64Array(rows), jacobian);
    return [...jacobian];
  };

  it.each([...RELATIONS, ...WISHES].map(({ name }) => name))(
    'is that it is linear where its derivatives are everywhere the same, and nowhere else: %s',
    (name) => {
      const one = here.all.find((equation) => equation.name === name);
      for (const element of one?.elements ?? []) {
        const [a, b] = [here.x, there.x].map((x) => slopes(element, one?.rows ?? 0, x));
        expect(a?.every((slope, i) => Math.abs(slope - (b?.[i] ?? NaN)) < 1e-12)).toBe(element.linear);
      }
    },
  );

  it('is that a curvature counts as the bulge on its handles: 3/2 times their product, on short ones as on ten', () => {
    const scaleOf = (name: string, { all }: typeof here) => all.find((one) => one.name === name)?.scale;
    expect(scaleOf('curvature, end to start', here)).toBeCloseTo(1.5 * 25 * 30, 9);
    expect(scaleOf('curvature, line to end', here)).toBeCloseTo(1.5 * 35 * 35, 9);
    const short = equationsOn({ ...shapeOf(0), handles: [2, 2, 2, 2] });
    expect(scaleOf('curvature, start to start', short)).toBe(100);
  });
});

describe('the second derivatives given for lengths and wishes', () => {
  for (const [name, accuracy] of [
    ['length of one', 0.3],
    ['low bending', 1e-4],
    ['fair', 1e-4],
  ] as const)
    it(`agree with differences of the first ones: ${name}, to ${accuracy}`, () => {
      fc.assert(
        fc.property(evenEquations, ({ x, all }) => {
          const one = all.find((equation) => equation.name === name);
          for (const element of one?.elements ?? [])
            expectSecondDerivatives(element, one?.rows ?? 0, x, accuracy);
        }),
        { numRuns: 40 },
      );
    });
});

function expectSecondDerivatives(
  { slots, evaluate, curve }: Element,
  rows: number,
  x: Float64Array,
  accuracy: number,
): void {
  if (!curve) return;
  const width = slots.length;
  const weights = Float64Array.from({ length: rows }, (_, r) => 2 + r);
  const exact = new Float64Array(width * width);
  curve(x, weights, exact);
  const gradientAt = (slot: number, off: number): Float64Array => {
    const moved = Float64Array.from(x);
    moved[slot] = (moved[slot] ?? 0) + off;
    const jacobian = new Float64Array(rows * width);
    evaluate(moved, new Float64Array(rows), jacobian);
    return Float64Array.from({ length: width }, (_, k) =>
      weights.reduce((sum, weight, r) => sum + weight * (jacobian[r * width + k] ?? 0), 0),
    );
  };
  for (const [k, slot] of slots.entries()) {
    const [above, below] = [gradientAt(slot, 1e-4), gradientAt(slot, -1e-4)];
    for (let m = 0; m <= k; m++) {
      const estimate = ((above[m] ?? NaN) - (below[m] ?? NaN)) / 2e-4;
      const size = Math.max(...exact.map(Math.abs));
      expect(Math.abs((exact[k * width + m] ?? NaN) - estimate)).toBeLessThan(accuracy * size);
    }
  }
}

function expectDerivatives(one: Element, rows: number, x: Float64Array): void {
  const { slots } = one;
  const values = new Float64Array(rows);
  const exact = new Float64Array(rows * slots.length);
  one.evaluate(x, values, exact);
  const scratch = new Float64Array(exact.length);
  for (const slot of new Set(slots)) {
    const at = (off: number): Float64Array => {
      const moved = Float64Array.from(x);
      moved[slot] = (moved[slot] ?? 0) + off;
      const result = new Float64Array(rows);
      one.evaluate(moved, result, scratch);
      return result;
    };
    const differences = (h: number): number[] =>
      Array.from(at(h), (above, r) => (above - (at(-h)[r] ?? 0)) / (2 * h));
    const coarse = differences(2e-4);
    const fine = differences(1e-4);
    const [above, below] = [at(1e-4), at(-1e-4)];
    for (let r = 0; r < rows; r++) {
      const derivative = slots.reduce(
        (sum, used, k) => (used === slot ? sum + (exact[r * slots.length + k] ?? 0) : sum),
        0,
      );
      const estimate = fine[r] ?? NaN;
      // Where the two step widths or the two sides disagree, the function is too steep to judge by or has a kink.
      const bend = Math.abs((above[r] ?? NaN) + (below[r] ?? NaN) - 2 * (values[r] ?? NaN)) / 1e-4;
      const doubt = Math.abs(estimate - (coarse[r] ?? NaN));
      const size = Math.abs(derivative) + Math.abs(values[r] ?? 0) + 1e-3;
      if (doubt < 1e-5 * size && bend < 0.1 * Math.abs(derivative) + 1e-7 * size && size < CUSP)
        expect(Math.abs(derivative - estimate)).toBeLessThan(1e-5 * size);
    }
  }
}
