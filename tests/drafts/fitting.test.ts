import { describe, expect, it } from 'vitest';
import type { Evaluation } from '../../engine/evaluate.ts';
import { edgeEnd, edgeLength, edgeStart } from '../../engine/geometry/edge.ts';
import { distance } from '../../engine/geometry/point.ts';
import { drafted, edgeOf, pieceOf, shippedBodies, shippedBody } from './drafted.ts';
import { evaluated } from './points.ts';

/** The leading lady, fitted; lengths in the file are cm. */
const fitted = (...fitting: readonly Record<string, unknown>[]): Evaluation => {
  const evaluation = drafted('dress', { ...shippedBody('leading-lady'), fitting });
  expect(evaluation.report.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
  return evaluation;
};

/** The parts of a garment are solved as one: what is far from a change may still move by this, mm. */
const elsewhere = 0.3;

const before = drafted('dress', shippedBody('leading-lady'));

const length = (of: Evaluation, piece: string, edge: string): number => edgeLength(edgeOf(of, piece, edge));
const longer = (after: Evaluation, piece: string, edge: string): number =>
  length(after, piece, edge) - length(before, piece, edge);
const notch = (of: Evaluation, piece: string, edge: string, name: string): number =>
  pieceOf(of, piece).notches.find((n) => n.edge === edge && n.name === name)?.at ?? Number.NaN;
const girth = (of: Evaluation, level: string): number =>
  of.report.girths.find((g) => g.level === level)?.finished ?? Number.NaN;
const codes = (of: Evaluation): readonly string[] => of.report.issues.map(({ code }) => code);

const armhole = (of: Evaluation): number =>
  length(of, 'side front', 'armhole upper') + length(of, 'side front', 'armhole underarm');

describe('a seam taken in or let out', () => {
  it('moves the side seam by the amount on each layer, and no other seam', () => {
    const after = fitted({ 'take in': 'side seam', level: 'waist', by: 1 });
    expect(longer(after, 'side front', 'waist')).toBeCloseTo(-10, 0);
    expect(longer(after, 'side back', 'waist')).toBeCloseTo(-10, 0);
    for (const piece of ['centre front', 'centre back'])
      expect(Math.abs(longer(after, piece, 'waist'))).toBeLessThan(elsewhere);
    expect(
      distance(edgeEnd(edgeOf(after, 'side front', 'side')), edgeEnd(edgeOf(before, 'side front', 'side'))),
    ).toBeCloseTo(10, 6);
  });

  it.each([
    ['side seam', 'waist', 4],
    ['side seam', 'bust', 4],
    ['front princess seam', 'under-bust', 4],
    ['front princess seam', 'waist', 4],
    ['back princess seam', 'under-bust', 4],
    ['back princess seam', 'waist', 4],
    ['centre back seam', 'waist', 2],
  ])(
    'at the %s changes the finished girth at the %s by %i times the amount, and says so',
    (seam, level, layers) => {
      for (const [kind, sign] of [
        ['take in', -1],
        ['let out', 1],
      ] as const) {
        const after = fitted({ [kind]: seam, level, by: 0.5 });
        expect(girth(after, level) - girth(before, level)).toBeCloseTo(sign * layers * 5, 4);
        expect(codes(after).filter((code) => code.startsWith('fitting-')).length).toBeGreaterThan(0);
        expect(
          after.garment.steps.some(({ title }) => title === `Fitting, finished girth at the ${level}`),
        ).toBe(true);
      }
    },
  );

  it('at the waist leaves the bust and the hip as they were, and every gore as wide at the hem', () => {
    const after = fitted({ 'take in': 'side seam', level: 'waist', by: 1 });
    for (const level of ['bust', 'hip', 'hem'])
      expect(girth(after, level)).toBeCloseTo(girth(before, level), 4);
    expect(Math.abs(longer(after, 'skirt side front', 'hem'))).toBeLessThan(elsewhere);
    expect(longer(after, 'skirt side front', 'waist')).toBeCloseTo(longer(after, 'side front', 'waist'), 4);
  });

  it('warns where the garment gets smaller than the body', () => {
    const after = fitted({ 'take in': 'side seam', level: 'waist', by: 1 });
    expect(codes(after)).toContain('fitting-tighter-than-body');
  });

  it('takes in a skirt on its own as it does a dress', () => {
    const fitting = [{ 'take in': 'side seam', level: 'waist', by: 0.5 }];
    const skirt = drafted('skirt', { ...shippedBody('leading-lady'), fitting });
    const plain = drafted('skirt', shippedBody('leading-lady'));
    expect(skirt.report.ok).toBe(true);
    expect(girth(skirt, 'waist') - girth(plain, 'waist')).toBeCloseTo(-20, 4);
    expect(girth(skirt, 'hip')).toBeCloseTo(girth(plain, 'hip'), 4);
  });
});

describe('the bust point', () => {
  /** From the underarm down the side to the bust level. */
  const bustLevel = (of: Evaluation): number =>
    pieceOf(of, 'side front').lines[0]?.curves[0]?.from.y ?? Number.NaN;

  it('is raised and lowered by the amount', () => {
    expect(bustLevel(fitted({ 'raise bust point': 1 })) - bustLevel(before)).toBeCloseTo(-10, 6);
    expect(bustLevel(fitted({ 'lower bust point': 1 })) - bustLevel(before)).toBeCloseTo(10, 6);
  });

  it('leaves the girths as they were', () => {
    const after = fitted({ 'raise bust point': 1 });
    for (const level of ['bust', 'under-bust', 'waist'])
      expect(girth(after, level)).toBeCloseTo(girth(before, level), 4);
  });
});

describe('a wedge', () => {
  const strapEnds = (of: Evaluation): number =>
    distance(edgeEnd(edgeOf(of, 'side front', 'strap')), edgeStart(edgeOf(of, 'side front', 'side')));
  const dart = (of: Evaluation): number =>
    of.garment.figures?.find(({ name }) => name === 'bust dart angle')?.value ?? Number.NaN;

  it('from the armhole brings the strap nearer to the underarm by the amount', () => {
    const after = fitted({ 'wedge from armhole': 1 });
    expect(strapEnds(after) - strapEnds(before)).toBeCloseTo(-10, 6);
    expect(armhole(after) - armhole(before)).toBeLessThan(-8);
    expect(armhole(after) - armhole(before)).toBeGreaterThan(-14);
    expect(longer(after, 'insert', 'neckline')).toBeCloseTo(0, 4);
  });

  it('from the neckline shortens the neckline, gathers counted, and leaves the armhole', () => {
    const after = fitted({ 'wedge from neckline': 1 });
    const halfBefore = edgeStart(edgeOf(before, 'side front', 'strap'));
    expect(longer(after, 'insert', 'neckline')).toBeLessThan(-20);
    expect(armhole(after)).toBeCloseTo(armhole(before), 4);
    expect(distance(halfBefore, edgeStart(edgeOf(after, 'side front', 'strap')))).toBeCloseTo(0, 6);
  });

  it('of either kind adds to the bust dart', () => {
    for (const edge of ['neckline', 'armhole'])
      expect(dart(fitted({ [`wedge from ${edge}`]: 1 }))).toBeGreaterThan(dart(before) + 2);
  });
});

describe('straps and shoulder', () => {
  it('shortens and lengthens the strap by the amount, half on each side of the shoulder', () => {
    const shorter = fitted({ 'shorten strap': 1 });
    expect(longer(shorter, 'strap', 'outer')).toBeCloseTo(-10, 6);
    expect(
      notch(shorter, 'strap', 'outer', 'shoulder') - notch(before, 'strap', 'outer', 'shoulder'),
    ).toBeCloseTo(-5, 6);
    expect(longer(fitted({ 'lengthen strap': 1 }), 'strap', 'outer')).toBeCloseTo(10, 6);
  });

  it('moves the shoulder mark forward on strap and sleeve, and leaves the strap as long', () => {
    const after = fitted({ 'forward shoulder': 1 });
    expect(longer(after, 'strap', 'outer')).toBeCloseTo(0, 6);
    expect(
      notch(after, 'strap', 'outer', 'shoulder') - notch(before, 'strap', 'outer', 'shoulder'),
    ).toBeCloseTo(10, 6);
    expect(notch(after, 'sleeve', 'crown', 'shoulder')).toBeGreaterThan(
      notch(before, 'sleeve', 'crown', 'shoulder') + 9,
    );
  });

  it('says what is left of a strap that is shortened too far', () => {
    const fitting = [{ 'shorten strap': 5 }];
    const result = evaluated('dress', { ...shippedBody('leading-lady'), fitting });
    expect(result.ok).toBe(false);
    expect(result.issues.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['fitting-cannot-agree', 'fitting-too-much']),
    );
  });
});

describe('the back', () => {
  it('gets longer above the bust level for a round back, and the front stays', () => {
    const after = fitted({ 'round back': 1 });
    expect(longer(after, 'centre back', 'centre back')).toBeCloseTo(10, 1);
    expect(longer(after, 'side back', 'side')).toBeCloseTo(0, 1);
    for (const edge of ['princess upper', 'princess lower', 'side', 'armhole upper'])
      expect(Math.abs(longer(after, 'side front', edge))).toBeLessThan(elsewhere);
  });

  it('gets shorter at the centre for a sway back, to nothing at the side seam', () => {
    const after = fitted({ 'sway back': 1 });
    expect(longer(after, 'centre back', 'centre back')).toBeCloseTo(-10, 1);
    expect(longer(after, 'side back', 'side')).toBeCloseTo(0, 6);
    expect(longer(after, 'centre back', 'princess')).toBeLessThan(0);
    expect(longer(after, 'centre back', 'princess')).toBeGreaterThan(-10);
    expect(girth(after, 'waist')).toBeCloseTo(girth(before, 'waist'), 4);
  });
});

describe('the upper arm', () => {
  it('gets its room in the sleeve, and the armhole stays', () => {
    const after = fitted({ 'more upper arm': 2 });
    expect(girth(after, 'upper arm') - girth(before, 'upper arm')).toBeCloseTo(20, 4);
    expect(Math.abs(armhole(after) - armhole(before))).toBeLessThan(elsewhere);
  });

  it('is said to change nothing on a bodice without sleeves', () => {
    const bodice = drafted('bodice', { ...shippedBody('leading-lady'), fitting: [{ 'more upper arm': 2 }] });
    expect(bodice.report.issues).toContainEqual(
      expect.objectContaining({ code: 'fitting-without-place', severity: 'note' }),
    );
  });
});

describe('a fitting', () => {
  const many = [
    { 'take in': 'side seam', level: 'waist', by: 0.4 },
    { 'let out': 'back princess seam', level: 'under-bust', by: 0.3 },
    { 'lower bust point': 0.8 },
    { 'wedge from neckline': 0.6 },
    { 'wedge from armhole': 0.5 },
    { 'shorten strap': 0.6 },
    { 'forward shoulder': 0.8 },
    { 'round back': 0.8 },
    { 'sway back': 0.8 },
    { 'more upper arm': 1 },
  ];

  it('of many changes keeps every check true, for every body that ships', () => {
    for (const name of shippedBodies) {
      const body = shippedBody(name);
      const perCm = { cm: 1, in: 1 / 2.54, mm: 10 }[String(body.units)] ?? 1;
      const fitting = many.map((change) =>
        Object.fromEntries(
          Object.entries(change).map(([k, v]) => [k, typeof v === 'number' ? v * perCm : v]),
        ),
      );
      const { report } = drafted('dress', { ...body, fitting });
      expect(
        report.issues.filter(({ severity }) => severity === 'error'),
        name,
      ).toEqual([]);
    }
  });

  it('does not depend on the order in which its changes are written', () => {
    const one = fitted(...many).garment.pieces;
    expect(JSON.stringify(fitted(...many.toReversed()).garment.pieces)).toBe(JSON.stringify(one));
  });

  it('leaves the measurements as they were taken, and logs each change as a numbered step', () => {
    const after = fitted({ 'raise bust point': 1 }, { 'sway back': 1 });
    expect(after.body.size).toEqual(before.body.size);
    expect(after.garment.steps.filter(({ source }) => source === 'fitting').length).toBe(2);
  });

  it('that cannot be drafted is blamed by name, not the measurements', () => {
    const fitting = [{ 'raise bust point': 2.5 }, { 'sway back': 1 }];
    const { issues } = evaluated('dress', { ...shippedBody('leading-lady'), fitting });
    const blamed = issues.find(({ code }) => code === 'fitting-cannot-agree')?.message ?? '';
    expect(blamed).toContain('"raise bust point"');
    expect(blamed).not.toContain('sway back');
  });
});
