import { moved } from '../../geometry/point.ts';
import { movedBy, transformedCurve } from '../../geometry/transform.ts';
import { vector } from '../../geometry/vector.ts';
import type { InkClass } from '../line-types.ts';
import type { Block } from './block.ts';
import { letterSize, nameSize, type Picture, type PictureLine } from './picture.ts';

const inkOf: Readonly<Record<PictureLine['weight'], InkClass>> = {
  cut: 'outline',
  stitch: 'join',
  inside: 'join',
  notch: 'crossing',
  heavy: 'cut',
  leader: 'leader',
};

/** A picture, as large as it says. */
export function pictureBlock({ height, lines, words }: Picture): Block {
  return {
    height,
    ink: (at) => {
      const place = movedBy(vector(at.x, at.y));
      return [
        ...lines.map(({ weight, curves, closed }) => ({
          kind: 'chain' as const,
          class: inkOf[weight],
          curves: curves.map((curve) => transformedCurve(curve, place)),
          closed: closed ?? false,
        })),
        ...words.map(({ kind, text, at: own, anchored = 'middle' as const }) => ({
          kind: 'words' as const,
          text,
          at: moved(own, vector(at.x, at.y)),
          size: kind === 'letter' ? letterSize : nameSize,
          bold: kind === 'letter',
          anchored,
        })),
      ];
    },
  };
}
