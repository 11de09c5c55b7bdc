import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { garments } from '../../../drafts/garments.ts';
import { readPdf } from '../../engine/render/pdf/read-pdf.ts';
import { bodkin, type Ran } from '../session.ts';

/** An invented body in inches, with a fitting that makes the drafts say something of it. */
const inInches = `
name: box office
units: in
bustGirth: 37 1/2
underBustGirth: 32 1/4
waistGirth: 29 3/4
hipGirth: 40 1/8
backNeckPointToWaist: 16 1/4
fitting:
  - take in: side seam
    level: waist
    by: 3/8
  - shorten strap: 1/4
`;

let folder = '';
let body = '';
let out = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  body = join(folder, 'box-office.yaml');
  out = join(folder, 'out');
  await writeFile(body, inInches);
});
afterAll(() => rm(folder, { recursive: true }));

const run = (...words: readonly string[]): Promise<Ran> => bodkin(words, { garments });
const read = (name: string): Promise<string> => readFile(join(out, name), 'utf8');

const draft = (...more: readonly string[]) => run('draft', 'dress', '--body', body, '--out', out, ...more);

/** What a page or a drawing says, without its pictures and its style. */
const words = (markup: string): string =>
  markup
    .replace(/<style>.*?<\/style>|<metadata>.*?<\/metadata>/gs, '')
    // The test squares are called after their sizes.
    .replace(/(<text[^>]*>)50 mm<\/text>/g, '$1</text>')
    .replace(/<[^>]*>/g, '\n');

const millimetres = /[\d\s]mm\b/;

/** Numbers with what they may be: whole, with decimals, or with a fraction. */
const numbers = (text: string): readonly number[] =>
  [...text.matchAll(/(-?)(?:(\d+)[ \u00a0](?=\d+\/\d))?(\d+)(?:\/(\d+)|(\.\d+))?/g)].map(
    ([, minus, whole = '0', figure = '0', below, decimals = '']) => {
      const size = Number(whole) + (below ? Number(figure) / Number(below) : Number(figure + decimals));
      return minus ? -size : size;
    },
  );

/** Cloth and notions are sold by the tenth of a metre or by the eighth of a yard, and cloth in widths of either. */
const asSold = /\d (?:m|cm|yd)\b|\b(?:36|45|54|60) in\b/;

/**
 * Where two readings of one text do not say the same: their numbers are alike, or one is the other in inches, rounded to
 * `parts` (and the other to `fine` mm), or the same rate for an inch.
 */
function disagreements(inMm: string, inIn: string, parts: number, fine = 0.1): readonly string[] {
  const [mm, inches] = [inMm.split('\n'), inIn.split('\n')];
  expect(inches.length).toBe(mm.length);
  return mm.flatMap((line, i) => {
    const other = inches[i] ?? '';
    if (asSold.test(line)) return asSold.test(other) ? [] : [`${line}\n${other}`];
    const [was, is] = [numbers(line), numbers(other)];
    const agrees =
      was.length === is.length &&
      was.every((value, at) => {
        const inch = is[at] ?? Number.NaN;
        return (
          inch === value ||
          Math.abs(inch * 25.4 - value) <= 25.4 / parts / 2 + fine / 2 + 1e-4 ||
          Math.abs(inch / 25.4 - value) <= 1e-9
        );
      });
    return agrees ? [] : [`${line}\n${other}`];
  });
}

describe('what is measured in inches', () => {
  test('is drafted in inches: the table, the steps, what they rest on, and what is said of it', async () => {
    const ran = await draft('--steps', '--why', 'half waist');
    expect(ran.code).toBe(0);
    expect(ran.out + ran.err).not.toMatch(millimetres);
    expect(ran.out).toContain('Waist level: back neck point to waist 16 1/4 in;');
    expect(ran.out).toContain('\nlengths in inches\nfinished girth');
    expect(ran.err).toMatch(/The fitting makes the waist 1 1\/2 in smaller/);
    const asked = await draft('--steps', '--why', 'half waist', '--units', 'mm');
    expect(asked.out).toContain('Waist level: back neck point to waist 412.8 mm;');
    const steps = (text: string): string => text.slice(0, text.indexOf('dress for box office'));
    expect(disagreements(steps(asked.out), steps(ran.out), 16)).toEqual([]);
    const girths = (text: string): string => text.slice(text.indexOf('finished girth'));
    expect(disagreements(girths(asked.out), girths(ran.out), 8)).toEqual([]);
  });

  test('is labelled in inches on every piece and on the sheet, which is as true', async () => {
    expect((await draft()).out).toMatch(/^dress for box office: all true\n/);
    for (const file of ['sheet.svg', '1-centre-front.svg', '8-sleeve.svg'])
      expect(words(await read(file)), file).not.toMatch(millimetres);
    expect(await read('1-centre-front.svg')).toContain('seam allowance 1/2 in included');
    expect(await read('8-sleeve.svg')).toMatch(/elastic: cut 11 5\/8 in, lapped to \d+ \d\/\d in/);
    expect((await run('walk', '--file', join(out, 'sheet.svg'))).out).toContain('all true');
  });

  test('is walked in inches', async () => {
    const ran = await run('walk', 'dress', '--body', body, '--bands');
    expect(ran.out + ran.err).not.toMatch(millimetres);
    expect(ran.out).toMatch(/^dress for box office: all true\n\nlengths in inches\n/);
    const asked = await run('walk', 'dress', '--body', body, '--bands', '--units', 'mm');
    expect(asked.out).toContain('\nlengths in mm\n');
    expect(disagreements(asked.out, ran.out.replace('inches', 'mm'), 8)).toEqual([]);
    const before = new URL('../../../measurements/prompter.yaml', import.meta.url).pathname;
    const changed = await run('walk', 'bodice', '--body', body, '--before', before);
    expect(changed.out + changed.err).not.toMatch(millimetres);
    expect(changed.out).toContain('now bodice for box office; inches unless a row says otherwise');
    expect(changed.out).toMatch(/^waistGirth +measured +29 1\/2 +29 3\/4 +1\/4$/m);
  });

  test('is shown as it was measured, and what was estimated in inches too', async () => {
    const ran = await run('body', body);
    expect(ran.out + ran.err).not.toMatch(millimetres);
    expect(ran.out).toMatch(/^box office, adult; lengths in inches\n/);
    expect(ran.out).toMatch(/^waistGirth +29 3\/4 +\S/m);
    expect(ran.out).toMatch(/^shoulderSlope +\d+\.\d° +± \d+\.\d°/m);
    expect(ran.out).toContain('take in the side seam at the waist by 3/8 in\n');
    const asked = await run('body', body, '--units', 'mm');
    expect(asked.out).toMatch(/^waistGirth +755\.6 /m);
    expect(disagreements(asked.out, ran.out, 8)).toEqual([]);
    const answers = await run('body', body, '--sensitivity', '--garment', 'skirt');
    expect(answers.out + answers.err).not.toMatch(millimetres);
    expect(answers.out).toMatch(/^hipGirth +measured +± 3\/16 +.*hip \+1(;|$| )/m);
  });

  test('is sewn and taught in inches, on the page and on paper', async () => {
    for (const [command, name] of [
      ['sew', 'sewing'],
      ['teach', 'lesson'],
    ] as const) {
      const ran = await run(command, 'dress', '--body', body, '--out', out);
      expect(ran.code).toBe(0);
      expect(ran.out + ran.err).not.toMatch(millimetres);
      const page = words(await read(`${name}.html`));
      expect(page).not.toMatch(millimetres);
      const printed = (await readPdf(await readFile(join(out, `${name}.pdf`))))
        .map(({ text }) => text)
        .join('\n');
      expect(printed).not.toMatch(millimetres);
      await run(command, 'dress', '--body', body, '--out', out, '--units', 'mm');
      const asked = words(await read(`${name}.html`));
      expect(asked).toMatch(millimetres);
      // Lengths to sew are whole mm.
      expect(disagreements(asked, page, 8, command === 'sew' ? 1 : 0.1)).toEqual([]);
    }
  });

  test('is printed in inches', async () => {
    const pattern = join(out, 'skirt.pdf');
    const ran = await run('print', 'skirt', '--body', body, '--paper', 'roll:36in', '--out', pattern);
    expect(ran.code).toBe(0);
    expect(ran.out + ran.err).not.toMatch(millimetres);
    const pages = await readPdf(await readFile(pattern));
    const said = pages.map(({ text }) => text.replace(/^50 mm$/gm, '')).join('\n');
    expect(said).not.toMatch(millimetres);
    expect(said).toContain('Lay a ruler on the square marked 2 in.');
  });

  test('is told in mm as JSON', async () => {
    const { out: told } = await run('walk', 'dress', '--body', body, '--json', '--units', 'in');
    const { girths, issues } = JSON.parse(told);
    expect(girths[0]).toMatchObject({ level: 'bust', body: 952.5 });
    expect(issues.find(({ path }: { path: string }) => path === 'waist').message).toContain(' mm smaller');
  });

  test('is refused in inches', async () => {
    const ran = await draft('--set', 'strapWidth=9in');
    expect(ran.code).toBe(2);
    expect(ran.err).toMatch(/“strapWidth” is 9 in; this draft takes .* in\.\n/);
    expect(ran.err).not.toMatch(millimetres);
  });
});

describe('what is measured in cm', () => {
  const leadingLady = new URL('../../../measurements/leading-lady.yaml', import.meta.url).pathname;

  test('is shown in cm, drafted in mm, and in any other unit when asked', async () => {
    expect((await run('body', leadingLady)).out).toContain('lengths in cm\n');
    const words = ['draft', 'skirt', '--body', leadingLady, '--out', out] as const;
    expect((await run(...words)).out).toMatch(/lengths in mm\n.*\nwaist +740\.0 /);
    expect((await run(...words, '--units', 'cm')).out).toMatch(/lengths in cm\n.*\nwaist +74\.00 /);
    // 74 cm are 29.13 in.
    expect((await run(...words, '--units', 'in')).out).toMatch(/lengths in inches\n.*\nwaist +29 1\/8 /);
    expect((await run(...words, '--units', 'yd')).code).toBe(2);
  });

  test('has a grid for the projector that a ruler in inches can check', async () => {
    const file = join(out, 'skirt.pdf');
    const print = ['print', 'skirt', '--body', leadingLady, '--paper', 'projector', '--out', file] as const;
    await run(...print, '--units', 'in');
    const [page] = await readPdf(await readFile(file));
    const across = page?.paths
      .flatMap(({ curves }) => curves)
      .filter(({ from, to }) => from.x === to.x && from.y < 0.01 && to.y > 100)
      .map(({ from }) => Math.round(from.x * 10) / 10);
    expect(across?.slice(0, 3)).toEqual([0, 50.8, 101.6]);
    expect(page?.text).toContain('The squares of the grid are 2 in wide.');
    expect(page?.text).toContain('20 in.');
  });
});

test('choices are listed in the unit that is asked for', async () => {
  expect((await run('list', 'skirt')).out).toMatch(/hemAllowance +\d+ +mm +/);
  const { out: listed } = await run('list', '--units', 'in');
  expect(listed).not.toMatch(millimetres);
  expect(listed).toMatch(/waistEase +1 3\/16 +in +0 to 4 3\/4 /);
});

test('an alteration is asked for and told in inches', async () => {
  const traced = join(folder, 'yoke.svg');
  await writeFile(
    traced,
    `<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="400mm" viewBox="0 0 400 400">
<path d="M50 50 L250 50 L250 250 L50 250 Z"/></svg>`,
  );
  const ran = await run('alter', traced, '--lengthen', '1 1/2 in', '--at', '2in', '--units', 'in');
  expect(ran.out).toContain('lengthened by 1 1/2 in\n\nlengths in inches\n');
  expect(ran.out).toMatch(/edge 2 +7 7\/8 +9 3\/8 +\+1 1\/2 /);
  expect(ran.out).not.toMatch(millimetres);
});
