import { describe, expect, it } from 'vitest';
import { zeros } from '../../../engine/numeric/zeros.ts';

describe('arrays of zeros', () => {
  it('are as long as asked for, hold zeros, and share no place, however many there are', () => {
    const arrays = Array.from({ length: 300 }, (_, i) => zeros((i * 37) % 3000));
    for (const [i, array] of arrays.entries()) {
      expect(array.length).toBe((i * 37) % 3000);
      expect(array.every((value) => value === 0)).toBe(true);
      array.fill(i + 1);
    }
    for (const [i, array] of arrays.entries()) expect(array.every((value) => value === i + 1)).toBe(true);
  });
});
