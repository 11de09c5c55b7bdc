import { readFileSync } from 'node:fs';
import { readdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { wornLine } from '../../../cli/results/wear.ts';
import { refuseOverInput, writeFitting } from '../../../cli/wear/write-fitting.ts';
import { garments } from '../../../drafts/garments.ts';
import type { FittingChange } from '../../../engine/body/fitting.ts';
import { readBody } from '../../../engine/body/read.ts';
import { cannotKnow } from '../../../engine/wear/cannot-know.ts';
import { bib, measurements } from '../../engine/bib.ts';
import { bodkin } from '../session.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const { at, file } = temporaryFolder();

const lady = {
  units: 'cm',
  bustGirth: 92,
  underBustGirth: 75,
  waistGirth: 74,
  hipGirth: 99,
  backNeckPointToWaist: 40.5,
};

const changes: readonly FittingChange[] = [
  { kind: 'take in', seam: 'front princess seam', level: 'under-bust', mm: 13 },
  { kind: 'lower bust point', mm: 9 },
  { kind: 'lower shoulder', mm: 10, side: 'left' },
];

const fittingIn = (data: unknown): readonly FittingChange[] => {
  const read = readBody(data);
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join('\n'));
  return read.value.fitting;
};

describe('measurements written again with a fitting', () => {
  test.each(['cm', 'mm', 'in'] as const)(
    'in %s are read as what was found, to a tenth of a mm',
    async (units) => {
      const inUnits = Object.fromEntries(
        Object.entries(lady).map(([name, value]) => [
          name,
          typeof value === 'number' ? (value * 10) / { cm: 10, mm: 1, in: 25.4 }[units] : units,
        ]),
      );
      const to = at(`again-${units}.yaml`);
      await writeFitting(to, stringify(inUnits), changes, units);
      const read = fittingIn(parse(await readFile(to, 'utf8')));
      expect(read.length).toBe(changes.length);
      for (const [i, change] of read.entries()) {
        expect(change).toMatchObject({ ...changes[i], mm: expect.closeTo(changes[i]?.mm ?? 0, 1) });
      }
    },
  );

  test('keep their remarks in YAML, and lose the old fitting', async () => {
    const text = `# taken on a Monday\nname: she\n${stringify(lady)}fitting:\n  - round back: 1 # pinned\n`;
    await writeFitting(at('kept.yaml'), text, changes.slice(0, 1), 'cm');
    const written = await readFile(at('kept.yaml'), 'utf8');
    expect(written).toContain('# taken on a Monday');
    expect(parse(written)).toEqual({
      name: 'she',
      ...lady,
      fitting: [{ 'take in': 'front princess seam', level: 'under-bust', by: 1.3 }],
    });
  });

  test('are JSON where the name says so', async () => {
    await writeFitting(at('again.json'), JSON.stringify(lady), changes, 'cm');
    expect(fittingIn(JSON.parse(await readFile(at('again.json'), 'utf8'))).length).toBe(3);
  });

  test('never take the place of what was read, by whatever name', async () => {
    const body = await file('hers.yaml', stringify(lady));
    await symlink(body, at('also-hers.yaml'));
    for (const to of [body, at('also-hers.yaml'), `${at('.')}/hers.yaml`])
      await expect(refuseOverInput(to, [body])).rejects.toMatchObject({
        issues: [{ code: 'fitting-over-input' }],
      });
    await expect(refuseOverInput(at('new.yaml'), ['-'])).rejects.toMatchObject({
      issues: [{ code: 'fitting-over-input' }],
    });
    await expect(refuseOverInput(at('new.yaml'), [body])).resolves.toBeUndefined();
  });
});

describe('bodkin wear --drafted-for', () => {
  test('says how last season’s bodice sits on the new lead, what to alter and what it cannot know', async () => {
    const old = await file('old.yaml', stringify({ name: 'last season', ...lady, underBustGirth: 84 }));
    const lead = await file('lead.yaml', stringify({ name: 'new lead', ...lady }));
    const words = [
      'wear',
      'bodice',
      '--body',
      lead,
      '--drafted-for',
      old,
      '--out',
      at('worn'),
      '--mesh',
      '20',
    ];
    const altered = at('altered.yaml');
    const { code, out, err } = await bodkin([...words, '--write-fitting', altered], { garments });
    expect(code, err).toBe(0);
    expect(out).toContain('bodice for last season, worn by new lead in cotton');
    expect(out).toMatch(/off: take in the front princess seam at the under-bust by \d+ mm on each layer/);
    for (const sentence of cannotKnow) expect(out).toContain(sentence);
    const written = parse(await readFile(altered, 'utf8'));
    expect(written).toMatchObject({ name: 'last season', underBustGirth: 84 });
    expect(fittingIn(written).map(({ kind }) => kind)).toContain('take in');
    const result = JSON.parse(await readFile(at('worn/worn.json'), 'utf8'));
    expect(result).toMatchObject({ body: 'new lead', draftedFor: 'last season', cannotKnow });

    const over = await bodkin([...words, '--write-fitting', old], { garments });
    expect(over.code).toBe(2);
    expect(over.err).toContain('Name another file');
  });
});

describe('bodkin wear', () => {
  const hers = { name: 'she', ...lady };
  const wear = async (...more: readonly string[]) =>
    bodkin(
      ['wear', 'bodice', '--body', await file('she.yaml', stringify(hers)), '--out', at('shown'), ...more],
      {
        garments,
      },
    );

  test('draws her from four sides, as drawing and as picture, in colours and in black line', async () => {
    const { code, err } = await wear('--mesh', '20', '--maps');
    expect(code, err).toBe(0);
    const out = at('shown');
    for (const view of ['front', 'side', 'back', 'three-quarter']) {
      for (const name of [view, `${view}-ease`, `${view}-strain`, `${view}-pressure`]) {
        const svg = await readFile(`${out}/${name}.svg`, 'utf8');
        const [, width = 0, height = 0] = /width="(\d+)" height="(\d+)"/.exec(svg)?.map(Number) ?? [];
        const png = await readFile(`${out}/${name}.png`);
        // Portable Network Graphics (W3C, 2003): eight bytes, then the header with width and height.
        expect(png.subarray(0, 8).toString('hex')).toBe('89504e470d0a1a0a');
        expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([2 * width, 2 * height]);
        expect(png.length).toBeGreaterThan(20_000);
      }
      expect(await readFile(`${out}/${view}-lines.svg`, 'utf8')).toContain('class="seam"');
    }
    const { files } = JSON.parse(await readFile(`${out}/worn.json`, 'utf8'));
    expect(new Set(files)).toEqual(new Set(await readdir(out)));
  });

  test('gives a first answer that says it is one, and draws less', async () => {
    const quick = at('quick');
    const { code, out: told } = await wear('--quick', '--out', quick);
    expect(code).toBe(0);
    expect(told).toContain('A first answer: on a finer mesh');
    const names = await readdir(quick);
    expect(names).toContain('three-quarter-lines.svg');
    expect(names.filter((name) => name.endsWith('.png'))).toEqual([]);
  });

  test('keeps the best so far where it is interrupted, and says so', async () => {
    const body = await file('she.yaml', stringify(hers));
    let tell = (): void => undefined;
    let heard = 0;
    const ran = bodkin(['wear', 'bodice', '--body', body, '--out', at('stopped'), '--json'], {
      garments,
      onInterrupt: (told) => {
        tell = told;
        heard += 1;
        return () => {
          heard -= 1;
        };
      },
    });
    while (heard === 0) await new Promise(setImmediate);
    for (let step = 0; step < 8; step++) await new Promise(setImmediate);
    tell();
    const { code, out: told } = await ran;
    expect(code).toBe(0);
    expect(heard).toBe(0);
    const { rest, mesh, ease } = JSON.parse(told);
    expect(rest).toMatchObject({ reached: false, stopped: true });
    expect(rest.steps).toBeGreaterThan(0);
    expect(rest.steps).toBeLessThan(20);
    expect(mesh.spacing).toBe(20);
    expect(ease.length).toBe(3);
  });

  test('takes a cloth from a file, and says what is wrong with one', async () => {
    const linen = new URL('../../../measurements/cloths/linen.yaml', import.meta.url).pathname;
    const { code, out: told, err } = await wear('--quick', '--out', at('linen'), '--cloth', linen);
    expect(code, err).toBe(0);
    expect(told).toContain('in dress linen');
    const none = await wear('--cloth', await file('none.yaml', 'name: none\nweight: heavy\n'));
    expect(none.code).toBe(2);
    expect(none.err).toContain('weight should be a number from 10 to 1000 g/m², not “heavy”.');
    const near = await wear('--cloth', 'coton');
    expect(near.err).toContain('Did you mean “cotton”?');
    const gone = await wear('--cloth', at('gone.yaml'));
    expect(gone.err).toContain('there is no such file');
  });

  test('puts it on many bodies, a line each, and answers what it cannot', async () => {
    const lines = [{ ...hers, id: 7 }, { name: 'nobody' }, { ...hers, name: 'other', waistGirth: 78 }];
    const bodies = await file('many.jsonl', lines.map((line) => JSON.stringify(line)).join('\n'));
    const { code, out: told } = await bodkin(['wear', 'bodice', '--bodies', bodies, '--quick'], { garments });
    expect(code).toBe(2);
    const [first, second, third] = told
      .trim()
      .split('\n')
      .map((line) => wornLine.parse(JSON.parse(line)));
    expect([first?.id, second?.id, third?.id]).toEqual([7, 'nobody', 'other']);
    expect(second).toMatchObject({ ok: false, issues: expect.arrayContaining([expect.anything()]) });
    expect(second?.ease).toBeUndefined();
    // Drafted each for herself, both have the ease that was drafted, whatever the waist: nobody's is far from the other's.
    const waist = (line: typeof first) =>
      line?.ease?.find(({ level }) => level === 'waist')?.worn ?? Number.NaN;
    expect(Math.abs(waist(first) - waist(third))).toBeLessThan(12);
    const alone = await bodkin(['wear', 'bodice', '--quick'], { garments });
    expect(alone.err).toContain('--body FILE --out FOLDER');
  });
});

describe('a finished garment', () => {
  test('stands on its sewing page where it was worn, and on no other’s', async () => {
    const body = await file('she.yaml', stringify({ name: 'she', ...lady }));
    const worn = at('finished');
    await bodkin(['wear', 'bodice', '--body', body, '--out', worn, '--quick'], { garments });
    const words = (...more: readonly string[]) => [
      'sew',
      'bodice',
      '--body',
      body,
      '--out',
      at('sewing'),
      ...more,
    ];
    const { code, err } = await bodkin(words('--worn', worn), { garments });
    expect(code, err).toBe(0);
    const html = await readFile(at('sewing/sewing.html'), 'utf8');
    expect(html.match(/<title>The finished garment, (front|back)<\/title>/g)?.length).toBe(2);
    await bodkin(words(), { garments });
    expect(await readFile(at('sewing/sewing.html'), 'utf8')).not.toContain('The finished garment');

    const other = await file('other.yaml', stringify({ name: 'other', ...lady }));
    const wrong = await bodkin(['sew', 'bodice', '--body', other, '--out', at('sewing'), '--worn', worn], {
      garments,
    });
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain('shows the bodice drafted for she, not the bodice for other');
    const none = await bodkin(words('--worn', at('nowhere')), { garments });
    expect(none.err).toContain('is no folder that “bodkin wear” wrote');
    await writeFile(`${worn}/front-lines.svg`, '<svg xmlns="http://www.w3.org/2000/svg"><script/></svg>');
    expect((await bodkin(words('--worn', worn), { garments })).err).toContain('is no drawing that');
  });

  test('is drawn beside its draft where that is wanted', async () => {
    const body = await file('she.yaml', stringify({ name: 'she', ...lady }));
    const words = (garment: string) => ['draft', garment, '--body', body, '--out', at(garment), '--finished'];
    const all = { garments: [...garments, bib] };
    const { code, out, err } = await bodkin(words('bodice'), all);
    expect(code, out + err).toBe(0);
    expect(err).toContain('finished.svg');
    expect(await readFile(at('bodice/finished.svg'), 'utf8')).toMatch(
      /<title>bodice for she<.*class="seam"/s,
    );
    expect((await bodkin(words('bib'), all)).err).toContain('finished.svg');
  });

  test('refuses a garment that states no girth, for nobody knows where it goes', async () => {
    const girthless: typeof bib = {
      ...bib,
      draw: (...given) => {
        const drawn = bib.draw(...given);
        return drawn.ok ? { ...drawn, value: { ...drawn.value, girths: [] } } : drawn;
      },
    };
    const body = await file('prompter.json', JSON.stringify(measurements));
    const of = (command: string, flag: string) => [command, 'bib', '--body', body, '--out', at('bib'), flag];
    const { code, out } = await bodkin(of('wear', '--json'), { garments: [girthless] });
    expect(code).toBe(2);
    expect(JSON.parse(out).issues).toMatchObject([{ code: 'not-worn-yet', path: 'centre front' }]);
    const finished = await bodkin(of('draft', '--finished'), { garments: [girthless] });
    expect(finished.err).toContain('Leave --finished out');
  });
});

describe('the page of what is worn', () => {
  const page = readFileSync(new URL('../../../cli/wear.md', import.meta.url), 'utf8').replace(/\s+/g, ' ');

  test('says all that the command says it cannot know', () => {
    for (const sentence of cannotKnow) expect(page).toContain(sentence);
    expect(readFileSync(new URL('../../../README.md', import.meta.url), 'utf8')).toContain('(cli/wear.md)');
  });

  test('names only options that there are', async () => {
    const helps = ['wear', 'sew', 'draft'].map((command) => bodkin([command, '--help'], { garments }));
    const out = (await Promise.all(helps)).map((help) => help.out).join('');
    const named = new Set([...page.matchAll(/--[a-z][a-z-]+/g)].map(([option]) => option));
    expect(named.size).toBeGreaterThan(5);
    for (const option of named) expect(out).toContain(option);
  });
});
