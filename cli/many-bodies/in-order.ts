/** Items in batches of at most `size`. */
export async function* inBatches<Item>(
  items: AsyncIterable<Item>,
  size: number,
): AsyncGenerator<readonly Item[]> {
  let batch: Item[] = [];
  for await (const item of items) {
    batch.push(item);
    if (batch.length < size) continue;
    yield batch;
    batch = [];
  }
  if (batch.length > 0) yield batch;
}

/**
 * What `work` answers to each item, in the order of the items, with at most `most` on their way. A failure is met when its turn
 * comes, not before.
 */
export async function* inOrder<Item, Answer>(
  items: AsyncIterable<Item>,
  work: (item: Item) => Promise<Answer>,
  most: number,
): AsyncGenerator<{ readonly item: Item; readonly answer: Answer }> {
  const onTheirWay: { readonly item: Item; readonly answer: Promise<Answer> }[] = [];
  async function* first() {
    const next = onTheirWay.shift();
    if (next) yield { item: next.item, answer: await next.answer };
  }
  for await (const item of items) {
    const answer = work(item);
    answer.catch(() => undefined);
    onTheirWay.push({ item, answer });
    if (onTheirWay.length >= most) yield* first();
  }
  while (onTheirWay.length > 0) yield* first();
}
