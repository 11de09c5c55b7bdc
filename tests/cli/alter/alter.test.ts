import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bodkin } from '../session.ts';

let folder = '';
let insert = '';
let band = '';

/** Half an insert and the band it is sewn to, one unit half a millimetre. */
const drawing = (content: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg"><rect id="test-square" x="900" width="100" height="100"/>${content}</svg>`;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  insert = join(folder, 'insert.svg');
  band = join(folder, 'band.svg');
  await writeFile(
    insert,
    drawing(
      '<path d="M0 0H400V500H0Z"/><path id="bust" class="notch" d="M395 200h20"/><path id="mid" class="notch" d="M200 490v20"/>',
    ),
  );
  await writeFile(band, drawing('<path d="M0 0H400V100H0Z"/><path id="mid" class="notch" d="M200 -10v20"/>'));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

const edges = ['--edges', 'top,side,under bust,front'];

const altered = async (words: readonly string[]) => {
  const { code, out, err } = await bodkin(['alter', insert, ...edges, ...words, '--json']);
  return { code, err, result: JSON.parse(out) };
};

describe('alter', () => {
  test('without an alteration shows the edges it found', async () => {
    const { code, out, err } = await bodkin(['alter', insert]);
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(out).toMatch(/edge 1 +200\.0 +200\.0 +0\.0 +0, 0/);
    expect(out).toContain('notch bust: 100.0 mm along edge 2');
    expect(out).toContain('from the 50-mm test square');
  });

  test('takes a decimal comma wherever it takes a point', async () => {
    const said = (mark: string) =>
      [
        '--mm-per-unit',
        '0.4',
        '--corner',
        '25.5',
        '--spread',
        '40.5',
        '--along',
        'top..under bust',
        '--lengthen',
        '9.5',
        '--at',
        '40.5%',
      ].map((word) => word.replace(/(\d)\.(\d)/, `$1${mark}$2`));
    expect((await altered(said(','))).result).toEqual((await altered(said('.'))).result);
  });

  test('spreads in parallel: widths grow, lengths stay, the guide with them', async () => {
    const { code, result } = await altered(['--spread', '60', '--along', 'top..under bust']);
    expect(code).toBe(0);
    expect(result.edges).toEqual([
      { name: 'top', before: 200, after: 260 },
      { name: 'side', before: 250, after: 250 },
      { name: 'under bust', before: 200, after: 260 },
      { name: 'front', before: 250, after: 250 },
    ]);
    expect(result.guide.after).toBeCloseTo(260, 6);
  });

  // B is 14 to 16 cm of difference, D 18 to 20 (EN 13402): 40 mm of girth, half of it on half a front.
  test.each([
    [[], 20],
    [['--whole'], 40],
  ])('spreads by the difference of two cups %j', async (more, amount) => {
    const { result } = await altered([
      '--cup-from',
      'b',
      '--cup-to',
      'D',
      '--along',
      'top..under bust',
      ...more,
    ]);
    expect(result.edges[0].after).toBeCloseTo(200 + amount, 6);
  });

  test('gathers an edge to its partner and says how much the seam takes, between its notches too', async () => {
    const words = ['--gather', '1.8', '--along', 'under bust..top', '--partner', `${band}#edge 1`];
    const { result } = await altered(words);
    expect(result.seam).toMatchObject({
      edge: 'under bust',
      partner: 'edge 1',
      before: 200,
      verdict: 'gather',
    });
    expect(result.seam.after).toBeCloseTo(360, 1);
    expect(result.seam.ratio).toBeCloseTo(1.8, 3);
    expect(result.seam.stretches).toHaveLength(2);
    const { out } = await bodkin(['alter', insert, ...edges, ...words]);
    expect(out).toContain('gather 360.0 mm to 200.0 mm: 160.0 mm of gathers, ratio 1.800 to 1');
  });

  test('hinged, it opens one edge and keeps the other', async () => {
    const { code, result } = await altered([
      '--spread',
      '60',
      '--along',
      'under bust..top',
      '--hinge',
      'top',
      '--lines',
      '8',
    ]);
    expect(code).toBe(0);
    expect(result.edges.find(({ name }: { name: string }) => name === 'top').after).toBeCloseTo(200, 1);
    expect(
      Math.abs(result.edges.find(({ name }: { name: string }) => name === 'under bust').after - 260),
    ).toBeLessThan(1);
  });

  test('slashes from this notch to that, and says so', async () => {
    const words = ['--spread', '40', '--along', 'under bust..top', '--between', 'left..right'];
    const marked = join(folder, 'marked.svg');
    const marks =
      '<path id="left" class="notch" d="M100 490v20"/><path id="right" class="notch" d="M300 490v20"/>';
    await writeFile(marked, drawing(`<path d="M0 0H400V500H0Z"/>${marks}`));
    const { code, out } = await bodkin(['alter', marked, ...edges, ...words]);
    expect(code).toBe(0);
    expect(out).toContain('from notch left to notch right');
    expect(out).toContain('notch left: 190.0 mm along under bust');
    expect(out).toContain('notch right: 50.0 mm along under bust');
  });

  test('takes the allowance off a traced cutting line, its partner’s too', async () => {
    const words = ['--traced', 'cutting', '--allowance', '10', '--fold', 'front', '--hem', 'under bust'];
    const { result } = await altered([...words, '--hem-allowance', '25', '--partner', `${band}#edge 1`]);
    expect(result.edges.map(({ before }: { before: number }) => Math.round(before))).toEqual([
      190, 215, 190, 215,
    ]);
    expect(result.notches[0]).toMatchObject({ name: 'bust', edge: 'side', at: expect.closeTo(90, 6) });
    expect(result.seam.partnerLength).toBeCloseTo(180, 6);
  });

  test.each([
    [['--lengthen', '20', '--at', '40%'], 270],
    [['--shorten', '20', '--at', '100'], 230],
  ])('%j', async (words, length) => {
    const { result } = await altered(words);
    expect(result.edges[1].after).toBeCloseTo(length, 6);
  });

  test('does several alterations in the order written, each to what the one before left', async () => {
    const wide = ['--spread', '60', '--along', 'top..under bust'];
    const long = ['--lengthen', '50', '--at', '40%'];
    const { code, result } = await altered([...wide, '--then', ...long, '--then', '--mirror', 'front']);
    expect(code).toBe(0);
    expect(result.done).toEqual([
      'spread 60 mm between 6 slash lines, in parallel',
      'lengthened by 50 mm',
      'mirrored in front',
    ]);
    expect(result.area.after).toBeCloseTo(2 * 260 * 300, 3);
    const again = await altered([
      ...wide,
      '--then',
      '--spread',
      '40',
      '--along',
      'side..front',
      '--lines',
      '2',
    ]);
    expect(again.result.area.after).toBeCloseTo(260 * 290, 3);
  });

  test('takes every alteration by itself: what was said of one does not hold for the next', async () => {
    const { code, err } = await bodkin([
      ...['alter', insert, ...edges],
      ...['--spread', '60', '--along', 'top..under bust', '--then', '--spread', '20'],
    ]);
    expect(code).toBe(2);
    expect(err).toContain('--along top..hem');
  });

  test('walks the edge that was slashed in any of them along its partner', async () => {
    const wide = ['--gather', '1.8', '--along', 'under bust..top', '--partner', `${band}#edge 1`];
    const { result } = await altered(['--lengthen', '20', '--at', '100', '--then', ...wide]);
    expect(result.seam).toMatchObject({ edge: 'under bust', verdict: 'gather' });
    expect(result.seam.ratio).toBeCloseTo(1.8, 3);
  });

  test('says a change of area as cloth, more or less', async () => {
    const said = async (words: readonly string[]) =>
      (await bodkin(['alter', insert, ...edges, ...words])).out;
    // 200 by 250 mm: 20 mm more, or less, of 200 mm.
    expect(await said(['--lengthen', '20', '--at', '40%'])).toContain(
      'inside the stitching line: 40.0 cm² more cloth\n',
    );
    expect(await said(['--shorten', '20', '--at', '40%'])).toContain(': 40.0 cm² less cloth\n');
    expect(await said(['--move-notch', 'bust=side@50%'])).toContain(': as much cloth as before\n');
  });

  test('moves a notch and mirrors a half', async () => {
    const moved = await altered(['--move-notch', 'bust=side@50%']);
    expect(moved.result.notches[0]).toMatchObject({ name: 'bust', edge: 'side', at: 125 });
    const { result } = await altered(['--mirror', 'front']);
    expect(result.area.after).toBeCloseTo(2 * result.area.before, 3);
  });

  test.each([['1'], ['0.5']])('pivots %s of a dart, its grainline kept inside the piece', async (share) => {
    const front = join(folder, 'front.svg');
    const dart = 'M40 30L400 60L480 360L460 790L260 810L220 480L180 810L0 800L40 180Z';
    await writeFile(front, drawing(`<path d="${dart}"/>`));
    const { code, out, err } = await bodkin([
      'alter',
      front,
      '--pivot-dart',
      'edge 3@50%',
      '--share',
      share,
      '--json',
    ]);
    expect(err).toBe('');
    expect(code).toBe(0);
    const names = JSON.parse(out).edges.map(({ name }: { name: string }) => name);
    expect(names).toContain('edge 3 dart leg 1');
  });

  test('draws both darts inside the cutting line, and reads them back', async () => {
    const [front, out] = [join(folder, 'darted.svg'), join(folder, 'darted')];
    await writeFile(
      front,
      drawing('<path d="M40 30L400 60L480 360L460 790L260 810L220 480L180 810L0 800L40 180Z"/>'),
    );
    const words = ['--pivot-dart', 'edge 2@60%', '--share', '0.4', '--out', out, '--paper', 'a4', '--json'];
    const first = await bodkin(['alter', front, ...words]);
    expect(first.code).toBe(0);
    const svg = await readFile(join(out, '1-darted.svg'), 'utf8');
    expect(svg.match(/data-turn="dart"/g)).toHaveLength(4);
    expect(svg.match(/class="drill"/g)).toHaveLength(2);
    const again = await bodkin(['alter', join(out, '1-darted.svg'), '--json']);
    expect(again.code).toBe(0);
    const [was, is] = [first.out, again.out].map((text) => JSON.parse(text));
    const dartNotches = ({ notches }: typeof was) =>
      notches
        .filter(({ mark }: { mark: string }) => mark === 'dart')
        .map(({ edge, at }: { edge: string; at: number }) => `${edge} ${Math.round(at)}`)
        .sort();
    expect(dartNotches(is)).toEqual(dartNotches(was));
    expect(dartNotches(is)).toHaveLength(4);
    expect(is.darts).toMatchObject([
      { legs: ['edge 2 dart leg 1', 'edge 2 dart leg 2'], pressedOver: 'edge 2 2' },
      { legs: ['edge 4', 'edge 5'], pressedOver: 'edge 6' },
    ]);
    const { out: said } = await bodkin(['alter', front]);
    expect(said).toContain('dart edge 4 to edge 5: 40.0 mm wide, stitched and pressed over edge 6');
  });

  test('walks a seam with the dart in it closed', async () => {
    const front = join(folder, 'front.svg');
    await writeFile(
      front,
      drawing('<path d="M40 30L400 60L480 360L460 790L260 810L220 480L180 810L0 800L40 180Z"/>'),
    );
    const words = [
      '--pivot-dart',
      'edge 2@60%',
      '--seam',
      'edge 2',
      '--partner',
      `${front}#edge 2`,
      '--json',
    ];
    const { code, out } = await bodkin(['alter', front, ...words]);
    expect(code).toBe(0);
    expect(JSON.parse(out).seam).toMatchObject({ verdict: 'plain', edge: 'edge 2' });
  });

  test('writes a piece that can be read and altered again, a PDF, and a report', async () => {
    const out = join(folder, 'out');
    const first = await altered([
      '--spread',
      '60',
      '--along',
      'top..under bust',
      '--fold',
      'front',
      '--out',
      out,
      '--paper',
      'a4',
    ]);
    expect(first.code).toBe(0);
    expect((await readdir(out)).sort()).toEqual(['1-insert.svg', 'pattern.pdf', 'report.json']);
    expect(JSON.parse(await readFile(join(out, 'report.json'), 'utf8'))).toEqual(first.result);
    expect((await readFile(join(out, 'pattern.pdf'))).subarray(0, 5).toString()).toBe('%PDF-');
    const again = await bodkin(['alter', join(out, '1-insert.svg'), '--json']);
    const { edges: names, ok } = JSON.parse(again.out);
    expect(ok).toBe(true);
    expect(
      names.map(({ name, after }: { name: string; after: number }) => [name, Math.round(after)]),
    ).toEqual([
      ['top', 260],
      ['side', 250],
      ['under bust', 260],
      ['front', 250],
    ]);
  });

  test.each<[string[], string]>([
    [['--spread', '60'], '--along top..hem'],
    [['--spread', 'wide'], 'a length from'],
    [['--spread', '60', '--lengthen', '5'], 'cannot be used with --lengthen in one alteration'],
    [['--spread', '60', '--spread', '5'], '--spread stands twice'],
    [['--mirror', 'front', '--then'], 'Alteration 2 is missing'],
    [['--then', '--mirror', 'front'], 'Alteration 1 is missing'],
    [
      ['--mirror', 'front', '--then', '--mirror', 'front'],
      'Alteration 2: The piece has no edge called “front”',
    ],
    [['--spread', '60', '--along', 'top'], 'two dots'],
    [['--spread', '60', '--along', 'top..cuff'], 'Its edges are: top, side, under bust, front'],
    [
      ['--spread', '60', '--along', 'top..under bust', '--hinge', 'side'],
      'should be one of the slashed edges',
    ],
    [['--cup-from', 'Q'], 'Cups are AA, A, B'],
    [['--cup-from', 'B', '--along', 'top..under bust'], 'Say both cups'],
    [['--cup-from', 'B', '--cup-to', 'B', '--along', 'top..under bust'], 'nothing to spread'],
    [['--lengthen', '20'], 'Say where to cut across'],
    [['--lengthen', '20', '--at', 'low'], 'a length or a share'],
    [['--shorten', '300', '--at', '100'], 'not so much length'],
    [['--pivot-dart', 'side'], 'side@60'],
    [['--pivot-dart', 'side@50%'], 'has no dart'],
    [['--move-notch', 'bust'], 'its new place'],
    [['--move-notch', 'waist=side@10'], 'Its notches are: bust, mid'],
    [['--mirror', 'neck'], 'no edge called'],
    [['--traced', 'sewing'], 'Allowed choices are stitching, cutting'],
    [['--traced', 'cutting', '--hem', 'side,front', '--hem-allowance', '100'], 'cannot lose'],
    [['--traced', 'cutting', '--allowance', '60', '--partner', 'BAND#edge 1'], 'no such file'],
    [['--spread', '9', '--along', 'top..under bust', '--between', 'mid'], 'two notches with two dots'],
    [['--spread', '9', '--along', 'top..under bust', '--between', 'mid..gap'], 'Notches there are: mid'],
    [['--partner', 'band.svg'], 'a file and an edge'],
    [['--partner', 'nowhere.svg#edge 1'], 'no such file'],
    [['--edges', 'top,side'], 'The outline has 4 edges'],
    [['--edges', 'a,a,b,c'], 'a name of its own'],
    [['--fold', 'back'], 'no edge called'],
    [['--piece', 'sleeve'], 'is called “sleeve”'],
    [['--mm-per-unit', '0'], 'a number from'],
  ])('%j ends with 2, words on standard error and no result', async (words, said) => {
    const named = words.includes('--edges') ? words : [...edges, ...words];
    const { code, out, err } = await bodkin(['alter', insert, ...named]);
    expect(err).toContain(said);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).not.toMatch(/\n\s+at /);
  });

  test('a PDF is no drawing, and nothing is written', async () => {
    const out = join(folder, 'nothing');
    const { code, err } = await bodkin(['alter', 'package.json', '--out', out]);
    expect(code).toBe(2);
    expect(err).toContain('not a whole SVG drawing');
    await expect(readdir(out)).rejects.toThrow();
  });
});
