import type { Side } from '../../engine/body/side.ts';
import { mirrorImage } from '../../engine/pattern/mirror-image.ts';
import type { CutCount, Piece } from '../../engine/pattern/piece.ts';

/**
 * The wearer's side that pieces cut in pairs are of as they are drawn, seen from outside the garment. Panels and gores
 * are drawn with their centre on the left, which before her is her right and behind her her left, and straps as the
 * panels they are cut off; a sleeve is drawn with its front on the right.
 */
const sideDrawn: Readonly<Record<string, Side>> = {
  front: 'left',
  back: 'right',
  sleeve: 'right',
};

/** Whether the piece of this side is the mirror image of what its pair is drawn as. */
export function isMirrored(pair: string, side: Side): boolean {
  const drawn = pair.split(' ').flatMap((word) => sideDrawn[word] ?? [])[0];
  if (!drawn) throw new Error(`Nobody has said which side the ${pair} is drawn as.`);
  return drawn !== side;
}

/** What the piece of one side is called. */
export const sided = (side: Side, name: string): string => `${side} ${name}`;

/**
 * One side of a pair as it is worn and seen from outside: under a name of its own, and cut once. Lining and facings
 * are worn with the right side of their cloth to the body, and so are cut with the printed side down. On a fold both
 * ways are one.
 */
export function ofOneSide(pair: Piece, side: Side): Piece {
  const mirrored = isMirrored(pair.name, side);
  const singly = ({ cloth, onFold }: CutCount): CutCount => ({
    cloth,
    count: 1,
    onFold,
    pair: false,
    ...(onFold ? {} : { printedSide: cloth === 'lining' || pair.name.endsWith('facing') ? 'down' : 'up' }),
  });
  return {
    ...(mirrored ? mirrorImage(pair) : pair),
    name: sided(side, pair.name),
    oneOf: { pair: pair.name, side, mirrored },
    cut: pair.cut.map(singly),
  };
}
