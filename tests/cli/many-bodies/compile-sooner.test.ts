import { setFlagsFromString } from 'node:v8';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { soonerForMany } from '../../../cli/many-bodies/compile-sooner.ts';

vi.mock('node:v8', () => ({ setFlagsFromString: vi.fn() }));

const asked = vi.mocked(setFlagsFromString);

describe('V8 compiles sooner', () => {
  afterEach(() => asked.mockClear());

  it('once so many bodies of a file are still to come that it pays, and is asked once', () => {
    const drafted = soonerForMany(1);
    drafted(16, 16 / 20_000);
    expect(asked.mock.calls.flat()).toContain('--interrupt-budget=66000');
    asked.mockClear();
    drafted(16, 32 / 20_000);
    expect(asked).not.toHaveBeenCalled();
  });

  it('not for a thousand bodies, nor for seven thousand that two threads share', () => {
    const alone = soonerForMany(1);
    const shared = soonerForMany(2);
    for (let done = 16; done <= 1_000; done += 16) alone(16, done / 1_000);
    for (let done = 16; done <= 7_000; done += 16) shared(16, done / 7_000);
    expect(asked).not.toHaveBeenCalled();
  });

  it('where nobody knows how many come, once so many have come', () => {
    const drafted = soonerForMany(1);
    drafted(3_999, 0);
    expect(asked).not.toHaveBeenCalled();
    drafted(1, 0);
    expect(asked).toHaveBeenCalled();
  });
});
