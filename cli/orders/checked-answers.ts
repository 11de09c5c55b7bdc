import { pipeline } from 'node:stream';
import { createGunzip } from 'node:zlib';
import type { Issue } from '../../engine/issue.ts';
import { lines } from '../input/lines.ts';
import { partsOf } from '../input/parts-of.ts';
import { reason } from '../input/reason.ts';
import { Unusable, unusable } from '../input/unusable.ts';
import { type OrderAnswer, orderAnswer } from '../results/orders.ts';
import { orderedLines } from './cut-orders.ts';
import type { Manifest } from './manifest.ts';
import { readOrder } from './order.ts';
import { answersFile, type Store } from './store.ts';
import { readChunk } from './work-chunk.ts';

/** No answer to one order is longer (bytes): its PDFs on A4 take a megabyte. */
const longestAnswer = 256_000_000;

/** What a line of orders should be answered by: the answer to an order, or any where the line was refused. */
type Expected = { readonly id: string } | { readonly issue: Issue };

/** The answers to a set of a store, each held to its order: none is missing, none double, none of another. */
export async function* answersInStore(store: Store, { chunks, code }: Manifest): AsyncGenerator<OrderAnswer> {
  for (const { name, orders } of chunks) {
    const file = answersFile(store, name, code);
    const ordered = await readChunk(store, name);
    async function* expected(): AsyncGenerator<Expected> {
      for await (const { number, text } of ordered()) {
        const read = readOrder(number, text);
        yield 'order' in read ? { id: read.order.id } : read;
      }
    }
    let count = 0;
    for await (const answer of inStep(expected(), answerLines(file), file)) {
      count += 1;
      yield answer;
    }
    if (count !== orders) throw damaged(file, `it holds ${count} answers to ${orders} orders`);
  }
}

/** The answers that a filter gave to a file of orders, held to it in the same way. `refused` hears of lines that are no orders. */
export async function* answersOfFilter(
  orders: string,
  answers: string,
  refused: (issue: Issue) => void,
): AsyncGenerator<OrderAnswer> {
  async function* expected(): AsyncGenerator<Expected> {
    for await (const line of orderedLines(orders)) {
      if ('issue' in line) refused(line.issue);
      yield 'order' in line ? { id: line.order.id } : line;
    }
  }
  yield* inStep(expected(), answerLines(answers), answers);
}

/** Goes through orders and answers together, and lets those through that belong to each other. */
async function* inStep(
  expected: AsyncIterator<Expected>,
  answers: AsyncGenerator<OrderAnswer>,
  file: string,
): AsyncGenerator<OrderAnswer> {
  for await (const answer of answers) {
    const { value, done } = await expected.next();
    if (done) throw damaged(file, 'it holds more answers than there are orders');
    if ('issue' in value) continue;
    if (answer.id !== value.id)
      throw damaged(file, `it answers “${answer.id ?? ''}” where “${value.id}” was ordered`);
    yield answer;
  }
  const { value, done } = await expected.next();
  if (!done) throw damaged(file, `it ends before ${'id' in value ? `“${value.id}”` : value.issue.path}`);
}

/** The answers of a file, packed or plain; `-` is standard input. */
async function* answerLines(file: string): AsyncGenerator<OrderAnswer> {
  const read = partsOf(file);
  const parts = file.endsWith('.gz') ? pipeline(read, createGunzip(), () => undefined) : read;
  try {
    for await (const { number, text = '' } of lines(parts, longestAnswer)) {
      const answer = orderAnswer.safeParse(JSON.parse(text));
      if (!answer.success) throw damaged(file, `line ${number} is no answer`);
      yield answer.data;
    }
  } catch (error) {
    if (error instanceof Unusable) throw error;
    throw damaged(file, reason(error));
  }
}

const damaged = (file: string, what: string): Unusable =>
  unusable('answers-damaged', file, `The answers in ${file} are not those that were ordered: ${what}.`);
