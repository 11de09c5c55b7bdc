import { lengthIn, type ScreenPiece } from '../../../../drafts/index.ts';
import type { MadeGarment } from '../../messages.ts';

/** What is wrong with a piece; nothing where all is as it should be. */
export const wrongWith = ({ wrong }: MadeGarment, name: string): readonly string[] =>
  wrong.find(({ piece }) => piece === name)?.says ?? [];

/** A piece in words, for who cannot see it: which it is, how large, and what is wrong with it. */
export function pieceWords(piece: ScreenPiece, made: MadeGarment): string {
  const wrong = wrongWith(made, piece.name);
  const verdict = wrong.length > 0 ? `Not as it should be: ${wrong.join(' ')}` : 'Nothing is wrong with it.';
  return `Piece ${piece.number}, ${piece.name}, ${sizeWords(piece, made.units)}. ${verdict}`;
}

/** To whole centimetres, or as inches are written. */
export function sizeWords({ width, height }: ScreenPiece, units: MadeGarment['units']): string {
  const said = (mm: number): string =>
    units === 'in' ? lengthIn(mm, 'in') : lengthIn(Math.round(mm / 10) * 10, 'cm');
  return `${said(width)} wide and ${said(height)} high`;
}

/** All pieces in words, and which of them are not as they should be. */
export function sheetWords({ title, body, wrong }: MadeGarment, count: number): string {
  const named = wrong.map(({ piece }) => piece);
  const verdict =
    named.length === 0 ? 'Nothing is wrong with any.' : `Not as they should be: ${named.join(', ')}.`;
  return `${title}, for ${body}: ${count} pieces. ${verdict}`;
}
