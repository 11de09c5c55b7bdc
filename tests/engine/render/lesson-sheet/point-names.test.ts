import { describe, expect, it } from 'vitest';
import { distanceToStroke } from '../../../../engine/finishing/rectangle.ts';
import { point } from '../../../../engine/geometry/point.ts';
import { nameSize } from '../../../../engine/render/booklet/picture.ts';
import { shareBefore } from '../../../../engine/render/ink.ts';
import { lessonContent } from '../../../../engine/render/lesson-sheet/content.ts';
import { pointNames } from '../../../../engine/render/lesson-sheet/point-names.ts';
import { textWidth } from '../../../../engine/render/text-size.ts';
import { drafted, shippedBody } from '../../../drafts/drafted.ts';

const size = { width: 78, height: 60 };

type Names = ReturnType<typeof pointNames>;

/** The room that a name takes, a letter as broad as the broadest of common faces. */
const boxOf = ({ text, at, anchored = 'middle' }: Names['words'][number]) => {
  const width = textWidth(text, nameSize);
  const left = at.x - shareBefore(anchored) * width;
  return { left, right: left + width, top: at.y - nameSize, bottom: at.y };
};

const meet = (a: ReturnType<typeof boxOf>, b: ReturnType<typeof boxOf>): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

const pairs = <T>(all: readonly T[]): (readonly [T, T])[] =>
  all.flatMap((a, i) => all.slice(i + 1).map((b) => [a, b] as const));

describe('names of points', () => {
  it('stand beside their point', () => {
    const at = point(30, 30);
    const { words, leaders } = pointNames([{ name: 'side', at }], { ...size, lines: [], points: [at] });
    expect(words).toEqual([
      { kind: 'name', text: 'side', at: expect.objectContaining({ x: 31.6 }), anchored: 'start' },
    ]);
    expect(leaders).toEqual([]);
  });

  it('stand on the other side of a point at the right edge', () => {
    const at = point(70, 30);
    const { words } = pointNames([{ name: 'princess line', at }], { ...size, lines: [], points: [at] });
    expect(words[0]?.anchored).toBe('end');
  });

  it('of points close together are led out, and lie neither on each other nor outside', () => {
    const points = [20, 21, 22, 23].map((y) => point(40, y));
    const named = points.map((at) => ({ name: 'princess line', at }));
    const { words, leaders } = pointNames(named, { ...size, lines: [], points });
    const boxes = words.map(boxOf);
    for (const [a, b] of pairs(boxes)) expect(meet(a, b)).toBe(false);
    for (const { left, right } of boxes) {
      expect(left).toBeGreaterThanOrEqual(0);
      expect(right).toBeLessThanOrEqual(size.width);
    }
    expect(leaders.length).toBeGreaterThan(0);
  });

  it('do not lie on a line', () => {
    const at = point(40, 30);
    const lines = [27, 30, 33].map((y) => ({
      weight: 'cut' as const,
      curves: [{ kind: 'line' as const, from: point(0, y), to: point(78, y) }],
    }));
    const { words } = pointNames([{ name: 'waist', at }], { ...size, lines, points: [at] });
    const [box] = words.map(boxOf);
    for (const { curves } of lines)
      for (const stroke of curves) {
        const middle = point(((box?.left ?? 0) + (box?.right ?? 0)) / 2, (box?.bottom ?? 0) - nameSize / 2);
        expect(distanceToStroke({ middle, width: 1, height: nameSize * 0.6 }, stroke)).toBeGreaterThan(0);
      }
  });
});

describe.each(['leading-lady', 'wardrobe-mistress', 'scene-painter'] as const)(
  'in the lesson of %s',
  (name) => {
    it('no name of the dress lies on another or is cut off', () => {
      const { chapters } = lessonContent(drafted('dress', shippedBody(name)).garment, {});
      const pictures = chapters.flatMap(({ steps }) => steps.flatMap(({ pictures: all }) => all));
      expect(pictures.length).toBeGreaterThan(40);
      for (const { caption, picture } of pictures) {
        const boxes = picture.words.map((word) => ({ ...boxOf(word), text: word.text }));
        const lying = pairs(boxes).filter(([a, b]) => meet(a, b));
        const cutOff = boxes.filter(({ left, right }) => left < -0.6 || right > picture.width + 0.6);
        expect({ caption, lying, cutOff }).toEqual({ caption, lying: [], cutOff: [] });
      }
    });
  },
);
