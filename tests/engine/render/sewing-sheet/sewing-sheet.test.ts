import { describe, expect, test } from 'vitest';
import type { Garment } from '../../../../engine/pattern/garment.ts';
import { sewingSheet } from '../../../../engine/render/sewing-sheet/sewing-sheet.ts';
import { drafted, shippedBody } from '../../../drafts/drafted.ts';

const { garment, cutLines } = drafted('dress', shippedBody('leading-lady'));
const sheet = sewingSheet(garment, cutLines, { date: '4 May' });

/** The words of a page, markup taken away. */
const text = (page: string): string => page.replace(/<style>.*?<\/style>/s, '').replace(/<[^>]*>/g, ' ');

/** The section of a step, by its title. */
const section = (title: string): string =>
  sheet.split('<section').find((part) => part.includes(`</span>${title}</h3>`)) ?? '';

const count = (page: string, what: RegExp): number => page.match(what)?.length ?? 0;

describe('the sewing sheet', () => {
  test('has a numbered section for every step, in order', () => {
    const titles = [...sheet.matchAll(/<span class="number">(\d+)<\/span>([^<]*)<\/h3>/g)];
    expect(titles.map(([, number]) => Number(number))).toEqual(titles.map((_, i) => i + 1));
    expect(titles.map(([, , title]) => title)).toEqual(garment.sewing?.map(({ title }) => title));
  });

  test('lists every piece to cut and every notion, with its length', () => {
    const words = text(sheet);
    for (const { name } of garment.pieces) expect(words.toLowerCase()).toContain(name);
    for (const { name, count: many, length } of garment.notions) {
      expect(words.toLowerCase()).toContain(name.toLowerCase());
      if (length > 0) expect(words).toContain(`${many} × ${Math.round(length)}\u00a0mm`);
    }
    expect(words).toContain('4 May');
  });

  test('gives the figures of this body: what is gathered to what, between which notches', () => {
    const seam = garment.seams.find(({ name }) => name === 'under-bust, gathered');
    const [, from = '', to = ''] =
      /gather (\d+)\u00a0mm to (\d+)\u00a0mm/.exec(
        section('Gather the insert and sew the under-bust seam'),
      ) ?? [];
    expect(Number(from) / Number(to)).toBeCloseTo(seam?.gatherRatio ?? 0, 1);
    expect(section('Gather the crowns and set in the sleeves')).toContain(
      'draw up between back armhole notch and front armhole notch',
    );
  });

  test('draws the pieces of a step, the edges that are sewn heavy and a letter on both sides', () => {
    const side = section('Sew the side seams');
    expect(count(side, /<path class="heavy"/g)).toBe(2);
    expect(count(side, /<text class="letter"[^>]*>a</g)).toBe(2);
    expect(count(side, /<path class="cut"/g)).toBe(2);
    expect(count(side, /<path class="notch"/g)).toBeGreaterThan(6);
    expect(side).toContain('>2 side front</text>');
  });

  test('opens out a piece that is cut on a fold, and leaves the insert double', () => {
    const step = section('Gather the insert and sew the under-bust seam');
    expect(count(step, /<path class="cut"/g)).toBe(3);
    expect(count(step, /<text class="letter"[^>]*>b</g)).toBe(3);
  });

  test('warns at the step where it matters', () => {
    expect(section('Thread the drawstrings')).toContain('Never make it for a child');
    expect(section('Thread the elastic')).toContain('must not bind');
    expect(section('Cut out')).toContain('rotary cutter');
    expect(section('Cut out')).toContain('iron');
    expect(section('Sew a trial bodice and fit it')).toContain('pin');
  });

  test('says what must be ready, and which step did it', () => {
    const steps = garment.sewing?.map(({ title }) => title) ?? [];
    const rows = steps.indexOf('Stitch the gathering rows of the sleeves') + 1;
    expect(section('Gather the crowns and set in the sleeves')).toContain(
      `sleeve rows stitched (step ${rows})`,
    );
  });

  test('names stitch and seam classes, and gives each source once', () => {
    expect(section('Sew the side seams')).toContain(
      'Stitch 301, lockstitch, straight; seam class 1, superimposed',
    );
    expect(count(sheet, /Standards of Quality/g)).toBe(1);
  });

  test('is one file that fetches nothing and runs nothing', () => {
    expect(sheet).not.toMatch(/<script|<link|<img|href=|url\(|@import/i);
    expect(sheet).not.toMatch(/NaN|undefined|Infinity/);
  });

  test('closes every element it opens', () => {
    const open: string[] = [];
    for (const [, slash, name = ''] of sheet.matchAll(/<(\/?)([a-z][a-z0-9]*)[^>]*>/gi)) {
      if (name === 'meta') continue;
      if (!slash) open.push(name);
      else expect(open.pop()).toBe(name);
    }
    expect(open).toEqual([]);
  });

  test('does not depend on anything but the garment', () => {
    expect(sewingSheet(garment, cutLines, { date: '4 May' })).toBe(sheet);
  });
});

describe('words from a file', () => {
  const hostile = `</style><script>alert("1")</script>'&\u0000\u001b`;
  const named: Garment = {
    ...garment,
    name: hostile,
    body: hostile,
    notions: garment.notions.map((notion) => ({ ...notion, note: hostile })),
  };

  test('are shown as they are, and never become markup', () => {
    const page = sewingSheet(named, cutLines, { date: hostile });
    expect(page).not.toContain('<script');
    expect(page).toContain('&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt;&#39;&amp;');
    expect(page).not.toContain('\u0000');
    expect(page).not.toContain('\u001b');
  });
});

describe('edges that are sewn to nothing', () => {
  test('are named on the page, and nothing is said where there are none', () => {
    expect(sheet).not.toContain('Left open');
    const pieces = garment.pieces.map((piece, i) =>
      i === 0 ? { ...piece, edges: [...piece.edges, { ...noEdge, name: 'loose end' }] } : piece,
    );
    const [first] = pieces;
    const page = text(sewingSheet({ ...garment, pieces }, cutLines));
    expect(page).toMatch(new RegExp(`Left open .*${first?.name}: loose end`, 'is'));
  });

  const noEdge = { curves: [], turn: 'seam', allowance: 10, rank: 0, inflections: 0, open: true } as const;
});

describe('an order that cannot be followed', () => {
  test('says so on top of its page', () => {
    const broken = { ...garment, sewing: garment.sewing?.toReversed() ?? [] };
    expect(sewingSheet(broken, cutLines)).toContain('Do not sew by this sheet yet.');
    expect(sheet).not.toContain('Do not sew by this sheet yet.');
  });
});
