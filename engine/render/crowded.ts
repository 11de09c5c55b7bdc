import type { Rectangle } from '../finishing/rectangle.ts';
import type { Curve } from '../geometry/curve.ts';
import { type Point, point } from '../geometry/point.ts';
import type { Piece } from '../pattern/piece.ts';

/** The piece with more lines inside, for words to keep clear of. */
export const withLines = (piece: Piece, curves: readonly Curve[]): Piece => ({
  ...piece,
  lines: [...piece.lines, { name: 'taken', kind: 'fold', curves }],
});

/** The piece with a box taken up by words, for others to keep clear of. */
export const withBox = (piece: Piece, box: Rectangle): Piece => withLines(piece, diagonals(box));

/** Two lines across a box, which nothing can lie in without meeting one of them unless it is far smaller. */
function diagonals({ middle, width, height }: Rectangle): readonly Curve[] {
  const corner = (x: number, y: number): Point =>
    point(middle.x + (x * width) / 2, middle.y + (y * height) / 2);
  return [
    { kind: 'line', from: corner(-1, -1), to: corner(1, 1) },
    { kind: 'line', from: corner(-1, 1), to: corner(1, -1) },
  ];
}
