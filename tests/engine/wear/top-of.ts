import type { Garment } from '../../../engine/pattern/garment.ts';

/** A dress without its skirt: bodice and sleeves, which hang in a quarter of the time. */
export function topOf({ pieces, seams, joins, girths, ...dress }: Garment): Garment {
  const isTop = (piece: string): boolean => !piece.startsWith('skirt');
  return {
    ...dress,
    pieces: pieces.filter(({ name }) => isTop(name)),
    seams: seams.filter(({ a, b }) => [...a, ...b].every(({ piece }) => isTop(piece))),
    joins: joins.filter((join) =>
      join.kind === 'along'
        ? isTop(join.piece)
        : isTop(join.a.piece) && (join.kind === 'mirror' || isTop(join.b.piece)),
    ),
    girths: girths.filter(({ parts }) => parts.every(({ piece }) => isTop(piece))),
  };
}
