import { expect, it } from 'vitest';
import { compiled } from '../../../../engine/constraints/compile/program.ts';
import { Curvature } from '../../../../engine/constraints/method/curvature.ts';
import { Model } from '../../../../engine/constraints/method/model.ts';
import type { Sketch } from '../../../../engine/constraints/sketch.ts';
import { endOf, lengthOf, SketchBuilder, startOf } from '../../../../engine/constraints/sketch-builder.ts';

/** A line of two cubics that share an angle, and a curve both ends of which have one; each of a given length. */
const draw = new SketchBuilder();
draw.fixed('a', { x: 0, y: 0 });
draw.point('b', { x: 60, y: 20 });
draw.point('c', { x: 130, y: -10 });
const line = draw.smoothLine('line', ['a', 'b', 'c']);
const heading = { angle: draw.angle('both ends', 0.4) };
const same = draw.curve('same', 'a', 'c', { start: heading, end: heading });
draw.relation({ kind: 'length', name: 'one', terms: [lengthOf([...line])], mm: 150 });
draw.relation({ kind: 'length', name: 'other', terms: [lengthOf([same])], mm: 140 });

/** Two curves that meet with one curvature. */
const smooth = new SketchBuilder();
smooth.fixed('a', { x: 0, y: 0 });
smooth.point('b', { x: 60, y: 20 });
smooth.fixed('c', { x: 130, y: -10 });
const [into, outOf] = [
  smooth.curve('into', 'a', 'b', { start: { angle: -0.4 }, end: { angle: 0.9 } }),
  smooth.curve('out of', 'b', 'c', { start: { angle: 0.7 }, end: { angle: -0.6 } }),
];
smooth.relation({ kind: 'curvature', name: 'runs on', a: endOf(into), b: startOf(outOf) });

/** The curvature of the only part of a sketch, as its elements tell it themselves and by differences, with its greatest. */
function bothWays(sketch: Sketch, ...forces: readonly number[]) {
  const { parts, slots } = compiled(sketch);
  const [part] = parts;
  if (!part) throw new Error('no part');
  expect(parts).toHaveLength(1);
  const byDifferences = {
    ...part,
    relations: part.relations.map((placed) => ({
      ...placed,
      elements: placed.elements.map(({ element: { curve: _, ...element }, ...rest }) => ({
        ...rest,
        element,
      })),
    })),
  };
  const [exact, differences] = [part, byDifferences].map((each) => {
    const model = new Model(each, slots.guess);
    const into = new Float64Array(model.n * model.n);
    new Curvature(model).add(slots.guess.slice(), Float64Array.from(forces), new Float64Array(0), into);
    return into;
  });
  if (!exact || !differences) throw new Error('no curvature');
  const greatest = Math.max(...exact.map(Math.abs));
  const apart = Math.max(...exact.map((value, i) => Math.abs(value - (differences[i] as number)))) / greatest;
  return { greatest, apart };
}

// The second derivatives of a length are taken to a thousandth.
it('of the lengths of curves is that of differences of their first derivatives, slots that are shared too', () => {
  const { greatest, apart } = bothWays(draw.sketch(), 1.5, -0.7);
  expect(greatest).toBeGreaterThan(0.01);
  expect(apart).toBeLessThan(5e-3);
});

it('of a curvature is that of differences, which are exact to about a millionth', () => {
  const { greatest, apart } = bothWays(smooth.sketch(), 1.5);
  expect(greatest).toBeGreaterThan(0.01);
  expect(apart).toBeLessThan(1e-5);
});
