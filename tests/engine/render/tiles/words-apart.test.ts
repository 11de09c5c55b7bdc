import { describe, expect, it } from 'vitest';
import type { Bounds } from '../../../../engine/geometry/bounds.ts';
import type { Vector } from '../../../../engine/geometry/vector.ts';
import type { Ink } from '../../../../engine/render/ink.ts';
import { inkBounds } from '../../../../engine/render/ink-bounds.ts';
import { readPaper } from '../../../../engine/render/tiles/papers.ts';
import { printPages } from '../../../../engine/render/tiles/print-pages.ts';
import { drafted, shippedBody } from '../../../drafts/drafted.ts';

const isMark = (ink: Ink): boolean => 'class' in ink && ink.class === 'crossing';

const meet = (one: Bounds, other: Bounds): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

const onPage = (ink: Ink, { x, y }: Vector, clip?: Bounds): Bounds => {
  const { left, right, top, bottom } = inkBounds(ink);
  const whole = { left: left + x, right: right + x, top: top + y, bottom: bottom + y };
  if (!clip) return whole;
  return {
    left: Math.max(whole.left, clip.left),
    right: Math.min(whole.right, clip.right),
    top: Math.max(whole.top, clip.top),
    bottom: Math.min(whole.bottom, clip.bottom),
  };
};

/** What lies on each other, of the words and crossing marks that a tile shows. */
function overlaps(garment: string, body: string, name: string): readonly string[] {
  const paper = readPaper(name);
  if (!paper.ok) throw new Error(name);
  const { garment: made, cutLines } = drafted(garment, shippedBody(body));
  const printed = printPages(made, cutLines, paper.value);
  if (!printed.ok) throw new Error('not printed');
  return printed.value.pages.slice(1).flatMap(({ parts }) => {
    const shown = parts.flatMap(({ ink, shift, clip }) =>
      ink.flatMap((one) => {
        if (one.kind !== 'words' && !isMark(one)) return [];
        const bounds = onPage(one, shift, clip);
        return clip && !meet(bounds, clip) ? [] : [{ ink: one, bounds }];
      }),
    );
    return shown.flatMap((one, i) =>
      shown.slice(i + 1).flatMap((other) => {
        if (isMark(one.ink) && isMark(other.ink)) return [];
        return meet(one.bounds, other.bounds) ? [`${said(one.ink)} on ${said(other.ink)}`] : [];
      }),
    );
  });
}

const said = (ink: Ink): string => (ink.kind === 'words' ? `“${ink.text}”` : 'a crossing mark');

describe('what the words of a tile lie on', () => {
  it.each([
    ['trial', 'wardrobe-mistress', 'a4'],
    ['trial', 'leading-lady', 'letter'],
    ['trial', 'scene-painter', 'a4'],
    ['dress', 'leading-lady', 'a4'],
    ['dress', 'prompter', 'letter'],
    ['skirt', 'wardrobe-mistress', 'a4'],
  ])('is no other word and no crossing mark: %s of %s on %s', (garment, body, paper) => {
    expect(overlaps(garment, body, paper)).toEqual([]);
  });
});
