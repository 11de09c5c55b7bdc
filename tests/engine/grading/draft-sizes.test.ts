import { describe, expect, it } from 'vitest';
import type { Evaluation } from '../../../engine/evaluate.ts';
import type { Chart } from '../../../engine/grading/chart.ts';
import { draftSize, draftSizes } from '../../../engine/grading/draft-sizes.ts';
import type { Draft } from '../../../engine/pattern/draft.ts';
import { chartOf, draftOf, shippedChart } from './charts.ts';

const made = (size: ReturnType<typeof draftSize> | undefined): Evaluation => {
  if (!size?.ok) throw new Error('not drafted');
  return size.value;
};

/** The greatest difference of any two numbers of two plain data that are otherwise the same; infinite where they are not. */
function apart(a: unknown, b: unknown): number {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b);
  // A text may say a number: its last digit is the pen's.
  if (typeof a !== 'object' || a === null || typeof b !== 'object' || b === null)
    return a === b || (typeof a === 'string' && typeof b === 'string') ? 0 : Number.POSITIVE_INFINITY;
  const [own, other] = [Object.keys(a), Object.keys(b)];
  if (own.length !== other.length) return Number.POSITIVE_INFINITY;
  let most = 0;
  for (const key of own) most = Math.max(most, apart(Reflect.get(a, key), Reflect.get(b, key)));
  return most;
}

/** How far the pieces of all sizes lie from where each size's own draft has them, mm. */
function fromOwnDrafts(draft: Draft, chart: Chart): number {
  const sizes = [...draftSizes(draft, chart, {})];
  return Math.max(
    ...chart.rows.map((row, i) =>
      apart(made(draftSize(draft, row, {})).garment.pieces, made(sizes[i]).garment.pieces),
    ),
  );
}

describe('the sizes of a chart', () => {
  it.each([
    ['dress', 'workshop-stock.yaml'],
    ['trial', 'workshop-stock.yaml'],
    ['bodice', 'en-13402-3-women.yaml'],
  ])('of a %s in %s lie where their own drafts have them, to 0.001 mm', (name, file) => {
    const draft = draftOf(name);
    expect(fromOwnDrafts(draft, chartOf(shippedChart(file), draft))).toBeLessThan(0.001);
  });

  it('are drafted though one before them cannot be, which is told', () => {
    const row = { waistGirth: 74, hipGirth: 99, backNeckPointToWaist: 40 };
    const sizes = [920, 92, 96].map((bust, i) => ({ size: `${38 + 2 * i}`, bustGirth: bust, ...row }));
    const skirt = draftOf('skirt');
    const made = [...draftSizes(skirt, chartOf({ units: 'cm', sizes }, skirt), {})];
    expect(made.map(({ ok }) => ok)).toEqual([false, true, true]);
    expect(made[0]?.issues[0]?.path).toMatch(/^size 38: /);
  });
});
