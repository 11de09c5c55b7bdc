import { describe, expect, it } from 'vitest';
import type { Evaluation } from '../../engine/evaluate.ts';
import { edgeEnd, edgeLength, edgeStart } from '../../engine/geometry/edge.ts';
import { distance } from '../../engine/geometry/point.ts';
import { drafted, edgeOf, figureOf, pieceOf, shippedBodies, shippedBody } from './drafted.ts';
import { drawnOn } from './drawn-on.ts';
import { armhole, before, codes, elsewhere, fitted, girth, inUnitsOf, longer, notch } from './fitted.ts';
import { evaluated } from './points.ts';

/** Across a gore at the hip. */
const width = (of: Evaluation, gore: string): number =>
  edgeLength({
    name: 'hip level',
    curves: pieceOf(of, gore).lines.find(({ name }) => name === 'hip level')?.curves ?? [],
  });

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
    ['side seam', 'hip', 4],
    ['front princess seam', 'hip', 4],
    ['back princess seam', 'bust', 4],
    ['back princess seam', 'under-bust', 4],
    ['back princess seam', 'waist', 4],
    ['back princess seam', 'hip', 4],
    ['centre back seam', 'waist', 2],
    ['centre back seam', 'hip', 2],
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
        expect(after.garment.steps.map(({ title }) => title)).toEqual(
          expect.arrayContaining([
            `Fitting, ${kind} the ${seam} at the ${level}`,
            `Fitting, finished girth at the ${level}`,
          ]),
        );
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

  it('at the hip leaves waist and hem as they were, and tells the new girth on the pieces', () => {
    const after = fitted({ 'let out': 'side seam', level: 'hip', by: 1 });
    for (const level of ['bust', 'under-bust', 'waist', 'hem'])
      expect(girth(after, level)).toBeCloseTo(girth(before, level), 4);
    for (const gore of ['skirt side front', 'skirt side back']) {
      // Arcs of another lean each: they are drawn to a hundred-thousandth of a millimetre.
      expect(width(after, gore)).toBeCloseTo(width(before, gore) + 10, 5);
      expect(longer(after, gore, 'waist')).toBeCloseTo(0, 4);
      expect(longer(after, gore, 'hem')).toBeCloseTo(0, 4);
    }
    for (const gore of ['skirt centre front', 'skirt centre back'])
      expect(width(after, gore)).toBeCloseTo(width(before, gore), 6);
    const text = `hip: finished girth ${Math.round(girth(before, 'hip') + 40)} mm`;
    expect(pieceOf(after, 'skirt side front').lines[0]).toMatchObject({ text });
  });

  it('at the blade redraws the back princess seam, whose foot stays within a millimetre, and no other', () => {
    const after = fitted({ 'take in': 'back princess seam', level: 'bust', by: 0.8 });
    for (const piece of ['centre back', 'side back']) {
      expect(Math.abs(longer(after, piece, 'waist'))).toBeLessThan(1);
      expect(longer(after, piece, 'princess')).not.toBeCloseTo(0, 2);
    }
    expect(longer(after, 'side back', 'side')).toBeCloseTo(0, 6);
    expect(armhole(after, 'back')).toBeCloseTo(armhole(before, 'back'), 1);
    expect(Math.abs(longer(after, 'side front', 'princess lower'))).toBeLessThan(elsewhere);
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
  const dart = (of: Evaluation): number => figureOf(of, 'bust dart angle');
  const foldToUnderarm = (of: Evaluation): number => {
    const { front } = drawnOn(of).foundation;
    return distance(front.closed(front.across), front.side.underarm);
  };

  it('from the armhole brings the fold of the arm nearer to the underarm by the amount', () => {
    const after = fitted({ 'wedge from armhole': 1 });
    expect(foldToUnderarm(after) - foldToUnderarm(before)).toBeCloseTo(-10, 6);
    expect(armhole(after, 'front') - armhole(before, 'front')).toBeLessThan(-8);
    expect(armhole(after, 'front') - armhole(before, 'front')).toBeGreaterThan(-14);
    expect(longer(after, 'insert', 'neckline')).toBeCloseTo(0, 4);
  });

  it('from the neckline shortens the neckline, gathers counted, and leaves the armhole', () => {
    const after = fitted({ 'wedge from neckline': 1 });
    const halfBefore = edgeStart(edgeOf(before, 'side front', 'strap'));
    expect(longer(after, 'insert', 'neckline')).toBeLessThan(-20);
    expect(armhole(after, 'front')).toBeCloseTo(armhole(before, 'front'), 4);
    expect(distance(halfBefore, edgeStart(edgeOf(after, 'side front', 'strap')))).toBeCloseTo(0, 6);
  });

  it('of either kind adds to the bust dart', () => {
    for (const edge of ['neckline', 'armhole'])
      expect(dart(fitted({ [`wedge from ${edge}`]: 1 }))).toBeGreaterThan(dart(before) + 2);
  });
});

describe('straps and shoulder', () => {
  const halves = ['front', 'back'] as const;
  /** From the corner of the neckline straight to the shoulder, on one part of the strap. */
  const inner = (of: Evaluation, half: (typeof halves)[number]): number => {
    const edge = edgeOf(of, `${half} strap`, 'inner');
    return distance(edgeStart(edge), edgeEnd(edge));
  };
  /** How much longer both edges of one part of the strap are than before the fitting. */
  const edges = (after: Evaluation, half: (typeof halves)[number]): readonly number[] => [
    longer(after, `${half} strap`, 'inner'),
    armhole(after, half) - armhole(before, half),
  ];

  it.each([
    ['shorten strap', -1],
    ['lengthen strap', 1],
  ])('a %s moves each end of the strap along it by half the amount, before and behind', (kind, sign) => {
    const after = fitted({ [kind]: 1 });
    for (const half of halves) {
      expect(inner(after, half) - inner(before, half)).toBeCloseTo(sign * 5, 6);
      expect(longer(after, `${half} strap`, 'shoulder')).toBeCloseTo(0, 6);
      for (const edge of edges(after, half)) expect(Math.abs(edge - sign * 5)).toBeLessThan(0.3);
    }
  });

  it('move the shoulder forward on strap and sleeve, and leave the strap as long', () => {
    const after = fitted({ 'forward shoulder': 1 });
    expect(inner(after, 'front') - inner(before, 'front')).toBeCloseTo(-10, 6);
    expect(inner(after, 'back') - inner(before, 'back')).toBeCloseTo(10, 6);
    const [front, back] = halves.map((half) => edges(after, half));
    for (const [i, edge] of (front ?? []).entries()) {
      expect(Math.abs(edge + 10)).toBeLessThan(0.3);
      expect(Math.abs(edge + (back?.[i] ?? Number.NaN))).toBeLessThan(0.3);
    }
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
    for (const edge of ['princess upper', 'princess lower', 'side'])
      expect(Math.abs(longer(after, 'side front', edge))).toBeLessThan(elsewhere);
    expect(armhole(after, 'front')).toBeCloseTo(armhole(before, 'front'), 4);
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
    for (const half of ['front', 'back'] as const)
      expect(armhole(after, half)).toBeCloseTo(armhole(before, half), 4);
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
    { 'let out': 'back princess seam', level: 'bust', by: 0.3 },
    { 'let out': 'side seam', level: 'hip', by: 0.5 },
    { 'lower bust point': 0.8 },
    { 'wedge from neckline': 0.6 },
    { 'wedge from armhole': 0.5 },
    { 'wedge from back neckline': 0.6 },
    { 'wedge from back armhole': 0.5 },
    { 'shorten strap': 0.6 },
    { 'forward shoulder': 0.8 },
    { 'round back': 0.8 },
    { 'broad back': 0.8 },
    { 'sway back': 0.8 },
    { 'sway back in skirt': 0.8 },
    { 'more upper arm': 1 },
  ];

  it('of many changes keeps every check true, for every body that ships', () => {
    for (const name of shippedBodies) {
      const body = shippedBody(name);
      const { report } = drafted('dress', { ...body, fitting: inUnitsOf(body, many) });
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
