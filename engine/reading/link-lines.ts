import type { Curve } from '../geometry/curve.ts';
import { distance, type Point } from '../geometry/point.ts';
import { reversed } from '../geometry/split.ts';
import type { DrawnLine } from './read-shapes.ts';

/** Lines linked end to end into one loop, or the widest gap that is left between them and where it is. */
export type Loop =
  | { readonly closed: true; readonly lines: readonly DrawnLine[]; readonly gap: number }
  | { readonly closed: false; readonly gap: number; readonly at: Point };

/**
 * Links open lines to one closed loop, each to the one whose end is nearest, turned round where it was drawn the
 * other way. Ends nearer than `within` (mm) are brought together; the largest such gap is told.
 */
export function linked(given: readonly DrawnLine[], within: number): Loop {
  const rest = [...given];
  const first = rest.shift();
  const start = first?.curves[0]?.from;
  if (!first || !start) return { closed: false, gap: 0, at: { x: 0, y: 0 } };
  const lines = [first];
  let gap = 0;
  for (;;) {
    const end = lines.at(-1)?.curves.at(-1)?.to ?? start;
    const home = distance(end, start);
    const next = nearestEnd(rest, end);
    if (home <= within && (!next || next.gap >= home)) {
      const closing = Math.max(gap, home);
      return { closed: true, gap: closing, lines: lines.map((line, i) => joinedTo(line, lines.at(i - 1))) };
    }
    if (!next || next.gap > within) return { closed: false, gap: Math.min(home, next?.gap ?? home), at: end };
    gap = Math.max(gap, next.gap);
    const [line] = rest.splice(next.index, 1);
    if (line) lines.push(next.turn ? { ...line, curves: line.curves.toReversed().map(reversed) } : line);
  }
}

function nearestEnd(
  lines: readonly DrawnLine[],
  p: Point,
): { readonly index: number; readonly turn: boolean; readonly gap: number } | undefined {
  let best: { index: number; turn: boolean; gap: number } | undefined;
  for (const [index, { curves }] of lines.entries())
    for (const turn of [false, true]) {
      const end = turn ? curves.at(-1)?.to : curves[0]?.from;
      const gap = end ? distance(end, p) : Infinity;
      if (gap < (best?.gap ?? Infinity)) best = { index, turn, gap };
    }
  return best;
}

/** The line made to start exactly where the one before it ends. */
function joinedTo(line: DrawnLine, before: DrawnLine | undefined): DrawnLine {
  const from = before?.curves.at(-1)?.to;
  const [first, ...others] = line.curves;
  const curves: readonly Curve[] = first && from ? [{ ...first, from }, ...others] : line.curves;
  return { ...line, curves };
}
