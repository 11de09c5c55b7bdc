import { describe, expect, it } from 'vitest';
import { movesBetween } from '../../engine/comparison/piece-moves.ts';
import type { Evaluation } from '../../engine/evaluate.ts';
import { edgeEnd, edgeStart } from '../../engine/geometry/edge.ts';
import { distance, turnedAbout } from '../../engine/geometry/point.ts';
import { drafted, edgeOf, shippedBody } from './drafted.ts';
import { drawnOn } from './drawn-on.ts';
import { armhole, before, codes, elsewhere, fitted, girth, length, longer, notch } from './fitted.ts';

const levels = ['bust', 'under-bust', 'waist', 'hip', 'hem'];

/** From the fold of the arm to the underarm, behind. */
const foldToUnderarm = (of: Evaluation): number => {
  const { foundation, lines } = drawnOn(of);
  const { across, blade, side } = foundation.back;
  return distance(turnedAbout(across, blade, lines.back.turned), side.underarm);
};

describe('a gaping edge of the back', () => {
  it('is pinned out of the neckline by the amount, and the armhole stays', () => {
    const after = fitted({ 'wedge from back neckline': 1 });
    const corner = (of: Evaluation) => edgeEnd(edgeOf(of, 'centre back', 'neckline'));
    expect(corner(after).x - corner(before).x).toBeCloseTo(-10, 6);
    expect(longer(after, 'centre back', 'neckline')).toBeLessThan(-9);
    expect(longer(after, 'centre back', 'neckline')).toBeGreaterThan(-12);
    expect(armhole(after, 'back')).toBeCloseTo(armhole(before, 'back'), 4);
    expect(foldToUnderarm(after)).toBeCloseTo(foldToUnderarm(before), 6);
  });

  it('is pinned out of the armhole by the amount, and the neckline stays', () => {
    const after = fitted({ 'wedge from back armhole': 1 });
    expect(foldToUnderarm(after) - foldToUnderarm(before)).toBeCloseTo(-10, 6);
    expect(armhole(after, 'back') - armhole(before, 'back')).toBeLessThan(-8);
    expect(armhole(after, 'back') - armhole(before, 'back')).toBeGreaterThan(-14);
    expect(Math.abs(longer(after, 'centre back', 'neckline'))).toBeLessThan(elsewhere);
  });

  it('leaves every girth and the front, and gives its cloth to the back princess seam', () => {
    for (const edge of ['neckline', 'armhole']) {
      const after = fitted({ [`wedge from back ${edge}`]: 1 });
      for (const level of levels) expect(girth(after, level)).toBeCloseTo(girth(before, level), 4);
      for (const lower of ['princess upper', 'princess lower', 'side'])
        expect(Math.abs(longer(after, 'side front', lower))).toBeLessThan(elsewhere);
      expect(armhole(after, 'front')).toBeCloseTo(armhole(before, 'front'), 4);
      const [centre, side] = [
        edgeOf(after, 'centre back', 'princess'),
        edgeOf(after, 'side back', 'princess'),
      ];
      const gapAtTop = distance(edgeStart(centre), edgeEnd(side));
      expect(gapAtTop).toBeGreaterThan(8);
      expect(after.garment.steps.map(({ title }) => title)).toContain(`Fitting, wedge from back ${edge}`);
    }
  });
});

describe('a back of another width', () => {
  it.each([
    ['broad back', 1],
    ['narrow back', -1],
  ])('changes the bust by the amount for a %s, all of it in the back, and no other girth', (kind, sign) => {
    const after = fitted({ [kind]: 1 });
    expect(girth(after, 'bust') - girth(before, 'bust')).toBeCloseTo(sign * 10, 4);
    for (const level of levels.slice(1)) expect(girth(after, level)).toBeCloseTo(girth(before, level), 4);
    for (const edge of ['waist', 'side', 'princess lower', 'princess upper'])
      expect(Math.abs(longer(after, 'side front', edge))).toBeLessThan(elsewhere);
    expect(longer(after, 'side back', 'side')).toBeCloseTo(0, 6);
    const underarm = (of: Evaluation): number => edgeStart(edgeOf(of, 'side back', 'side')).x;
    expect(underarm(after) - underarm(before)).toBeCloseTo(sign * 5, 6);
    const across = (of: Evaluation): number => drawnOn(of).foundation.back.across.x;
    expect(across(after) - across(before)).toBeCloseTo(sign * 5, 6);
    expect(armhole(after, 'front')).toBeCloseTo(armhole(before, 'front'), 4);
    expect(codes(after)).toContain('fitting-changes-girth');
  });
});

describe('the skirt of a sway back', () => {
  const toHip = (of: Evaluation, gore: string, edge: string): number => {
    const at = notch(of, gore, edge, 'hip level');
    return edge === 'side' || gore === 'skirt centre back' ? at : length(of, gore, edge) - at;
  };

  it('drops at the centre by the amount, and not at the side', () => {
    const after = fitted({ 'sway back in skirt': 1 });
    expect(longer(after, 'skirt centre back', 'centre back')).toBeCloseTo(-10, 6);
    const atPrincess = longer(after, 'skirt side back', 'back princess');
    expect(atPrincess).toBeLessThan(-3);
    expect(atPrincess).toBeGreaterThan(-7);
    for (const gore of ['skirt side front', 'skirt side back'])
      expect(longer(after, gore, 'side')).toBeCloseTo(0, 6);
  });

  it('loses all of it above the hip, so that the hem hangs level', () => {
    const after = fitted({ 'sway back in skirt': 1 });
    const onSide = (of: Evaluation): number => toHip(of, 'skirt side back', 'back princess');
    expect(onSide(after) - onSide(before)).toBeCloseTo(longer(after, 'skirt side back', 'back princess'), 6);
    for (const gore of ['skirt side back', 'skirt centre back'])
      for (const edge of ['hem', 'waist']) expect(Math.abs(longer(after, gore, edge))).toBeLessThan(1e-4);
    for (const level of levels) expect(girth(after, level)).toBeCloseTo(girth(before, level), 4);
  });

  it('moves the back gores above the hip and nothing else', () => {
    const after = fitted({ 'sway back in skirt': 1 });
    const drawn = ({ garment: { pieces }, cutLines }: Evaluation) => ({ pieces, cutLines });
    const moved = movesBetween(drawn(before), drawn(after)).flatMap((move) =>
      move.kind === 'redrawn' && move.edges.some((edge) => edge.kind !== 'redrawn' || edge.moved > 0.05)
        ? [move.piece]
        : [move.kind],
    );
    expect(moved.filter((piece) => piece !== 'redrawn')).toEqual(['skirt side back', 'skirt centre back']);
  });

  it('is no matter of the bodice, nor is a fold above the waist one of the skirt', () => {
    const body = shippedBody('leading-lady');
    const noted = (garment: string, kind: string) =>
      codes(drafted(garment, { ...body, fitting: [{ [kind]: 1 }] })).includes('fitting-without-place');
    expect(noted('bodice', 'sway back in skirt')).toBe(true);
    expect(noted('skirt', 'sway back in skirt')).toBe(false);
    expect(noted('skirt', 'sway back')).toBe(true);
    const gore = longer(fitted({ 'sway back': 1 }), 'skirt centre back', 'centre back');
    expect(gore).toBeCloseTo(0, 6);
  });
});
