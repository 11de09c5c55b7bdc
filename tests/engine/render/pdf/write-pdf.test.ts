import { readFileSync } from 'node:fs';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { readFonts } from '../../../../cli/files/fonts.ts';
import { dress } from '../../../../drafts/dress.ts';
import { evaluate } from '../../../../engine/evaluate.ts';
import { cuttingLines } from '../../../../engine/finishing/cut-lines.ts';
import { boundingBox } from '../../../../engine/geometry/bounds.ts';
import { PARALLEL } from '../../../../engine/geometry/tolerance.ts';
import type { Draft } from '../../../../engine/pattern/draft.ts';
import { isShown, joinTiles } from '../../../../engine/reading/pdf/join-tiles.ts';
import { sheetOfLines } from '../../../../engine/reading/pdf/sheet-of-lines.ts';
import { walkSheet } from '../../../../engine/reading/walk-sheet.ts';
import { pdfOf } from '../../../../engine/render/pdf/write-pdf.ts';
import { readPaper } from '../../../../engine/render/tiles/papers.ts';
import { type PrintedPages, printPages } from '../../../../engine/render/tiles/print-pages.ts';
import { smallCutLines, smallGarment } from '../small-garment.ts';
import { type ReadPage, readPdf } from './read-pdf.ts';

const draft: Draft = dress;
const fonts = await readFonts();

const drafted = (file: string) => {
  const found = evaluate(draft, parse(readFileSync(`measurements/${file}.yaml`, 'utf8')));
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  return found.value;
};

const printed = (
  { garment, cutLines }: Pick<ReturnType<typeof drafted>, 'garment' | 'cutLines'>,
  paper: string,
): PrintedPages => {
  const known = readPaper(paper);
  if (!known.ok) throw new Error(JSON.stringify(known.issues));
  const pages = printPages(garment, cutLines, known.value, { date: '4 May' });
  if (!pages.ok) throw new Error(JSON.stringify(pages.issues));
  return pages.value;
};

const small = { garment: smallGarment, cutLines: smallCutLines };
const smallPdf = await pdfOf(printed(small, 'a4').pages, 'bib', fonts);

/** Sizes of the closed rectangles on a page, mm. */
const rectangles = ({ paths }: ReadPage): readonly (readonly [number, number])[] =>
  paths
    .filter(({ closed, curves, tag }) => closed && !tag && curves.every(({ kind }) => kind === 'line'))
    .map(({ curves }) => {
      const { left, right, top, bottom } = boundingBox(curves);
      return [right - left, bottom - top];
    });

describe.each([
  ['leading-lady', 'a4'],
  ['wardrobe-mistress', 'letter'],
  ['understudy', 'a3'],
  ['leading-lady', 'a0'],
  ['leading-lady', 'roll:914'],
])('the dress of %s on %s, read back by another program', (file, paper) => {
  const found = drafted(file);
  const pages = printed(found, paper);
  const read = pdfOf(pages.pages, 'dress', fonts).then(readPdf);
  const joined = read.then((all) => joinTiles(all.length === 1 ? all : all.slice(1)));

  test('has every crossing mark upon its other half once the tiles are joined', async () => {
    const { worstCrossing, crossings } = await joined;
    expect(crossings > 0).toBe(pages.tiles.length > 2);
    expect(worstCrossing).toBeLessThan(0.01);
  });

  test('shows every part of every line in the window of a tile, the same on each tile within 0.01 mm', async () => {
    const { lines } = await joined;
    for (const line of lines) {
      expect(line.apart).toBeLessThan(0.01);
      if (line.windows.length > 0 || pages.tiles.length > 1) expect(isShown(line), line.tag).toBe(true);
    }
  });

  test('walks from its paths alone: every seam, girth, corner, notch and cutting line', async () => {
    const { lines } = await joined;
    const walked = walkSheet(sheetOfLines(lines, found.garment));
    if (!walked.ok) throw new Error(JSON.stringify(walked.issues));
    expect(walked.value.issues).toEqual([]);
    expect(walked.value.seams.length).toBe(found.report.seams.length);
    for (const [i, seam] of found.report.seams.entries()) {
      const back = walked.value.seams[i];
      expect(back?.name).toBe(seam.name);
      expect(Math.abs((back?.lengthA ?? 0) - seam.lengthA)).toBeLessThan(0.01);
      expect(Math.abs((back?.lengthB ?? 0) - seam.lengthB)).toBeLessThan(0.01);
      expect(back?.mismatch).toBeLessThan(0.1);
    }
  });

  test('prints test squares of 50 mm and 2 in on its first page', async () => {
    const [first] = await read;
    const squares = first ? rectangles(first) : [];
    for (const side of [50, 50.8])
      expect(squares.some(([w, h]) => Math.abs(w - side) < 1e-3 && Math.abs(h - side) < 1e-3)).toBe(true);
  });

  test('holds a line on every page, and no page is longer than PDF allows', async () => {
    for (const { paths, width, height } of await read) {
      expect(paths.length).toBeGreaterThan(0);
      expect(Math.max(width, height)).toBeLessThanOrEqual(14_400);
    }
  });
});

describe('a PDF', () => {
  test.each([
    // ISO 216 and ANSI sizes in units of 1/72 in.
    ['a4', 595.2756, 841.8898],
    ['letter', 612, 792],
    ['a3', 841.8898, 1190.5512],
    ['a0', 2383.937, 3370.3937],
  ])('on %s has pages of exactly that size', async (paper, width, height) => {
    const last = (await readPdf(await pdfOf(printed(small, paper).pages, 'bib', fonts))).at(-1);
    expect(last?.width).toBeCloseTo(width, 3);
    expect(last?.height).toBeCloseTo(height, 3);
  });

  test('has all its text embedded, in fonts of its own', async () => {
    const task = getDocument({ data: Uint8Array.from(smallPdf), verbosity: 0, fontExtraProperties: true });
    const page = await (await task.promise).getPage(1);
    const { fnArray, argsArray } = await page.getOperatorList();
    const used = new Set(fnArray.flatMap((op, i) => (op === OPS.setFont ? [String(argsArray[i][0])] : [])));
    const found = [...used].map(
      (name) => page.commonObjs.get(name) as { name: string; missingFile?: boolean },
    );
    expect(found.map(({ name }) => name.replace(/^[A-Z]{6}\+/, '')).sort()).toEqual([
      'SourceSans3-Bold',
      'SourceSans3-Regular',
    ]);
    expect(found.every(({ missingFile }) => missingFile !== true)).toBe(true);
    await task.destroy();
  });

  test('says what the drawing says, and how to check its scale', async () => {
    const text = (await readPdf(smallPdf)).map((page) => page.text).join('\n');
    for (const said of [
      '1 centre front',
      'cut 2 self, a pair',
      'bib for stage manager, 4 May',
      '50 mm',
      '2 in',
    ])
      expect(text).toContain(said);
    expect(text).toContain('Print at 100 %');
  });

  test('is the same to the byte each time', async () => {
    const again = await pdfOf(printed(small, 'a4').pages, 'bib', fonts);
    expect(Buffer.compare(Buffer.from(again), Buffer.from(smallPdf))).toBe(0);
  });

  test('carries names of any kind without harm', async () => {
    const evil = ') Tj (Ω ](%/# <<é>>\u0000\u202e';
    const named = {
      ...smallGarment,
      name: evil,
      body: evil,
      pieces: smallGarment.pieces.map((piece) => ({ ...piece, name: `${piece.name} ${evil}` })),
    };
    const pages = printed({ garment: named, cutLines: cuttingLines(named, PARALLEL) }, 'a4').pages;
    const read = await readPdf(await pdfOf(pages, evil, fonts));
    expect(read).toHaveLength(pages.length);
    expect(read[0]?.text).toContain('Ω');
  });
});
