import { describe, expect, it } from 'vitest';
import { cutReady, labelFaults } from '../../../engine/checks/cut-ready.ts';
import { cuttingLine } from '../../../engine/finishing/cut-line.ts';
import { cuttingLines } from '../../../engine/finishing/cut-lines.ts';
import type { Curve, Edge } from '../../../engine/geometry/curve.ts';
import { point } from '../../../engine/geometry/point.ts';
import { reversed, split } from '../../../engine/geometry/split.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import { movedBy, transformedEdge } from '../../../engine/geometry/transform.ts';
import { vector } from '../../../engine/geometry/vector.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import type { Piece, PieceEdge } from '../../../engine/pattern/piece.ts';
import { cubic, edge, garment, line, piece } from '../garments.ts';

/** A hollow armhole, drawn in one and cut in two by a princess seam that meets it at a slant. */
const armhole: Curve = cubic(point(0, 0), point(40, 70), point(90, 120), point(180, 130));
const [upper, lower] = split(armhole, 0.45);
const meeting = upper.to;
const princess: Curve = cubic(meeting, point(meeting.x + 5, 150), point(60, 220), point(60, 350));

const allowed = (allowance: number, rank: number): Partial<PieceEdge> => ({ allowance, rank });

const centre = (allowance = 12.7): Piece =>
  piece('centre', [
    edge('armhole', [upper], allowed(12.7, 3)),
    edge('princess', [princess], allowed(allowance, 1)),
    edge('waist', [line(point(60, 350), point(-60, 350))], allowed(12.7, 4)),
    edge('front', [line(point(-60, 350), point(-60, 0))], { turn: 'fold', allowance: 0 }),
    edge('neck', [line(point(-60, 0), point(0, 0))], allowed(12.7, 2)),
  ]);

const side = (armholeAllowance = 12.7): Piece =>
  piece('side', [
    edge('armhole', [lower], allowed(armholeAllowance, 3)),
    edge('side', [line(point(180, 130), point(180, 350))], allowed(12.7, 2)),
    edge('waist', [line(point(180, 350), point(60, 350))], allowed(12.7, 4)),
    edge('princess', [reversed(princess)], allowed(12.7, 1)),
  ]);

const sewn = (pieces: readonly Piece[]): Garment =>
  garment(pieces, {
    seams: [
      {
        name: 'princess seam',
        a: [{ piece: 'centre', edge: 'princess' }],
        b: [{ piece: 'side', edge: 'princess', reversed: true }],
        ease: 0,
        gatherRatio: 1,
      },
    ],
  });

const apart = (made: Garment): Map<string, Edge> =>
  new Map(made.pieces.map((p) => [p.name, cuttingLine(p, PARALLEL)]));

const codes = (made: Garment, cuts: ReadonlyMap<string, Edge>) =>
  cutReady(made, cuts, 0.05).map((issue) => issue.code);

const only = (made: Piece, cut: Edge | undefined) =>
  codes(garment([made]), new Map(cut ? [[made.name, cut]] : []));

describe('checking that a garment can be cut', () => {
  it('finds nothing wrong with cutting lines made for each other', () => {
    const made = sewn([centre(), side()]);
    expect(cutReady(made, cuttingLines(made, PARALLEL), 0.05)).toEqual([]);
  });

  it('finds allowances that are not flush because a hollow armhole crosses the seam at a slant', () => {
    const made = sewn([centre(), side()]);
    const [issue] = cutReady(made, apart(made), 0.05);
    expect(issue).toMatchObject({ code: 'allowances-not-flush', path: 'princess seam' });
    expect(issue?.message).toMatch(/At the start of the seam .* farther than that of/);
    expect(issue?.value).toBeLessThan(1);
  });

  it('finds allowances that are not flush because one armhole has a wider allowance, and makes them so', () => {
    const made = sewn([centre(), side(14)]);
    expect(codes(made, apart(made))).toEqual(['allowances-not-flush']);
    expect(codes(made, cuttingLines(made, PARALLEL))).toEqual([]);
  });

  it('takes seam allowances of two widths, whose ends are flush as far as both go', () => {
    const made = sewn([centre(10), side()]);
    expect(codes(made, cuttingLines(made, PARALLEL))).toEqual([]);
  });

  it('finds a cutting line made for a smaller allowance, and says how wide it is', () => {
    const narrow = cuttingLine(centre(12.6), PARALLEL);
    const issues = cutReady(garment([centre()]), new Map([['centre', narrow]]), 0.05);
    // The corners at its ends are too narrow for its neighbours as well.
    expect(issues.map((issue) => [issue.code, issue.path])).toEqual([
      ['allowance-not-kept', 'centre/armhole'],
      ['allowance-not-kept', 'centre/princess'],
      ['allowance-not-kept', 'centre/waist'],
    ]);
    const issue = issues[1];
    expect(issue?.value).toBeCloseTo(12.6, 1);
    expect(issue?.message).toContain('not 12.7 mm away from the edge "princess"');
  });

  it('finds a cutting line made for a larger allowance', () => {
    expect(only(centre(), cuttingLine(centre(12.8), PARALLEL))).toEqual(['allowance-not-kept']);
  });

  it('finds a cutting line that is moved by 0.2 mm', () => {
    const moved = transformedEdge(cuttingLine(side(), PARALLEL), movedBy(vector(0.2, 0)));
    expect(only(side(), moved)).toContain('allowance-not-kept');
  });

  it('finds a cutting line with one corner pulled in', () => {
    const cut = cuttingLine(side(), PARALLEL);
    const last = cut.curves.length - 1;
    const corner = cut.curves[0]?.from ?? point(0, 0);
    const pulled = point(corner.x + 8, corner.y + 8);
    const curves = cut.curves.map((curve, i) => ({
      ...curve,
      ...(i === 0 ? { from: pulled } : {}),
      ...(i === last ? { to: pulled } : {}),
    }));
    expect(only(side(), { ...cut, curves })).toContain('allowance-not-kept');
  });

  it('finds a cutting line that is missing, open, anticlockwise or crosses itself', () => {
    const cut = cuttingLine(side(), PARALLEL);
    expect(only(side(), undefined)).toEqual(['cutting-line-missing']);
    expect(only(side(), { ...cut, curves: cut.curves.slice(1) })).toEqual(['cutting-line-open']);
    const backward = { ...cut, curves: cut.curves.toReversed().map(reversed) };
    expect(only(side(), backward)).toEqual(['cutting-line-anticlockwise']);
    const corner = cut.curves[0]?.from ?? point(0, 0);
    const loop = [
      point(corner.x - 9, corner.y),
      point(corner.x - 9, corner.y - 30),
      point(corner.x + 30, corner.y - 9),
    ];
    const ends = [corner, ...loop, corner];
    const detour = ends.slice(1).map((to, i) => line(ends[i] ?? to, to));
    expect(only(side(), { ...cut, curves: [...cut.curves, ...detour] })).toEqual(['cutting-line-crosses']);
  });

  it('finds a label that lies over a line, the grainline or the edge', () => {
    const made = side();
    const label = (x: number, y: number) =>
      labelFaults(made, [{ middle: point(x, y), width: 40, height: 20 }]).map((issue) => issue.code);
    expect(label(145, 280)).toEqual([]);
    expect(label(175, 280)).toEqual(['label-over-line']);
    expect(label(made.grain.from.x, made.grain.from.y)).toEqual(['label-over-line']);
  });
});
