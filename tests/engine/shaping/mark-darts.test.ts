import { describe, expect, test } from 'vitest';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { dartedEdge } from '../../../engine/pattern/dart.ts';
import type { Piece, PieceEdge } from '../../../engine/pattern/piece.ts';
import { withDartsMarked } from '../../../engine/shaping/mark-darts.ts';
import { pivotDart } from '../../../engine/shaping/pivot-dart.ts';
import { walkPartner } from '../../../engine/shaping/walk-partner.ts';
import { line } from '../geometry/generators.ts';
import { edge, edgeNamed, made, pieceOf, rectangle } from './pieces.ts';

/** A front with a dart of 40 mm in its waist, legs to (100, 150). */
const front: Piece = pieceOf(
  [
    edge('shoulder', line(0, 0, 200, 20)),
    edge('side', line(200, 20, 220, 300)),
    edge('waist side', line(220, 300, 120, 300)),
    edge('leg a', line(120, 300, 100, 150)),
    edge('leg b', line(100, 150, 80, 300)),
    edge('waist front', line(80, 300, 0, 300)),
    edge('front', line(0, 300, 0, 0)),
  ],
  [{ name: 'bust', edge: 'side', at: 100, mark: 'single' }],
  10,
);

const pivoted = (piece: Piece, share: number): Piece =>
  withDartsMarked(made(pivotDart(piece, { to: { edge: 'side', at: 140 }, share })).piece);

describe('a dart is marked', () => {
  test('by its legs, without allowance, a notch at either side of its mouth and a drill hole short of its point', () => {
    const marked = withDartsMarked(front);
    for (const leg of ['leg a', 'leg b'])
      expect(edgeNamed(marked, leg)).toMatchObject({ turn: 'dart', allowance: 0 });
    expect(marked.notches).toEqual([
      ...front.notches,
      { name: 'leg a', edge: 'waist side', at: 100, mark: 'dart' },
      { name: 'leg b', edge: 'waist front', at: 0, mark: 'dart' },
    ]);
    expect(marked.marks).toMatchObject([{ kind: 'drill', at: { x: 100, y: 162 } }]);
  });

  test('once, however often', () => {
    expect(withDartsMarked(withDartsMarked(front))).toEqual(withDartsMarked(front));
  });

  test('no more when it is closed, and where it opens instead', () => {
    const closed = pivoted(withDartsMarked(front), 1);
    expect(closed.edges.filter(({ turn }) => turn === 'dart').map(({ name }) => name)).toEqual([
      'side dart leg 1',
      'side dart leg 2',
    ]);
    expect(edgeNamed(closed, 'waist side')).toMatchObject({ turn: 'seam', allowance: 12.7 });
    expect(closed.notches.map(({ edge: on, mark }) => [on, mark])).toEqual([
      ['side 1', 'single'],
      ['side 1', 'dart'],
      ['side 2', 'dart'],
    ]);
    expect(closed.marks).toHaveLength(1);
    expect(distance(closed.marks[0]?.at ?? point(0, 0), point(100, 150))).toBeCloseTo(12, 9);
  });

  test('unless its legs are faced or hemmed, as those of a pointed neck, or stand as wide apart as a square one’s', () => {
    const faced = front.edges.map(
      (each): PieceEdge => (each.name.startsWith('leg') ? { ...each, turn: 'finished' } : each),
    );
    expect(withDartsMarked({ ...front, edges: faced })).toEqual({ ...front, edges: faced });
    const square = pieceOf([
      edge('shoulder', line(0, 0, 100, 0)),
      edge('neck side', line(100, 0, 100, 60)),
      edge('neck front', line(100, 60, 160, 60)),
      edge('front', line(160, 60, 160, 200)),
      edge('waist', line(160, 200, 0, 200)),
      edge('side', line(0, 200, 0, 0)),
    ]);
    expect(withDartsMarked(square)).toEqual(square);
  });
});

describe('an edge with a dart in it', () => {
  test('is one seam once the dart is sewn, by either name, and not round the corner', () => {
    const open = pivoted(front, 1);
    for (const name of ['side', 'side 1', 'side 2'])
      expect(dartedEdge(open.edges, name).map((part) => part.name)).toEqual(['side 1', 'side 2']);
    expect(dartedEdge(open.edges, 'shoulder').map((part) => part.name)).toEqual(['shoulder']);
    expect(dartedEdge(open.edges, 'hem')).toEqual([]);
  });

  test('walks with the dart closed, and so does its partner', () => {
    const length = edgeLength(edgeNamed(front, 'side'));
    const partner = { piece: rectangle(100, length), edge: 'side' };
    const walked = made(walkPartner(front, { piece: pivoted(front, 0.5), edge: 'side' }, partner));
    expect(walked).toMatchObject({ verdict: 'plain', before: length });
    expect(walked.after).toBeCloseTo(length, 6);
    const turned = { piece: pivoted(front, 1), edge: 'side 2' };
    expect(made(walkPartner(partner.piece, partner, turned)).partnerLength).toBeCloseTo(length, 6);
  });
});
