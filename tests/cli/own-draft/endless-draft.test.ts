import { describe, expect, it } from 'vitest';
import { ended } from '../../../cli/own-draft/own-draft.ts';
import { Endless, withinTime } from '../../../cli/own-draft/within-time.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import type { Draft } from '../../../engine/pattern/draft.ts';
import { bib, measurements } from '../../engine/bib.ts';

describe('what runs within a time', () => {
  it('gives what it gives, and throws what it throws', () => {
    expect(withinTime(() => withinTime(() => 7, 1000) + 1, 1000)).toBe(8);
    expect(() =>
      withinTime(() => {
        throw new RangeError('too wide');
      }, 1000),
    ).toThrow(RangeError);
  });

  it('is ended where it has no end, however deep, and the next is not', () => {
    const circle = (): number => {
      for (;;) Math.random();
    };
    expect(() => withinTime(() => [1].map(circle), 200)).toThrow(Endless);
    expect(withinTime(() => 7, 5000)).toBe(7);
  });
});

describe('a draft of one’s own that never ends', () => {
  const source = {
    placeOf: (words: readonly string[]) => (words.includes('draw') ? { file: 'bib.ts', line: 4 } : undefined),
    exported: () => undefined,
    mistake: () => ({ code: 'draft-mistake', severity: 'error', path: '', message: '' }) as const,
  };
  const endless: Draft = {
    ...bib,
    draw: (body, styling) => {
      while (styling.mood === 'bad') Math.random();
      return bib.draw(body, styling);
    },
  };

  it('is refused by name, with the place of its draw', () => {
    const made = evaluate(ended(endless, source, 50), measurements, { mood: 'bad' });
    expect(made.ok).toBe(false);
    expect(made.issues).toContainEqual(
      expect.objectContaining({ code: 'draft-endless', source: { file: 'bib.ts', line: 4 } }),
    );
  });

  it('is drawn where it comes to an end', () => {
    expect(evaluate(ended(endless, source, 5000), measurements, {}).ok).toBe(true);
  });
});
