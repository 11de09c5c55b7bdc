import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { readSheet } from '../../../engine/reading/read-sheet.ts';
import { walkSheet } from '../../../engine/reading/walk-sheet.ts';
import { sheetSvg } from '../../../engine/render/sheet.ts';
import { pieceSvgs } from '../../../engine/render/svg.ts';
import { smallCutLines, smallGarment } from '../render/small-garment.ts';

const svg = sheetSvg(smallGarment, smallCutLines);

const codesOf = (text: string): readonly string[] => readSheet(text).issues.map(({ code }) => code);

describe('reading a sheet back', () => {
  test('measures the same lengths as the garment had, within 0.001 mm', () => {
    const read = readSheet(svg);
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    for (const [i, piece] of smallGarment.pieces.entries())
      for (const [j, edge] of piece.edges.entries()) {
        const back = read.value.garment.pieces[i]?.edges[j];
        if (!back) throw new Error('missing edge');
        expect(Math.abs(edgeLength(back) - edgeLength(edge))).toBeLessThan(0.001);
      }
  });

  test('finds notches, marks and grain where they are drawn, turned with their piece', () => {
    const read = readSheet(svg);
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const { pieces, ...rest } = read.value.garment;
    for (const [i, piece] of smallGarment.pieces.entries()) {
      const back = pieces[i];
      for (const [j, notch] of piece.notches.entries())
        expect(Math.abs((back?.notches[j]?.at ?? Number.NaN) - notch.at)).toBeLessThan(0.001);
      expect(back?.cut).toEqual(piece.cut);
    }
    const [buttonhole, drill] = pieces[0]?.marks ?? [];
    expect(buttonhole?.length).toBeCloseTo(14, 3);
    expect(buttonhole?.angle).toBeCloseTo(Math.PI / 2, 4);
    expect((drill?.at.x ?? 0) - (buttonhole?.at.x ?? 0)).toBeCloseTo(25, 3);
    const { pieces: _, ...drafted } = smallGarment;
    expect(rest).toEqual(drafted);
  });

  test('honours the scale of the paper: a sheet printed at 90 % is 90 % as long', () => {
    const shrunk = svg.replace(/width="(\d+)mm" height="(\d+)mm"/, (_, w, h) => {
      return `width="${Number(w) * 0.09}cm" height="${Number(h) * 0.09}cm"`;
    });
    const read = readSheet(shrunk);
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const [drafted, back] = [smallGarment, read.value.garment].map((g) => g.pieces[0]?.edges[1]);
    if (!drafted || !back) throw new Error('missing edge');
    expect(edgeLength(back)).toBeCloseTo(0.9 * edgeLength(drafted), 2);
  });

  const seamOfNothing = (/<metadata>(.*?)<\/metadata>/s.exec(svg)?.[1] ?? '').replace(
    '"ease":0',
    '"ease":"none"',
  );

  test.each([
    ['cut short', svg.slice(0, svg.length / 2), 'not-svg'],
    ['without its metadata', svg.replace(/<metadata>.*?<\/metadata>/, ''), 'metadata-missing'],
    ['with broken metadata', svg.replace('<metadata>{', '<metadata>{{'), 'metadata-damaged'],
    ['with a seam of nothing', svg.replace('"ease":0', '"ease":"none"'), 'metadata-damaged'],
    ['without a size', svg.replace(/ width="\d+mm"/, ''), 'size-unknown'],
    ['sized in percent', svg.replace(/width="\d+mm"/, 'width="100%"'), 'size-unknown'],
    ['stretched', svg.replace(/width="\d+mm"/, 'width="999mm"'), 'stretched'],
    ['with an edge missing', svg.replace(/<path class="stitch"[^>]*>/, ''), 'path-missing'],
    ['with an edge twice', svg.replace(/<path class="stitch"[^>]*>/, '$&$&'), 'path-twice'],
    [
      'with an edge nobody speaks of',
      svg.replace('data-edge="princess"', 'data-edge="dart"'),
      'path-unknown',
    ],
    ['with an edge moved', svg.replace('<path class="stitch"', '$& transform="scale(2)"'), 'path-moved'],
    ['with its piece moved', svg.replace('<g class="piece"', '$& transform="translate(9 9)"'), 'path-moved'],
    ['with an arc', svg.replace(/(class="stitch".*? d=")M/, '$1M0 0A1 1 0 0 0 2 2M'), 'path-unreadable'],
    ['with an open cutting line', svg.replace(/(class="cut"[^>]*)Z"/, '$1"'), 'path-open'],
  ])('a file %s is refused with a reason', (_, damaged, code) => {
    expect(codesOf(damaged)).toContain(code);
  });

  test.each([
    ['nothing is named where all is damaged', '<metadata>[1]</metadata>', /is damaged\.$/],
    ['the place is named', `<metadata>${seamOfNothing}</metadata>`, /is damaged at “seams\/0\/ease”\.$/],
  ])('of what a damaged drawing says of itself %s', (_, said, words) => {
    const read = readSheet(svg.replace(/<metadata>.*?<\/metadata>/s, () => said));
    expect(read.issues[0]?.message).toMatch(words);
  });

  test('the drawing of one piece is sent back: its neighbours are not there', () => {
    for (const text of pieceSvgs(smallGarment, smallCutLines).values())
      expect(codesOf(text)).toEqual(['one-piece-only']);
  });

  test('all that is wrong is said at once', () => {
    const damaged = svg.replace(/<path class="stitch"[^>]*>/g, '');
    expect(codesOf(damaged).filter((code) => code === 'path-missing')).toHaveLength(8);
  });

  test('a damaged file is an answer with issues, or still a sheet; it never crashes', () => {
    const edit = fc.tuple(fc.nat(svg.length - 1), fc.integer({ min: 0, max: 255 }), fc.nat(3));
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 12 }), (edits) => {
        let damaged = svg;
        for (const [at, code, cut] of edits)
          damaged = damaged.slice(0, at) + String.fromCharCode(code) + damaged.slice(at + cut);
        const walked = walkSheet(damaged);
        if (!walked.ok) expect(walked.issues.length).toBeGreaterThan(0);
      }),
      { numRuns: 150 },
    );
  });
});

describe('walking a sheet', () => {
  test('finds the seam of an untouched sheet true', () => {
    const walked = walkSheet(svg);
    if (!walked.ok) throw new Error(JSON.stringify(walked.issues));
    expect(walked.value.seams[0]?.mismatch).toBeLessThan(0.001);
    expect(walked.value.girths[0]?.error).toBeLessThan(0.001);
    expect(Math.abs(walked.value.joins[0]?.angle ?? 90)).toBeLessThan(0.001);
  });

  test('finds an edge that was redrawn half a millimetre longer', () => {
    const longer = svg.replace(
      /(data-edge="waist"[^>]* d="M)([\d.]+)/,
      (_, before, x) => `${before}${Number(x) + 0.5}`,
    );
    const walked = walkSheet(longer);
    expect(walked.ok && walked.value.ok).toBe(false);
  });
});
