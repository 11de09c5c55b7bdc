/**
 * A small part of `suspects` of which it helps to be rid, given that it helps to be rid of all: halved as long as either
 * half alone helps, with no more than `attempts` questions asked.
 */
export function smallestThatHelps<T>(
  suspects: readonly T[],
  helps: (without: readonly T[]) => boolean,
  attempts: number,
): readonly T[] {
  let left = attempts;
  let guilty = suspects;
  while (guilty.length > 1) {
    const middle = Math.ceil(guilty.length / 2);
    const half = [guilty.slice(0, middle), guilty.slice(middle)].find((some) => left-- > 0 && helps(some));
    if (!half) break;
    guilty = half;
  }
  return guilty;
}
