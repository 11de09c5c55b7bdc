import { describe, expect, it } from 'vitest';
import { inkBounds } from '../../../../engine/render/ink-bounds.ts';
import { readPaper } from '../../../../engine/render/tiles/papers.ts';
import { spread } from '../../../../engine/render/tiles/spread.ts';
import { margin, overlap } from '../../../../engine/render/tiles/tile-page.ts';
import { drafted, shippedBodies, shippedBody } from '../../../drafts/drafted.ts';

/** The words of the pieces that lie on two pages, or next to a joint as where it runs between two rows of a label, on paper of this name. */
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
      const clear = 0.2 * ink.size;
      const whole = (from: number, to: number, size: number): boolean =>
        Math.floor((from - clear) / size) === Math.floor((to + clear) / size);
      return whole(left, right, cell.width) && whole(top, bottom, cell.height) ? [] : [ink.text];
    }),
  );
}

describe('the words of a piece on tiles', () => {
  it.each([
    ...shippedBodies.flatMap((body) => ['a4', 'letter'].map((paper) => ({ garment: 'dress', body, paper }))),
    { garment: 'trial', body: 'understudy', paper: 'a4' },
    { garment: 'skirt', body: 'wardrobe-mistress', paper: 'a4' },
  ])(
    'are never cut apart by a joint, nor the rows of a label: $garment of $body on $paper',
    ({ garment, body, paper }) => {
      expect(cutApart(garment, body, paper)).toEqual([]);
    },
  );
});
