import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { point } from '../../../engine/geometry/point.ts';
import type { InkWords } from '../../../engine/render/ink.ts';
import { inkBounds } from '../../../engine/render/ink-bounds.ts';
import { uniform } from '../../uniform.ts';

const anywhere = uniform(-900, 900);
const anyWords = fc.record({
  kind: fc.constant('words' as const),
  text: fc.string({ minLength: 1, maxLength: 30 }),
  at: fc.record({ x: anywhere, y: anywhere }),
  size: fc.double({ min: 1, max: 9, noNaN: true }),
  anchored: fc.constantFrom('start' as const, 'middle' as const, 'end' as const),
});

describe('the room kept for words', () => {
  it('stands on their baseline, from where they begin or about their middle', () => {
    const words: InkWords = { kind: 'words', text: 'level', at: point(100, 50), size: 5 };
    const { left, right, top, bottom } = inkBounds(words);
    expect(left).toBe(100);
    expect(bottom).toBeGreaterThanOrEqual(50);
    expect(bottom - top).toBe(5);
    expect(inkBounds({ ...words, anchored: 'middle' })).toMatchObject({
      left: 200 - (left + right) / 2,
      top,
      bottom,
    });
  });

  it('turns with them: where they read upwards about a place, it is turned a quarter to the left about it', () => {
    fc.assert(
      fc.property(anyWords, anywhere, anywhere, (words, px, py) => {
        const flat = inkBounds(words);
        const turned = inkBounds({ ...words, turnedAbout: point(px, py) });
        // rotate(-90) of SVG 1.1 (section 7.6): x' = y and y' = -x about the pivot.
        expect(turned.left).toBeCloseTo(px + (flat.top - py), 6);
        expect(turned.right).toBeCloseTo(px + (flat.bottom - py), 6);
        expect(turned.top).toBeCloseTo(py - (flat.right - px), 6);
        expect(turned.bottom).toBeCloseTo(py - (flat.left - px), 6);
      }),
    );
  });
});

describe('the rectangle about other ink', () => {
  it('reaches a radius round a circle, and from corner to corner of a box', () => {
    expect(inkBounds({ kind: 'circle', class: 'drill', middle: point(10, 20), radius: 3 })).toEqual({
      left: 7,
      right: 13,
      top: 17,
      bottom: 23,
    });
    expect(inkBounds({ kind: 'box', class: 'square', corner: point(10, 20), width: 3, height: 5 })).toEqual({
      left: 10,
      right: 13,
      top: 20,
      bottom: 25,
    });
  });
});
