import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fittedLevels,
  fittedSeams,
  mostAtSeam,
  oneSided,
  type PlainChange,
  plainChangeNames,
  plainChanges,
} from '../../engine/body/fitting.ts';
import { type Side, sides } from '../../engine/body/side.ts';
import type { Evaluation } from '../../engine/evaluate.ts';
import { edgeEnd, edgeLength, edgeStart } from '../../engine/geometry/edge.ts';
import { distance, type Point } from '../../engine/geometry/point.ts';
import { surveyBody } from '../plausible-bodies.ts';
import { drafted, edgeOf, pieceOf, shippedBodies, shippedBody } from './drafted.ts';
import { drawnOn } from './drawn-on.ts';
import { family, type Styled, styleNames } from './family.ts';
import { armhole, codes, girth, inUnitsOf } from './fitted.ts';
import { evaluated } from './points.ts';

type Changes = readonly Readonly<Record<string, unknown>>[];

/** A garment for the leading lady, fitted; lengths in her file are cm. */
const made = ([garment, styling]: Styled, ...fitting: Changes): Evaluation =>
  drafted(garment, { ...shippedBody('leading-lady'), fitting }, styling);

const errors = ({ report }: Evaluation): readonly string[] =>
  report.issues.filter(({ severity }) => severity === 'error').map(({ message }) => message);

/** Every seam at every level of a bodice. */
const places = fittedSeams.flatMap((seam) =>
  fittedLevels[seam].filter((level) => level !== 'hip').map((level) => ({ seam, level })),
);

/** What a seam pinned by 1 mm on each layer takes from a girth: a straight seam goes through its other levels. */
const layers = (seam: string): number => (seam === 'centre back seam' ? 2 : 4);

describe('the trial bodice, where she pins', () => {
  const trial: Styled = family['trial bodice'];
  const before = made(trial);

  it.each(places)('gives the $seam at the $level what was pinned there, and says so', ({ seam, level }) => {
    for (const [kind, sign] of [
      ['take in', -1],
      ['let out', 1],
    ] as const) {
      const after = made(trial, { [kind]: seam, level, by: 0.5 });
      expect(errors(after)).toEqual([]);
      expect(girth(after, level) - girth(before, level)).toBeCloseTo(sign * layers(seam) * 5, 4);
      expect(codes(after).filter((code) => code.startsWith('fitting-')).length).toBeGreaterThan(0);
    }
  });

  it('has no straps to shorten, and says that this changes nothing', () => {
    for (const change of ['shorten strap', 'lengthen strap']) {
      const after = made(trial, { [change]: 1 });
      expect(after.garment.pieces).toEqual(before.garment.pieces);
      expect(codes(after)).toContain('fitting-without-place');
    }
  });
});

describe.each(styleNames)('%s', (name) => {
  const style: Styled = family[name];

  it('has the girths that many seams together leave', () => {
    const taken = places.map(({ seam, level }, i) => ({ 'take in': seam, level, by: 0.1 * (1 + (i % 4)) }));
    const [before, after] = [made(style), made(style, ...taken)];
    expect(errors(after)).toEqual([]);
    for (const level of ['bust', 'waist']) {
      const at = taken.filter((change) => change.level === level);
      const sum = at.reduce((mm, change) => mm + 10 * change.by * layers(change['take in']), 0);
      // The centre back seam runs straight from the neck to the waist, and so takes its share at the bust too.
      const { bust, waist } = drawnOn(after).foundation.levels;
      const atWaist = taken.find((change) => change['take in'] === 'centre back seam')?.by ?? 0;
      const runsOn = level === 'bust' ? (20 * atWaist * bust.value) / waist.value : 0;
      expect(girth(before, level) - girth(after, level), level).toBeCloseTo(sum + runsOn, 4);
    }
  });

  it('keeps every check true for all that a back, a bust and an arm may need', () => {
    const needs = [
      { 'round back': 0.8 },
      { 'broad back': 0.8 },
      { 'sway back': 0.8 },
      { 'lower bust point': 0.6 },
      { 'wedge from neckline': 0.6 },
      { 'wedge from armhole': 0.5 },
      { 'wedge from back neckline': 0.6 },
      { 'wedge from back armhole': 0.5 },
      { 'forward shoulder': 0.6 },
      { 'shorten strap': 0.6 },
      { 'more upper arm': 0.5 },
    ];
    for (const woman of ['leading-lady', 'wardrobe-mistress', 'understudy']) {
      const body = shippedBody(woman);
      const after = drafted(style[0], { ...body, fitting: inUnitsOf(body, needs) }, style[1]);
      expect(errors(after), woman).toEqual([]);
    }
  });

  it('gets narrower at a gaping neckline by the amount, and keeps its shoulder as long', () => {
    for (const half of ['front', 'back'] as const) {
      const after = made(style, { [`wedge from ${half === 'back' ? 'back ' : ''}neckline`]: 1 });
      expect(errors(after)).toEqual([]);
      const corner = (of: Evaluation): Point => drawnOn(of).lines[half].corner;
      expect(corner(after).x - corner(made(style)).x).toBeCloseTo(-10, 6);
      expect(shoulders(after)).toHaveLength(shoulders(made(style)).length);
      for (const [i, mm] of shoulders(after).entries())
        expect(mm).toBeCloseTo(shoulders(made(style))[i] ?? Number.NaN, 6);
    }
  });
});

/** How long each edge at a shoulder is, mm. */
const shoulders = ({ garment }: Evaluation): readonly number[] =>
  garment.pieces.flatMap(({ edges }) => edges.filter(({ name }) => name === 'shoulder').map(edgeLength));

describe('a whole shoulder', () => {
  const whole = styleNames.filter((name) => (family[name] as Styled)[1]?.shoulder === 'whole');

  it.each(whole)(
    'that lies further forward turns about its neckline end, front and back alike: %s',
    (name) => {
      const style: Styled = family[name];
      const [before, after] = [made(style), made(style, { 'forward shoulder': 1 })];
      expect(errors(after)).toEqual([]);
      for (const half of ['front', 'back'] as const) {
        const [was, is] = [before, after].map((of) => drawnOn(of).lines[half].atCentre);
        if (!was || !is) throw new Error('not drawn');
        expect(distance(was.inner, is.inner)).toBeCloseTo(0, 9);
        expect(distance(was.outer, is.outer)).toBeCloseTo(10, 6);
        const longer = armhole(after, half) - armhole(before, half);
        expect(Math.abs(longer - (half === 'front' ? -10 : 10))).toBeLessThan(1.25);
      }
      for (const [i, mm] of shoulders(after).entries())
        expect(mm).toBeCloseTo(shoulders(before)[i] ?? Number.NaN, 6);
    },
  );

  it('moves the mark where a sleeve meets it', () => {
    const style: Styled = family['dress with plain sleeves'];
    const mark = (of: Evaluation): number =>
      pieceOf(of, 'sleeve').notches.find(({ name }) => name === 'shoulder')?.at ?? Number.NaN;
    const moved = mark(made(style, { 'forward shoulder': 1 })) - mark(made(style));
    // Of the 10 mm behind, what lies below the notch is sewn flat.
    expect(moved).toBeGreaterThan(7);
    expect(moved).toBeLessThan(10);
  });

  it('is refused by name where it would come to stand up', () => {
    const result = evaluated(
      'bodice',
      {
        ...shippedBody('leading-lady'),
        fitting: [{ 'lower shoulder': 3, side: 'left' }],
      },
      { shoulder: 'whole', front: 'plain', strapPosition: 60, strapWidth: 20 },
    );
    expect(result.ok).toBe(false);
    expect(result.issues.map(({ code }) => code)).toContain('fitting-too-much');
  });
});

describe('an armhole that gapes', () => {
  it('is pinned out of the panel at the side alone where the princess line begins at the armhole', () => {
    const style: Styled = family['princess from the armhole'];
    const [before, after] = [
      made(style),
      made(style, { 'wedge from armhole': 1 }, { 'wedge from back armhole': 1 }),
    ];
    expect(errors(after)).toEqual([]);
    for (const [panel, edge] of [
      ['centre front', 'shoulder'],
      ['centre back', 'shoulder'],
      ['centre front', 'neckline'],
    ] as const)
      expect(edgeLength(edgeOf(after, panel, edge))).toBeCloseTo(edgeLength(edgeOf(before, panel, edge)), 4);
    for (const half of ['front', 'back'] as const) {
      const fold = (of: Evaluation): number =>
        distance(
          edgeEnd(edgeOf(of, `side ${half}`, half === 'front' ? 'princess upper' : 'princess')),
          edgeStart(edgeOf(of, `side ${half}`, 'side')),
        );
      expect(fold(after) - fold(before)).toBeLessThan(-9);
      expect(fold(after) - fold(before)).toBeGreaterThan(-11);
    }
  });
});

const plainly = (kind: PlainChange, share: number, side: Side) => ({
  [kind]: share * plainChanges[kind].most,
  ...(oneSided[kind] ? { side } : {}),
});

/** Any change of a fitting, up to six tenths of the most there is, in mm. */
const change = fc
  .record({
    share: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
    side: fc.constantFrom(...sides),
    kind: fc.oneof(
      fc.constantFrom<PlainChange>(...plainChangeNames),
      fc.tuple(
        fc.constantFrom(...(['take in', 'let out'] as const)),
        fc.constantFrom(
          ...fittedSeams.flatMap((seam) => fittedLevels[seam].map((level) => ({ seam, level }))),
        ),
      ),
    ),
  })
  .map(({ share, side, kind }) =>
    typeof kind === 'string'
      ? plainly(kind, share, side)
      : { [kind[0]]: kind[1].seam, level: kind[1].level, by: share * mostAtSeam[kind[0]] },
  );

describe('any fitting of any of them', () => {
  /** What says by name that a fitting is too much, undoes itself, or would reach a piece that is cut whole. */
  const refusals = [
    'fitting-too-much',
    'fitting-contradicts',
    'fitting-not-one-sided',
    'fitting-cannot-agree',
  ];

  it('keeps every check true, or is refused by name', () => {
    const woman = fc.oneof(fc.integer({ min: 1, max: 5_000 }), fc.constantFrom(...shippedBodies));
    fc.assert(
      fc.property(
        woman,
        fc.constantFrom(...styleNames),
        fc.array(change, { minLength: 1, maxLength: 4 }),
        (who, name, fitting) => {
          const body = typeof who === 'number' ? surveyBody(who) : shippedBody(who);
          const [garment, styling]: Styled = family[name];
          const cm = fitting.map((one) =>
            Object.fromEntries(Object.entries(one).map(([k, v]) => [k, typeof v === 'number' ? v / 10 : v])),
          );
          const result = evaluated(garment, { ...body, fitting: inUnitsOf(body, cm) }, styling);
          if (result.ok) expect(errors(result.value)).toEqual([]);
          else if (evaluated(garment, body, styling).ok)
            expect(result.issues.some(({ code }) => refusals.includes(code))).toBe(true);
        },
      ),
      { numRuns: 40, endOnFailure: true },
    );
  });
});
