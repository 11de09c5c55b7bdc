import { spawnSync } from 'node:child_process';
import { describe, expect, it, vi } from 'vitest';
import { soonerForMany } from '../../../cli/many-bodies/compile-sooner.ts';

describe('V8 compiles sooner', () => {
  it('once so many bodies of a file are still to come that it pays, and is asked once', () => {
    const sooner = vi.fn();
    const drafted = soonerForMany(1, sooner);
    drafted(16, 16 / 20_000);
    drafted(16, 32 / 20_000);
    expect(sooner).toHaveBeenCalledOnce();
  });

  it('not for a thousand bodies, nor for seven thousand that two threads share', () => {
    const sooner = vi.fn();
    const alone = soonerForMany(1, sooner);
    const shared = soonerForMany(2, sooner);
    for (let done = 16; done <= 1_000; done += 16) alone(16, done / 1_000);
    for (let done = 16; done <= 7_000; done += 16) shared(16, done / 7_000);
    expect(sooner).not.toHaveBeenCalled();
  });

  it('where nobody knows how many come, once so many have come', () => {
    const sooner = vi.fn();
    const drafted = soonerForMany(1, sooner);
    drafted(3_999, 0);
    expect(sooner).not.toHaveBeenCalled();
    drafted(1, 0);
    expect(sooner).toHaveBeenCalledOnce();
  });

  it('without a word that the V8 of this Node does not know', () => {
    const program = `import('${new URL('../../../cli/many-bodies/compile-sooner.ts', import.meta.url)}').then((all) => all.compileSooner())`;
    const { stderr, status } = spawnSync(process.execPath, ['--import', 'tsx', '-e', program], {
      encoding: 'utf8',
    });
    expect(stderr).not.toContain('unrecognized');
    expect(status).toBe(0);
  });
});
