import { describe, expect, it } from 'vitest';
import { inkBounds } from '../../../../engine/render/ink-bounds.ts';
import { readPaper } from '../../../../engine/render/tiles/papers.ts';
import { spread } from '../../../../engine/render/tiles/spread.ts';
import { margin, overlap } from '../../../../engine/render/tiles/tile-page.ts';
import { drafted, shippedBody } from '../../../drafts/drafted.ts';

/** The words of the pieces that lie on two pages, on paper of this name. */
function cutApart(garment: string, body: string, name: string): readonly string[] {
  const paper = readPaper(name);
  if (!paper.ok) throw new Error(name);
  const cell = {
    width: paper.value.width - 2 * margin - overlap,
    height: paper.value.height - 2 * margin - overlap,
  };
  const evaluation = drafted(garment, shippedBody(body));
  const laid = spread(evaluation.garment, evaluation.cutLines, {}, { cell, columns: 8, rows: 60 }, []);
  return (laid?.pieces ?? []).flatMap(({ lettering }) =>
    lettering.flatMap((ink) => {
      if (ink.kind !== 'words') return [];
      const { left, right, top, bottom } = inkBounds(ink);
      const whole = (from: number, to: number, size: number): boolean =>
        Math.floor(from / size) === Math.floor(to / size);
      return whole(left, right, cell.width) && whole(top, bottom, cell.height) ? [] : [ink.text];
    }),
  );
}

describe('the words of a piece on tiles', () => {
  it.each([
    ['dress', 'leading-lady', 'a4'],
    ['dress', 'scene-painter', 'letter'],
    ['trial', 'understudy', 'a4'],
    ['skirt', 'wardrobe-mistress', 'a4'],
  ])('are never cut apart by a joint: %s of %s on %s', (garment, body, paper) => {
    expect(cutApart(garment, body, paper)).toEqual([]);
  });
});
