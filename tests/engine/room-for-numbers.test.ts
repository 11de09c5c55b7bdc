import { describe, expect, it } from 'vitest';
import { roomForNumbers } from '../../engine/room-for-numbers.ts';

describe('room for numbers', () => {
  it('is as long as was asked for, however long that is', () => {
    expect([0, 1, 1024, 1025, 5000].map((count) => roomForNumbers(count).length)).toEqual([
      0, 1, 1024, 1025, 5000,
    ]);
  });

  it('is shared with nobody', () => {
    const [one, other] = [roomForNumbers(3), roomForNumbers(3)];
    one.fill(7);
    expect(other).not.toContain(7);
    expect(roomForNumbers(3)).not.toContain(7);
  });
});
