import { labelPlace } from '../finishing/label.ts';
import type { Piece } from '../pattern/piece.ts';
import type { LabelWords } from './label-words.ts';
import { element, type Node, words } from './markup.ts';
import { numeral } from './path-data.ts';
import { textWidth } from './text-size.ts';

/** Font sizes of a full-sized label, and the distance from line to line as a share of the font size; mm. */
const headingSize = 6;
const lineSize = 3.5;
const leading = 1.35;

/** Smaller settings, tried in turn where the piece is too narrow for a larger one. */
const settings = [1, 0.85, 0.7, 0.55] as const;

/** Distance that a label keeps from every line, mm. */
const clearance = 3;

interface Row {
  readonly text: string;
  readonly size: number;
  readonly heading: boolean;
}

/**
 * The label of a piece, at the roomiest place inside it. A narrow piece gets a smaller setting; one with no room
 * at all gets its heading alone, on the middle of the grainline.
 */
export function label(piece: Piece, { heading, lines }: LabelWords): Node {
  for (const setting of settings) {
    const rows: readonly Row[] = [
      { text: heading, size: headingSize * setting, heading: true },
      ...lines.map((text) => ({ text, size: lineSize * setting, heading: false })),
    ];
    const size = {
      width: Math.max(...rows.map((row) => textWidth(row.text, row.size))),
      height: rows.reduce((sum, row) => sum + row.size * leading, 0),
    };
    const place = labelPlace(piece, size, clearance);
    if (place) return block(rows, place.middle.x, place.middle.y, size.height, place.rotation);
  }
  const { from, to } = piece.grain;
  const row = { text: heading, size: headingSize * 0.55, heading: true };
  return block([row], (from.x + to.x) / 2, (from.y + to.y) / 2, row.size, 90);
}

function block(rows: readonly Row[], x: number, y: number, height: number, rotation: number): Node {
  let baseline = y - height / 2;
  const texts = rows.map((row) => {
    baseline += row.size * leading;
    const font = { 'font-size': numeral(row.size), 'font-weight': row.heading ? 'bold' : undefined };
    const at = { x: numeral(x), y: numeral(baseline - row.size * (leading - 1)) };
    return element('text', { class: 'label', ...at, ...font, 'text-anchor': 'middle' }, words(row.text));
  });
  const turned = rotation === 0 ? undefined : `rotate(${-rotation} ${numeral(x)} ${numeral(y)})`;
  return element('g', { transform: turned }, texts);
}
