import type { Ink, InkNames, InkWords } from './ink.ts';
import { element, type Node, words } from './markup.ts';
import { numeral, pathData } from './path-data.ts';

/** Ink as an SVG element; its names become `data-` attributes. No path carries a transform, so that each can be
 * measured as it stands. */
export function svgInk(ink: Ink): Node {
  switch (ink.kind) {
    case 'chain':
      return element('path', {
        class: ink.class,
        ...dataOf(ink.names),
        d: pathData(ink.curves, ink.closed),
      });
    case 'circle':
      return element('circle', {
        class: ink.class,
        ...dataOf(ink.names),
        cx: numeral(ink.middle.x),
        cy: numeral(ink.middle.y),
        r: numeral(ink.radius),
      });
    case 'box':
      return element('rect', {
        class: ink.class,
        x: numeral(ink.corner.x),
        y: numeral(ink.corner.y),
        width: numeral(ink.width),
        height: numeral(ink.height),
      });
    case 'words':
      return text(ink);
  }
}

/** All ink of one piece, as a group of its own. */
export const svgPiece = (name: string, ink: readonly Ink[]): Node =>
  element('g', { class: 'piece', 'data-piece': name }, ink.map(svgInk));

function text({ text: said, at, size, bold, anchored, pale, turnedAbout: pivot }: InkWords): Node {
  return element(
    'text',
    {
      class: 'label',
      x: numeral(at.x),
      y: numeral(at.y),
      'font-size': numeral(size),
      'font-weight': bold ? 'bold' : undefined,
      'text-anchor': anchored,
      fill: pale ? '#888' : undefined,
      transform: pivot && `rotate(-90 ${numeral(pivot.x)} ${numeral(pivot.y)})`,
    },
    words(said),
  );
}

const dataOf = (names: InkNames = {}): InkNames =>
  Object.fromEntries(Object.entries(names).map(([key, value]) => [`data-${key}`, value]));
