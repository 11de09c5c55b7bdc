import { describe, expect, it } from 'vitest';
import { draftBounds } from '../../../../engine/checks/bounds.ts';
import { checkGarment } from '../../../../engine/checks/check-garment.ts';
import { shapeFigures } from '../../../../engine/checks/shape.ts';
import { tapeFor } from '../../../../engine/checks/tape.ts';
import { point } from '../../../../engine/geometry/point.ts';
import type { ShapeClaim } from '../../../../engine/pattern/shape.ts';
import { piecesOf, renamed } from '../../../../engine/pattern/shape-parts.ts';
import { garment } from '../../garments.ts';
import { along, arcFrom, under } from './measuring.ts';

const strap = under('strap', arcFrom(point(0, 0), 150, 1));
const path: ShapeClaim = {
  kind: 'length',
  name: 'strap on its path',
  parts: [{ kind: 'edge', piece: 'strap', edge: 'line', times: 1 }],
  low: 148,
  high: 152,
  outside: 'the strap stands off the shoulder',
};

function measured(...shapes: readonly ShapeClaim[]) {
  const made = garment([strap], { shapes });
  return shapeFigures(made, tapeFor(made), draftBounds);
}

describe('measuring the shapes of a garment', () => {
  it('reports each figure with its piece, unit and band', () => {
    const { shapes, issues } = measured(path);
    expect(issues).toEqual([]);
    expect(shapes).toEqual([
      {
        name: 'strap on its path',
        piece: 'strap',
        value: expect.closeTo(150, 5),
        unit: 'mm',
        low: 148,
        high: 152,
        ok: true,
        bound: false,
        outside: 'the strap stands off the shoulder',
      },
    ]);
  });

  it('refuses what lies outside a bound, in words', () => {
    const { shapes, issues } = measured({ ...path, low: 111, high: 113, bound: true });
    expect(shapes[0]).toMatchObject({ ok: false, bound: true });
    expect(issues).toEqual([
      {
        code: 'shape-not-true',
        severity: 'error',
        path: 'strap on its path',
        message:
          '"strap on its path" on the strap comes to 150 mm and should be 111 mm to 113 mm: the strap stands off the shoulder.',
        value: expect.closeTo(150, 5),
        limits: { min: 111, max: 113, unit: 'mm' },
      },
    ]);
  });

  it('only says what lies outside any other band: what is a wish is no law', () => {
    const { shapes, issues } = measured({ ...path, low: 111, high: 113 });
    expect(shapes[0]).toMatchObject({ ok: false, bound: false });
    expect(issues).toEqual([]);
  });

  it('knows bands with one limit', () => {
    const { low: _, ...atMost } = path;
    const { high: __, ...atLeast } = path;
    const most = measured({ ...atMost, high: 149, bound: true });
    expect(most.issues[0]?.message).toContain('should be at most 149 mm');
    expect(most.issues[0]?.limits).toEqual({ max: 149, unit: 'mm' });
    expect(measured({ ...atLeast, low: 151, bound: true }).issues[0]?.message).toContain('at least 151 mm');
    expect(measured({ ...atLeast, low: 149 }, { ...atMost, high: 151 }).shapes.every(({ ok }) => ok)).toBe(
      true,
    );
  });

  it('forgives what a walked seam may be off, and no more', () => {
    expect(measured({ ...path, low: 150.04, high: 151 }).shapes[0]?.ok).toBe(true);
    expect(measured({ ...path, low: 150.06, high: 151 }).shapes[0]?.ok).toBe(false);
  });

  it('finds a claim that names nothing false, bound or not', () => {
    const lost: ShapeClaim = { ...path, parts: [{ kind: 'edge', piece: 'strap', edge: 'outer', times: 1 }] };
    const { shapes, issues } = measured(lost);
    expect(shapes).toEqual([]);
    expect(issues).toMatchObject([{ code: 'shape-not-found', severity: 'error', path: 'strap on its path' }]);
  });

  it('belongs to the checks of every garment', () => {
    const report = checkGarment(garment([strap], { shapes: [{ ...path, low: 1, high: 2, bound: true }] }));
    expect(report.ok).toBe(false);
    expect(report.shapes).toHaveLength(1);
    expect(report.issues.map(({ code }) => code)).toContain('shape-not-true');
  });
});

describe('the parts of a claim', () => {
  it('can be renamed, and are listed first named first', () => {
    const claim: ShapeClaim = {
      kind: 'laid on',
      name: 'cap on armhole',
      a: { edges: [along('sleeve', 'cap')] },
      b: { edges: [along('front', 'armhole'), along('strap', 'outer')] },
      outside: 'the sleeve drags',
    };
    expect(piecesOf(claim)).toEqual(['sleeve', 'front', 'strap']);
    const left = renamed(claim, {
      edge: (ref) => ({ ...ref, piece: `left ${ref.piece}` }),
      piece: (name) => `left ${name}`,
    });
    expect(piecesOf(left)).toEqual(['left sleeve', 'left front', 'left strap']);
    expect(left.name).toBe('cap on armhole');
  });
});
