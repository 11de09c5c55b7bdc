import type { Rectangle } from '../finishing/rectangle.ts';
import { point } from '../geometry/point.ts';
import { textWidth } from '../render/text-size.ts';
import type { FoundElement } from './read-markup.ts';

/** Capitals and figures stand this share of the font size above their line. Measured by eye, no source. */
const capitalHeight = 0.72;

/** The room that each line of a label takes up on the paper, mm; `scale` is the mm of one unit of the drawing. */
export const readLabels = (elements: readonly FoundElement[], scale: number): readonly Rectangle[] =>
  elements.flatMap(({ name, attributes, text }) => {
    if (name !== 'text' || attributes.class !== 'label') return [];
    const [x, y, size] = [attributes.x, attributes.y, attributes['font-size']].map(Number);
    if (x === undefined || y === undefined || size === undefined || !Number.isFinite(x + y + size)) return [];
    const width = textWidth(text ?? '', size);
    const height = capitalHeight * size;
    const level = { x: attributes['text-anchor'] === 'middle' ? x : x + width / 2, y: y - height / 2 };
    const turned = /^rotate\(-90 (\S+) (\S+)\)$/.exec(attributes.transform ?? '');
    if (!turned) return [scaled(level.x, level.y, width, height, scale)];
    const [cx, cy] = [Number(turned[1]), Number(turned[2])];
    return [scaled(cx + level.y - cy, cy - (level.x - cx), height, width, scale)];
  });

const scaled = (x: number, y: number, width: number, height: number, scale: number): Rectangle => ({
  middle: point(x * scale, y * scale),
  width: width * scale,
  height: height * scale,
});
