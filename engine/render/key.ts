import { type Point, point } from '../geometry/point.ts';
import { arrowheads } from './arrows.ts';
import { type Ink, stroke } from './ink.ts';
import type { Size } from './layout.ts';
import { earlierType, lineTypes, textSizes } from './line-types.ts';

const rowHeight = 6;
const sample = 30;

/** The kinds of line that a key tells of: of an earlier draft only where one is shown. */
const keyTypes = (earlier: boolean) => (earlier ? [...lineTypes, earlierType] : lineTypes);

/** Room that the key of line types takes, mm; with that of an earlier draft, where one is shown. */
export const keySize = (earlier: boolean): Size => ({
  width: sample + 36,
  height: rowHeight * keyTypes(earlier).length,
});

/**
 * What each kind of line means, with its top left corner here. Samples have classes of their own, so that nobody
 * takes them for lines of the garment.
 */
export const lineKey = ({ x, y }: Point, earlier = false): readonly Ink[] =>
  keyTypes(earlier).flatMap((type, row) => {
    const level = y + (row + 0.5) * rowHeight;
    const [from, to] = [point(x, level), point(x + sample, level)] as const;
    return [
      stroke(`key-${type.class}`, from, to),
      ...(type.class === 'grain' ? arrowheads(from, to) : []),
      { kind: 'words', text: type.says, at: point(x + sample + 4, level + 1.1), size: textSizes.plain },
    ];
  });
