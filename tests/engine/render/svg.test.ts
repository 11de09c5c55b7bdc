import { describe, expect, test } from 'vitest';
import { boundingBox, boundsAbout } from '../../../engine/geometry/bounds.ts';
import { readMarkup } from '../../../engine/reading/read-markup.ts';
import { readPath } from '../../../engine/reading/read-path.ts';
import { pieceSvgs } from '../../../engine/render/svg.ts';
import { smallCutLines, smallGarment } from './small-garment.ts';

/** White round the drawing and between its parts, mm. */
const MARGIN = 10;

describe('one piece on a paper of its own', () => {
  test.each([...pieceSvgs(smallGarment, smallCutLines)])(
    '%s has its squares below it, all within the margin',
    (_, svg) => {
      const read = readMarkup(svg);
      const elements = read.ok ? read.value.elements : [];
      const [, , width = 0, height = 0] = (elements[0]?.attributes.viewBox ?? '').split(' ').map(Number);
      const drawn = boundsAbout(
        elements
          .filter(({ name, attributes }) => name === 'path' && attributes['data-piece'] !== undefined)
          .map(({ attributes }) => readPath(attributes.d ?? ''))
          .map((path) => boundingBox(path.ok ? path.curves : [])),
      );
      expect(drawn.left).toBeCloseTo(MARGIN, 3);
      expect(drawn.top).toBeCloseTo(MARGIN, 3);
      const squares = elements
        .filter(({ attributes }) => attributes.class === 'square')
        .map(({ attributes }) => attributes)
        .map(({ x, y, width: w, height: h }) => ({ x: Number(x), y: Number(y), w: Number(w), h: Number(h) }));
      expect(squares).toHaveLength(2);
      for (const { x, y, w, h } of squares) {
        expect(x).toBeGreaterThanOrEqual(MARGIN);
        expect(y).toBeGreaterThanOrEqual(drawn.bottom + MARGIN - 1e-3);
        expect(x + w).toBeLessThanOrEqual(width - MARGIN);
        expect(y + h).toBeLessThanOrEqual(height - MARGIN);
      }
      // No paper is wasted: what reaches farthest leaves a margin and less than the whole millimetre it is rounded to.
      const right = Math.max(drawn.right, ...squares.map(({ x, w }) => x + w));
      expect(width).toBe(Math.ceil(right + MARGIN - 1e-3));
      expect(squares[0]?.y).toBeCloseTo(drawn.bottom + MARGIN, 0);
    },
  );
});
