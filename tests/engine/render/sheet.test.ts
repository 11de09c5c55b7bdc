import { describe, expect, test } from 'vitest';
import { boundingBox } from '../../../engine/geometry/bounds.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import { readMarkup } from '../../../engine/reading/read-markup.ts';
import { readPath } from '../../../engine/reading/read-path.ts';
import { sheetSvg } from '../../../engine/render/sheet.ts';
import { fileNameOf, pieceSvgs } from '../../../engine/render/svg.ts';
import { smallCutLines, smallGarment } from './small-garment.ts';

const elementsOf = (svg: string) => {
  const read = readMarkup(svg);
  if (!read.ok) throw new Error('not SVG');
  return read.value.elements;
};

const svg = sheetSvg(smallGarment, smallCutLines, { date: '2031-05-04' });
const elements = elementsOf(svg);
const ofClass = (name: string) => elements.filter(({ attributes }) => attributes.class === name);

describe('a sheet', () => {
  test('is 1:1: its viewBox counts the millimetres of its width and height', () => {
    const { width, height, viewBox } = elements[0]?.attributes ?? {};
    expect(viewBox).toBe(`0 0 ${Number.parseFloat(width ?? '')} ${Number.parseFloat(height ?? '')}`);
    expect(width).toMatch(/^\d+mm$/);
  });

  test('has one stitching path for each edge and one cutting path for each piece, none of them transformed', () => {
    expect(ofClass('stitch').map(({ attributes: a }) => `${a['data-piece']}/${a['data-edge']}`)).toEqual(
      smallGarment.pieces.flatMap((piece) => piece.edges.map((edge) => `${piece.name}/${edge.name}`)),
    );
    expect(ofClass('cut').map(({ attributes: a }) => a['data-piece'])).toEqual([
      'centre front',
      'side front',
    ]);
    expect([...ofClass('stitch'), ...ofClass('cut')].some(({ transformed }) => transformed)).toBe(false);
  });

  test('carries its seams as JSON, a reversed edge marked and no other', () => {
    const said = JSON.parse(elements.find(({ name }) => name === 'metadata')?.text ?? '');
    expect(said.seams).toEqual([
      {
        name: 'princess seam',
        a: [{ piece: 'centre front', edge: 'princess' }],
        b: [{ piece: 'side front', edge: 'princess', reversed: true }],
        ease: 0,
        gatherRatio: 1,
      },
    ]);
  });

  test('stands its pieces upright on their grain, apart from each other', () => {
    for (const { attributes } of ofClass('grain')) {
      const read = readPath(attributes.d ?? '');
      const [line] = read.ok ? read.curves : [];
      expect(line?.from.x).toBeCloseTo(line?.to.x ?? Number.NaN, 3);
    }
    const boxes = ofClass('cut').map(({ attributes }) => {
      const read = readPath(attributes.d ?? '');
      return boundingBox(read.ok ? read.curves : []);
    });
    const [first, second] = boxes.toSorted((a, b) => a.left - b.left);
    expect((second?.left ?? 0) - (first?.right ?? 0)).toBeGreaterThanOrEqual(20);
  });

  test('prints a square of 50 mm and one of 2 in, both named', () => {
    expect(ofClass('square').map(({ attributes: a }) => [a.width, a.height])).toEqual([
      ['50', '50'],
      ['50.8', '50.8'],
    ]);
    expect(elements.map(({ text }) => text)).toEqual(expect.arrayContaining(['50 mm', '2 in']));
  });

  test('says of each piece its name, cloths, allowance, finished girths, body and date', () => {
    const said = elements.map(({ text }) => text);
    for (const words of [
      '1 centre front',
      'cut 1 self on the fold',
      'cut 1 lining on the fold',
      'cut 2 self, a pair',
      'seam allowance 12.7 mm included',
      'waist finished 360 mm',
      'bib for stage manager, 2031-05-04',
      'bust level',
    ])
      expect(said).toContain(words);
  });

  test('is the same to the byte each time', () => {
    expect(sheetSvg(smallGarment, smallCutLines, { date: '2031-05-04' })).toBe(svg);
  });

  test('holds no markup that came from a name', () => {
    const evil = '"><script>alert(1)</script>]]>\u0000';
    const named: Garment = {
      ...smallGarment,
      name: evil,
      body: evil,
      pieces: smallGarment.pieces.map((piece) => ({ ...piece, name: `${piece.name} ${evil}` })),
    };
    const written = sheetSvg(named, new Map(), { date: evil });
    expect(written).not.toContain('<script');
    expect(written).not.toContain('\u0000');
  });
});

describe('the drawing of one piece', () => {
  test('holds that piece alone, on paper just large enough', () => {
    const drawn = elementsOf(pieceSvgs(smallGarment, smallCutLines).get('2-side-front.svg') ?? '');
    const pieces = new Set(drawn.flatMap(({ attributes }) => attributes['data-piece'] ?? []));
    expect([...pieces]).toEqual(['side front']);
    expect(drawn.filter(({ attributes }) => attributes.class === 'square')).toHaveLength(2);
  });

  test('is kept under a plain file name', () => {
    const [first] = smallGarment.pieces;
    if (!first) throw new Error('no such piece');
    expect(fileNameOf(first)).toBe('1-centre-front.svg');
    expect(fileNameOf({ ...first, name: '../../Étage <x>' })).toBe('1-tage-x-.svg');
  });
});
