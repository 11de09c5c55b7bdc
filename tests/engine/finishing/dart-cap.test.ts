import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutReady } from '../../../engine/checks/cut-ready.ts';
import { dartLegFaults } from '../../../engine/checks/darts.ts';
import { cuttingLine } from '../../../engine/finishing/cut-line.ts';
import { notchStrokes } from '../../../engine/finishing/notches.ts';
import { arc } from '../../../engine/geometry/arc.ts';
import type { Edge } from '../../../engine/geometry/curve.ts';
import { edgeLength, edgeStart } from '../../../engine/geometry/edge.ts';
import { pointAt } from '../../../engine/geometry/evaluate.ts';
import { contains, isSimple } from '../../../engine/geometry/inside.ts';
import { edgeCrossings, type StraightLine, upright } from '../../../engine/geometry/intersect.ts';
import { nearestOnEdge } from '../../../engine/geometry/nearest.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { distance, moved, type Point, point, vectorBetween } from '../../../engine/geometry/point.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import { mirroredIn } from '../../../engine/geometry/transform.ts';
import { cross, unit, vector } from '../../../engine/geometry/vector.ts';
import { pressedOver, type SewnDart, sewnDarts, shut } from '../../../engine/pattern/dart.ts';
import type { Piece, PieceEdge } from '../../../engine/pattern/piece.ts';
import { dartsOf, drawnShort } from '../../../engine/shaping/darts.ts';
import { withDartsMarked } from '../../../engine/shaping/mark-darts.ts';
import { pivotDart } from '../../../engine/shaping/pivot-dart.ts';
import { uniform } from '../../uniform.ts';
import { garment } from '../garments.ts';
import { cubic, line } from '../geometry/generators.ts';
import { edge, edgeNamed, made, pieceOf } from '../shaping/pieces.ts';

/** A front with a dart in its waist, equal legs, the mouth `lean` mm aside of its point; `rise` of the waist in front. */
const front = (intake: number, lean = 0, bow = 0, rise = 0): Piece => {
  const [apex, right, left] = [point(100, 150), 100 + lean + intake / 2, 100 + lean - intake / 2];
  const depth = Math.sqrt((right - apex.x) ** 2 + 150 ** 2 - (left - apex.x) ** 2);
  const leftY = apex.y + depth;
  return withDartsMarked(
    pieceOf(
      [
        edge('shoulder', line(0, 0, 200, 20)),
        edge('side', cubic(200, 20, 200 - bow, 110, 220 - bow, 200, 220, 300)),
        edge('waist side', line(220, 300, right, 300)),
        edge('leg a', line(right, 300, apex.x, apex.y)),
        edge('leg b', line(apex.x, apex.y, left, leftY)),
        edge('waist front', line(left, leftY, 0, leftY - rise)),
        edge('front', line(0, leftY - rise, 0, 0)),
      ],
      [],
      10,
    ),
  );
};

const faults = (piece: Piece, cut: Edge) =>
  cutReady(garment([piece]), new Map([[piece.name, cut]]), 0.05).map(({ message }) => message);

/** Where the cutting line meets the upright line at x below y, the highest place. */
const heightAt = (cut: Edge, x: number, below: number): number =>
  Math.min(...edgeCrossings(cut, upright(x)).flatMap(({ point: { y } }) => (y > below ? [y] : [])));

const apexes = (piece: Piece, short: number): readonly PieceEdge[] =>
  dartsOf(piece.edges).reduce((edges, { apex }) => drawnShort(edges, apex, short), piece.edges);

describe('the cutting line across a dart', () => {
  test('keeps the cloth inside; of a waist level on both sides it is the waist mirrored in the legs', () => {
    const piece = front(40);
    const cut = cuttingLine(piece, PARALLEL);
    expect(contains([cut], point(100, 290))).toBe(true);
    // The leg slopes by a; the waist's parallel meets it prolonged and turns by 2 a (reflection), up to x = 100.
    const [slope, width] = [20 / 150, 12.7];
    const turned = Math.tan(2 * Math.atan(slope));
    expect(heightAt(cut, 100, 200)).toBeCloseTo(300 + width + (20 + width * slope) * turned, 6);
    expect(heightAt(cut, 110, 200)).toBeCloseTo(300 + width + (10 + width * slope) * turned, 6);
    expect(heightAt(cut, 125, 200)).toBeCloseTo(300 + width, 6);
  });

  test('is simple, and folded on paper lies flush with its neighbours, for any dart in any edge', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 6, max: 60, noNaN: true }),
        uniform(-40, 40),
        uniform(-12, 12),
        fc.double({ min: 40, max: 230, noNaN: true }),
        fc.constantFrom(0.3, 0.5, 1),
        (intake, lean, bow, at, share) => {
          const piece = front(intake, lean, bow);
          const turned = made(pivotDart(piece, { to: { edge: 'side', at }, share })).piece;
          const both = share < 1 ? { ...turned, edges: apexes(turned, 19) } : turned;
          for (const each of [piece, withDartsMarked(both)]) {
            const cut = cuttingLine(each, PARALLEL);
            expect(isSimple([cut])).toBe(true);
            expect(faults(each, cut)).toEqual([]);
            expect(dartLegFaults(each, 0.05)).toEqual([]);
            // Where the edge it should be pressed over is too short, it is pressed over the other.
            for (const dart of sewnDarts(each.edges))
              expect(Math.min(foldedGap(dart, 'before', cut), foldedGap(dart, 'after', cut))).toBeLessThan(
                0.01,
              );
          }
        },
      ),
      { numRuns: 60, endOnFailure: true },
    );
  });

  test('turns to the other side where the edge is shorter than the fold is deep', () => {
    const piece = front(40, -75);
    const cut = cuttingLine(piece, PARALLEL);
    expect(edgeLength(edgeNamed(piece, 'waist front'))).toBeLessThan(10);
    expect(faults(piece, cut)).toEqual([]);
    const [dart] = sewnDarts(piece.edges);
    expect(dart && foldedGap(dart, 'before', cut)).toBeLessThan(0.01);
  });

  test('is notched where the seam of the dart, prolonged, meets it, so that both notches meet when it is folded', () => {
    const piece = made(pivotDart(front(40, 0, 0, 20), { to: { edge: 'side', at: 200 }, share: 1 })).piece;
    const marked = withDartsMarked(piece);
    const cut = cuttingLine(marked, PARALLEL);
    const tips = notchStrokes(marked, 'wedge').flatMap(({ strokes }) => strokes.flat().map(({ to }) => to));
    expect(tips).toHaveLength(2);
    for (const tip of tips) expect(nearestOnEdge(cut, tip).distance).toBeLessThan(0.5);
    const [dart] = sewnDarts(marked.edges);
    const [one, other] = tips;
    expect(dart && one && other && distance(shut(dart)(other), one)).toBeLessThan(0.5);
  });

  test('of one edge all round from mouth to mouth meets that edge on both sides', () => {
    const rim = arc(point(0, 0), vector(100, 20), 2 * Math.PI - 2 * Math.atan(0.2), 1e-6).curves;
    const [from, to] = [rim[0]?.from ?? point(0, 0), rim.at(-1)?.to ?? point(0, 0)];
    const legs = [edge('leg a', line(to.x, to.y, 0, 0)), edge('leg b', line(0, 0, from.x, from.y))];
    const disc = withDartsMarked(pieceOf([edge('rim', ...rim), ...legs], [], -40));
    expect(faults(disc, cuttingLine(disc, PARALLEL))).toEqual([]);
  });

  test('cut straight across the mouth is told from one that lies flush', () => {
    const piece = front(40);
    const cut = cuttingLine(piece, PARALLEL);
    const curves = cut.curves.map((curve) =>
      curve.kind === 'line' ? { ...curve, from: lifted(curve.from), to: lifted(curve.to) } : curve,
    );
    expect(faults(piece, { ...cut, curves })).toEqual([expect.stringContaining('does not lie flush')]);
  });

  test('pivoted there and back is what it was, by any angle from any place', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 6, max: 60, noNaN: true }),
        fc.double({ min: 40, max: 230, noNaN: true }),
        (intake, at) => {
          // Straight on over the closed dart, so that there is no peak to blend away.
          const rise = (100 - intake / 2) * Math.tan(2 * Math.atan(intake / 300));
          const piece = front(intake, 0, 0, rise);
          const there = made(pivotDart(piece, { to: { edge: 'side', at }, share: 1 })).piece;
          const to = { edge: 'waist side', at: edgeLength(edgeNamed(piece, 'waist side')) };
          const back = withDartsMarked(made(pivotDart(withDartsMarked(there), { to, share: 1 })).piece);
          expect(back.edges).toHaveLength(piece.edges.length);
          for (const was of piece.edges) {
            const away = back.edges.map((is) => distance(edgeStart(is), edgeStart(was)));
            expect(Math.min(...away), was.name).toBeLessThan(0.01);
          }
          const [old, cut] = [piece, back].map((each) => cuttingLine(each, PARALLEL));
          if (!old || !cut) return;
          expect(signedArea([cut])).toBeCloseTo(signedArea([old]), -1);
          for (const curve of cut.curves) expect(nearestOnEdge(old, curve.from).distance).toBeLessThan(0.1);
        },
      ),
      { numRuns: 20, endOnFailure: true },
    );
  });
});

/** The lowest of a level waist's tooth laid up to its allowance. */
const lifted = (p: Point): Point => (p.y > 312.7 + 1e-6 && Math.abs(p.x - 100) < 1 ? point(p.x, 312.7) : p);

/**
 * How far the cap of a dart is from the cutting line beside it, when its one half is reflected in the leg it is pressed
 * over, and its other half first in the fold.
 */
function foldedGap(dart: SewnDart, over: 'before' | 'after', cut: Edge): number {
  const [leg, sign] = over === 'before' ? [dart.first, 1] : [dart.second, -1];
  const inLine = ({ through, heading }: StraightLine) => mirroredIn(through, moved(through, heading));
  const past = ({ through, heading }: StraightLine, p: Point) =>
    cross(unit(heading), vectorBetween(through, p));
  const depth = edgeLength(dart.legs[0]);
  const inCap = (p: Point): boolean =>
    past(dart.first, p) > 0.01 &&
    past(dart.second, p) < -0.01 &&
    Math.abs(distance(p, dart.apex) - depth) < 60;
  const places = cut.curves.flatMap((curve) =>
    Array.from({ length: 12 }, (_, i) => pointAt(curve, (i + 0.5) / 12)).filter(inCap),
  );
  expect(places.length).toBeGreaterThan(3);
  return Math.max(
    ...places.map((p) => {
      const near = sign * past(dart.middle, p) < 0 ? p : inLine(dart.middle)(p);
      return nearestOnEdge(cut, inLine(leg)(near)).distance;
    }),
  );
}

describe('a dart is pressed', () => {
  test('to the centre at the waist: to the fold, to the middle of a whole piece, otherwise away from the side', () => {
    const piece = front(40);
    expect(sides(piece)).toEqual(['after']);
    const folded = piece.edges.map((each) =>
      each.name === 'front' ? { ...each, turn: 'fold' as const } : each,
    );
    expect(sides({ ...piece, edges: folded })).toEqual(['after']);
    const onSide = piece.edges.map((each) =>
      each.name === 'side' ? { ...each, turn: 'fold' as const } : each,
    );
    expect(sides({ ...piece, edges: onSide })).toEqual(['before']);
    const cut = [{ cloth: 'self' as const, count: 1, onFold: false, pair: false }];
    expect(sides({ ...front(40, -30), cut })).toEqual(['before']);
    expect(sides({ ...front(40, 40), cut })).toEqual(['after']);
  });

  test('down at the side', () => {
    const turned = made(pivotDart(front(40), { to: { edge: 'side', at: 140 }, share: 1 })).piece;
    expect(sides(withDartsMarked(turned))).toEqual(['after']);
  });
});

const sides = (piece: Piece) => sewnDarts(piece.edges).map((dart) => pressedOver(dart, piece));
