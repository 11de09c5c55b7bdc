import type { Outline } from '../geometry/curve.ts';

/**
 * The edges of an outline that are on an earlier one too: the old name by the new one. Those of the same name are;
 * and so is one that alone lies between the same two neighbours as one alone did before, under another name.
 */
export function namesakes(before: Outline, after: Outline): ReadonlyMap<string, string> {
  const [old, fresh] = [before, after].map((outline) => outline.map(({ name }) => name)) as [
    string[],
    string[],
  ];
  const names = new Map(fresh.filter((name) => old.includes(name)).map((name) => [name, name]));
  const beside = (list: readonly string[], i: number, step: number): string =>
    list[(i + step + list.length) % list.length] ?? '';
  for (const [i, name] of fresh.entries()) {
    const [from, to] = [beside(fresh, i, -1), beside(fresh, i, 1)];
    if (names.has(name) || names.get(from) !== from || names.get(to) !== to) continue;
    const was = beside(old, old.indexOf(from), 1);
    if (!fresh.includes(was) && beside(old, old.indexOf(from), 2) === to) names.set(name, was);
  }
  return names;
}
