import { expect, it } from 'vitest';
import { skirt } from '../../../drafts/skirt/skirt.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import { shippedBody } from '../drafted.ts';

const fullest = { skirtLength: 500, skirtFullness: 5, hemSweep: 7000 };

// The ease at the hip grows with the hem, and with it what the hem may be.
it.each([
  ['hemSweep', 'auto'],
  ['hemSweep', 60],
  ['skirtFullness', 'auto'],
  ['skirtFullness', 60],
] as const)(
  '%s too wide is answered with the greatest hem there is, the ease at the hip %s',
  (by, hipEase) => {
    const body = shippedBody('leading-lady');
    const made = (value: number) =>
      evaluate(skirt, body, { skirtLength: fullest.skirtLength, hipEase, [by]: value });
    const refused = made(fullest[by]);
    const max = refused.issues.find(({ code }) => code === 'hem-out-of-reach')?.limits?.max ?? Number.NaN;
    const hem = (value: number): number => {
      const drafted = made(value);
      if (!drafted.ok) throw new Error('refused');
      return drafted.value.report.girths.find(({ level }) => level === 'hem')?.finished ?? Number.NaN;
    };
    // How full a skirt of just less than that hem is: halving between what is drafted and what is refused.
    let [less, more] = by === 'hemSweep' ? [max - 1, max + 1] : [1.1, fullest.skirtFullness];
    while (by === 'skirtFullness' && more - less > 1e-3) {
      const middle = (less + more) / 2;
      if (made(middle).ok) less = middle;
      else more = middle;
    }
    expect(made(more).ok).toBe(false);
    expect(Math.abs(hem(less) - max)).toBeLessThan(2);
  },
);
