import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { readFonts } from '../../../cli/files/fonts.ts';
import { pointAt } from '../../../engine/geometry/evaluate.ts';
import type { ChartSize } from '../../../engine/grading/chart.ts';
import { inTiles, onOnePage } from '../../../engine/grading/nest/nest-pages.ts';
import { nestSheets } from '../../../engine/grading/nest/nest-papers.ts';
import { nestPdf } from '../../../engine/grading/nest/nest-pdf.ts';
import { readPaper } from '../../../engine/render/tiles/papers.ts';
import { readPdf } from '../render/pdf/read-pdf.ts';
import { chartOf, draftOf, gradedBy } from './charts.ts';

const skirt = draftOf('skirt');
const row = { waistGirth: 74, hipGirth: 99, backNeckPointToWaist: 40 };
const sizes = [88, 92, 96].map((bust, i) => ({
  size: `${38 + 2 * i}`,
  bustGirth: bust,
  ...row,
  hipGirth: bust + 7,
}));
const grade = gradedBy(skirt, chartOf({ name: 'three (3)', units: 'cm', sizes, cups: ['B', 'D'] }, skirt));
const sheets = nestSheets(grade);

// Read by pdf.js, which knows nothing of how the file was written.
describe('nests as a PDF', async () => {
  const bytes = await nestPdf(sheets.map(onOnePage), 'skirt, three', await readFonts());

  it('have a layer for every size and every cup, all shown', async () => {
    const task = getDocument({ data: Uint8Array.from(bytes), verbosity: 0 });
    const config = await (await task.promise).getOptionalContentConfig();
    const groups = Object.values(Object.fromEntries([...config])) as { name: string; visible: boolean }[];
    expect(groups.map(({ name }) => name)).toEqual(['size 38', 'size 40', 'size 42', 'cup B', 'cup D']);
    expect(groups.every(({ visible }) => visible)).toBe(true);
    await task.destroy();
  });

  it('are as large as the sheets, 1:1, and say the same words', async () => {
    const pages = await readPdf(bytes);
    expect(pages).toHaveLength(2);
    for (const [i, { width, height, text }] of pages.entries()) {
      expect((width * 25.4) / 72).toBeCloseTo(sheets[i]?.width ?? 0, 1);
      expect((height * 25.4) / 72).toBeCloseTo(sheets[i]?.height ?? 0, 1);
      for (const name of sheets[i]?.sizes ?? []) expect(text.split('\n')).toContain(name);
      expect(text).toContain(sheets[i]?.title);
    }
  });

  it('name a size only on its layer, in the key too', async () => {
    const task = getDocument({ data: Uint8Array.from(bytes), verbosity: 0 });
    const document = await task.promise;
    for (const [i, sheet] of sheets.entries()) {
      const page = await document.getPage(i + 1);
      const { items } = await page.getTextContent({ includeMarkedContent: true });
      let depth = 0;
      const outside: string[] = [];
      for (const item of items)
        if ('str' in item) {
          if (depth === 0) outside.push(item.str);
        } else depth += item.type.startsWith('begin') ? 1 : -1;
      for (const name of sheet.sizes) expect(outside).not.toContain(name);
      expect(outside.length).toBeGreaterThan(0);
    }
    await task.destroy();
  });

  it('are the same to the byte each time', async () => {
    expect(await nestPdf(sheets.map(onOnePage), 'skirt, three', await readFonts())).toEqual(bytes);
  });

  describe('in tiles', async () => {
    const a4 = readPaper('a4');
    if (!a4.ok) throw new Error('no paper');
    const [sheet] = sheets;
    if (!sheet) throw new Error('no sheet');
    const book = inTiles(sheet, a4.value);
    const tiled = await nestPdf([book], 'skirt, three', await readFonts());

    it('are all of the paper’s size, behind a map of the tiles, and still in layers', async () => {
      const pages = await readPdf(tiled);
      expect(pages).toHaveLength(book.pages.length);
      for (const { width, height } of pages) {
        expect((width * 25.4) / 72).toBeCloseTo(210, 1);
        expect((height * 25.4) / 72).toBeCloseTo(297, 1);
      }
      expect(pages[0]?.text.split('\n')).toEqual(expect.arrayContaining(['A1', 'B2']));
      expect(pages[1]?.text).toContain('tile A1, page 2 of');
      const task = getDocument({ data: Uint8Array.from(tiled), verbosity: 0 });
      const config = await (await task.promise).getOptionalContentConfig();
      const groups = Object.values(Object.fromEntries([...config])) as { name: string }[];
      expect(groups.map(({ name }) => name)).toEqual(['size 38', 'size 40', 'size 42']);
      await task.destroy();
    });

    it('have the squares to measure by on the first page, and nowhere again', () => {
      const said = book.pages.map(
        ({ parts }) =>
          parts.flatMap(({ ink }) => ink).filter((one) => one.kind === 'words' && one.text === '50 mm')
            .length,
      );
      expect(said).toEqual([1, ...said.slice(1).map(() => 0)]);
    });

    it('show every place of every outline on some tile', () => {
      const shownOn = book.pages
        .slice(1)
        .flatMap(({ parts }) => parts.flatMap(({ clip, shift }) => (clip ? [{ clip, shift }] : [])));
      const outlines = sheet.groups.flatMap(({ ink }) =>
        ink.flatMap((one) => (one.kind === 'outline' ? one.curves : [])),
      );
      expect(outlines.length).toBeGreaterThan(20);
      for (const curve of outlines)
        for (const t of [0, 0.3, 0.7, 1]) {
          const { x, y } = pointAt(curve, t);
          expect(
            shownOn.some(
              ({ clip, shift }) =>
                x + shift.x >= clip.left &&
                x + shift.x <= clip.right &&
                y + shift.y >= clip.top &&
                y + shift.y <= clip.bottom,
            ),
          ).toBe(true);
        }
    });

    it('are fewer where only a small size is chosen', () => {
      const far = [88, 136].map((bust, i) => ({
        size: `${38 + 24 * i}`,
        bustGirth: bust,
        waistGirth: bust - 18,
        hipGirth: bust + 7,
        backNeckPointToWaist: 40,
      }));
      const both = gradedBy(skirt, chartOf({ units: 'cm', sizes: far }, skirt));
      const tilesOf = (only: readonly ChartSize[]): number => {
        const shown = nestSheets(both, { line: 'stitching', only });
        return shown.reduce((sum, one) => sum + inTiles(one, a4.value).pages.length, 0);
      };
      expect(tilesOf(both.chart.rows.slice(0, 1))).toBeLessThan(tilesOf(both.chart.rows));
    });
  });
});
