import { mkdtemp, readdir, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { garments } from '../../../drafts/garments.ts';
import { skirt } from '../../../drafts/skirt/skirt.ts';
import type { Draft } from '../../../engine/pattern/draft.ts';
import { lengthToBuy } from '../../../engine/text/length-to-buy.ts';
import { instanceFile } from '../../engine/lay/instances.ts';
import { bodkin } from '../session.ts';

const body = 'measurements/leading-lady.yaml';

describe('lay --shapes', () => {
  test('gives density, length and a place for every shape, the same every time', async () => {
    const words = ['lay', '--shapes', instanceFile('trousers'), '--rounds', '10', '--json'];
    const [first, again] = [await bodkin(words), await bodkin(words)];
    expect(first.code).toBe(0);
    expect(again.out).toBe(first.out);
    const result = JSON.parse(first.out);
    expect(result.placements).toHaveLength(64);
    expect(result.density).toBeCloseTo(result.leastLength / result.length, 12);
    expect(result.length).toBeGreaterThan(result.leastLength);
  });

  test('says in words what it used', async () => {
    const { out } = await bodkin(['lay', '--shapes', instanceFile('trousers'), '--rounds', '5']);
    expect(out).toMatch(/64 shapes on [\d.]+ of a strip 79 wide: [\d.]+ % used, no overlaps \(proven\)/);
  });

  test.each([
    ['{}', 'no list of shapes'],
    ['{"strip_height": 4', 'is no JSON'],
    [
      '{"strip_height": 4, "items": [{"id": 1, "demand": 1, "shape": {"data": [[0,0],[1,0],[1,5]]}}]}',
      'only 4 mm wide',
    ],
    [
      '{"strip_height": 4, "items": [{"id": 1, "demand": 1, "shape": {"data": [[0,0],[2,2],[3,0],[0,1]]}}]}',
      'crosses itself',
    ],
  ])('refuses %s', async (text, said) => {
    const file = join(await mkdtemp(join(tmpdir(), 'lay-')), 'shapes.json');
    await writeFile(file, text);
    const { code, err, out } = await bodkin(['lay', '--shapes', file]);
    expect(code).toBe(2);
    expect(err).toContain(said);
    expect(out).toBe('');
  });
});

describe('lay of a garment', () => {
  test('takes a decimal comma wherever it takes a point', async () => {
    const said = async (mark: string): Promise<string> =>
      (
        await bodkin([
          'lay',
          'bib',
          '--body',
          body,
          ...`--width 91.5cm --shrink 3.5 --seconds 0.5 --rounds 3`.replaceAll('.', mark).split(' '),
          '--json',
        ])
      ).out;
    expect(await said(',')).toBe(await said('.'));
    expect(await said(',')).toContain('"ok": true');
  });

  test('writes a plan for each cloth and says what to buy', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'lay-'));
    const { code, out, err } = await bodkin(
      ['lay', 'bib', '--body', body, '--width', '90cm', '--rounds', '30', '--out', folder],
      {},
    );
    expect(err).toContain('wrote lay-self.svg');
    expect(code).toBe(0);
    expect(out).toMatch(/self +900.0 +folded +\d+ +[\d.]+ +[\d.]+ +[\d.]+ % +[\d.]+ m/);
    expect(out).toMatch(/to cut +self +lining\n/);
    expect((await readdir(folder)).toSorted()).toContain('lay.pdf');
    expect(await readFile(join(folder, 'lay-self.svg'), 'utf8')).toContain('Drawn at 1:10');
  });

  test('says at which seams stripes meet', async () => {
    const words = ['lay', 'skirt', '--body', body, '--width', '1400', '--rounds', '20', '--stripe', '60'];
    const { code, out } = await bodkin(words, { garments });
    expect(code).toBe(0);
    expect(out).toMatch(/stripes meet at: skirt, side; skirt, front princess; skirt, back princess/);
  });

  test('says of colours in one order where they run on, and where they would have to be mirrored', async () => {
    const stripes = ['--stripe-along', '40', '--one-order'];
    const words = ['lay', 'dress', '--body', body, '--width', '1400', '--rounds', '5', ...stripes];
    const { code, out } = await bodkin(words, { garments });
    expect(code).toBe(0);
    expect(out).toMatch(/stripes along the cloth meet at: .*waist, side front/);
    expect(out).toMatch(/they do not meet at: .*skirt, side/s);
  });

  test.each([
    [[], 'which garment'],
    [['bib'], '--body FILE'],
    [['bib', '--body', body], '--width MM'],
    [['bib', '--body', body, '--width', 'broad'], '--width takes a length'],
    [['bib', '--body', body, '--width', '1400', '--shrink', '80'], '--shrink takes a number from 0 to 25'],
    [['bib', '--body', body, '--width', '1400', '--cloth', 'crumpled'], 'folded, open'],
    [
      ['bib', '--body', body, '--width', '1400', '--stripe', '0.001'],
      '--stripe takes a length from 2 to 1000',
    ],
    [['bib', '--body', body, '--width', '1400', '--stripe', '60', '--one-order'], '--stripe-along'],
    [['bib', '--body', body, '--width', '100'], 'wide for it'],
  ])('refuses %j', async (words, said) => {
    const { code, err, out } = await bodkin(['lay', ...words]);
    expect(err).toContain(said);
    expect(code).toBe(2);
    expect(out).toBe('');
  });
});

describe('lay --sizes', () => {
  const chart = `size,units,bustGirth,waistGirth,hipGirth,backNeckPointToWaist,skirtLength
38,cm,88,70,95,40,300
40,cm,92,74,99,40,300
42,cm,96,78,103,40,300
`;
  const lay = async (...words: string[]) => {
    const folder = await mkdtemp(join(tmpdir(), 'lay-'));
    const sizes = join(folder, 'chart.csv');
    await writeFile(sizes, chart);
    const fixed = ['--width', '1400', '--rounds', '30'];
    return bodkin(['lay', 'skirt', '--sizes', sizes, ...fixed, ...words], { garments: [skirt as Draft] });
  };

  test('lays several sizes together, each piece with its size, and proves the plan', async () => {
    const out = join(await mkdtemp(join(tmpdir(), 'lay-')), 'lays');
    const { code, out: said, err } = await lay('--only', '38, 42,42', '--out', out);
    expect(err).toContain('wrote lay-self.svg');
    expect(code).toBe(0);
    expect(said).toContain('skirt for sizes 38, 42 (2 times): no overlaps, every piece there (proven)');
    const svg = await readFile(join(out, 'lay-self.svg'), 'utf8');
    const copies = (piece: string) => svg.split(`class="outline" data-piece="${piece}"`).length - 1;
    expect(copies('skirt side front, 38')).toBe(1);
    expect(copies('skirt side front, 42')).toBe(2);
    expect(copies('skirt side front, 40')).toBe(0);
    expect(svg).toMatch(/>2 skirt side front, 42</);
  });

  test('lays every size of the run where none is chosen', async () => {
    const { code, out } = await lay('--json');
    expect(code).toBe(0);
    const [{ pieces }] = JSON.parse(out).lays;
    expect(new Set(pieces.map(({ piece }: { piece: string }) => piece.split(', ')[1]))).toEqual(
      new Set(['38', '40', '42']),
    );
  });

  test('refuses a size that the chart has not, both a body and sizes, and a choice without a chart', async () => {
    const unknown = await lay('--only', '38,44');
    expect(unknown.code).toBe(2);
    expect(unknown.err).toContain('“44” is no size of this chart');
    expect((await lay('--body', body)).code).toBe(2);
    const alone = await bodkin(['lay', 'bib', '--body', body, '--width', '900', '--only', '38']);
    expect(alone.err).toContain('with --sizes FILE');
  });
});

describe('the length to buy', () => {
  test.each([
    [1801, 'cm', '1.9 m'],
    [1800, 'mm', '1.8 m'],
    [914.4, 'in', '1 yd'],
    [1000, 'in', '1 1/8 yd'],
    [400, 'in', '1/2 yd'],
  ] as const)('%d mm for who measures in %s is %s', (length, unit, said) => {
    expect(lengthToBuy(length, unit)).toBe(said);
  });
});
