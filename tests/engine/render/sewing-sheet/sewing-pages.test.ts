import { describe, expect, test } from 'vitest';
import { boundingBox } from '../../../../engine/geometry/bounds.ts';
import { broken } from '../../../../engine/render/booklet/paragraph.ts';
import type { Ink } from '../../../../engine/render/ink.ts';
import { sewingPages } from '../../../../engine/render/sewing-sheet/pdf/sewing-pages.ts';
import { drafted, shippedBody } from '../../../drafts/drafted.ts';

const { garment, cutLines } = drafted('dress', shippedBody('leading-lady'));
const pages = sewingPages(garment, cutLines, { date: '4 May' });
const inkOf = (page: (typeof pages)[number]): readonly Ink[] => page.parts.flatMap(({ ink }) => ink);
const words = pages.map((page) => inkOf(page).flatMap((ink) => (ink.kind === 'words' ? ink.text : [])));

describe('the sewing sheet as pages', () => {
  test('is A4 (ISO 216), and nothing stands outside the margins', () => {
    for (const page of pages) {
      expect([page.width, page.height]).toEqual([210, 297]);
      for (const ink of inkOf(page)) {
        const box =
          ink.kind === 'chain'
            ? boundingBox(ink.curves)
            : ink.kind === 'words'
              ? { left: ink.at.x, right: ink.at.x, top: ink.at.y - ink.size, bottom: ink.at.y }
              : undefined;
        if (!box) continue;
        expect(box.left).toBeGreaterThanOrEqual(13.9);
        expect(box.right).toBeLessThanOrEqual(196.1);
        expect(box.top).toBeGreaterThanOrEqual(13.9);
        expect(box.bottom).toBeLessThanOrEqual(290.1);
      }
    }
  });

  test('says all that the steps say, in their order, and numbers its pages', () => {
    const all = words.flat().join(' ');
    let from = 0;
    for (const { title, how } of garment.sewing ?? [])
      for (const said of [title, ...how]) {
        const at = all.indexOf(said, from);
        expect(at, said).toBeGreaterThanOrEqual(from);
        from = at;
      }
    for (const [i, page] of words.entries()) expect(page.at(-1)).toBe(`${i + 1} of ${pages.length}`);
  });

  test('keeps every step on one page', () => {
    const pageOf = (text: string): number => words.findIndex((page) => page.join(' ').includes(text));
    for (const { title, how } of garment.sewing ?? []) {
      const page = pageOf(`${title} `);
      for (const said of how) expect(pageOf(said), title).toBe(page);
    }
    expect(pages.length).toBeLessThan(12);
  });
});

describe('breaking lines', () => {
  test('happens between words, and a line is no longer than asked', () => {
    const text = 'Sew in one go from the waist up to the fold. Neaten the edges.';
    for (const most of [8, 12, 20, 80]) {
      const lines = broken(text, most);
      expect(lines.join(' ')).toBe(text);
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(most);
    }
  });

  test('leaves a word that is too long by itself', () => {
    expect(broken('a superimposed seam', 5)).toEqual(['a', 'superimposed', 'seam']);
  });
});
