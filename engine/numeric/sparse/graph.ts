/** Which nodes of a network touch which: the neighbours of node i are `neighbours[starts[i] .. starts[i + 1])`, sorted. */
export interface Graph {
  readonly count: number;
  readonly starts: Int32Array;
  readonly neighbours: Int32Array;
}

/** The graph of so many nodes with the given pairs (flat: a, b, a, b ...), each pair both ways, each once, none to itself. */
export function graphOf(count: number, pairs: ArrayLike<number>): Graph {
  const sets = Array.from({ length: count }, () => new Set<number>());
  for (let i = 0; i + 1 < pairs.length; i += 2) {
    const a = pairs[i] as number;
    const b = pairs[i + 1] as number;
    if (a === b) continue;
    sets[a]?.add(b);
    sets[b]?.add(a);
  }
  const starts = new Int32Array(count + 1);
  for (const [i, set] of sets.entries()) starts[i + 1] = (starts[i] as number) + set.size;
  const neighbours = new Int32Array(starts[count] as number);
  for (const [i, set] of sets.entries())
    neighbours.set(
      [...set].sort((a, b) => a - b),
      starts[i],
    );
  return { count, starts, neighbours };
}
