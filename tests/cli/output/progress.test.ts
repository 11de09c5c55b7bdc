import { expect, test } from 'vitest';
import { progress } from '../../../cli/output/progress.ts';
import type { Session } from '../../../cli/session.ts';

/** Reaches a tenth of the work every 300 ms and gives back what was drawn. */
function drawn(live: boolean): string {
  let [now, told] = [0, ''];
  const session: Session = {
    garments: [],
    write: async () => undefined,
    tell: (text) => {
      told += text;
    },
    isRead: () => true,
    live,
    colour: false,
    columns: 80,
    onInterrupt: () => () => undefined,
    clock: () => now,
  };
  const bar = progress(session, 'walking');
  for (let tenth = 1; tenth <= 10; tenth++) {
    now += 300;
    bar.reached(tenth / 10);
    if (now < 1000) expect(told).toBe('');
  }
  bar.done();
  return told;
}

test('a bar appears on a terminal after a second, grows, and is taken away', () => {
  const told = drawn(true);
  expect(told).toContain('walking [################                        ]  40 %');
  expect(told).toContain('] 100 %');
  expect(told.endsWith(' \r')).toBe(true);
});

test('nothing is drawn where nobody looks', () => {
  expect(drawn(false)).toBe('');
});
