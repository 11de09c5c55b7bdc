import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, test } from 'vitest';
import { garments } from '../../../drafts/garments-by-name.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { screenPieces } from '../../../engine/render/screen-pieces.ts';
import { measurements } from '../bib.ts';

const made = evaluate(garments.dress, measurements);
if (!made.ok) throw new Error('not drafted');
const { garment, cutLines } = made.value;
const pieces = screenPieces(garment, cutLines, 'slit');

describe('pieces on a screen', () => {
  test('are all there, in their order, each within the rectangle that is said', () => {
    expect(pieces.map(({ name }) => name)).toEqual(garment.pieces.map(({ name }) => name));
    for (const { left, top, width, height, middle } of pieces) {
      expect(middle[0]).toBeGreaterThan(left);
      expect(middle[0]).toBeLessThan(left + width);
      expect(middle[1]).toBeGreaterThan(top);
      expect(middle[1]).toBeLessThan(top + height);
    }
  });

  test('have edges as long as they are drafted, measured by another hand', () => {
    for (const [i, piece] of garment.pieces.entries())
      for (const edge of piece.edges) {
        const line = pieces[i]?.lines.find((each) => each.edge === edge.name);
        const length = new svgPathProperties(line?.d ?? '').getTotalLength();
        // Each place is rounded to a hundredth of a mm.
        expect(Math.abs(length - edgeLength(edge)), `${piece.name} ${edge.name}`).toBeLessThan(0.05);
      }
  });
});
