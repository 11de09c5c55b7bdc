import { point } from '../../geometry/point.ts';
import type { Ink } from '../ink.ts';
import { onPage, type Page } from '../tiles/page.ts';
import type { Block } from './block.ts';

/** A4 upright (ISO 216) and the white round what is printed, mm. */
const paper = { width: 210, height: 297 };
const margin = 14;

/** The width of what is printed, mm. */
export const bookletWidth = paper.width - 2 * margin;

/** Font sizes, mm. */
export const bookletSizes = { title: 8, heading: 4.6, text: 3.4, small: 2.8 } as const;

/** Blocks one below the other; what does not fit any more begins the next page. */
export function bookletPages(blocks: readonly Block[]): readonly Page[] {
  const pages: Ink[][] = [[]];
  let top = margin;
  for (const block of blocks) {
    if (top + block.height > paper.height - margin && top > margin) {
      pages.push([]);
      top = margin;
    }
    pages.at(-1)?.push(...block.ink(point(margin, top)));
    top += block.height;
  }
  return pages.map((ink, i) => {
    const at = point(paper.width / 2, paper.height - margin / 2);
    const number: Ink = {
      kind: 'words',
      text: `${i + 1} of ${pages.length}`,
      at,
      size: bookletSizes.small,
      anchored: 'middle',
    };
    return { ...paper, parts: [onPage([...ink, number])] };
  });
}
