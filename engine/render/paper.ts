import type { Size } from './layout.ts';
import { document, element, type Node, words } from './markup.ts';
import { type Metadata, metadataText, sealed } from './metadata.ts';
import { numeral } from './path-data.ts';

/** A whole SVG file 1:1: one unit is one millimetre, on white paper of this size (mm), drawn in this style. */
export function paper(
  title: string,
  size: Size,
  metadata: Metadata,
  content: readonly Node[],
  style: string,
): string {
  const [width, height] = [Math.ceil(size.width), Math.ceil(size.height)];
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
        element('metadata', {}, words(metadataText(sealed(metadata)))),
        element('style', {}, words(style)),
        element('rect', { class: 'paper', width: numeral(width), height: numeral(height) }),
        ...content,
      ],
    ),
  );
}
