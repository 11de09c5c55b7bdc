import { moved, point } from '../geometry/point.ts';
import type { Transform } from '../geometry/transform.ts';
import { type Ink, stroke } from '../render/ink.ts';
import { stripStart, washedRepeat, washedRepeatAcross } from './cloth.ts';
import type { Matching } from './hung.ts';
import type { LayPlan } from './lay-plan.ts';

/** A stroke at a repeat, mm of paper. */
const tick = 2;

/** How stripes are matched, and where they cannot be, a line for each way in which they run. */
export function stripeWords(
  { cloth, matched, matchedAlong }: LayPlan,
  say: (mm: number) => string,
): string[] {
  const first = cloth.folded ? 'fold on one' : 'the upper line on one';
  return [
    ...(matched
      ? [
          `Stripes across the cloth, a repeat every ${say(washedRepeat(cloth))}, marked at both edges: ${metWords(matched, ' along the grain')}`,
        ]
      : []),
    ...(matchedAlong
      ? [
          `Stripes along the cloth, a repeat every ${say(washedRepeatAcross(cloth))}, marked at both ends, ${first}${cloth.oneOrder ? ', their colours in one order' : ''}: ${metWords(matchedAlong, '')}`,
        ]
      : []),
  ];
}

function metWords({ matched, matchedOnce, unmatched }: Matching, which: string): string {
  const once = matchedOnce.length > 0 ? `, at one place of ${matchedOnce.length} eased or gathered` : '';
  const not = unmatched.length > 0 ? `, not at ${unmatched.length} more` : '';
  return `they meet at ${matched.length} ${matched.length === 1 ? 'seam' : 'seams'}${which}${once}${not}.`;
}

/** Where a repeat of stripes begins: a short stroke at either edge of the cloth, or at either end. */
export function repeatInk({ cloth, length }: LayPlan, put: Transform, layerWidth: number): Ink[] {
  const start = stripStart(cloth);
  return [
    ...everyRepeat(washedRepeat(cloth), 0, length).flatMap((x) =>
      [0, layerWidth].map((y) => {
        const from = put(point(x, y));
        return stroke('join', from, moved(from, { x: 0, y: y === 0 ? -tick : tick }));
      }),
    ),
    ...everyRepeat(washedRepeatAcross(cloth), start, layerWidth).flatMap((y) =>
      [0, length].map((x) => {
        const from = put(point(x, y));
        return stroke('join', from, moved(from, { x: x === 0 ? -tick : tick, y: 0 }));
      }),
    ),
  ];
}

const everyRepeat = (repeat: number, from: number, to: number): number[] =>
  repeat === 0
    ? []
    : Array.from({ length: Math.floor((to - from) / repeat) + 1 }, (_, i) => from + i * repeat);
