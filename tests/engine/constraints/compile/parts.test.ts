import { expect, it } from 'vitest';
import { compiled } from '../../../../engine/constraints/compile/program.ts';
import { SketchBuilder } from '../../../../engine/constraints/sketch-builder.ts';

it('what no relation and no wish holds together is solved in parts of its own', () => {
  const draw = new SketchBuilder();
  draw.fixed('middle', { x: 0, y: 0 });
  for (const name of ['a', 'b', 'c', 'd']) draw.point(name, { x: 50, y: 10 });
  draw.relation({ kind: 'distance', name: 'a to b', a: 'a', b: 'b', mm: 20 });
  draw.relation({ kind: 'distance', name: 'c alone', a: 'middle', b: 'c', mm: 20 });
  draw.relation({ kind: 'distance', name: 'd alone', a: 'middle', b: 'd', mm: 20 });
  const { parts } = compiled(draw.sketch());
  expect(parts.map(({ relations }) => relations.map(({ equations: { name } }) => name))).toEqual([
    ['a to b'],
    ['c alone'],
    ['d alone'],
  ]);
  expect(parts.map(({ slots }) => slots.length)).toEqual([4, 2, 2]);
});
