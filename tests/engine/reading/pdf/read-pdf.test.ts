import { strFromU8, strToU8, unzlibSync, zlibSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { readFonts } from '../../../../cli/files/fonts.ts';
import { pdfFaults } from '../../../../engine/proven-pdf.ts';
import type { PdfPath } from '../../../../engine/reading/pdf/pdf-page.ts';
import { readPdf } from '../../../../engine/reading/pdf/read-pdf.ts';
import { pdfOf } from '../../../../engine/render/pdf/write-pdf.ts';
import { readPaper } from '../../../../engine/render/tiles/papers.ts';
import { printPages } from '../../../../engine/render/tiles/print-pages.ts';
import { drafted, shippedBody } from '../../../drafts/drafted.ts';
import { readPdf as readByPdfJs } from '../../render/pdf/read-pdf.ts';

/*
 * pdf.js, which knows nothing of how our files are written, is the judge of our own reader (to its single precision).
 */

const skirt = drafted('skirt', shippedBody('leading-lady'));
const printed = async (paper: string, made = skirt): Promise<Uint8Array> => {
  const known = readPaper(paper);
  const pages = known.ok ? printPages(made.garment, made.cutLines, known.value) : known;
  if (!pages.ok) throw new Error(JSON.stringify(pages.issues));
  return pdfOf(pages.value.pages, 'skirt', await readFonts());
};

const numbersOf = ({ curves, clip }: PdfPath): readonly number[] =>
  [
    ...curves.flatMap((curve) =>
      curve.kind === 'line' ? [curve.from, curve.to] : [curve.from, curve.handle1, curve.handle2, curve.to],
    ),
    ...(clip ?? []),
  ].flatMap(({ x, y }) => [x, y]);

let tiled: Uint8Array;
beforeAll(async () => {
  tiled = await printed('a4');
}, 60_000);

const a4 = { name: 'A4', kind: 'sheets', width: 210, height: 297 } as const;

describe('a printed pattern read back from its bytes', () => {
  it('has the same paths as another reader finds, on every page, in the same marked content', async () => {
    const own = readPdf(tiled);
    const other = await readByPdfJs(tiled);
    expect(own.length).toBe(other.length);
    for (const [i, page] of own.entries()) {
      const there = other[i];
      expect([page.width, page.height]).toEqual([there?.width, there?.height]);
      expect(page.paths.map(({ tag, closed }) => [tag, closed])).toEqual(
        there?.paths.map(({ tag, closed }) => [tag, closed]),
      );
      const differences = page.paths.flatMap((path, k) => {
        const found = there?.paths[k];
        return found
          ? numbersOf(path).map((n, at) => Math.abs(n - (numbersOf(found)[at] ?? Infinity)))
          : [Infinity];
      });
      expect(Math.max(0, ...differences)).toBeLessThan(1e-3);
    }
  });

  it.each([
    // Half the width of its cutting line shows beside the edge of a tile that nothing joins to its own.
    ['skirt', { bustGirth: 96, waistGirth: 75, hipGirth: 100, backNeckPointToWaist: 38 }],
    // A corner of a piece shows where the two strips of a tile meet, and all of it on a tile by itself.
    ['dress', { bustGirth: 92.5, waistGirth: 78, hipGirth: 97, backNeckPointToWaist: 38.5 }],
  ])('walks where a tile shows a little of what is its neighbour’s: a %s', async (name, girths) => {
    const made = drafted(name, { units: 'cm', ...girths });
    expect(pdfFaults(made, await printed('a4', made))).toEqual([]);
  });

  it.each(['a4', 'a0', 'roll:914'])('walks as it was drafted, on %s', async (paper) => {
    expect(pdfFaults(skirt, await printed(paper))).toEqual([]);
  });

  it('is found out where one number of a line was changed', () => {
    expect(
      pdfFaults(
        skirt,
        changed(tiled, /\/stitch[\s\S]*?\n([\d.]+) /, (x) => x + 2),
      ).map(({ code }) => code),
    ).not.toEqual([]);
  });

  it('is found out where a tile is missing: what it shows is cut off, and nothing meets there', async () => {
    const pages = printPages(skirt.garment, skirt.cutLines, a4);
    if (!pages.ok) throw new Error('no pages');
    const lost = pages.value.pages.filter((_, i) => i !== 2);
    const codes = pdfFaults(skirt, await pdfOf(lost, 'skirt', await readFonts())).map(({ code }) => code);
    expect(codes).toContain('tiles-apart');
    expect(codes).toContain('line-cut-off');
  });

  it('is found out where a tile was shifted', () => {
    const codes = pdfFaults(
      skirt,
      changed(tiled, /W n\n1 0 0 1 ([-\d.]+) /, (x) => x + 3),
    ).map(({ code }) => code);
    expect(codes).not.toEqual([]);
  });
});

describe('a paper too small for any number of sheets', () => {
  it('is refused by name', () => {
    const stamp = { name: 'stamp', kind: 'sheets', width: 40, height: 50 } as const;
    const pages = printPages(skirt.garment, skirt.cutLines, stamp);
    expect(pages.issues).toEqual([expect.objectContaining({ code: 'paper-too-small', path: '--paper' })]);
  });
});

/** The file with one number of the last page's content changed, written to the same length or longer. */
function changed(bytes: Uint8Array, at: RegExp, change: (x: number) => number): Uint8Array {
  const text = strFromU8(bytes, true);
  const [head] = Array.from(text.matchAll(/<<\n\/Length (\d+)\n\/Filter \/FlateDecode\n>>\nstream\n/g)).slice(
    1,
  );
  if (!head) throw new Error('no content stream');
  const start = head.index + head[0].length;
  const content = strFromU8(unzlibSync(bytes.subarray(start, start + Number(head[1]))));
  const found = at.exec(content);
  const number = found?.[1];
  if (!found || number === undefined) throw new Error('no such number');
  const place = found.index + found[0].lastIndexOf(number);
  const edited = content.slice(0, place) + change(Number(number)) + content.slice(place + number.length);
  const packed = strFromU8(zlibSync(strToU8(edited)), true);
  const rewritten = `<<\n/Length ${packed.length}\n/Filter /FlateDecode\n>>\nstream\n${packed}`;
  return strToU8(text.slice(0, head.index) + rewritten + text.slice(start + Number(head[1])), true);
}
