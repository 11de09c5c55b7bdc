import { describe, expect, test } from 'vitest';
import { cuttingLines } from '../../../engine/finishing/cut-lines.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import { markerOf } from '../../../engine/lay-plan/marker.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';

const [one, other] = (['leading-lady', 'prompter'] as const).map((name) => {
  const { garment } = drafted('skirt', shippedBody(name));
  return { garment, cutLines: cuttingLines(garment, PARALLEL) };
});
if (!one || !other) throw new Error('no skirts');

const { garment, cutLines } = markerOf([
  { size: '40', ...one, count: 2 },
  { size: '42', ...other, count: 1 },
]);

describe('several sizes put together to be cut', () => {
  test('have all pieces of each, with the size in their names, and a cutting line each', () => {
    const { length } = one.garment.pieces;
    expect(garment.pieces).toHaveLength(2 * length);
    expect(cutLines.size).toBe(2 * length);
    expect(cutLines.get('skirt side front, 40')).toBe(one.cutLines.get('skirt side front'));
    expect(garment.body).toBe('sizes 40 (2 times), 42');
  });

  test('are cut as often as each is wanted', () => {
    const countOf = (name: string) => garment.pieces.find((piece) => piece.name === name)?.cut[0]?.count;
    const own = one.garment.pieces.find(({ name }) => name === 'skirt side front')?.cut[0]?.count ?? 0;
    expect(own).toBe(2);
    expect(countOf('skirt side front, 40')).toBe(2 * own);
    expect(countOf('skirt side front, 42')).toBe(own);
  });

  test('are sewn size by size: seams and steps name only pieces, edges and seams that are there', () => {
    const edges = new Set(
      garment.pieces.flatMap(({ name, edges: own }) => own.map((edge) => `${name}/${edge.name}`)),
    );
    const seams = new Set(garment.seams.map(({ name }) => name));
    expect(seams.size).toBe(garment.seams.length);
    for (const { a, b } of garment.seams)
      for (const { piece, edge } of [...a, ...b]) expect(edges).toContain(`${piece}/${edge}`);
    for (const { sews = [], turns = [] } of garment.sewing ?? []) {
      for (const name of sews) expect(seams).toContain(name);
      for (const { piece, edge } of turns) expect(edges).toContain(`${piece}/${edge}`);
    }
  });

  test('cannot be none', () => {
    expect(() => markerOf([])).toThrow('needs a size');
  });
});
