import { describe, expect, it } from 'vitest';
import { alike } from '../../../drafts/sides/alike.ts';
import type { Evaluation } from '../../../engine/evaluate.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { distance } from '../../../engine/geometry/point.ts';
import { walkSheet } from '../../../engine/reading/walk-sheet.ts';
import { sheetSvg } from '../../../engine/render/sheet.ts';
import { drafted, edgeOf, pieceOf, shippedBodies } from '../drafted.ts';
import { drawnOn } from '../drawn-on.ts';
import { family, type Styled, styleNames } from '../family.ts';
import { evaluated } from '../points.ts';
import { errorsOf, fittedBody } from './sided.ts';

type Change = Readonly<Record<string, unknown>>;

const made = ([garment, styling]: Styled, ...fitting: readonly Change[]): Evaluation =>
  drafted(garment, fittedBody('leading-lady', ...fitting), styling);

const apart = ({ garment }: Evaluation): readonly string[] => [
  ...new Set(garment.pieces.flatMap(({ oneOf }) => oneOf?.pair ?? [])),
];

const lower = { 'lower shoulder': 1, side: 'left' };
const forward = { 'forward shoulder': 1, side: 'right' };

const whole = styleNames.filter((name) => {
  const [garment, styling]: Styled = family[name];
  return (garment === 'trial' || styling?.shoulder === 'whole') && styling?.princess !== 'armhole';
});

describe.each(whole)('whole shoulders that differ: %s', (name) => {
  const style: Styled = family[name];
  const plain = made(style);

  it('part the panels at the side, their lining and the sleeve, and nothing that is cut at the centre', () => {
    for (const change of [lower, forward]) {
      const fitted = made(style, change);
      expect(errorsOf(fitted)).toEqual([]);
      const sided = plain.garment.pieces
        .filter(({ name: piece }) => /^side (front|back)( lining)?$|^sleeve$/.test(piece))
        .map(({ name: piece }) => piece);
      expect(apart(fitted)).toEqual(sided);
      for (const piece of plain.garment.pieces.filter((each) => !sided.includes(each.name))) {
        const { number } = pieceOf(fitted, piece.name);
        expect(alike(pieceOf(fitted, piece.name), { ...piece, number }), piece.name).toBe(true);
      }
    }
  });

  it('are as long on both sides, and lower on one by the amount at the armhole, by nothing at the neckline', () => {
    const fitted = made(style, lower);
    for (const half of ['front', 'back'] as const) {
      const was = edgeLength(edgeOf(plain, `side ${half}`, 'shoulder'));
      for (const side of ['left', 'right'])
        expect(edgeLength(edgeOf(fitted, `${side} side ${half}`, 'shoulder'))).toBeCloseTo(was, 6);
      const [before, after] = [plain, fitted].map((of) => drawnOn(of).lines[half]);
      if (!before || !after) throw new Error('not drawn');
      expect(after.atCentre.outer.y - before.atCentre.outer.y).toBeCloseTo(10, 6);
      expect(distance(after.atCentre.inner, before.atCentre.inner)).toBeCloseTo(0, 9);
      expect(distance(after.princess.centre, before.princess.centre)).toBeCloseTo(0, 9);
    }
  });
});

describe('a shoulder of the trial bodice', () => {
  const trial: Styled = family['trial bodice'];

  it.each(shippedBodies)('may be lower on either side of the %s, with every check true', (name) => {
    for (const [side, cm] of [
      ['left', 0.5],
      ['right', 1.5],
    ])
      expect(errorsOf(drafted('trial', fittedBody(name, { 'lower shoulder': cm, side })))).toEqual([]);
  });

  it('is true on the written sheet too, read back from its paths', () => {
    const { garment, cutLines } = made(trial, lower, forward);
    const walked = walkSheet(sheetSvg(garment, cutLines));
    expect(walked.ok && walked.value.issues).toEqual([]);
  });

  it('lies further forward as one seam where both sides do, and only what is left of it on one side alone', () => {
    const both = made(trial, { 'forward shoulder': 1 });
    const each = made(
      trial,
      { 'forward shoulder': 1, side: 'left' },
      { 'forward shoulder': 1, side: 'right' },
    );
    // All but what she wrote, which a garment tells as she did.
    expect({ ...each.garment, drawnFor: both.garment.drawnFor }).toEqual(both.garment);
    const more = made(trial, { 'forward shoulder': 1 }, { 'forward shoulder': 0.5, side: 'left' });
    const unlike = made(
      trial,
      { 'forward shoulder': 1.5, side: 'left' },
      { 'forward shoulder': 1, side: 'right' },
    );
    expect(unlike.garment.pieces).toEqual(more.garment.pieces);
    expect(errorsOf(more)).toEqual([]);
  });
});

describe('a princess line from the armhole', () => {
  it('leaves the shoulder to panels that are cut alike, and says so', () => {
    const [garment, styling]: Styled = family['princess from the armhole'];
    for (const change of [lower, forward]) {
      const { ok, issues } = evaluated(garment, fittedBody('leading-lady', change), styling);
      expect(ok).toBe(false);
      expect(issues.map(({ code }) => code)).toContain('fitting-not-one-sided');
    }
  });

  it('keeps its shoulders alike for an arm that needs more room', () => {
    const [, styling]: Styled = family['princess from the armhole'];
    const fitted = made(['dress', { ...styling, sleeve: 'plain' }], { 'more upper arm': 1, side: 'left' });
    expect(errorsOf(fitted)).toEqual([]);
    expect(apart(fitted)).toEqual(['sleeve']);
  });
});
