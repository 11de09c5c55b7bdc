import { describe, expect, test } from 'vitest';
import { earlierOutlines } from '../../../engine/comparison/earlier-outlines.ts';
import { sheetDraft } from '../../../engine/comparison/sheet-draft.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { provenSheet } from '../../../engine/proven-sheet.ts';
import { readMarkup } from '../../../engine/reading/read-markup.ts';
import { readOutline } from '../../../engine/reading/read-outline.ts';
import { readPath } from '../../../engine/reading/read-path.ts';
import { walkSheet } from '../../../engine/reading/walk-sheet.ts';
import { earlierStyleSheet, lineStyles, lineTypes, styleSheet } from '../../../engine/render/line-types.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';

const [before, now] = ['understudy', 'leading-lady'].map((name) => drafted('dress', shippedBody(name)));
if (!before || !now) throw new Error('no dress');
const { garment, cutLines } = before;
const outlines = earlierOutlines(
  { pieces: garment.pieces, cutLines, notions: garment.notions },
  now.garment.pieces,
);
const { sheet, pieces, report } = provenSheet(now, { earlier: outlines.on });

const codes = (svg: string): readonly string[] => {
  const walked = walkSheet(svg);
  return (walked.ok ? walked.value.issues : walked.issues).map(({ code }) => code);
};

/** The earlier outlines as a file draws them, by piece. */
const drawnIn = (svg: string) => {
  const read = readMarkup(svg);
  if (!read.ok) throw new Error('not SVG');
  return read.value.elements.filter(
    ({ name, attributes }) => name === 'path' && attributes.class === 'earlier',
  );
};

describe('the outline of an earlier draft on a sheet', () => {
  test('is drawn under every piece that was there before, first of all its lines, as large as it was', () => {
    const drawn = drawnIn(sheet);
    expect(drawn.map(({ attributes }) => attributes['data-piece'])).toEqual(
      now.garment.pieces.map(({ name }) => name),
    );
    for (const { attributes } of drawn) {
      const read = readPath(attributes.d ?? '');
      if (!read.ok) throw new Error(read.reason);
      expect(read.closed).toBe(true);
      const old = garment.pieces.find(({ name }) => name === attributes['data-piece']);
      const area = signedArea([{ name: '', curves: read.curves }]);
      expect(area / signedArea(old?.edges ?? [])).toBeCloseTo(1, 6);
    }
    expect(
      [...sheet.matchAll(/<g class="piece"[^>]*><path class="(\w+)"/g)].map(([, first]) => first),
    ).toEqual(now.garment.pieces.map(() => 'earlier'));
  });

  test('leaves the sheet true, and no other line of it otherwise', () => {
    expect(report.ok).toBe(true);
    expect(codes(sheet)).toEqual([]);
    const plain = sheetDraft(provenSheet(now, {}).sheet);
    const over = sheetDraft(sheet);
    if (!plain.ok || !over.ok) throw new Error('not read');
    const lengths = (draft: typeof plain.value) =>
      draft.figures.seams.map(({ lengthA, lengthB }) => [lengthA, lengthB].map((mm) => mm.toFixed(4)));
    expect(lengths(over.value)).toEqual(lengths(plain.value));
  });

  test('has a line type of its own, in black ink too, and a row in the key only where it is', () => {
    const { dashes, shade, width } = lineStyles.get('earlier') ?? { dashes: [], shade: 0, width: 0 };
    for (const type of lineTypes) expect(type.dashes).not.toBe(dashes.join(' '));
    // Grey enough to lie behind black, dark enough for 3 to 1 against white paper (WCAG 2.1, 1.4.11).
    expect(shade).toBeGreaterThan(0.3);
    const luminance = ((shade + 0.055) / 1.055) ** 2.4;
    expect(1.05 / (luminance + 0.05)).toBeGreaterThan(3);
    expect(width).toBeGreaterThan(0.2);
    expect(sheet).toContain('<path class="key-earlier"');
    expect(sheet).toContain('stitching line before');
    expect(earlierStyleSheet.startsWith(styleSheet)).toBe(true);
    expect(provenSheet(now, {}).sheet).not.toContain('earlier');
  });

  test('stands on no file of one piece, which has no key', () => {
    for (const svg of pieces().values()) expect(svg).not.toContain('earlier');
  });

  test('never counts as a line of the piece', () => {
    const edge = /<path class="stitch" data-piece="side front" data-edge="waist"/;
    expect(codes(sheet.replace(edge, (found) => found.replace('stitch', 'earlier')))).toEqual([
      'path-missing',
    ]);
    const cut = /<path class="cut" data-piece="side front"/;
    expect(codes(sheet.replace(cut, (found) => found.replace('cut', 'earlier')))).toEqual(['path-missing']);
    expect(codes(sheet.replace('class="earlier"', 'class="stitch"'))).toEqual(['path-unknown']);
    expect(codes(sheet.replace('class="earlier"', 'class="cut"'))).toContain('path-twice');
    const corner = (25 * Math.PI) / 180;
    const [traced, other] = [sheet, sheet.replace(/<path class="earlier"[^>]*\/>/g, '')].map((svg) =>
      readOutline(svg, { corner, piece: 'side front' }),
    );
    expect(traced?.ok).toBe(true);
    expect(traced).toEqual(other);
  });

  test.each<[string, (svg: string) => string]>([
    ['without its style', (svg) => svg.replace(/\s*\.earlier\{[^}]*\}\s*\.key-earlier\{[^}]*\}/, '')],
    ['in black', (svg) => svg.replace(/(\.earlier\{[^}]*);stroke:[^}]*\}/, '$1}')],
    ['solid', (svg) => svg.replace(/(\.earlier\{[^}]*);stroke-dasharray:[^;]*/, '$1')],
    ['moved', (svg) => svg.replace('<path class="earlier"', '<path transform="scale(2)" class="earlier"')],
  ])('is refused where it is drawn %s', (_, change) => {
    const changed = change(sheet);
    expect(changed).not.toBe(sheet);
    expect(codes(changed)).toContain('drawn-otherwise');
  });

  test('is refused on a sheet that does not show it grey, whatever else its class says', () => {
    const { sheet: plain } = provenSheet(now, {});
    for (const name of ['earlier', 'key-earlier', 'old earlier'])
      expect(codes(plain.replace('</svg>', `<path class="${name}" d="M9 9H99"/></svg>`))).toEqual([
        'drawn-otherwise',
      ]);
  });

  test('of a draft that showed one itself is only its own', () => {
    const read = sheetDraft(sheet);
    if (!read.ok || !read.value.sheet) throw new Error('not read');
    const again = earlierOutlines(read.value.sheet, now.garment.pieces);
    expect([...again.on.keys()]).toEqual(now.garment.pieces.map(({ name }) => name));
    for (const chains of again.on.values()) expect(chains).toHaveLength(1);
  });
});
