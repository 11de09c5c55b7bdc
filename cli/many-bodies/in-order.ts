/**
 * Items in batches of at most `size`: smaller ones where the next item is not there yet, so that nobody who hands over one and
 * waits for its answer waits for others too.
 */
export async function* inBatches<Item>(
  items: AsyncIterable<Item>,
  size: number,
): AsyncGenerator<readonly Item[]> {
  const source = ahead(items);
  try {
    for (let found = await source.next; !found.done; found = await source.next) {
      const batch = [found.value];
      source.pull();
      while (batch.length < size) {
        const ready = await Promise.race([source.next, aMoment()]);
        if (!ready || ready.done) break;
        batch.push(ready.value);
        source.pull();
      }
      yield batch;
    }
  } finally {
    source.leave();
  }
}

/**
 * What `work` answers to each item, in the order of the items and as soon as it is there, with at most `most` on their way. A
 * failure is met when its turn comes, not before.
 */
export async function* inOrder<Item, Answer>(
  items: AsyncIterable<Item>,
  work: (item: Item) => Promise<Answer>,
  most: number,
): AsyncGenerator<{ readonly item: Item; readonly answer: Answer }> {
  const source = ahead(items);
  const onTheirWay: { readonly item: Item; readonly answer: Promise<Answer> }[] = [];
  let ended = false;
  try {
    while (!ended || onTheirWay.length > 0) {
      const [first] = onTheirWay;
      const isFull = ended || onTheirWay.length >= most;
      const answered = first ? [settled(first.answer)] : [];
      const found = await Promise.race([...(first && isFull ? [] : [source.next]), ...answered]);
      if (found?.done) ended = true;
      else if (found) {
        const answer = quiet(work(found.value));
        onTheirWay.push({ item: found.value, answer });
        source.pull();
      } else if (first) {
        onTheirWay.shift();
        yield { item: first.item, answer: await first.answer };
      }
    }
  } finally {
    source.leave();
  }
}

/** Items of which the next is always asked for already; a failure to come by it is met where it is awaited. */
function ahead<Item>(items: AsyncIterable<Item>) {
  const iterator = items[Symbol.asyncIterator]();
  return {
    next: quiet(iterator.next()),
    pull() {
      this.next = quiet(iterator.next());
    },
    /** Lets go of where the items come from, once what was asked for last is there. */
    leave() {
      if (iterator.return) quiet(iterator.return());
    },
  };
}

/** A promise of which a failure is nobody's before it is awaited. */
function quiet<T>(promise: Promise<T>): Promise<T> {
  promise.catch(() => undefined);
  return promise;
}

/** What has been read already comes before this; what is still to be read comes after it. */
const aMoment = (): Promise<undefined> => new Promise((resolve) => setImmediate(resolve, undefined));

/** Comes when an answer does, or the failure to find one. */
const settled = (answer: Promise<unknown>): Promise<undefined> =>
  answer.then(
    () => undefined,
    () => undefined,
  );
