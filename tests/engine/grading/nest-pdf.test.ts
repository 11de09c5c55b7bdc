import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { readFonts } from '../../../cli/fonts.ts';
import { nestSheets } from '../../../engine/grading/nest/nest-papers.ts';
import { nestPdf } from '../../../engine/grading/nest/nest-pdf.ts';
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
  const bytes = await nestPdf(sheets, 'skirt, three', await readFonts());

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

  it('are the same to the byte each time', async () => {
    expect(await nestPdf(sheets, 'skirt, three', await readFonts())).toEqual(bytes);
  });
});
