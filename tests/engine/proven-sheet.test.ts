import { describe, expect, it } from 'vitest';
import type { Evaluation } from '../../engine/evaluate.ts';
import { notchesOf } from '../../engine/finishing/notches.ts';
import { movedBy, transformedEdge } from '../../engine/geometry/transform.ts';
import { provenSheet } from '../../engine/proven-sheet.ts';
import { drafted, shippedBody } from '../drafts/drafted.ts';

const proven = (evaluation: Evaluation) =>
  provenSheet(evaluation, { notches: notchesOf(evaluation.styling) });

const errorsOf = (evaluation: Evaluation): readonly string[] =>
  proven(evaluation)
    .report.issues.filter(({ severity }) => severity === 'error')
    .map(({ code, message }) => `${code}: ${message}`);

describe('a sheet as it is written', () => {
  // Each of these was once drafted true and written so that its own file was not.
  it.each([
    ['many slash lines', 'dress', 'leading-lady', { slashLines: 14, slashLinesDrawn: 'yes' }],
    ['an under-bust seam far down', 'dress', 'leading-lady', { underBustDrop: 119 }],
    [
      'wide allowances',
      'dress',
      'understudy',
      { seamAllowance: 25, armholeAllowance: 15, sideAllowance: 40 },
    ],
    [
      'narrow straps',
      'dress',
      'wardrobe-mistress',
      { strapWidth: 20, necklineDepth: 0.588, necklineWidth: 1.194 },
    ],
    [
      'a tightly curved waist',
      'skirt',
      'leading-lady',
      { hemSweep: 7000, seamAllowance: 23.85, hipEase: 201.33, skirtLength: 1174.3 },
    ],
    ['a hollow as tight as its allowance is wide', 'trial', 'scene-painter', { underBustEase: 0 }],
    [
      'a corner that hardly turns',
      'bodice',
      'scene-painter',
      { centreFront: 'parted', seamAllowance: 6, princessOffset: 20, waistEase: 40.136573826894164 },
    ],
    [
      'a notch beside a joint',
      'bodice',
      'understudy',
      {
        bustEase: 19.03971802443266,
        necklineDepth: 0.45,
        strapWidth: 59.261231971904635,
        armholeAllowance: 6,
      },
    ],
    [
      'a lining beside a joint',
      'bodice',
      'leading-lady',
      { bustEase: 50.6214527413249, waistEase: 120, centreFront: 'parted', necklineDepth: 0.478 },
    ],
  ])('is true where the draft is: %s', (_, garment, body, styling) => {
    const evaluation = drafted(garment, shippedBody(body), styling);
    expect(evaluation.report.ok).toBe(true);
    expect(errorsOf(evaluation)).toEqual([]);
  });

  it('is true where a name holds a sign that turns the way of writing round, and shows the name without it', () => {
    const evaluation = drafted('skirt', { ...shippedBody('leading-lady'), name: 'a\u202Eb' });
    expect(errorsOf(evaluation)).toEqual([]);
    expect(evaluation.garment.body).toBe('ab');
  });

  it('is not true, whatever the draft says, where its cutting line is another one', () => {
    const evaluation = drafted('skirt', shippedBody('leading-lady'));
    const [piece] = evaluation.garment.pieces;
    const cut = piece && evaluation.cutLines.get(piece.name);
    if (!cut) throw new Error('no piece');
    const aside = transformedEdge(cut, movedBy({ x: 3, y: 0 }));
    const cutLines = new Map([...evaluation.cutLines, [piece.name, aside] as const]);
    const { report } = proven({ ...evaluation, cutLines });
    expect(evaluation.report.ok).toBe(true);
    expect(report.ok).toBe(false);
    expect(report.issues.map(({ message }) => message).join()).toMatch(
      /On the written sheet: The cutting line of skirt centre front/,
    );
  });
});
