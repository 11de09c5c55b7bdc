import { type Point, point } from '../geometry/point.ts';
import { arrowheads } from './arrows.ts';
import type { Size } from './layout.ts';
import { lineTypes } from './line-types.ts';
import { element, type Node, words } from './markup.ts';
import { numeral, pathData } from './path-data.ts';

const rowHeight = 6;
const sample = 30;

/** Room that the key of line types takes, mm. */
export const keySize: Size = { width: sample + 36, height: rowHeight * lineTypes.length };

/**
 * What each kind of line means, with its top left corner here. Samples have classes of their own, so that nobody
 * takes them for lines of the garment.
 */
export const lineKey = ({ x, y }: Point): readonly Node[] =>
  lineTypes.flatMap((type, row) => {
    const level = y + (row + 0.5) * rowHeight;
    const [from, to] = [point(x, level), point(x + sample, level)] as const;
    const d = pathData([{ kind: 'line', from, to }]);
    const at = { x: numeral(x + sample + 4), y: numeral(level + 1.1) };
    return [
      element('path', { class: `key-${type.class}`, d }),
      ...(type.class === 'grain' ? arrowheads(from, to) : []),
      element('text', { class: 'label', ...at }, words(type.says)),
    ];
  });
