import { Command } from 'commander';
import { counted } from '../../engine/text/counted.ts';
import { sizeOf } from '../input/bodies-file.ts';
import { jsonOption, wholeNumber } from '../input/options.ts';
import { progress } from '../output/progress.ts';
import { say, tell } from '../output/say.ts';
import { sayIssues } from '../output/say-issues.ts';
import { issuesResult, json } from '../output/walk-result.ts';
import type { SentResult } from '../results/orders.ts';
import type { ExitCode, Session } from '../session.ts';
import { codeDigest } from './code-digest.ts';
import { cutOrders } from './cut-orders.ts';
import type { Manifest } from './manifest.ts';
import { credsOption, storeOption, toOption } from './order-options.ts';
import { openQueue } from './queue.ts';
import { connectTo } from './server.ts';
import { isAnswered, openStore, type Store, takeUpAgain, whySetAside } from './store.ts';

interface SendOptions {
  readonly store: string;
  readonly to?: string;
  readonly creds?: string;
  readonly chunk: number;
  readonly json?: true;
}

const help = `
An order is one line of JSON, and its files are laid under its id:

  {"id":"A-17","garment":"dress","body":{"units":"cm","bustGirth":92, …},"styling":{},"write":["report","pdf"]}

The orders are cut into chunks, which lie in the store; the server is told no more than their names. Sent again, the same orders are the same set: only what has no answers yet is given to workers once more. Without --to the store is filled only, for “bodkin work --store” on this machine.

  bodkin send orders.ndjson --store /mnt/orders --to nats://10.0.0.2:4222`;

/** `bodkin send`: orders into a store, and their chunks named to the server that hands them to workers. */
export const sendCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('send')
    .description('put orders, one a line, into a store, for any number of workers on any number of machines')
    .argument('<file>', 'the orders, one JSON object a line; - is standard input')
    .addOption(storeOption().makeOptionMandatory())
    .addOption(toOption())
    .addOption(credsOption())
    .option('--chunk <count>', 'orders in a chunk', wholeNumber(1, 100_000), 2000)
    .addOption(jsonOption())
    .addHelpText('after', help)
    .action(async (file: string, options: SendOptions) => finish(await send(session, file, options)));

async function send(session: Session, file: string, options: SendOptions): Promise<ExitCode> {
  const size = await sizeOf(file);
  const code = await codeDigest();
  const store = await openStore(options.store);
  const bar = progress(session, 'sending');
  const { set, manifest, firstRefused } = await cutOrders(store, file, {
    code,
    each: options.chunk,
    reached: (bytes) => bar.reached(size > 0 ? bytes / size : 0),
  }).finally(bar.done);
  const waiting = await unanswered(store, manifest);
  if (options.to !== undefined && waiting.length > 0) await publish(store, waiting, code, options);
  const { orders, refused, chunks } = manifest;
  const result: SentResult = {
    ok: refused === 0,
    set,
    orders,
    chunks: chunks.length,
    done: chunks.length - waiting.length,
    published: options.to === undefined ? 0 : waiting.length,
    refused,
    issues: issuesResult(firstRefused),
  };
  if (options.json) await session.write(json(result));
  else await say(session, words(result, options));
  sayIssues(session, firstRefused, 'mm');
  if (refused > firstRefused.length)
    tell(session, `… and ${refused - firstRefused.length} more lines, in sets/${set}.refused.ndjson\n`);
  return refused === 0 ? 0 : 2;
}

const words = ({ set, orders, chunks, done, refused }: SentResult, { store, to }: SendOptions): string =>
  [
    `${counted(orders, 'order')} in ${counted(chunks, 'chunk')}, set ${set} of ${store}\n`,
    refused > 0 ? `${counted(refused, 'line')} refused\n` : '',
    done > 0 ? `answered already: ${counted(done, 'chunk')}\n` : '',
    to === undefined ? `next: bodkin work --store ${store}\n` : '',
  ].join('');

/** Chunks without answers, and whether they were set aside. */
async function unanswered(store: Store, { chunks, code }: Manifest) {
  const found: { readonly chunk: string; readonly wasSetAside: boolean }[] = [];
  for (const { name } of chunks) {
    if (await isAnswered(store, name, code)) continue;
    const wasSetAside = (await whySetAside(store, name, code)) !== undefined;
    await takeUpAgain(store, name, code);
    found.push({ chunk: name, wasSetAside });
  }
  return found;
}

/** Chunks told to the server before the first is confirmed. */
const atOnce = 100;

async function publish(
  store: Store,
  waiting: readonly { readonly chunk: string; readonly wasSetAside: boolean }[],
  code: string,
  { to = '', creds }: SendOptions,
): Promise<void> {
  const connection = await connectTo(to, creds);
  try {
    const queue = await openQueue(connection, store, code);
    for (let at = 0; at < waiting.length; at += atOnce)
      await Promise.all(
        waiting.slice(at, at + atOnce).map(({ chunk, wasSetAside }) => queue.publish(chunk, wasSetAside)),
      );
  } finally {
    await connection.close();
  }
}
