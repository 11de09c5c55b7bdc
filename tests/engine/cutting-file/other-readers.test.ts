import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { garments } from '../../../drafts/index.ts';
import { skirt } from '../../../drafts/skirt/skirt.ts';
import { cuttingFile, gradedCuttingFile } from '../../../engine/cutting-file/cutting-file.ts';
import { layers } from '../../../engine/cutting-file/layers.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import type { Draft } from '../../../engine/pattern/draft.ts';
import { trialCases } from '../../../engine/proof/trial-case.ts';
import { chartOf, gradedBy } from '../grading/charts.ts';
import { type Audited, audited, hasEzdxf, hasOgrinfo, surveyed } from './readers.ts';

const folder = mkdtempSync(join(tmpdir(), 'bodkin-'));
afterAll(() => rmSync(folder, { recursive: true }));

let files = 0;
const file = (text: string): string => {
  files += 1;
  const path = join(folder, `${files}.dxf`);
  writeFileSync(path, text);
  return path;
};

const lady = parse(readFileSync('measurements/leading-lady.yaml', 'utf8'));

const drafted = (body: object = lady, styling: object = {}) => {
  const made = evaluate(garments.dress, body, styling);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value;
};

/**
 * This reader's audit takes the ends of all R12 polylines in blocks for lost, those of the files that it writes itself too
 * (tried with 0.18.1: one block, one polyline, saved and read).
 */
const lostEnd = /^Deleted SEQEND\(#[0-9A-F]+\) entity with invalid owner handle #None\.$/;

const expectSound = ({ errors, fixes }: Audited): void => {
  expect(errors).toEqual([]);
  expect(fixes.filter((fix) => !lostEnd.test(fix))).toEqual([]);
};

const names = [
  'O’Neill “the voice”\n0\nEOF\n',
  '縫い手 ^J \\U+0041',
  '🪡 100 %',
  '%d %c ~ "\'<>&',
  'a\r\tb\u0000',
];

describe.skipIf(!hasEzdxf).each([
  ['polylines', 'AC1009'],
  ['splines', 'AC1015'],
] as const)('ezdxf reads a cutting file of %s', (flavour, version) => {
  const made = drafted();
  const front = { ...made.garment, pieces: made.garment.pieces.slice(0, 1) };
  const named = names.map((body) =>
    cuttingFile({ garment: { ...front, body }, cutLines: made.cutLines }, flavour, { date: body }),
  );
  let found: Audited;
  let others: readonly Audited[] = [];
  beforeAll(() => {
    const [first, ...rest] = audited([cuttingFile(made, flavour), ...named].map(file));
    if (first) found = first;
    others = rest;
  }, 60_000);

  it('and finds nothing wrong with it', () => {
    expectSound(found);
    expect(found).toMatchObject({ version, units: 4 });
    if (flavour === 'splines') expect(found.fixes).toEqual([]);
  });

  it('with every layer, and nothing on any other', () => {
    const known = new Set<string>(layers.map(({ name }) => name));
    const own = found.layers.filter((layer) => layer !== '0' && layer !== 'Defpoints');
    expect(own.sort()).toEqual([...known].sort());
    for (const block of Object.values(found.blocks))
      for (const layer of Object.keys(block.layers)) expect(known).toContain(layer);
  });

  it('and measures the stitching lines as long as they were drafted, and the area that is cut', () => {
    for (const [i, { name, edges }] of made.garment.pieces.entries()) {
      const block = Object.values(found.blocks)[i];
      expect(block?.attributes.PIECE).toBe(name);
      for (const edge of edges.filter(({ turn }) => turn !== 'fold'))
        expect(Math.abs((block?.lengths[edge.name] ?? 0) - edgeLength(edge)), edge.name).toBeLessThan(0.1);
      const line = made.cutLines.get(name) ?? { name, curves: [] };
      const layersOfCloth = edges.some(({ turn }) => turn === 'fold') ? 2 : 1;
      const off = (block?.area ?? 0) - layersOfCloth * signedArea([line]);
      // It flattens curves to 0.001 mm on its part.
      const round = layersOfCloth * edgeLength(line);
      expect(off, name).toBeGreaterThan(flavour === 'polylines' ? -0.02 : -0.001 * round);
      expect(off, name).toBeLessThan((flavour === 'polylines' ? 0.05 : 0.001) * round);
    }
  });

  it('and tells how often a piece is cut, of which cloth, unfolded', () => {
    const block = found.blocks['1-CENTRE-FRONT'];
    expect(block?.attributes).toEqual({
      PIECE: 'centre front',
      NUMBER: '1',
      GARMENT: 'dress',
      BODY: 'leading lady',
      CLOTH: 'self',
      QUANTITY: '1',
      CUT: 'cut 1 self',
    });
    expect(block?.words).toContain('cut 1 self');
    expect(found.blocks['6-FRONT-STRAP']?.attributes).toMatchObject({
      QUANTITY: '2',
      CLOTH_2: 'lining',
      QUANTITY_2: '2',
    });
  });

  it.each(names.map((name, i) => [name, i] as const))('whoever it is for: %j', (name, i) => {
    const read = others[i];
    expect(named[i]).toMatch(/^[\n -~]*$/);
    if (read) expectSound(read);
    expect(read?.blocks['1-CENTRE-FRONT']?.attributes.BODY).toBe(name);
  });
});

it.skipIf(!hasEzdxf)('ezdxf finds nothing wrong with dresses of random stylings for random bodies', () => {
  const cases = trialCases(garments.dress.choices, [], { tries: 12, seed: 7 }).slice(-12);
  const made = cases.flatMap(({ body, styling }) => {
    const one = evaluate(garments.dress, body, styling);
    return one.ok ? [one.value] : [];
  });
  expect(made.length).toBeGreaterThan(4);
  const texts = made.map((one, i) => cuttingFile(one, i % 2 === 0 ? 'polylines' : 'splines'));
  for (const one of audited(texts.map(file))) expectSound(one);
});

it.skipIf(!hasEzdxf)('where left and right differ each has a block of its own', () => {
  const fitting = [
    { 'shorten strap': 1, side: 'left' },
    { 'lower shoulder': 1, side: 'left' },
  ];
  const uneven = drafted({ ...lady, fitting });
  const both = (['polylines', 'splines'] as const).map((flavour) => cuttingFile(uneven, flavour));
  for (const one of audited(both.map(file))) {
    expectSound(one);
    expect(Object.keys(one.blocks)).toHaveLength(uneven.garment.pieces.length);
    const pieces = Object.values(one.blocks).map(({ attributes }) => attributes.PIECE);
    expect(pieces).toEqual(expect.arrayContaining(['right front strap', 'left front strap']));
  }
});

it.skipIf(!hasEzdxf)('a grade has a block for each piece in each size', () => {
  const chart = chartOf(
    {
      units: 'cm',
      sizes: [38, 40].map((size) => ({
        size,
        bustGirth: size + 50,
        waistGirth: size + 32,
        hipGirth: size + 57,
        backNeckPointToWaist: 40,
      })),
    },
    skirt as Draft,
  );
  const { sizes } = gradedBy(skirt as Draft, chart);
  const both = (['polylines', 'splines'] as const).map((flavour) => gradedCuttingFile(sizes, flavour));
  for (const one of audited(both.map(file))) {
    expectSound(one);
    const pieces = ['1-SKIRT-CENTRE-FRONT', '2-SKIRT-SIDE-FRONT', '3-SKIRT-SIDE-BACK', '4-SKIRT-CENTRE-BACK'];
    expect(Object.keys(one.blocks)).toEqual(
      ['38', '40'].flatMap((size) => pieces.map((name) => `${size}_${name}`)),
    );
    expect(one.blocks['40_1-SKIRT-CENTRE-FRONT']?.attributes.SIZE).toBe('40');
  }
});

it.skipIf(!hasOgrinfo).each(['polylines', 'splines'] as const)(
  'ogrinfo draws a file of %s within the bounds that its header says',
  (flavour) => {
    const text = cuttingFile(drafted(), flavour);
    const [, right = Number.NaN, top = Number.NaN] =
      /\$EXTMAX\n10\n(\S+)\n20\n(\S+)\n/.exec(text)?.map(Number) ?? [];
    const { count, extent } = surveyed(file(text));
    expect(count).toBeGreaterThan(200);
    const [left = 0, low = 0, most = 0, high = 0] = extent;
    // 20 mm are free all round.
    for (const [found, expected] of [
      [left, 20],
      [low, 20],
      [most, right - 20],
      [high, top - 20],
    ] as const)
      expect(Math.abs(found - expected)).toBeLessThan(0.06);
  },
);
