import { lengthIn, type ScreenPiece } from '../../../../drafts/index.ts';
import type { MadeGarment, WrongPiece } from '../../messages.ts';

/** What is wrong with a piece; nothing where all is as it should be. */
export const wrongWith = ({ wrong }: MadeGarment, name: string): WrongPiece | undefined =>
  wrong.find(({ piece }) => piece === name);

/** A piece in words, for who cannot see it: which it is, how large, and what is wrong with it. */
export const pieceWords = (piece: ScreenPiece, made: MadeGarment): string =>
  `Piece ${piece.number}, ${piece.name}, ${sizeWords(piece, made.units)}. ${verdict(wrongWith(made, piece.name))}`;

function verdict(wrong: WrongPiece | undefined): string {
  if (!wrong) return 'Nothing is wrong with it.';
  const { fails, outside } = wrong;
  const shapes = outside.map(({ shape, figure }) => `${shape} is ${figure}`).join('; ');
  return [
    fails.length > 0 ? `It fails: ${fails.join(' ')}` : 'It fails no check.',
    ...(outside.length > 0 ? [`Outside its band: ${shapes}.`] : []),
  ].join(' ');
}

/** To whole centimetres, or as inches are written. */
export function sizeWords({ width, height }: ScreenPiece, units: MadeGarment['units']): string {
  const said = (mm: number): string =>
    units === 'in' ? lengthIn(mm, 'in') : lengthIn(Math.round(mm / 10) * 10, 'cm');
  return `${said(width)} wide and ${said(height)} high`;
}

/** All pieces in words, and which of them are not as they should be. */
export function sheetWords({ title, body, wrong }: MadeGarment, count: number): string {
  const named = (pieces: readonly WrongPiece[]): string => pieces.map(({ piece }) => piece).join(', ');
  const failing = wrong.filter(({ fails }) => fails.length > 0);
  const odd = wrong.filter(({ outside }) => outside.length > 0);
  return [
    `${title}, for ${body}: ${count} pieces.`,
    failing.length > 0 ? `These fail a check: ${named(failing)}.` : 'None fails a check.',
    ...(odd.length > 0 ? [`Shapes outside their bands: ${named(odd)}.`] : []),
  ].join(' ');
}
