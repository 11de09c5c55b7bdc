import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutReady } from '../../../engine/checks/cut-ready.ts';
import { hemFaults } from '../../../engine/checks/hems.ts';
import { cuttingLine } from '../../../engine/finishing/cut-line.ts';
import { hemSide } from '../../../engine/finishing/hem-side.ts';
import { arc } from '../../../engine/geometry/arc.ts';
import type { Edge } from '../../../engine/geometry/curve.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { pointAt } from '../../../engine/geometry/evaluate.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { COINCIDENCE, HEM_EASE, PARALLEL } from '../../../engine/geometry/tolerance.ts';
import { heading, scaled } from '../../../engine/geometry/vector.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { uniform } from '../../uniform.ts';
import { edge, garment, line, piece, polygon } from '../garments.ts';

interface Cone {
  /** Where the seams would meet, above the hem, mm. */
  readonly radius: number;
  /** How far each seam leans from the grain, radians. */
  readonly lean: number;
  readonly hem: number;
  readonly allowance: number;
  /** Drawn as a half, its centre on the fold. */
  readonly half?: boolean;
}

/** A gore that is a sector of a cone about the origin, hung by an upright grain. */
function gore({ radius, lean, hem, allowance, half = false }: Cone): Piece {
  const at = (angle: number, r: number) => point(r * Math.sin(angle), r * Math.cos(angle));
  const [left, top] = [half ? 0 : -lean, radius - 300];
  const hemLine = arc(point(0, 0), scaled(heading(Math.PI / 2 - lean), radius), lean - left, COINCIDENCE);
  return piece(
    'gore',
    [
      edge('top', [line(at(left, top), at(lean, top))], { rank: 3, allowance }),
      edge('right', [line(at(lean, top), at(lean, radius))], { allowance }),
      edge('hem', hemLine.curves, { turn: 'hem', allowance: hem, rank: 5 }),
      edge(
        'left',
        [line(at(left, radius), at(left, top))],
        half ? { turn: 'fold', allowance: 0 } : { allowance },
      ),
    ],
    { grain: { from: point(0, top), to: point(0, radius) } },
  );
}

const cone: fc.Arbitrary<Cone> = fc.record({
  radius: fc.double({ min: 500, max: 3000, noNaN: true }),
  lean: uniform(-0.03, 0.5),
  hem: fc.double({ min: 20, max: 50, noNaN: true }),
  allowance: fc.double({ min: 6, max: 25, noNaN: true }),
  half: fc.boolean(),
});

/** The part of a cutting line that lies along the edge of the cloth below a hem of this radius. */
const rawEdge = (cut: Edge, outer: number): Edge => ({
  name: 'raw edge',
  curves: cut.curves.filter((curve) =>
    [0, 0.5, 1].every((t) => Math.abs(distance(pointAt(curve, t), point(0, 0)) - outer) < 0.1),
  ),
});

describe('a seam in the allowance of a hem', () => {
  /** A panel with a straight hem, hung by an upright grain; its sides lean outward by 20 mm in 100. */
  const panel = (hem: number, turn: 'seam' | 'fold' = 'seam'): Piece => ({
    ...polygon(
      'panel',
      [
        [20, 0],
        [180, 0],
        [200, 100],
        [0, 100],
      ],
      [
        ['top', {}],
        ['right', {}],
        ['hem', { turn: 'hem', allowance: hem }],
        ['left', { turn }],
      ],
    ),
    grain: { from: point(100, 10), to: point(100, 90) },
  });

  it('goes on as the seam above, mirrored in a straight hem', () => {
    for (const hem of [5, 40, 300]) {
      const [right, left] = [hemSide(panel(hem), 1), hemSide(panel(hem), 2)];
      expect(right?.x).toBeCloseTo(-20 / Math.hypot(20, 100), 9);
      expect(right?.y).toBeCloseTo(100 / Math.hypot(20, 100), 9);
      expect(left?.x).toBeCloseTo(20 / Math.hypot(20, 100), 9);
      expect(left?.y).toBeCloseTo(100 / Math.hypot(20, 100), 9);
    }
  });

  it('goes on as the cloth that comes to lie on it, not as the seam higher up; as the whole of a seam that is shorter', () => {
    /** Its right side leans outward by 20 mm in the lowest 40 and is upright above; its left side by 10 mm in 40. */
    const bent = (hem: number) => ({
      edges: [
        edge('right', [line(point(180, 0), point(180, 60)), line(point(180, 60), point(200, 100))]),
        edge('hem', [line(point(200, 100), point(0, 100))], { turn: 'hem', allowance: hem }),
        edge('left', [line(point(0, 100), point(10, 60)), line(point(10, 60), point(10, 0))]),
      ],
      grain: { from: point(100, 10), to: point(100, 90) },
    });
    const leans = (hem: number) =>
      [0, 1].map((i) => {
        const { x, y } = hemSide(bent(hem), i) ?? { x: NaN, y: NaN };
        return x / y;
      });
    expect(leans(20)).toEqual([expect.closeTo(-20 / 40, 9), expect.closeTo(10 / 40, 9)]);
    const [right = NaN, left = NaN] = leans(60);
    // 60 mm along the seam from the hem, some of them on its upright part.
    expect(right).toBeCloseTo(-20 / (40 + 60 - Math.hypot(20, 40)), 9);
    expect(left).toBeCloseTo(10 / (40 + 60 - Math.hypot(10, 40)), 9);
    expect(leans(150)).toEqual([expect.closeTo(-20 / 100, 9), expect.closeTo(10 / 100, 9)]);
  });

  it('is none at other corners, at a fold, and where nothing is turned up', () => {
    expect([0, 3, 4, 9].map((i) => hemSide(panel(40), i))).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
    expect(hemSide(panel(40, 'fold'), 2)).toBeUndefined();
    expect(hemSide(panel(0), 1)).toBeUndefined();
  });

  it('is none where the seam runs along its hem rather than up from it', () => {
    const flat = (rise: number) =>
      hemSide(
        {
          edges: [
            edge('seam', [line(point(100, 100 - rise), point(0, 100))]),
            edge('hem', [line(point(0, 100), point(-100, 100))], { turn: 'hem', allowance: 20 }),
          ],
          grain: { from: point(0, 0), to: point(0, 50) },
        },
        0,
      );
    // Within 30 degrees of the hem it rises by less than half of what it runs.
    expect(flat(100 * Math.tan((29 * Math.PI) / 180))).toBeUndefined();
    expect(flat(100 * Math.tan((31 * Math.PI) / 180))).toBeDefined();
  });
});

describe('the allowance of a hem', () => {
  // A cone: the gore at the height d is as long as its angle times (radius - d).
  it('of a gore is as wide at its edge as the gore is where it comes to lie', () => {
    fc.assert(
      fc.property(cone, (shape) => {
        const { radius, lean, hem, half } = shape;
        const bare = gore({ ...shape, allowance: 0 });
        const edgeOfCloth = edgeLength(rawEdge(cuttingLine(bare, PARALLEL), radius + hem));
        expect(Math.abs(edgeOfCloth - (half ? 1 : 2) * lean * (radius - hem))).toBeLessThan(
          lean < 0 ? Number.POSITIVE_INFINITY : 0.05,
        );
      }),
    );
  });

  it('of any gore lies flat when it is turned up, and is cut one allowance out', () => {
    fc.assert(
      fc.property(cone, (shape) => {
        fc.pre(Math.abs(shape.lean) * (shape.radius - 300) > 30);
        const made = gore({ ...shape, lean: Math.abs(shape.lean) });
        const cut = cuttingLine(made, PARALLEL);
        expect(cutReady(garment([made]), new Map([[made.name, cut]]), 0.05)).toEqual([]);
      }),
    );
  });

  it('that goes on straight with the seams does not lie flat, and is told', () => {
    const made = gore({ radius: 1000, lean: 0.15, hem: 40, allowance: 12 });
    const straight = gore({ radius: 1040, lean: 0.15, hem: 0, allowance: 12 });
    const cut = cuttingLine(straight, PARALLEL);
    const [fault] = hemFaults(made, cut);
    expect(fault).toMatchObject({ code: 'hem-lies-not-flat', path: 'gore/hem', limits: { max: HEM_EASE } });
    // 2 x 40 mm times the angle of the gore.
    expect(fault?.value).toBeCloseTo(2 * 40 * 0.3, 0);
    // From seam to seam, without their allowances: the angle of the gore times the radius, just inside the edge.
    const [below, above] = [...(fault?.message ?? '').matchAll(/([\d.]+) mm/g)].map(([, mm]) => Number(mm));
    expect(below).toBeCloseTo(0.3 * (1000 + 0.995 * 40), 0);
    expect(above).toBeCloseTo(0.3 * (1000 - 0.995 * 40), 0);
  });

  it('lies flat also where it goes more than half round, so that a seam run on meets its far side', () => {
    const shape = { radius: 500, lean: 1.8, hem: 20, allowance: 10 };
    const made = gore(shape);
    expect(hemFaults(made, cuttingLine(made, PARALLEL))).toEqual([]);
    const straightOn = cuttingLine(gore({ ...shape, radius: 520, hem: 0 }), PARALLEL);
    expect(hemFaults(made, straightOn)[0]?.value).toBeCloseTo(2 * 0.995 * 20 * 3.6, 0);
  });

  it('of a straight hem is the piece above it, mirrored: wider where the piece widens upward', () => {
    const made = polygon(
      'cuff',
      [
        [0, 0],
        [200, 0],
        [190, 100],
        [10, 100],
      ],
      [
        ['top', { rank: 3, allowance: 0 }],
        ['right', { allowance: 0 }],
        ['hem', { turn: 'hem', allowance: 40, rank: 5 }],
        ['left', { allowance: 0 }],
      ],
    );
    const cut = cuttingLine(made, PARALLEL);
    const corners = cut.curves.map(({ from }) =>
      [from.x, from.y].map((value) => Math.round(value * 1e6) / 1e6),
    );
    expect(corners).toContainEqual([194, 140]);
    expect(corners).toContainEqual([6, 140]);
    expect(hemFaults(made, cut)).toEqual([]);
  });

  it('runs straight down at a fold, and narrows at the seam for the whole of the half', () => {
    const shape = { radius: 1000, lean: 0.15, hem: 40, allowance: 0 };
    const half = cuttingLine(gore({ ...shape, half: true }), PARALLEL);
    const whole = cuttingLine(gore(shape), PARALLEL);
    expect(Math.min(...half.curves.map(({ from }) => from.x))).toBeCloseTo(0, 6);
    expect(edgeLength(rawEdge(half, 1040))).toBeCloseTo(edgeLength(rawEdge(whole, 1040)) / 2, 6);
  });

  it('hangs by the thread nearest to upright, so a gore cut on the cross or on the bias has the same', () => {
    const upright = gore({ radius: 1000, lean: 0.15, hem: 40, allowance: 12 });
    const cut = cuttingLine(upright, PARALLEL);
    for (const angle of [Math.PI / 4, Math.PI / 2, -Math.PI / 4]) {
      const { x, y } = heading(angle + Math.PI / 2);
      const turned = { ...upright, grain: { from: point(0, 0), to: point(100 * x, 100 * y) } };
      expect(edgeLength(cuttingLine(turned, PARALLEL))).toBeCloseTo(edgeLength(cut), 6);
    }
  });
});
