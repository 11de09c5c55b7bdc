import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { displayWidth } from '../../../cli/output/display-width.ts';
import { garments } from '../../../drafts/garments.ts';
import { bodkin } from '../session.ts';

const leadingLady = new URL('../../../measurements/leading-lady.yaml', import.meta.url).pathname;

/** An invented body in inches. */
const inInches = `
units: in
bustGirth: 37 1/2
underBustGirth: 32 1/4
waistGirth: 29 3/4
hipGirth: 40 1/8
backNeckPointToWaist: 16 1/4
`;

const square = `<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="400mm" viewBox="0 0 400 400">
<path d="M50 50 L250 50 L250 250 L50 250 Z"/></svg>`;

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  await writeFile(join(folder, 'inches.yaml'), inInches);
  await writeFile(join(folder, 'top-of-a-square-yoke.svg'), square);
});
afterAll(() => rm(folder, { recursive: true }));

const forBody = (body: string): readonly (readonly string[])[] => [
  ['draft', 'dress', '--body', body, '--out', join(folder, 'out'), '--steps', '--why', 'half hip'],
  ['draft', 'dress', '--body', body, '--out', join(folder, 'out'), '--set', 'strapWidth=300'],
  ['walk', 'dress', '--body', body, '--bands'],
  ['walk', 'bodice', '--body', body, '--before', leadingLady],
  ['draft', 'bodice', '--body', body, '--out', join(folder, 'out'), '--before', leadingLady],
  ['body', body],
  ['body', body, '--sensitivity', '--garment', 'skirt'],
  ['sew', 'dress', '--body', body, '--out', join(folder, 'out')],
  ['teach', 'skirt', '--body', body, '--out', join(folder, 'out')],
  ['lay', 'bodice', '--body', body, '--width', '1400', '--rounds', '3'],
  ['grade', 'skirt', '--sizes', chart, '--nearest', body],
  ['print', 'skirt', '--body', body, '--paper', 'a4', '--out', join(folder, 'out', 'skirt.pdf')],
];

const commands = [
  'draft',
  'print',
  'sew',
  'teach',
  'walk',
  'alter',
  'body',
  'list',
  'lay',
  'wear',
  'grade',
  'prove',
  'explain',
];

const chart = new URL('../../../measurements/charts/en-13402-3-women.yaml', import.meta.url).pathname;

describe.each([60, 80, 120])('on a terminal of %d columns', (columns) => {
  const widest = async (words: readonly string[]): Promise<string> => {
    const { out, err } = await bodkin(words, { garments, columns });
    expect(out + err).not.toBe('');
    const lines = `${out}\n${err}`.split('\n');
    return lines.reduce((a, b) => (displayWidth(b) > displayWidth(a) ? b : a), '');
  };

  test.each(['leading lady', 'inches'])('nothing is wider that is printed for the %s', async (whose) => {
    const body = whose === 'inches' ? join(folder, 'inches.yaml') : leadingLady;
    for (const words of forBody(body))
      expect(displayWidth(await widest(words)), words.join(' ')).toBeLessThanOrEqual(columns);
  });

  test('nothing is wider that is printed without a body', async () => {
    const own = join(folder, 'top-of-a-square-yoke.svg');
    const others = [
      [],
      ['--help'],
      ...commands.map((command) => [command, '--help']),
      ['list'],
      ['list', '--units', 'in'],
      ['explain'],
      ['grade', 'skirt', '--sizes', chart, '--out', join(folder, 'out', 'grade')],
      ['prove', 'skirt', '--tries', '2', '--workers', '1'],
      ['alter', own, '--edges', 'top,side,hem,front', '--along', 'top..hem', '--spread', '1 1/2 in'],
      ['alter', own, '--mirror', 'nothing'],
      ['walk', 'dres', '--body', own],
      ['--no-such-option-was-ever-thought-of-by-anyone-who-drafts-a-dress-on-a-narrow-terminal-x'],
    ];
    for (const words of others)
      expect(displayWidth(await widest(words)), words.join(' ')).toBeLessThanOrEqual(columns);
  });
});
