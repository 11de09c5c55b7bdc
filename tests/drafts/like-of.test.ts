import { describe, expect, it } from 'vitest';
import { garments } from '../../drafts/garments.ts';
import { likeOf } from '../../drafts/like-of.ts';
import { walkSheet } from '../../drafts/walk-sheet.ts';
import { leftOut } from '../../engine/checks/left-out.ts';
import { evaluate } from '../../engine/evaluate.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import { claimedOtherwise } from '../../engine/reading/claimed-otherwise.ts';
import { type Metadata, metadataOf, metadataText, sealed } from '../../engine/render/metadata.ts';
import { sheetSvg } from '../../engine/render/sheet.ts';
import { drafted, shippedBodies, shippedBody } from './drafted.ts';

const { garment, cutLines } = drafted('dress', shippedBody('leading-lady'), { sleeve: 'plain' });
const sheet = sheetSvg(garment, cutLines, { units: 'in' });

/** The sheet of a forger, who changes what it says of itself and seals it anew. */
function forged(change: (said: Metadata) => Partial<Metadata>): string {
  const text = /<metadata>(.*?)<\/metadata>/s.exec(sheet)?.[1] ?? '';
  const { digest: _, ...said }: Metadata = JSON.parse(text);
  return sheet.replace(text, () => metadataText(sealed({ ...said, ...change(said) })));
}

const issues = (svg: string, known = garments) => {
  const walked = walkSheet(svg, known);
  return walked.ok ? walked.value.issues : walked.issues;
};

describe('a sheet sealed anew', () => {
  it('is as it was where nothing was changed', () => {
    expect(issues(forged(() => ({})))).toEqual([]);
  });

  it.each<[string, (said: Metadata) => Partial<Metadata>]>([
    ['all', () => ({ shapes: [] })],
    ['one', ({ shapes }) => ({ shapes: shapes.filter(({ kind }) => kind !== 'cap top') })],
    ['the first', ({ shapes }) => ({ shapes: shapes.slice(1) })],
    ['all, as if without a sleeve', () => ({ shapes: [], choices: { sleeve: 'none' } })],
    [
      'all, and its choices',
      ({ choices: _, ...said }) => ({ ...said, shapes: [], choices: undefined as never }),
    ],
    ['all, for choices that there are not', () => ({ shapes: [], choices: { sleeve: 'bell' } })],
  ])('no longer claims its shapes: %s', (_, change) => {
    expect(issues(forged(change)).map(({ code }) => code)).toEqual(['shape-unclaimed']);
  });

  const without =
    (list: 'seams' | 'joins' | 'girths' | 'notions', named: string) =>
    (said: Metadata): Partial<Metadata> => ({
      [list]: said[list].filter((one) => ('level' in one ? one.level : one.name) !== named),
    });
  const on =
    (piece: string, list: 'lines' | 'marks' | 'cut', named: string) =>
    ({ pieces }: Metadata): Partial<Metadata> => ({
      pieces: pieces.map((one) =>
        one.name === piece
          ? { ...one, [list]: one[list].filter((it) => ('cloth' in it ? it.cloth : it.name) !== named) }
          : one,
      ),
    });

  const hemNotch = ({ pieces }: Metadata): Partial<Metadata> => ({
    pieces: pieces.map((one) => ({ ...one, notches: one.notches.filter(({ edge }) => edge !== 'hem') })),
  });

  it.each<[string, (said: Metadata) => Partial<Metadata>]>([
    ['the seam “strap, outer edge”', without('seams', 'strap, outer edge')],
    ['the join “waist at centre back”', without('joins', 'waist at centre back')],
    ['the girth “hem”', without('girths', 'hem')],
    ['the notion “zip”', without('notions', 'zip')],
    ['the notch “centre front, hem” of skirt centre front', hemNotch],
    ['the line “casing” of insert', on('insert', 'lines', 'casing')],
    ['the mark “left buttonhole” of insert', on('insert', 'marks', 'left buttonhole')],
    ['the cloth “lining” of front strap', on('front strap', 'cut', 'lining')],
  ])('leaves something out: %s', (words, change) => {
    expect(issues(forged(change))).toMatchObject([
      { code: 'claim-left-out', severity: 'error', message: expect.stringContaining(`leaves out ${words}`) },
    ]);
  });

  it('leaves more out than one thing', () => {
    const [found] = issues(forged(({ notions }) => ({ notions: notions.slice(2) })));
    expect(found?.message).toMatch(
      /leaves out the notion “.*”, and 1 other thing, which every such dress has/,
    );
  });

  it.each<[string, RegExp, (said: Metadata) => Partial<Metadata>]>([
    [
      'the body and the ease of a girth, shifted against each other',
      /“girths, upper arm, body” the sheet says \d+.*; the dress drafted again .* has \d+.* So it is with 1 other claim\./,
      ({ girths }) => ({
        girths: girths.map((girth) =>
          girth.level === 'upper arm' ? { ...girth, body: girth.body + 20, ease: girth.ease - 20 } : girth,
        ),
      }),
    ],
    [
      'her waist and its ease with it',
      /“wearer, waist”/,
      ({ girths, wearer }) => ({
        ...(wearer && { wearer: { ...wearer, waist: wearer.waist + 15 } }),
        girths: girths.map((girth) =>
          girth.level.startsWith('waist')
            ? { ...girth, body: girth.body + 15, ease: girth.ease - 15 }
            : girth,
        ),
      }),
    ],
    [
      'the ease and the fullness of a seam',
      /“seams, armhole, crown, (ease|gatherRatio)”/,
      ({ seams }) => ({
        seams: seams.map((seam) =>
          seam.name === 'armhole, crown' ? { ...seam, ease: seam.ease - 9, gatherRatio: 1.02 } : seam,
        ),
      }),
    ],
    [
      'the limits of a shape',
      /“shapes, .*, low” the sheet says -9999;/,
      ({ shapes }) => ({ shapes: shapes.map((shape) => ({ ...shape, low: -9999, high: 9999 })) }),
    ],
    [
      'a pair that is no pair',
      /“pieces, side front, cut, self, pair” the sheet says “false”; .* has “true” there/,
      ({ pieces }) => ({
        pieces: pieces.map((piece) =>
          piece.name === 'side front'
            ? { ...piece, cut: piece.cut.map((cut) => ({ ...cut, pair: false })) }
            : piece,
        ),
      }),
    ],
    [
      'an elastic',
      /“notions, .*, length”/,
      ({ notions }) => ({ notions: notions.map((notion) => ({ ...notion, length: notion.length + 30 })) }),
    ],
    [
      'a measurement',
      /drafted again for the same measurements/,
      ({ drawnFor }) =>
        drawnFor ? { drawnFor: { ...drawnFor, size: { ...drawnFor.size, scyeDepth: 195 } } } : {},
    ],
  ])('claims something otherwise: %s', (_, words, change) => {
    const found = issues(forged(change)).filter(({ code }) => code === 'claim-otherwise');
    expect(found).toMatchObject([{ severity: 'error', message: expect.stringMatching(words) }]);
  });

  it('is for measurements with which there is no such garment', () => {
    const found = issues(
      forged(({ drawnFor }) =>
        drawnFor ? { drawnFor: { ...drawnFor, size: { ...drawnFor.size, scyeDepth: 20 } } } : {},
      ),
    );
    expect(found.map(({ code, path }) => [code, path])).toEqual([['claim-otherwise', 'dress']]);
    expect(found[0]?.message).toMatch(/^No dress can be drafted for the measurements/);
  });

  it('tells every number, word and answer that is not as it was drafted', () => {
    const text = /<metadata>(.*?)<\/metadata>/s.exec(sheet)?.[1] ?? '';
    const { digest: _, ...said }: Metadata = JSON.parse(text);
    // The figures of the label, and the claims: what a body is called, and what no piece was drawn from, is anybody's word.
    const { body: _body, units: _units, drawnFor: _drawnFor, ...claims } = said;
    const all = leavesOf(claims);
    expect(all.length).toBeGreaterThan(2000);
    const passed = all
      .filter((_, i) => i % 97 === 0)
      .filter((path) => {
        const changed = structuredClone(said);
        change(changed, path);
        return issues(sheet.replace(text, () => metadataText(sealed(changed)))).every(
          ({ severity }) => severity !== 'error',
        );
      });
    expect(passed).toEqual([]);
  });

  it('is told apart where its draft is not known: no error, and not passed over', () => {
    const found = issues(forged(() => ({ garment: 'cloak', shapes: [] })));
    expect(found.map(({ code, severity }) => [code, severity])).toEqual([['shapes-unknown', 'note']]);
  });

  it('says in which unit its lengths are told', () => {
    const walked = walkSheet(sheet);
    expect(walked.ok && walked.value.units).toBe('in');
  });
});

const said = (of: Garment): Metadata => metadataOf(of, of.pieces, 'sheet', {});

type Path = readonly string[];

/** The ways to everything in plain data that is no list or record. */
const leavesOf = (value: unknown, at: Path = []): readonly Path[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, part]) => leavesOf(part, [...at, key]))
    : [at];

/** Makes another of what stands at a place: a number larger by 7, a word longer, yes no. */
function change(data: object, [key = '', ...rest]: Path): void {
  const holder = data as Record<string, unknown>;
  const value = holder[key];
  if (rest.length > 0) change(value as object, rest);
  else
    holder[key] = typeof value === 'number' ? value + 7 : typeof value === 'boolean' ? !value : `${value}x`;
}

describe('what a garment has by name', () => {
  const stylings = [
    {},
    { sleeve: 'none', front: 'plain', shoulder: 'whole' },
    { sleeve: 'plain', sleeveTo: 'wrist' },
    { skirtLining: 'lined', opening: 'side', inside: 'faced' },
    // The notches of some armholes lie on the straps so, and the lining has an edge less.
    { necklineDepth: 0.55, backNecklineDepth: 48 },
    { neckline: 'square', backNecklineDepth: 122.69, opening: 'side' },
  ];
  it.each(shippedBodies)('is what one of its choices has that was drafted for a like body: %s', (name) => {
    for (const draft of garments)
      for (const styling of stylings) {
        const own = Object.fromEntries(
          Object.entries(styling).filter(([key]) => draft.choices.some((choice) => choice.name === key)),
        );
        const made = evaluate(draft, shippedBody(name), own);
        if (!made.ok) continue;
        const written = made.value.garment;
        const { drawnFor: _, ...earlier } = written;
        const like = likeOf(garments)(earlier);
        expect(like.kind).toBe('drafted');
        expect(leftOut(written, like)).toEqual([]);
        const again = likeOf(garments)(written);
        expect(again.kind).toBe('drafted again');
        if (again.kind === 'drafted again')
          expect(claimedOtherwise(said(written), said(again.garment))).toEqual([]);
      }
  });

  it('is asked for of both sides where these differ', () => {
    const body = {
      ...(shippedBody('leading-lady') as object),
      fitting: [{ 'lower shoulder': 1, side: 'left' }],
    };
    const { garment: uneven, cutLines: lines } = drafted('dress', body);
    expect(uneven.shapes.some((shape) => shape.name.startsWith('left '))).toBe(true);
    expect(issues(sheetSvg(uneven, lines))).toEqual([]);
  });
});
