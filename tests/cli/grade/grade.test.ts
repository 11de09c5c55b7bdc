import { readdirSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { tableIn } from '../../../cli/input/table-file.ts';
import { skirt } from '../../../drafts/skirt/skirt.ts';
import type { Draft } from '../../../engine/pattern/draft.ts';
import { bodkin } from '../session.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const garments = [skirt as Draft];

const { at, file } = temporaryFolder();

const chart = `# invented
size,units,bustGirth,waistGirth,hipGirth,backNeckPointToWaist,skirtLength
38,cm,88,70,95,40,600
40,cm,92,74,99,40,600
42,cm,96,78,103,40,600
44,cm,100,82,107,40,600
`;

const grade = (...words: string[]) => bodkin(['grade', 'skirt', ...words], { garments });

describe('bodkin grade', () => {
  it('writes nests, the grade rule table and the grade as data, and says that sizes are true and steps even', async () => {
    const out = at('out');
    const { code, out: said, err } = await grade('--sizes', await file('chart.csv', chart), '--out', out);
    expect(code).toBe(0);
    expect(said).toContain('skirt in 4 sizes of chart: all true, even');
    expect(said).toMatch(/^42 .* 78\d\.\d|^42 +\w/m);
    expect(err).toContain(`into ${out}`);
    expect((await readdir(out)).sort()).toEqual([
      'grade.csv',
      'grade.json',
      'nest-1-skirt-centre-front.svg',
      'nest-2-skirt-side-front.svg',
      'nest-3-skirt-side-back.svg',
      'nest-4-skirt-centre-back.svg',
      'nest.svg',
    ]);
  });

  it('shows chosen sizes alone, on the line to cut on, and cuts them into tiles', async () => {
    const out = at('chosen');
    const sizes = await file('chart.csv', chart);
    const words = ['--only', '40,44', '--lines', 'cutting', '--tiles', 'a4', '--out', out];
    const { code } = await grade('--sizes', sizes, ...words);
    expect(code).toBe(0);
    const svg = await readFile(join(out, 'nest-2-skirt-side-front.svg'), 'utf8');
    expect([...svg.matchAll(/data-size="(\d+)" d="M[^"]*Z"/g)].map(([, size]) => size)).toEqual(['40', '44']);
    expect((await readFile(join(out, 'nest-tiles.pdf'))).subarray(0, 5).toString()).toBe('%PDF-');
    const rows = tableIn('grade.csv', await readFile(join(out, 'grade.csv'), 'utf8'));
    expect(Object.keys(rows[0] ?? {})).toContain('38 to 40');
    expect((await grade('--sizes', sizes, '--only', '41')).err).toContain('is no size of this chart');
    expect((await grade('--sizes', sizes, '--tiles', 'a7')).err).toContain('no paper called “a7”');
    expect((await grade('--sizes', sizes, '--lines', 'sewing')).code).toBe(2);
  });

  it('tells in the table what each size adds to the one before', async () => {
    const out = at('table');
    await grade('--sizes', await file('chart.csv', chart), '--out', out);
    const rows = tableIn('grade.csv', await readFile(join(out, 'grade.csv'), 'utf8'));
    const waists = rows.filter(({ name, quantity }) => name === 'waist' && quantity === 'length');
    expect(waists).toHaveLength(4);
    // A waist of 4 cm more is shared by two sides of four gores.
    for (const step of ['38 to 40', '40 to 42', '42 to 44'])
      expect(2 * waists.reduce((sum, row) => sum + Number(row[step]), 0)).toBeCloseTo(40, 2);
    const corner = rows.find(({ name, quantity }) => name === 'waist to front princess' && quantity === 'dx');
    expect(corner).toMatchObject({
      piece: 'skirt centre front',
      kind: 'corner',
      'laid on': 'centre line at the waist',
    });
  });

  it('prints the same as data', async () => {
    const { code, out } = await grade('--sizes', await file('chart.csv', chart), '--json');
    expect(code).toBe(0);
    const result = JSON.parse(out);
    expect(result).toMatchObject({ ok: true, garment: 'skirt', chart: { sizes: ['38', '40', '42', '44'] } });
    expect(result.axes[0].pieces[0].edges[0].steps).toHaveLength(3);
    expect(result.axes[0].uneven).toEqual([]);
  });

  it('reads a chart with a base, steps, a body beside the run and cups', async () => {
    await file(
      'lady.yaml',
      'units: cm\nbustGirth: 93\nwaistGirth: 75\nhipGirth: 99\nbackNeckPointToWaist: 40\n',
    );
    const text = `
units: cm
sizes: ["40", "42", {body: lady.yaml}]
base: {size: "40", bustGirth: 92, waistGirth: 74, hipGirth: 99, backNeckPointToWaist: 40}
steps: {bustGirth: 4, waistGirth: 4, hipGirth: 4}
cups: [B, D]
`;
    const out = at('cups');
    const { code, out: said } = await grade('--sizes', await file('stock.yaml', text), '--out', out);
    expect(code).toBe(0);
    expect(said).toContain('skirt in 5 sizes of stock');
    expect(said).toMatch(/^lady /m);
    expect(await readdir(out)).toContain('nest-cups.svg');
    expect(await readdir(out)).toContain('grade-cups.csv');
  });

  it.each(readdirSync(new URL('../../../measurements/charts', import.meta.url)))(
    'reads %s as it ships, sources of several lines and all',
    async (name) => {
      const shipped = new URL(`../../../measurements/charts/${name}`, import.meta.url).pathname;
      const { code, out: said } = await grade('--sizes', shipped, '--out', at(name));
      expect(code).toBe(0);
      expect(said).toContain('all true');
    },
  );

  it('says which size is nearest to a body, and what brings it home', async () => {
    const body = await file(
      'her.yaml',
      'units: cm\nbustGirth: 92\nwaistGirth: 75.2\nhipGirth: 99\nbackNeckPointToWaist: 40\n',
    );
    const sizes = await file('chart.csv', chart);
    const { code, out } = await grade('--sizes', sizes, '--nearest', body);
    expect(code).toBe(0);
    expect(out).toMatch(/^her: nearest in chart is size 40, 0\.\d+ sizes off; then 42/);
    expect(out).toMatch(/^waistGirth +752\.0 +740\.0 +-12\.0$/m);
    expect(out).toContain('let out the side seam at the waist: 3.0');
    const data = JSON.parse((await grade('--sizes', sizes, '--nearest', body, '--json')).out);
    expect(data).toMatchObject({ ok: true, body: 'her', nearest: { name: '40', cup: null } });
    expect(data.alterations).toEqual([{ kind: 'let out', seam: 'side seam', level: 'waist', mm: 3 }]);
  });

  it('takes the unit of a chart that says none from outside', async () => {
    const bare = chart.replace(',units', '').replaceAll(',cm', '');
    const path = await file('bare.csv', bare);
    expect((await grade('--sizes', path)).err).toContain('Say in which unit');
    expect((await grade('--sizes', path, '--units', 'cm')).code).toBe(0);
  });

  it('reads tables with semicolons or tabs, and commas before the decimals', async () => {
    const semicolons = chart.replaceAll(',', ';').replace('88;', '88,0;');
    expect((await grade('--sizes', await file('semi.csv', semicolons))).code).toBe(0);
    expect((await grade('--sizes', await file('tabs.tsv', chart.replaceAll(',', '\t')))).code).toBe(0);
  });

  it.each([
    ['a size that cannot be drafted', chart.replace('42,cm,96', '42,cm,9600'), 'size 42: bustGirth'],
    ['a column nobody knows', chart.replace('hipGirth', 'hipsGirth'), 'Do you mean hipGirth?'],
    ['a column twice', chart.replace('waistGirth', 'bustGirth'), 'two columns called “bustGirth”'],
    ['an open quote', chart.replace('38,cm', '"38,cm'), 'is no table of measurements'],
    ['no rows', 'size,units\n', 'There are no sizes here'],
  ])('is refused for %s, in a sentence', async (_, text, sentence) => {
    const { code, out, err } = await grade('--sizes', await file('bad.csv', text));
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(sentence);
  });

  it('is refused for a chart, a place or a garment that is not there', async () => {
    const sizes = await file('chart.csv', chart);
    expect((await grade('--sizes', at('none.csv'))).err).toContain('Cannot read');
    expect((await grade('--sizes', sizes, '--align', 'hips')).err).toContain('Do you mean “hip”?');
    expect((await bodkin(['grade', 'skrt', '--sizes', sizes], { garments })).err).toContain(
      'Did you mean “skirt”?',
    );
    expect((await grade('--sizes', sizes, '--nearest', 'x', '--out', 'y')).code).toBe(2);
  });
});
