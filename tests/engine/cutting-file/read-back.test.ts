import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { garments } from '../../../drafts/index.ts';
import { draftBounds } from '../../../engine/checks/bounds.ts';
import { checkGarment } from '../../../engine/checks/check-garment.ts';
import { cutReady } from '../../../engine/checks/cut-ready.ts';
import { cuttingFile } from '../../../engine/cutting-file/cutting-file.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { isSimple } from '../../../engine/geometry/inside.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { FILE } from '../../../engine/geometry/tolerance.ts';
import { readSheet } from '../../../engine/reading/read-sheet.ts';
import { sheetSvg } from '../../../engine/render/sheet.ts';
import { smallGarment } from '../render/small-garment.ts';
import { garmentIn, readCuttingFile } from './read-back.ts';

const bodies = readdirSync('measurements')
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => name.replace('.yaml', ''));

const drafted = (file: string, name: keyof typeof garments = 'dress') => {
  const made = evaluate(garments[name], parse(readFileSync(`measurements/${file}.yaml`, 'utf8')));
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value;
};

const area = (curves: readonly Curve[]): number => signedArea([{ name: 'cut', curves }]);

const isWhole = (edges: readonly { readonly turn: string }[]): number =>
  edges.some(({ turn }) => turn === 'fold') ? 2 : 1;

describe.each(bodies)('the dress of the %s, in a cutting file read by dxf-parser', (file) => {
  const made = drafted(file);
  const { garment, cutLines, report } = made;

  it('walks with exact curves as it was drafted, to 0.1 mm, and can be cut', () => {
    const { drawn, whole, cut } = garmentIn(garment, cuttingFile(made, 'splines'), 'splines');
    const bounds = { ...draftBounds, seam: FILE, cutLine: FILE, kink: 1e-3 };
    const walked = checkGarment(drawn, bounds);
    expect(walked.issues).toEqual([]);
    for (const [i, { lengthA, lengthB }] of report.seams.entries()) {
      expect(walked.seams[i]?.lengthA).toBeCloseTo(lengthA, 3);
      expect(walked.seams[i]?.lengthB).toBeCloseTo(lengthB, 3);
    }
    for (const [i, { finished }] of report.girths.entries())
      expect(walked.girths[i]?.finished).toBeCloseTo(finished, 3);
    const lines = new Map([...cut].map(([name, curves]) => [name, { name, curves }]));
    expect(cutReady(whole, lines, FILE)).toEqual([]);
  });

  it('walks as polylines to 0.1 mm: every seam, every stretch between notches, every girth', () => {
    const { drawn } = garmentIn(garment, cuttingFile(made, 'polylines'), 'polylines');
    const walked = checkGarment(drawn, draftBounds);
    for (const [i, { name, lengthA, lengthB }] of report.seams.entries()) {
      const back = walked.seams[i];
      expect(Math.abs((back?.lengthA ?? 0) - lengthA), name).toBeLessThan(0.1);
      expect(Math.abs((back?.lengthB ?? 0) - lengthB), name).toBeLessThan(0.1);
      expect(back?.mismatch, name).toBeLessThan(0.1);
    }
    for (const [i, { level, finished }] of report.girths.entries())
      expect(Math.abs((walked.girths[i]?.finished ?? 0) - finished), level).toBeLessThan(0.1);
  });

  it('covers the area of the same piece in the SVG: with exact curves as much, as polylines up to 0.05 mm all round more', () => {
    const sheet = readSheet(sheetSvg(garment, cutLines));
    if (!sheet.ok) throw new Error('not read');
    const exact = garmentIn(garment, cuttingFile(made, 'splines'), 'splines').cut;
    const flat = garmentIn(garment, cuttingFile(made, 'polylines'), 'polylines').cut;
    for (const { name, edges } of garment.pieces) {
      const inSvg = isWhole(edges) * area(sheet.value.cutLines.get(name)?.curves ?? []);
      const round = (flat.get(name) ?? []).reduce(
        (sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y),
        0,
      );
      expect(Math.abs(area(exact.get(name) ?? []) - inSvg), name).toBeLessThan(0.02);
      expect(area(flat.get(name) ?? []) - inSvg, name).toBeGreaterThan(-0.02);
      expect(area(flat.get(name) ?? []) - inSvg, name).toBeLessThan(0.05 * round);
      expect(isSimple([{ name, curves: flat.get(name) ?? [] }]), name).toBe(true);
    }
  });
});

describe.each(['polylines', 'splines'] as const)('a cutting file of %s', (flavour) => {
  const made = drafted('leading-lady');
  const text = cuttingFile(made, flavour);
  const read = readCuttingFile(text);

  it('is plain ASCII, in millimetres by its header and by its words', () => {
    expect(text).toMatch(/^[\n -~]*$/);
    expect(read.header.$INSUNITS).toBe(4);
    expect(text).toContain('Units are millimetres.');
  });

  it('has a block and one insertion for every piece, and test squares of 50 mm and 2 in beside them', () => {
    expect([...read.blocks.keys()]).toHaveLength(made.garment.pieces.length);
    expect(read.inserts.map(({ name }) => name)).toEqual([...read.blocks.keys()]);
    const sides = read.beside.flatMap((one) => {
      const { vertices = [] } = one as { vertices?: { x: number; y: number }[] };
      const [a, b, c] = vertices;
      return a && b && c ? [[Math.hypot(b.x - a.x, b.y - a.y), Math.hypot(c.x - b.x, c.y - b.y)]] : [];
    });
    expect(sides.map((both) => both.map((side) => side.toFixed(3)))).toEqual([
      ['50.000', '50.000'],
      ['50.800', '50.800'],
    ]);
  });

  it('inserts no piece on another, and none below zero', () => {
    const { cut } = garmentIn(made.garment, text, flavour);
    const cutting = [...cut.values()];
    const boxes = read.inserts.map(({ position }, i) => {
      const curves = cutting[i] ?? [];
      const [xs, ys] = [curves.map(({ from }) => from.x), curves.map(({ from }) => -from.y)];
      return {
        left: position.x + Math.min(...xs),
        right: position.x + Math.max(...xs),
        low: position.y + Math.min(...ys),
        high: position.y + Math.max(...ys),
      };
    });
    for (const [i, a] of boxes.entries()) {
      expect(Math.min(a.left, a.low)).toBeGreaterThan(0);
      for (const b of boxes.slice(i + 1))
        expect(a.left < b.right && b.left < a.right && a.low < b.high && b.low < a.high).toBe(false);
    }
  });

  it('has every line of a piece on a layer of its own', () => {
    const bib = cuttingFile({ garment: smallGarment, cutLines: made.cutLines }, flavour);
    const [front] = readCuttingFile(bib).blocks.values();
    expect([...(front?.layers ?? [])].sort()).toEqual([
      'CUT',
      'FOLD',
      'GATHER',
      'GRAIN',
      'LEVEL',
      'MARK',
      'NOTCH',
      'STITCH',
    ]);
    expect(front?.words).toContain('1 centre front');
  });
});

it.each(Object.keys(garments) as (keyof typeof garments)[])(
  'the %s can be written in both flavours',
  (name) => {
    const made = drafted('stage-manager', name);
    for (const flavour of ['polylines', 'splines'] as const)
      expect(readCuttingFile(cuttingFile(made, flavour)).blocks.size).toBe(made.garment.pieces.length);
  },
);
