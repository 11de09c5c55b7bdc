import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bodyGrid, gridBody, gridCups } from '../../../engine/body/grid.ts';
import { readBody } from '../../../engine/body/read.ts';
import { bodyForm } from '../../../engine/form/body-form.ts';
import type { Form, Place } from '../../../engine/form/form.ts';
import { formRemarks } from '../../../engine/form/remarks.ts';
import { shippedBodies, shippedBody } from '../../drafts/drafted.ts';
import { plausibleBodies, plausibleBody } from '../../plausible-bodies.ts';
import { bodyOf, formOf } from './people.ts';

const missed = (form: Form) => form.report.tapes.filter(({ held }) => !held);

/** The length of a line of places, closed or not. */
const lengthOf = (points: readonly Place[], closed: boolean): number =>
  points.reduce((sum, [x, y, z], i) => {
    const before = i === 0 ? (closed ? points.at(-1) : undefined) : points[i - 1];
    return before ? sum + Math.hypot(x - before[0], y - before[1], z - before[2]) : sum;
  }, 0);

describe('tapes on a form', () => {
  test.each(shippedBodies)('give back every measurement of the %s', (name) => {
    const form = formOf(name);
    for (const { measurement, given, taken, bound } of form.report.tapes) {
      expect(Math.abs(taken - given), measurement).toBeLessThan(bound);
      expect(bound).toBe(/Girth$/.test(measurement) ? 0.5 : 2);
    }
    expect(form.report.tapes).toHaveLength(17);
  });

  test.each(shippedBodies)('lie where they are drawn, as long as they say, for the %s', (name) => {
    // The side is not in a plane; where the tape leaves it the chord is a little shorter than the way along it.
    for (const { points, closed, length } of formOf(name).tapes)
      expect(lengthOf(points, closed)).toBeCloseTo(length, 6);
  });

  test('give back measurements from cup AA to H at one girth, and the cup stands out as much more', () => {
    const forms = gridCups.map((cup) => bodyForm(bodyOf(gridBody(920, cup, 1650))));
    expect(forms.flatMap(missed)).toEqual([]);
    const beyond = forms.map(({ landmarks, levels: { underBust }, tapes }) => {
      const ribs = tapes.find(({ measurement }) => measurement === 'underBustGirth')?.points[0]?.[2] ?? 0;
      expect(landmarks.bustPoint[1]).toBeGreaterThan(underBust);
      return landmarks.bustPoint[2] - ribs;
    });
    for (const [i, out] of beyond.slice(1).entries()) expect(out).toBeGreaterThan(beyond[i] ?? 0);
  });

  test('give back measurements all over the grid of bodies, but for a few that are said', () => {
    const bodies = bodyGrid().filter((_, i) => i % 24 === 5);
    const wrong = bodies.filter((data) => missed(bodyForm(bodyOf(data))).length > 0);
    expect(wrong.length).toBeLessThanOrEqual(1);
  });

  test('give back measurements of women of the survey', () => {
    for (const data of plausibleBodies(8)) expect(missed(bodyForm(bodyOf(data)))).toEqual([]);
  });

  test('give back measurements of nearly anybody, each somewhat off', () => {
    let [asked, wrong] = [0, 0];
    for (const data of fc.sample(plausibleBody, { numRuns: 12, seed: 11 })) {
      const read = readBody(data);
      if (!read.ok) continue;
      asked++;
      if (missed(bodyForm(read.value)).length > 0) wrong++;
    }
    expect(asked).toBeGreaterThan(8);
    expect(wrong).toBeLessThanOrEqual(1);
  });

  test('that no form can give back are said with what they read', () => {
    const real = bodyOf(shippedBody('leading-lady'));
    const body = { ...real, size: { ...real.size, acrossFrontWidth: 640 } };
    const form = bodyForm(body);
    const remarks = formRemarks(form, body);
    expect(remarks.map(({ code }) => code)).toContain('form-misses-measurement');
    for (const { path, message } of remarks)
      expect(
        missed(form).some(({ measurement }) => measurement === path),
        message,
      ).toBe(true);
  });
});

describe('a form', () => {
  test.each(shippedBodies)('of the %s has its landmarks where they belong', (name) => {
    const { landmarks: mark, levels } = formOf(name);
    const heights = [
      mark.backNeckPoint,
      mark.shoulderPoint,
      mark.underarmPoint,
      mark.bustPoint,
      mark.waistSide,
      mark.hipSide,
      mark.crotch,
    ];
    for (const [i, place] of heights.slice(1).entries()) expect(place[1]).toBeLessThan(heights[i]?.[1] ?? 0);
    expect(mark.frontNeckPoint[1]).toBeLessThan(mark.neckShoulderPoint[1]);
    for (const place of [
      mark.backNeckPoint,
      mark.frontNeckPoint,
      mark.waistCentreFront,
      mark.waistCentreBack,
    ])
      expect(place[0]).toBe(0);
    for (const place of [mark.bustPoint, mark.shoulderPoint, mark.underarmPoint, mark.wristPoint])
      expect(place[0]).toBeGreaterThan(0);
    for (const waist of [mark.waistCentreFront, mark.waistPrincess, mark.waistSide, mark.waistCentreBack])
      expect(waist[1]).toBeCloseTo(levels.waist, 9);
    expect(mark.waistPrincess[0]).toBeCloseTo(mark.bustPoint[0], 6);
  });

  // Judgement: a survey's conditional means, with what they spread by, say where nine in ten or more lie.
  test.each(shippedBodies)(
    'of the %s is as broad and as deep as the survey expects, within four of its spreads',
    (name) => {
      for (const { name: section, taken, expected, spread } of formOf(name).report.sections)
        expect(Math.abs(taken - expected) / spread, section).toBeLessThan(4.2);
    },
  );

  test.each(shippedBodies)('of the %s stands as nine women in ten do', (name) => {
    for (const { name: choice, value, likely } of formOf(name).report.assumed) {
      if (!likely) continue;
      const room = (likely[1] - likely[0]) / 2;
      expect(value, choice).toBeGreaterThan(likely[0] - room);
      expect(value, choice).toBeLessThan(likely[1] + room);
    }
  });

  test('mirrors itself', () => {
    const { surface } = formOf('leading-lady');
    for (const { name, firstPoint, points } of surface.parts) {
      const other = surface.parts.find(
        (part) => part.name === name.replace(/^(left|right)/, (side) => (side === 'left' ? 'right' : 'left')),
      );
      const places = new Set<string>();
      const key = (x: number, i: number): string =>
        [x + 0, surface.points[i + 1] ?? 0, surface.points[i + 2] ?? 0]
          .map((value) => value.toFixed(9))
          .join(' ');
      for (let i = firstPoint; i < firstPoint + points; i++)
        places.add(key(-(surface.points[3 * i] ?? 0), 3 * i));
      const from = other?.firstPoint ?? 0;
      for (let i = from; i < from + (other?.points ?? 0); i++)
        expect(places.has(key(surface.points[3 * i] ?? 0, 3 * i))).toBe(true);
    }
  });

  test('is the same to the last bit for the same body, and plain data', () => {
    const body = bodyOf(shippedBody('stage-manager'));
    const [first, second] = [bodyForm(body), bodyForm(body)];
    expect(second).toEqual(first);
    expect(structuredClone(first)).toEqual(first);
  });

  test('stands as it is chosen to, and still gives back its measurements', () => {
    const chosen = { backHollow: 45, lean: -4, napeForward: 44, shoulderForward: 16, armRise: 45 } as const;
    const form = bodyForm(bodyOf(shippedBody('leading-lady')), chosen);
    expect(missed(form)).toEqual([]);
    for (const { name, value, how } of form.report.assumed) {
      if (!(name in chosen)) continue;
      expect(value).toBe(chosen[name as keyof typeof chosen]);
      expect(how).toBe('chosen');
    }
    const hanging = formOf('leading-lady');
    expect(form.landmarks.wristPoint[1]).toBeGreaterThan(hanging.landmarks.wristPoint[1] + 100);
    expect(form.landmarks.wristPoint[0]).toBeGreaterThan(hanging.landmarks.wristPoint[0] + 200);
  });

  test('of a child says that it is built like a woman', () => {
    const data = {
      units: 'cm',
      bustGirth: 70,
      waistGirth: 60,
      hipGirth: 74,
      backNeckPointToWaist: 31,
      stature: 135,
      age: 10,
    };
    const body = bodyOf(data);
    expect(formRemarks(bodyForm(body), body).map(({ code }) => code)).toContain('form-of-a-child');
  });
});
