import { expect, it } from 'vitest';
import { byGore, goreNames, isHalf, seamsOf } from '../../../drafts/skirt/by-gore.ts';
import { skirt } from '../../../drafts/skirt/skirt.ts';
import { type Evaluation, evaluate } from '../../../engine/evaluate.ts';
import { bodyForm } from '../../../engine/form/body-form.ts';
import { edgeLength, pointAlong } from '../../../engine/geometry/edge.ts';
import { cutAt, tapeLength } from '../../../engine/wear/tape-round.ts';
import { plausibleBodies } from '../../plausible-bodies.ts';
import { drafted, edgeOf, pieceOf, shippedBodies, shippedBody } from '../drafted.ts';

/** From the waist to the hip in so many steps. */
const STEPS = 20;

/**
 * How wide the whole skirt lies flat at a share of the way from the waist to the hip, mm: across each gore, as an arc square to its
 * seams (sector of a cone).
 */
function flat(made: Evaluation, share: number): number {
  const across = byGore((name) => {
    const gore = `skirt ${name}`;
    const [left, right] = seamsOf[name];
    const toHip = (seam: string): number =>
      pieceOf(made, gore).notches.find((notch) => notch.edge === seam && notch.name === 'hip level')?.at ?? 0;
    const there = pointAlong(edgeOf(made, gore, right), share * toHip(right));
    const lean = Math.atan2(there.direction.x, there.direction.y);
    const arc = lean === 0 ? 1 : lean / Math.sin(lean);
    if (isHalf(name)) return there.point.x * arc;
    const up = edgeOf(made, gore, left);
    const length = edgeLength(up);
    const other = pointAlong(up, length - share * (length - toHip(left))).point;
    return Math.hypot(there.point.x - other.x, there.point.y - other.y) * arc;
  });
  return 2 * goreNames.reduce((sum, name) => sum + across[name], 0);
}

/** By how much the flat skirt is wider than the body it was drafted for, where it is least so from waist to hip, mm. */
function leastRoom(made: Evaluation): number {
  const { surface, levels } = bodyForm(made.body);
  const torso = surface.parts.find(({ name }) => name === 'torso');
  if (!torso) throw new Error('no torso');
  const { firstTriangle: first, triangles } = torso;
  const round = surface.triangles.subarray(3 * first, 3 * (first + triangles));
  const rooms = Array.from({ length: STEPS + 1 }, (_, i) => {
    const height = levels.waist - (i / STEPS) * (levels.waist - levels.hip);
    return flat(made, i / STEPS) - tapeLength(cutAt(surface.points, round, height));
  });
  return Math.min(...rooms);
}

it.each(shippedBodies)('the skirt of %s is nowhere from waist to hip narrower than she is', (name) => {
  expect(leastRoom(drafted('skirt', shippedBody(name)))).toBeGreaterThan(0);
  expect(leastRoom(drafted('dress', shippedBody(name)))).toBeGreaterThan(0);
});

it('nor is one of a woman of the survey', () => {
  for (const body of plausibleBodies(12))
    expect(leastRoom(drafted('skirt', body)), String(body.name)).toBeGreaterThan(0);
});

it.each([1.2, 2, 2.5, 3])(
  'nor is one whose hem is %s times the hip, unless so wide a hem is refused',
  (skirtFullness) => {
    for (const name of shippedBodies) {
      const made = evaluate(skirt, shippedBody(name), { skirtFullness });
      if (made.ok) expect(leastRoom(made.value), name).toBeGreaterThan(0);
      else expect(made.issues.map(({ code }) => code)).toContain('hem-out-of-reach');
    }
  },
);
