import { describe, expect, it } from 'vitest';
import { Unusable } from '../../../cli/input/unusable.ts';
import { seekLay } from '../../../cli/lay/lay-search.ts';
import type { Session } from '../../../cli/session.ts';
import { rectangle } from '../../engine/lay/shapes.ts';

/** Shapes of which no two lie beside each other, so that the first lay takes a while. */
const problem = {
  width: 1000,
  shapes: Array.from({ length: 8 }, (_, i) => rectangle(`s${i}`, 1, 300 + i, 600)),
};

/** Shapes that lie beside each other at once. */
const easy = { width: 1000, shapes: [1, 2, 3].map((i) => rectangle(`e${i}`, 1, 50 * i, 300 - 30 * i)) };

/** A session whose clock is interrupted when it is looked at for the nth time. */
function interruptedAt(n: number): Session {
  let [looks, now] = [0, 0];
  return {
    garments: [],
    write: async () => undefined,
    tell: () => undefined,
    isRead: () => true,
    live: false,
    colour: false,
    columns: 80,
    onInterrupt: () => () => undefined,
    clock: () => {
      looks += 1;
      if (looks === n) process.emit('SIGINT');
      now += 100;
      return now;
    },
  };
}

describe('a search for a lay that Ctrl-C ends', () => {
  const effort = { seconds: 1000, rounds: undefined, seed: 1 };

  it('before the first lay is refused by name', async () => {
    const ended = await seekLay(interruptedAt(3), problem, effort).catch((error: unknown) => error);
    expect(ended).toBeInstanceOf(Unusable);
    expect(ended instanceof Unusable && ended.issues).toMatchObject([{ code: 'no-lay-found' }]);
  });

  it('after it hands on the best so far, and hears no more', async () => {
    const before = process.listenerCount('SIGINT');
    const lay = await seekLay(interruptedAt(40), easy, effort);
    expect(lay.placements.length).toBe(3);
    expect(process.listenerCount('SIGINT')).toBe(before);
  });
});
