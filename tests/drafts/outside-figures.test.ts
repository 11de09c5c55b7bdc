import { describe, expect, it } from 'vitest';
import { foundationRules } from '../../drafts/foundation/rules.ts';
import type { Evaluation } from '../../engine/evaluate.ts';
import { edgeEnd, edgeLength, edgeStart } from '../../engine/geometry/edge.ts';
import { distance } from '../../engine/geometry/point.ts';
import misses from '../../measurements/astm-d5585-misses.json' with { type: 'json' };
import { people } from '../engine/body/people.ts';
import { drafted, edgeOf, figureOf, pieceOf, placedOn, shippedBody } from './drafted.ts';
import { evaluated } from './points.ts';

/** What a step of the construction came to, in mm or radians. */
function stepOf({ garment }: Evaluation, title: string): number {
  const value = garment.steps.find((step) => step.title === title)?.value;
  if (value === undefined) throw new Error(`no number in step ${title}`);
  return value;
}

/** Errors of a garment for body data, in a line each. */
const errors = (body: unknown, garment = 'dress'): readonly string[] => {
  const result = evaluated(garment, body);
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
        for (const garment of ['dress', 'trial'])
          expect(errors(body, garment), `size ${size}, ${garment}`).toEqual([]);
      }
    }
  });

  it('the twelve whole women of the Royal Australian Navy survey, 2015', () => {
    for (const { id, ...sizes } of people) {
      const body = { name: `woman ${id}`, units: 'mm', ...sizes, backNeckPointToWaist: sizes.stature / 4 };
      for (const garment of ['dress', 'trial'])
        expect(errors(body, garment), `woman ${id}, ${garment}`).toEqual([]);
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
  const lady = shippedBody('leading-lady');
  const [dress, block] = [drafted('dress', lady), drafted('trial', lady)];

  it.each([dress, block].map((made) => [made.garment.name, made] as const))(
    'has the intake at the side that chord, leg and angle give: 2 leg sin(angle / 2) (closed form): %s',
    (_, made) => {
      // Front length 465, back length 405 + rise, both of the demo body; the hang is a rule of the draft.
      const { size } = made.body;
      const rise = (size.neckBaseGirth / 6 + 5) / 3;
      const intake =
        size.neckShoulderPointToWaist - size.backNeckPointToWaist - rise + foundationRules.frontHang.value;
      // From the princess line to the side seam along the bust level, as it is drawn on the side front.
      const level = pieceOf(made, 'side front').lines.find(({ name }) => name === 'bust level');
      const leg = edgeLength(level ?? { name: 'none', curves: [] });
      expect(2 * leg * Math.sin(stepOf(made, 'Bust dart angle') / 2)).toBeCloseTo(intake, 6);
    },
  );

  /** From where the princess edge of the side front crosses the bust level to its top. */
  const pivotToTop = (made: Evaluation): number => {
    const upper = edgeOf(made, 'side front', 'princess upper');
    const pivot = upper.curves[0]?.to;
    if (!pivot) throw new Error('no princess edge');
    return distance(pivot, edgeEnd(upper));
  };

  it('keeps the distance of the strap end from the bust point: pivoting is a rotation', () => {
    const pivot = placedOn(dress, 'front', 'princess line at bust level');
    const corner = placedOn(dress, 'front', 'corner of the front neckline');
    expect(pivotToTop(dress)).toBeCloseTo(distance(pivot, corner), 9);
    expect(pivot.y - corner.y).toBeCloseTo(figureOf(dress, 'neckline above the bust point'), 9);
  });

  it('keeps the distance of the shoulder from the bust point, on the centre front, which does not turn, and on the side', () => {
    const centre = edgeOf(block, 'centre front', 'princess upper');
    const level = pieceOf(block, 'centre front').lines.find(({ name }) => name === 'bust level');
    const pivot = level && edgeEnd(level);
    expect(pivot && distance(pivot, edgeStart(centre))).toBeCloseTo(pivotToTop(block), 6);
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
