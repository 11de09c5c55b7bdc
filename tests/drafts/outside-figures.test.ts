import { describe, expect, it } from 'vitest';
import { bodiceRules } from '../../drafts/bodice/rules.ts';
import { edgeEnd, edgeLength, edgeStart } from '../../engine/geometry/edge.ts';
import { distance } from '../../engine/geometry/point.ts';
import misses from '../../measurements/astm-d5585-misses.json' with { type: 'json' };
import { people } from '../engine/body/people.ts';
import { drafted, edgeOf, figureOf, shippedBody } from './drafted.ts';
import { evaluated } from './points.ts';

/** Errors of a dress for body data, in a line each. */
const errors = (body: unknown): readonly string[] => {
  const result = evaluated('dress', body);
  const issues = result.ok ? result.value.report.issues : result.issues;
  return issues
    .filter((issue) => issue.severity === 'error')
    .map((issue) => `${issue.path}: ${issue.message}`);
};

describe('bodies published elsewhere draft true', () => {
  it('every size of ASTM D5585-11e1, curvy and straight, size 0 with its chest larger than its bust among them', () => {
    const { rows } = misses;
    for (const [i, size] of misses.sizes.entries()) {
      for (const waist of [rows.waistGirthCurvy, rows.waistGirthStraight]) {
        const body = {
          name: `size ${size}`,
          units: 'in',
          neckBaseGirth: rows.neckBaseGirth[i],
          bustGirth: rows.bustGirth[i],
          underBustGirth: rows.underBustGirth[i],
          upperChestGirth: rows.upperChestGirth[i],
          waistGirth: waist[i],
          // The hip row was not readable; bust + 2.5 in and 16 in are the usual proportion of such charts, from memory.
          hipGirth: (rows.bustGirth[i] ?? 0) + 2.5,
          backNeckPointToWaist: 16,
        };
        expect(errors(body), `size ${size}`).toEqual([]);
      }
    }
  });

  it('the twelve whole women of the Royal Australian Navy survey, 2015', () => {
    for (const { id, ...sizes } of people) {
      const body = { name: `woman ${id}`, units: 'mm', ...sizes, backNeckPointToWaist: sizes.stature / 4 };
      expect(errors(body), `woman ${id}`).toEqual([]);
    }
  });

  it('women at the 5th and the 95th percentile of the 1988 and 2012 US Army surveys', () => {
    // NATICK/TR-89/044 (under-bust, scye depth, natural back waist), NATICK/TR-15/007 (the others), cm.
    const small = { stature: 152.5, bustGirth: 82.4, hipGirth: 90.1, neckBaseGirth: 34, shoulderLength: 12 };
    const large = {
      stature: 174,
      bustGirth: 109.4,
      hipGirth: 115.6,
      neckBaseGirth: 40.5,
      shoulderLength: 15.3,
    };
    const natural = (waistGirth: number, more: object) => ({ units: 'cm', waistGirth, ...more });
    expect(
      errors(
        natural(63, {
          name: 'p5',
          ...small,
          underBustGirth: 69.6,
          scyeDepth: 16.27,
          backNeckPointToWaist: 32.73,
        }),
      ),
    ).toEqual([]);
    expect(
      errors(
        natural(90, {
          name: 'p95',
          ...large,
          underBustGirth: 86.3,
          scyeDepth: 21.04,
          backNeckPointToWaist: 40.98,
        }),
      ),
    ).toEqual([]);
  });
});

describe('the bust dart turned into the princess seam', () => {
  const dress = drafted('dress', shippedBody('leading-lady'));
  const dart = figureOf(dress, 'bust dart angle');

  it('has the intake at the side that chord, leg and angle give: 2 leg sin(angle / 2) (closed form)', () => {
    // Front length 465, back length 405 + rise, both of the demo body; the hang is a rule of the draft.
    const { size } = dress.body;
    const rise = (size.neckBaseGirth / 6 + 5) / 3;
    const intake =
      size.neckShoulderPointToWaist - size.backNeckPointToWaist - rise + bodiceRules.frontHang.value;
    const bust = edgeOf(dress, 'side front', 'princess upper').curves[0];
    if (!bust) throw new Error('no princess edge');
    const widthAtBust =
      (size.bustGirth + 60) / 4 + (size.bustGirth - size.underBustGirth - bodiceRules.cupInBoth.value) / 4;
    const leg = widthAtBust - bust.to.x;
    expect(2 * leg * Math.sin((dart * Math.PI) / 360)).toBeCloseTo(intake, 6);
  });

  it('keeps the distance of the strap end from the bust point: pivoting is a rotation', () => {
    const upper = edgeOf(dress, 'side front', 'princess upper');
    const pivot = upper.curves[0]?.to;
    const end = edgeEnd(upper);
    if (!pivot) throw new Error('no princess edge');
    const height = figureOf(dress, 'insert top above the bust point');
    const across = 1.12 * (dress.body.size.bustPointWidth / 2) - pivot.x;
    expect(distance(pivot, end)).toBeCloseTo(Math.hypot(across, height), 6);
  });

  it('lies in the bands a pattern cutter expects for the cups A to E, and grows with each (common practice, from memory)', () => {
    const bands = { A: [10, 18], B: [14, 24], C: [14, 24], D: [20, 34], E: [20, 34] } as const;
    let before = 0;
    for (const [cup, [low, high]] of Object.entries(bands)) {
      const dressOfCup = drafted('dress', {
        name: cup,
        units: 'cm',
        bustGirth: 92,
        waistGirth: 74,
        hipGirth: 99,
        backNeckPointToWaist: 40.5,
        stature: 167,
        cup,
      });
      const angle = figureOf(dressOfCup, 'bust dart angle');
      expect(angle, cup).toBeGreaterThanOrEqual(low);
      expect(angle, cup).toBeLessThanOrEqual(high);
      expect(angle).toBeGreaterThan(before);
      before = angle;
    }
  });
});

describe('the gored skirt', () => {
  const dress = drafted('dress', shippedBody('leading-lady'));
  const gores = ['skirt centre front', 'skirt side front', 'skirt side back', 'skirt centre back'] as const;

  it('adds 2 n e to the hem for a flare of e on each of 2 n edges (gore arithmetic, closed form)', () => {
    const hem = gores.reduce((sum, gore) => sum + 2 * edgeLength(edgeOf(dress, gore, 'hem')), 0);
    const hip = dress.report.girths.find((girth) => girth.level === 'hip')?.finished ?? 0;
    // 12 shaped edges around the body, each flaring by the same amount: 1.7 times the hip at the hem.
    expect(hem).toBeCloseTo(1.7 * hip, 4);
  });

  it('has hems that are arcs of a cone: length = angle times radius (closed form)', () => {
    const hem = edgeOf(dress, 'skirt side front', 'hem');
    const chord = distance(edgeStart(hem), edgeEnd(hem));
    const seam = edgeOf(dress, 'skirt side front', 'side');
    const below = seam.curves.at(-1);
    if (!below) throw new Error('no seam');
    const lean = Math.atan2(below.to.x - below.from.x, below.to.y - below.from.y);
    const radius = chord / 2 / Math.sin(lean);
    expect(edgeLength(hem)).toBeCloseTo(2 * lean * radius, 3);
  });
});
