import { strFromU8, strToU8, unzlibSync, zlibSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { readFonts } from '../../../../cli/files/fonts.ts';
import type { Curve } from '../../../../engine/geometry/curve.ts';
import { pointAt } from '../../../../engine/geometry/evaluate.ts';
import { nearestOnEdge } from '../../../../engine/geometry/nearest.ts';
import { distance, type Point, point, vectorBetween } from '../../../../engine/geometry/point.ts';
import { movedBy, turnedBy } from '../../../../engine/geometry/transform.ts';
import { cross, dot, type Vector } from '../../../../engine/geometry/vector.ts';
import { pdfFaults } from '../../../../engine/proven-pdf.ts';
import { provenSheet } from '../../../../engine/proven-sheet.ts';
import { isShown, joinTiles } from '../../../../engine/reading/pdf/join-tiles.ts';
import type { PdfPage, PdfPath } from '../../../../engine/reading/pdf/pdf-page.ts';
import { readPdf } from '../../../../engine/reading/pdf/read-pdf.ts';
import { readSheet } from '../../../../engine/reading/read-sheet.ts';
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

const controls = (curves: readonly Curve[]): readonly Point[] =>
  curves.flatMap((curve) =>
    curve.kind === 'line' ? [curve.from, curve.to] : [curve.from, curve.handle1, curve.handle2, curve.to],
  );

const numbersOf = ({ curves, clip }: PdfPath): readonly number[] =>
  [...controls(curves), ...(clip ?? [])].flatMap(({ x, y }) => [x, y]);

/** The stitching and cutting lines of a written sheet: by piece, each under the tag that a PDF gives it. */
function linesOfSheet(made: typeof skirt): ReadonlyMap<string, ReadonlyMap<string, readonly Curve[]>> {
  const read = readSheet(provenSheet(made, {}).sheet);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const { garment, cutLines } = read.value;
  return new Map(
    garment.pieces.map(({ name, edges }) => [
      name,
      new Map([
        [`cut|${name}|`, cutLines.get(name)?.curves ?? []],
        ...edges.map((edge) => [`stitch|${name}|${edge.name}`, edge.curves] as const),
      ]),
    ]),
  );
}

/**
 * The greatest distance (mm) between control points of the lines of a piece on a sheet and on joined tiles, once it is laid upon
 * them as nearly as it goes, moved and turned, never mirrored: Arun, Huang and Blostein, Least-squares fitting of two 3-D point
 * sets, 1987, in the plane (from memory). Curves lie nowhere farther apart than their control points.
 */
function farthest(
  sheet: ReadonlyMap<string, readonly Curve[]>,
  tiles: ReadonlyMap<string, readonly Curve[]>,
): number {
  const pairs = Array.from(sheet).flatMap(([tag, curves]) => {
    const there = tiles.get(tag) ?? [];
    expect([tag, there.map(({ kind }) => kind)]).toEqual([tag, curves.map(({ kind }) => kind)]);
    const ends = controls(there);
    return controls(curves).map((at, i) => [at, ends[i] as Point] as const);
  });
  const [from, to] = [middleOf(pairs.map(([at]) => at)), middleOf(pairs.map(([, at]) => at))];
  const arms = pairs.map(([a, b]) => [vectorBetween(from, a), vectorBetween(to, b)] as const);
  const sum = (of: (a: Vector, b: Vector) => number) => arms.reduce((all, [a, b]) => all + of(a, b), 0);
  const angle = Math.atan2(sum(cross), sum(dot));
  const turned = turnedBy(from, angle);
  const moves = movedBy(vectorBetween(from, to));
  return Math.max(...pairs.map(([a, b]) => distance(moves(turned(a)), b)));
}

const middleOf = (points: readonly Point[]): Point => {
  const mean = (along: 'x' | 'y') => points.reduce((all, at) => all + at[along], 0) / points.length;
  return point(mean('x'), mean('y'));
};

/** Tiles joined by their crossing marks, as pdf.js reads them; each stitching and cutting line, which must show whole, by its tag. */
function linesOfTiles(pages: readonly PdfPage[]): ReadonlyMap<string, readonly Curve[]> {
  const isTiled = pages.length > 1;
  const { lines, worstCrossing } = joinTiles(isTiled ? pages.slice(1) : pages);
  const wanted = lines.filter(({ tag }) => /^(cut|stitch)\|/.test(tag));
  expect(wanted.filter((line) => isTiled && !isShown(line))).toEqual([]);
  expect(Math.max(worstCrossing, ...wanted.map((line) => line.apart))).toBeLessThan(0.05);
  expect(new Set(wanted.map(({ tag }) => tag)).size).toBe(wanted.length);
  return new Map(wanted.map(({ tag, curves }) => [tag, curves]));
}

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

  const bodies = ['leading-lady', 'scene-painter', 'wardrobe-mistress'];
  it.each(bodies)(
    'has the lines of the written sheet, to the twentieth of a millimetre: the dress of the %s',
    async (name) => {
      const made = drafted('dress', shippedBody(name));
      const sheet = linesOfSheet(made);
      const count = Array.from(sheet.values(), (lines) => lines.size).reduce((a, b) => a + b);
      for (const paper of ['a4', 'letter', 'roll:914']) {
        const tiles = linesOfTiles(await readByPdfJs(await printed(paper, made)));
        expect(tiles.size).toBe(count);
        for (const [piece, lines] of sheet)
          expect([piece, farthest(lines, tiles) < 0.05]).toEqual([piece, true]);
      }
    },
    60_000,
  );

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

  it.each([
    ['roll:914', 7],
    ['a4', 31],
  ])(
    'is found out, on %s, where half a millimetre more in a number moves a line by a fourteenth of one',
    async (paper, every) => {
      const file = await printed(paper);
      const pathsIn = (bytes: Uint8Array) => readPdf(bytes).flatMap(({ paths }) => paths);
      const before = pathsIn(file);
      for (const kind of ['cut', 'stitch']) {
        const untold: number[] = [];
        let told = 0;
        for (const bytes of changedByHalf(file, kind, every))
          if (pdfFaults(skirt, bytes).length > 0) told++;
          else untold.push(movedAcross(before, pathsIn(bytes)));
        expect(told).toBeGreaterThan(untold.length);
        // Of all 364 numbers on the roll the greatest was 0.0602 mm: a corner, or the handle of a curve, moved along its line.
        expect(Math.max(0, ...untold)).toBeLessThan(0.07);
      }
    },
  );

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

interface Stream {
  readonly content: string;
  /** The file with another content in its place. */
  readonly rewritten: (content: string) => Uint8Array;
}

/** What the streams of a file hold. */
function streamsOf(bytes: Uint8Array): readonly Stream[] {
  const text = strFromU8(bytes, true);
  const heads = text.matchAll(/<<\n\/Length (\d+)\n\/Filter \/FlateDecode\n>>\nstream\n/g);
  return Array.from(heads, ({ 0: head, 1: length, index }) => {
    const start = index + head.length;
    const end = start + Number(length);
    return {
      content: strFromU8(unzlibSync(bytes.subarray(start, end)), true),
      rewritten: (content) => {
        const packed = strFromU8(zlibSync(strToU8(content, true)), true);
        const again = `<<\n/Length ${packed.length}\n/Filter /FlateDecode\n>>\nstream\n${packed}`;
        return strToU8(text.slice(0, index) + again + text.slice(end), true);
      },
    };
  });
}

/** The file with one number of a page's content changed: of the first tile after the cover, where there are tiles. */
function changed(bytes: Uint8Array, at: RegExp, change: (x: number) => number): Uint8Array {
  const stream = streamsOf(bytes)[1];
  if (!stream) throw new Error('no content stream');
  const { content, rewritten } = stream;
  const found = at.exec(content);
  const number = found?.[1];
  if (!found || number === undefined) throw new Error('no such number');
  const place = found.index + found[0].lastIndexOf(number);
  return rewritten(content.slice(0, place) + change(Number(number)) + content.slice(place + number.length));
}

/** Half a millimetre, in units of PDF. */
const half = (0.5 * 72) / 25.4;

/** A file for every so many-th number of the lines of a kind: with half a millimetre more in that. */
function* changedByHalf(bytes: Uint8Array, kind: string, every: number): Generator<Uint8Array> {
  let numbers = 0;
  for (const { content, rewritten } of streamsOf(bytes))
    for (const block of content.matchAll(new RegExp(`/${kind}#7c\\S* BMC.*?EMC`, 'gs')))
      for (const step of block[0].matchAll(/^[-\d. ]+ [mlc]$/gm))
        for (const number of step[0].matchAll(/[-\d.]+/g)) {
          if (++numbers % every !== 0) continue;
          const place = block.index + step.index + number.index;
          const after = content.slice(place + number[0].length);
          yield rewritten(content.slice(0, place) + (Number(number[0]) + half) + after);
        }
}

/** How far (mm) any point of the lines lies from where its line was. */
const movedAcross = (before: readonly PdfPath[], after: readonly PdfPath[]): number =>
  Math.max(
    ...after.flatMap(({ curves }, i) => {
      const was = before[i]?.curves ?? [];
      return curves
        .filter((curve, k) => JSON.stringify(curve) !== JSON.stringify(was[k]))
        .flatMap((curve) =>
          Array.from(
            { length: 21 },
            (_, k) => nearestOnEdge({ curves: was }, pointAt(curve, k / 20)).distance,
          ),
        );
    }),
  );
