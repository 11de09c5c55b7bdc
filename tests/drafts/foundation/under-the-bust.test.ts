import { describe, expect, it } from 'vitest';
import { foundationRules } from '../../../drafts/foundation/rules.ts';
import { garments } from '../../../drafts/index.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import { bodyForm } from '../../../engine/form/body-form.ts';
import { distance } from '../../../engine/geometry/point.ts';
import { bodyGrid } from '../../plausible-bodies.ts';
import { drafted, placedOn, shippedBodies, shippedBody, stepOf } from '../drafted.ts';

const bodies: readonly (readonly [name: string, body: unknown])[] = [
  ...shippedBodies.map((name) => [name, shippedBody(name)] as const),
  ...bodyGrid()
    .filter((_, i) => i % 53 === 0)
    .map((body) => [String(body.name), body] as const),
];

/** How far forward (z, mm) a form's surface lies at a place in front, by the point of it that is nearest to that. */
function forwardAt(points: Float64Array, x: number, y: number): number {
  let [nearest, forward] = [Number.POSITIVE_INFINITY, Number.NaN];
  for (let i = 0; i < points.length; i += 3) {
    const off = Math.hypot((points[i] ?? 0) - x, (points[i + 1] ?? 0) - y);
    const z = points[i + 2] ?? 0;
    if (z > 0 && off < nearest) [nearest, forward] = [off, z];
  }
  return forward;
}

describe('the front under the bust', () => {
  it.each(bodies)(
    'reaches down the breast to its lower edge on the form, or as low as it may: %s',
    (_, body) => {
      const made = drafted('trial', body);
      const { landmarks, levels, surface } = bodyForm(made.body);
      const pivot = placedOn(made, 'front', 'princess line at bust level');
      const foot = placedOn(made, 'front', 'side front panel under the bust');
      const [x, y, z] = landmarks.bustPoint;
      const below = levels.bust - levels.underBust;
      // Straight to the edge of the breast beneath the princess line, which runs a fifth nearer to the centre there.
      const [side, depth] = [0.82 * x, forwardAt(surface.points, 0.82 * x, y - below)];
      const breast = Math.hypot(x - side, below, z - depth);
      const lowest = foundationRules.breastLowest.value * (stepOf(made, 'Waist level') - pivot.y);
      if (foot.y - pivot.y < lowest - 0.01) expect(distance(pivot, foot)).toBeGreaterThan(breast - 15);
    },
  );

  it.each(bodies)('keeps its width from the centre to the side seam: %s', (_, body) => {
    const made = drafted('trial', body);
    expect(made.report.ok).toBe(true);
  });

  it('is as the levels have it where a seam was chosen, and lower the fuller the breast', () => {
    const lady = shippedBody('leading-lady');
    const lower = (data: Record<string, unknown>, styling = {}): number => {
      const made = drafted('bodice', { ...lady, ...data }, styling);
      return placedOn(made, 'front', 'side front panel under the bust').y - stepOf(made, 'Bust level');
    };
    expect(lower({}, { underBustDrop: 70 })).toBeCloseTo(70, 9);
    const cups = [82, 78, 74, 70, 66].map((underBustGirth) => lower({ underBustGirth }));
    for (const [i, cup] of cups.entries()) expect(cup).toBeGreaterThanOrEqual(cups[i - 1] ?? 0);
    expect((cups.at(-1) ?? 0) - (cups[0] ?? 0)).toBeGreaterThan(10);
  });

  // A full breast on narrow ribs, much taken in at the princess seam: no slope leads from there to the side seam.
  it('is refused by the choice that leaves the side front no width to slope over', () => {
    const slight = { units: 'mm', bustGirth: 750, waistGirth: 618, hipGirth: 863, backNeckPointToWaist: 403 };
    const body = { ...slight, stature: 1650, cup: 'H' };
    for (const draft of [garments.trial, garments.bodice, garments.dress]) {
      const { ok, issues } = evaluate(draft, body, { waistEase: 76.2, princessOffset: 15.7 });
      expect(ok).toBe(false);
      expect(issues.map(({ code, path }) => [code, path])).toContainEqual([
        'styling-cannot-agree',
        'waistEase',
      ]);
    }
  });
});
