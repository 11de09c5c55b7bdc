import { describe, expect, it } from 'vitest';
import { garments } from '../../../drafts/garments.ts';
import type { Body } from '../../../engine/body/body.ts';
import { changeWords, type FittingChange } from '../../../engine/body/fitting.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import type { Findings } from '../../../engine/wear/findings.ts';
import { type Judged, judged } from '../../../engine/wear/judged.ts';
import { fittedFurther, proposed } from '../../../engine/wear/proposed.ts';

function bodice(styling: Record<string, unknown>, more: object = {}): { garment: Garment; body: Body } {
  const draft = garments.find(({ name }) => name === 'bodice');
  const body = {
    units: 'cm',
    bustGirth: 92,
    underBustGirth: 75,
    waistGirth: 74,
    hipGirth: 99,
    backNeckPointToWaist: 40.5,
    neckShoulderPointToBustPoint: 27.5,
    bustPointWidth: 19,
    ...more,
  };
  const made = draft && evaluate(draft, body, styling);
  if (!made?.ok) throw new Error('not drafted');
  return made.value;
}

const strapped = bodice({});

/** A bodice that sits as it should. */
const well: Findings = {
  ease: [
    { level: 'bust', worn: 30, drafted: 50 },
    { level: 'under-bust', worn: 35, drafted: 40 },
    { level: 'waist', worn: 25, drafted: 30 },
  ],
  waistLevel: ['centre front', 'front princess seam', 'side seam', 'back princess seam', 'centre back'].map(
    (at, i) => ({ at, above: 8 - 2 * i }),
  ),
  bustPoint: { across: 0, up: 0 },
  side: { atWaist: 3, lean: -1 },
  strain: [
    { grain: 'weft', most: 0.01, over: 0.01 },
    { grain: 'warp', most: 0.01, over: 0.01 },
  ],
  pressure: 1,
  gaps: [{ edge: 'neckline outside the bust points', most: 8, mean: 3, longer: 2 }],
};

const withEase = (level: string, more: number): Findings => ({
  ...well,
  ease: well.ease.map((ease) => (ease.level === level ? { ...ease, worn: ease.worn + more } : ease)),
});

const raised = (rise: (at: string) => number): Findings => ({
  ...well,
  waistLevel: well.waistLevel.map(({ at, above }) => ({ at, above: above + rise(at) })),
});

const told = (findings: readonly Judged[]): readonly string[] =>
  findings.flatMap(({ change }) => (change ? [`${changeWords(change)} by ${change.mm}`] : []));

const beside = (found: Findings): readonly Judged[] => judged(strapped.garment, found, strapped.body, well);

describe('a finding in a fitting’s words', () => {
  it('is none where a garment sits as on its owner, or as it should', () => {
    expect(beside(well).every(({ verdict }) => verdict === 'well')).toBe(true);
    const alone = judged(strapped.garment, well, strapped.body, undefined);
    expect(alone.every(({ verdict }) => verdict === 'well')).toBe(true);
  });

  // Common practice, no source: what is loose is taken in where it is, a quarter on each layer of both sides.
  it.each([
    ['under-bust', 48, 'take in the front princess seam at the under-bust by 12'],
    ['under-bust', -36, 'let out the front princess seam at the under-bust by 9'],
    ['waist', 40, 'take in the side seam at the waist by 10'],
    ['waist', -40, 'let out the side seam at the waist by 10'],
    ['bust', 40, 'take in the side seam at the bust by 10'],
    ['bust', -40, 'let out the side seam at the bust by 10'],
  ])('of %s ease that is %d mm more is to %s', (level, more, words) => {
    expect(told(beside(withEase(level, more)))).toEqual([words]);
  });

  it.each([
    [15, 'lower bust point by 15'],
    [-15, 'raise bust point by 15'],
  ])('of a bust point %d mm above hers is to %s', (up, words) => {
    expect(told(beside({ ...well, bustPoint: { across: 0, up } }))).toEqual([words]);
  });

  it('of a waist that hangs high or low all round is of straps, twice as much', () => {
    expect(told(beside(raised(() => 13)))).toEqual(['lengthen strap by 26']);
    expect(told(beside(raised(() => -13)))).toEqual(['shorten strap by 26']);
    const whole = bodice({ shoulder: 'whole', front: 'plain' });
    expect(
      told(
        judged(
          whole.garment,
          raised(() => 13),
          whole.body,
          well,
        ),
      ),
    ).toEqual([]);
  });

  // Common practice, no source: a back that is too long for its front is pinned out above the waist.
  it('of a waist that rises towards the front is of a sway back, and unsure without an owner: it rests on an assumed posture', () => {
    const front = raised((at) => (at === 'centre front' ? 6 : at === 'centre back' ? -6 : 0));
    const verdict = (own: Findings | undefined) =>
      judged(strapped.garment, front, strapped.body, own).find(({ finding }) => /in front/.test(finding));
    expect(verdict(well)).toMatchObject({
      verdict: 'perhaps',
      restsOn: 'assumed posture',
      change: { kind: 'sway back', mm: 16 },
    });
    const back = raised((at) => (at === 'centre front' ? -30 : at === 'centre back' ? 30 : 0));
    expect(told(judged(strapped.garment, back, strapped.body, well))).toEqual([]);
    const much = raised((at) => (at === 'centre front' ? 30 : at === 'centre back' ? -30 : 0));
    const [beside, alone] = [well, undefined].map(
      (own) =>
        judged(strapped.garment, much, strapped.body, own).find(({ finding }) => /in front/.test(finding))
          ?.verdict,
    );
    // Beside nobody it may be the form’s posture as well, however much it is.
    expect([beside, alone]).toEqual(['off', 'perhaps']);
  });

  // Common practice, no source: what an edge is too long by is pinned out of it.
  it.each([['front armhole', 'wedge from armhole by 9']] as const)(
    'of a %s that stands off is to %s: as much as it is longer',
    (edge, words) => {
      const standing = (most: number, longer: number): Findings => ({
        ...well,
        gaps: [{ edge, most, mean: most / 2, longer }],
      });
      const { garment, body } = bodice({ shoulder: 'whole', front: 'plain' });
      expect(told(judged(garment, standing(30, 12), body, standing(4, 3)))).toEqual([words]);
      expect(told(judged(garment, standing(30, 2), body, standing(4, 3)))).toEqual([]);
    },
  );

  it('is none of a neckline between the bust points, which spans a hollow', () => {
    const gaps = [{ edge: 'neckline between the bust points', most: 50, mean: 30, longer: 20 }] as const;
    expect(beside({ ...well, gaps }).every(({ verdict }) => verdict === 'well')).toBe(true);
  });

  it('is none of an edge that lies closer than on the owner, nor of less strain', () => {
    const closer: Findings = {
      ...well,
      gaps: well.gaps.map((gap) => ({ ...gap, most: 0 })),
      strain: well.strain.map((strain) => ({ ...strain, most: -0.05 })),
    };
    const owner: Findings = { ...well, gaps: well.gaps.map((gap) => ({ ...gap, most: 60 })) };
    for (const { verdict } of judged(strapped.garment, closer, strapped.body, owner))
      expect(verdict).toBe('well');
    expect(judged(strapped.garment, owner, strapped.body, well).map(({ verdict }) => verdict)).toContain(
      'off',
    );
  });

  it('never goes beyond what a fitting takes', () => {
    expect(told(beside(withEase('under-bust', 300)))).toEqual([
      'take in the front princess seam at the under-bust by 25',
    ]);
  });

  it('is less sure where the measurement behind it was estimated', () => {
    const estimated = bodice({}, { underBustGirth: undefined });
    const within = (body: Body): number =>
      judged(strapped.garment, well, body, well).find(({ finding }) => finding === 'ease at the under-bust')
        ?.within ?? 0;
    expect(within(estimated.body)).toBeGreaterThan(within(strapped.body) + 5);
  });

  it('is proposed only where there is no doubt', () => {
    const doubtful = beside(withEase('waist', 15));
    expect(doubtful.map(({ verdict }) => verdict)).toContain('perhaps');
    expect(proposed(doubtful)).toEqual([]);
    expect(proposed(beside(withEase('waist', 40))).length).toBe(1);
  });
});

describe('a fitting with more found', () => {
  const waist = (kind: 'take in' | 'let out', mm: number): FittingChange => ({
    kind,
    seam: 'side seam',
    level: 'waist',
    mm,
  });
  const round: FittingChange = { kind: 'round back', mm: 10 };

  it('adds up what is alike, to the most there may be, and keeps the rest', () => {
    expect(fittedFurther([round, waist('take in', 5)], [waist('take in', 8)])).toEqual([
      round,
      waist('take in', 13),
    ]);
    expect(fittedFurther([waist('take in', 20)], [waist('take in', 20)])).toEqual([waist('take in', 25)]);
  });

  it('takes what undoes each other from each other', () => {
    expect(fittedFurther([waist('let out', 5)], [waist('take in', 8)])).toEqual([waist('take in', 3)]);
    expect(fittedFurther([waist('let out', 8)], [waist('take in', 5)])).toEqual([waist('let out', 3)]);
    expect(fittedFurther([round, waist('let out', 5)], [waist('take in', 5)])).toEqual([round]);
  });
});
