import { edgeLength } from '../geometry/edge.ts';
import type { Draft } from '../pattern/draft.ts';
import type { GradedSize } from './laid-size.ts';

/** So often the way from size to size is halved: to a hundredth of it. */
const halvings = 7;

/** What lies of the difference of two sizes in one hundredth of the way between them, mm. */
export interface Jump {
  readonly between: readonly [string, string];
  readonly mm: number;
}

/**
 * The greatest jump of an edge of a piece between two sizes, if there is one of `least` mm: the way from one body to the other is
 * halved, and again that half of it in which the edge that changes least evenly changes more. A length that grows steadily loses
 * half of its change each time, one that jumps none; so it is known soon that there is no jump.
 */
export function jumpBetween(
  { draw }: Draft,
  from: GradedSize,
  to: GradedSize,
  piece: string,
  least: number,
): Jump | undefined {
  const [a, b] = [from.made.body, to.made.body];
  const lengthsAt = (share: number): readonly number[] => {
    const size = Object.fromEntries(
      Object.entries(a.size).map(([name, value]) => [
        name,
        value + share * ((b.size[name as keyof typeof b.size] ?? value) - value),
      ]),
    ) as typeof a.size;
    const drawn = draw({ ...a, size }, from.made.styling);
    const found = drawn.ok ? drawn.value.pieces.find(({ name }) => name === piece) : undefined;
    return found?.edges.map(edgeLength) ?? [];
  };
  let [low, high] = [0, 1];
  let [atLow, atHigh] = [lengthsAt(low), lengthsAt(high)];
  for (let i = 0; i < halvings && apart(atLow, atHigh) >= least; i++) {
    const middle = (low + high) / 2;
    const there = lengthsAt(middle);
    if (isBelow(atLow, there, atHigh)) [high, atHigh] = [middle, there];
    else [low, atLow] = [middle, there];
  }
  const mm = apart(atLow, atHigh);
  return mm >= least ? { between: [from.of.name, to.of.name], mm } : undefined;
}

/** Whether the edge that changes least evenly over a middle place changes more before it than after. */
function isBelow(before: readonly number[], there: readonly number[], after: readonly number[]): boolean {
  const more = there.map(
    (length, i) => Math.abs(length - (before[i] ?? length)) - Math.abs((after[i] ?? length) - length),
  );
  const most = Math.max(0, ...more.map(Math.abs));
  return more.some((one) => one > 0 && one === most);
}

/** The greatest difference of two edges; none where a piece is not drawn, or has other edges. */
const apart = (some: readonly number[], others: readonly number[]): number =>
  some.length === others.length
    ? Math.max(0, ...some.map((length, i) => Math.abs(length - (others[i] ?? length))))
    : 0;
