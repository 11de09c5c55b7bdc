import { textSizes } from '../../render/line-types.ts';
import { document, element, type Node, words } from '../../render/markup.ts';
import { numeral, pathData } from '../../render/path-data.ts';
import { svgInk } from '../../render/svg-ink.ts';
import { isOfSize, type NestInk, type NestPaper, type SizeInk } from './nest-ink.ts';
import { nestStyle } from './size-lines.ts';

const degrees = 180 / Math.PI;

/** The paper of some nests as a whole SVG file, 1:1; the line of the size in the place `heavy` is drawn in a heavy stroke. */
export function nestSvg({ title, width, height, sizes, groups }: NestPaper, heavy?: number): string {
  return document(
    element(
      'svg',
      {
        xmlns: 'http://www.w3.org/2000/svg',
        width: `${width}mm`,
        height: `${height}mm`,
        viewBox: `0 0 ${width} ${height}`,
      },
      [
        element('title', {}, words(title)),
        element('style', {}, words(nestStyle(sizes.length, heavy))),
        element('rect', { class: 'paper', width: numeral(width), height: numeral(height) }),
        ...groups.map(({ piece, ink }) =>
          element(
            'g',
            { class: piece === undefined ? undefined : 'nest', 'data-piece': piece },
            ink.map(nodeOf),
          ),
        ),
      ],
    ),
  );
}

const nodeOf = (ink: NestInk): Node => (isOfSize(ink) ? sizeNode(ink) : svgInk(ink));

/** Down from the middle of a small letter to its baseline, mm. */
const down = textSizes.small / 3;

function sizeNode(ink: SizeInk): Node {
  if (ink.kind === 'key name') return svgInk(ink.words);
  const { place, size } = ink;
  if (ink.kind !== 'size name')
    return element('path', {
      class: `${ink.kind === 'tick' || ink.kind === 'leader' ? ink.kind : 'size'}-${place}`,
      'data-size': ink.kind === 'sample' ? undefined : size,
      'data-notch': ink.notch,
      d: pathData(ink.curves, ink.closed),
    });
  const [x, y] = [numeral(ink.at.x), numeral(ink.at.y)];
  return element(
    'text',
    {
      class: `size-name name-${place}`,
      x,
      y: numeral(ink.at.y + down),
      'font-size': numeral(textSizes.small),
      transform: `rotate(${numeral(ink.turn * degrees)} ${x} ${y})`,
    },
    words(size),
  );
}
