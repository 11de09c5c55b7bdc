import { describe, expect, it } from 'vitest';
import { pointAt } from '../../../../engine/geometry/evaluate.ts';
import { inkBounds } from '../../../../engine/render/ink-bounds.ts';
import { readPaper } from '../../../../engine/render/tiles/papers.ts';
import { printPages } from '../../../../engine/render/tiles/print-pages.ts';
import { drafted, shippedBody } from '../../../drafts/drafted.ts';

/** The names of tiles that lie on a line or on other words of their page. */
function covered(garment: string, body: string, name: string): readonly string[] {
  const paper = readPaper(name);
  if (!paper.ok) throw new Error(name);
  const { garment: made, cutLines } = drafted(garment, shippedBody(body));
  const printed = printPages(made, cutLines, paper.value);
  if (!printed.ok) throw new Error('not printed');
  const names = printed.value.tiles.map((tile) => tile.name);
  return printed.value.pages.slice(1).flatMap(({ parts }, i) => {
    const ink = parts.flatMap((part) => part.ink);
    const own = ink.find((one) => one.kind === 'words' && one.text === names[i]);
    if (!own) throw new Error(`no name on ${names[i]}`);
    const { left, right, top, bottom } = inkBounds(own);
    const isOn = ink.some((one) => {
      if (one === own) return false;
      if (one.kind === 'words') {
        const other = inkBounds(one);
        return other.left < right && left < other.right && other.top < bottom && top < other.bottom;
      }
      return (
        one.kind === 'chain' &&
        one.curves.some((curve) =>
          Array.from({ length: 401 }, (_, step) => pointAt(curve, step / 400)).some(
            ({ x, y }) => x > left && x < right && y > top && y < bottom,
          ),
        )
      );
    });
    return isOn ? [names[i] ?? ''] : [];
  });
}

describe('the name of a tile', () => {
  it.each([
    ['dress', 'leading-lady', 'a4'],
    ['dress', 'scene-painter', 'letter'],
    ['trial', 'understudy', 'a4'],
    ['skirt', 'wardrobe-mistress', 'a3'],
  ])('lies on no line and no words: %s of %s on %s', (garment, body, paper) => {
    expect(covered(garment, body, paper)).toEqual([]);
  });
});
