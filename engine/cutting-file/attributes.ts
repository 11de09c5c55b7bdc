import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';
import { cutWords } from '../render/label-words.ts';
import type { Attributes } from './drawn.ts';

/**
 * What a block says of its piece. `CLOTH`, `QUANTITY` and `CUT` tell what is cut of it, and again with `_2`, `_3` where it is
 * cut of several cloths.
 */
export const attributesOf = (
  { name, number, cut }: Piece,
  garment: Garment,
  size: string | undefined,
): Attributes => [
  ['PIECE', name],
  ['NUMBER', String(number)],
  ['GARMENT', garment.name],
  size === undefined ? ['BODY', garment.body] : ['SIZE', size],
  ...cut.flatMap((count, i) => {
    const again = i === 0 ? '' : `_${i + 1}`;
    return [
      [`CLOTH${again}`, count.cloth],
      [`QUANTITY${again}`, String(count.count)],
      [`CUT${again}`, cutWords(count)],
    ] as const;
  }),
];
