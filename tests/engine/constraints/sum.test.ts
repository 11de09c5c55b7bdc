import { describe, expect, it } from 'vitest';
import { compiled } from '../../../engine/constraints/compile/program.ts';
import type { Relation } from '../../../engine/constraints/relations.ts';
import { SketchBuilder, scalarOf, xOf } from '../../../engine/constraints/sketch-builder.ts';

/** What a sum of these terms is counted in: two angles, a length and a point are there. */
function unitOf(terms: Extract<Relation, { kind: 'sum' }>['terms']): string | undefined {
  const draw = new SketchBuilder();
  draw.point('p', { x: 1, y: 2 });
  draw.angle('lean', 0.1);
  draw.angle('slope', 0.2);
  draw.length('depth', 30);
  draw.relation({ kind: 'sum', name: 'sum', terms, value: 1 });
  return compiled(draw.sketch()).relations[0]?.unit;
}

describe('a weighted sum', () => {
  it('is counted as an angle when every term is one', () => {
    expect(unitOf([scalarOf('lean')])).toBe('rad');
    expect(unitOf([scalarOf('lean'), scalarOf('slope', -2)])).toBe('rad');
  });

  it('is counted in millimetres when any term is a length, and when there is none', () => {
    expect(unitOf([scalarOf('depth')])).toBe('mm');
    expect(unitOf([scalarOf('lean'), scalarOf('depth')])).toBe('mm');
    expect(unitOf([xOf('p'), scalarOf('slope')])).toBe('mm');
    expect(unitOf([])).toBe('mm');
  });
});
