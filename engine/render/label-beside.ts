import { labelPlace } from '../finishing/label.ts';
import { between, type Point, point } from '../geometry/point.ts';
import { boxOf, type FinishedPiece } from './finished-piece.ts';
import { type Ink, stroke } from './ink.ts';
import { block, type LabelRow, leading } from './label.ts';
import type { LabelWords } from './label-words.ts';
import { textSizes } from './line-types.ts';
import { textWidth } from './text-size.ts';

/** White between a piece and a label beside it, mm. */
const away = 4;

/** Letters beside a piece, as a share of the usual size: small, like the piece. */
const setting = 0.7;

/** A speck of a place for the leader to end at, mm. */
const speck = 1;

/** The label of a piece that has no room for it: to the right of all its lines, with a leader to the cloth it speaks of. */
export function labelBeside(finished: FinishedPiece, { heading, lines }: LabelWords): readonly Ink[] {
  const rows: readonly LabelRow[] = [heading, ...lines].map((text, i) => ({
    text,
    size: setting * (i === 0 ? textSizes.heading : textSizes.plain),
    heading: i === 0,
  }));
  const width = Math.max(...rows.map(({ text, size }) => textWidth(text, size)));
  const height = rows.reduce((sum, { size }) => sum + size * leading, 0);
  const { corner, width: wide } = boxOf({ ...finished, lettering: [] });
  const left = corner.x + wide + away;
  const leader = stroke(
    'leader',
    point(left - away / 4, corner.y + setting * textSizes.heading),
    insideOf(finished),
  );
  return [leader, ...block(rows, point(left + width / 2, corner.y + height / 2), height, false)];
}

/** A place on the cloth, clear of all lines where there is one. */
function insideOf({ piece }: FinishedPiece): Point {
  const place = labelPlace(piece, { width: speck, height: speck }, 0);
  return place?.middle ?? between(piece.grain.from, piece.grain.to, 0.5);
}
