/** What became of something that has a name: it is new, it is gone, or it is there before and after. */
export type Fate<T> =
  | { readonly kind: 'new' | 'gone'; readonly name: string; readonly only: T }
  | { readonly kind: 'kept'; readonly name: string; readonly before: T; readonly after: T };

/** What became of each of these, in the new order, what is gone at the end. A name stands once in either list. */
export function fates<T>(
  before: readonly T[],
  after: readonly T[],
  nameOf: (item: T) => string,
): readonly Fate<T>[] {
  const was = new Map(before.map((item) => [nameOf(item), item]));
  const is = new Set(after.map(nameOf));
  return [
    ...after.map((item): Fate<T> => {
      const name = nameOf(item);
      const old = was.get(name);
      return old === undefined
        ? { kind: 'new', name, only: item }
        : { kind: 'kept', name, before: old, after: item };
    }),
    ...before
      .filter((item) => !is.has(nameOf(item)))
      .map((item): Fate<T> => ({ kind: 'gone', name: nameOf(item), only: item })),
  ];
}
