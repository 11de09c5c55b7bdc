import { expect, it } from 'vitest';
import { compiled } from '../../../../engine/constraints/compile/program.ts';
import { Curvature } from '../../../../engine/constraints/method/curvature.ts';
import { Model } from '../../../../engine/constraints/method/model.ts';
import { lengthOf, SketchBuilder } from '../../../../engine/constraints/sketch-builder.ts';

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
const { parts, slots } = compiled(draw.sketch());

// The second derivatives of a length are taken to a thousandth.
it('of the lengths of curves is that of differences of their first derivatives, slots that are shared too', () => {
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
    new Curvature(model).add(slots.guess.slice(), Float64Array.of(1.5, -0.7), new Float64Array(0), into);
    return into;
  });
  if (!exact || !differences) throw new Error('no curvature');
  expect(Math.max(...exact.map(Math.abs))).toBeGreaterThan(0.01);
  const scale = Math.max(...exact.map(Math.abs));
  for (const [i, value] of exact.entries())
    expect(Math.abs(value - (differences[i] as number)) / scale, `entry ${i}`).toBeLessThan(5e-3);
});
