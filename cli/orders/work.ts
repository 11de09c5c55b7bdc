import { Command, Option } from 'commander';
import { counted } from '../../engine/text/counted.ts';
import { longestLine } from '../input/json-line.ts';
import { type FileLine, lines } from '../input/lines.ts';
import { jsonOption, workersOption } from '../input/options.ts';
import { partsOf } from '../input/parts-of.ts';
import { reason } from '../input/reason.ts';
import { unusable } from '../input/unusable.ts';
import { say, tell } from '../output/say.ts';
import { json } from '../output/walk-result.ts';
import type { WorkedOffResult } from '../results/orders.ts';
import type { ExitCode, Session } from '../session.ts';
import { codeDigest } from './code-digest.ts';
import { credsOption, storeOption, toOption } from './order-options.ts';
import { openQueue } from './queue.ts';
import { connectTo } from './server.ts';
import { knownStore, openStore } from './store.ts';
import { answersTo, type OrderPool, orderPool } from './work-chunk.ts';
import { type Bench, type Tally, workOffQueue, workOffStore } from './work-off.ts';

interface WorkOptions {
  readonly store?: string;
  readonly to?: string;
  readonly creds?: string;
  readonly workers: number;
  readonly untilDone?: true;
  readonly json?: true;
}

const help = `
Three ways, the same answers to the byte: as a plain filter, a line in, a line out, in order; all that “bodkin send” put into a store, on this machine; or as one of any number of workers, on any machine. A worker may be killed at any time: what it had in hand is given to another. Where the disk is full it waits for room.

  bodkin work orders.ndjson > answers.ndjson
  bodkin work --store orders --workers 4
  bodkin work --store /mnt/orders --to nats://10.0.0.2:4222`;

/** `bodkin work`: answers orders, as a filter, for a store, or for a server. */
export const workCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('work')
    .description(
      'draft what orders ask for: as a filter, from a store, or as one of many workers of a server',
    )
    .argument('[file]', 'orders, one JSON object a line, answered on standard output; - is standard input')
    .addOption(storeOption())
    .addOption(toOption())
    .addOption(credsOption())
    .addOption(workersOption('threads', 1))
    .addOption(new Option('--until-done', 'with --to: end when no order is left with anybody'))
    .addOption(jsonOption())
    .addHelpText('after', help)
    .action(async (file: string | undefined, options: WorkOptions) =>
      finish(await work(session, file, options)),
    );

async function work(session: Session, file: string | undefined, options: WorkOptions): Promise<ExitCode> {
  const { store, to, workers } = options;
  if ((file === undefined) === (store === undefined))
    throw unusable('argument-missing', 'file', 'Say either which orders to answer, or --store FOLDER.');
  if (file !== undefined && to !== undefined)
    throw unusable('options-conflict', '--to', 'With a server the orders come from it: leave the file out.');
  const pool = orderPool(workers, (words) => tell(session, words));
  try {
    if (file !== undefined) return await filter(session, file, pool, workers);
    const tally = await workOff(session, store ?? '', options, pool);
    return tally.setAside > 0 ? 2 : 0;
  } finally {
    await pool.stop();
  }
}

/** A line in, a line out. */
async function filter(session: Session, file: string, pool: OrderPool, workers: number): Promise<ExitCode> {
  let gravest: ExitCode = 0;
  let any = false;
  for await (const answers of answersTo(writtenLines(file), pool, workers)) {
    any = true;
    if (!session.isRead()) break;
    for (const { code } of answers) if (code > gravest) gravest = code;
    await session.write(answers.map(({ text }) => text).join(''));
  }
  if (!any) throw unusable('no-orders', file, `There are no orders in ${file}.`);
  return gravest;
}

/** The lines of a file that are not empty. */
async function* writtenLines(file: string): AsyncGenerator<FileLine> {
  try {
    for await (const line of lines(partsOf(file), longestLine)) if (line.text?.trim() !== '') yield line;
  } catch (error) {
    throw unusable('cannot-read', file, `Cannot read ${file}: ${reason(error)}`);
  }
}

async function workOff(
  session: Session,
  folder: string,
  { to, creds, workers, untilDone, json: asJson }: WorkOptions,
  pool: OrderPool,
): Promise<Tally> {
  const code = await codeDigest();
  const store = to === undefined ? await knownStore(folder) : await openStore(folder);
  let stopped = false;
  const stop = (): void => {
    stopped = true;
    // What is in hand is given back at once, rather than finished: the machine may be going down.
    void pool.stop();
  };
  const bench: Bench = { session, store, code, pool, threads: workers, isStopped: () => stopped };
  process.once('SIGTERM', stop).once('SIGINT', stop);
  try {
    const tally = to === undefined ? await workOffStore(bench) : await served(bench, to, creds, untilDone);
    const result: WorkedOffResult = { ok: tally.setAside === 0, ...tally };
    if (asJson) await session.write(json(result));
    else await say(session, words(tally));
    return tally;
  } finally {
    process.off('SIGTERM', stop).off('SIGINT', stop);
  }
}

async function served(bench: Bench, to: string, creds?: string, untilDone = false): Promise<Tally> {
  const connection = await connectTo(to, creds);
  try {
    const queue = await openQueue(connection, bench.store, bench.code);
    return await workOffQueue(bench, queue, untilDone);
  } finally {
    // What was given back should reach the server, if it is there.
    await connection.drain().catch(() => undefined);
  }
}

const words = ({ chunks, there, setAside }: Tally): string =>
  `${counted(chunks, 'chunk')} answered${there > 0 ? `, ${there} answered already` : ''}${setAside > 0 ? `, ${setAside} set aside` : ''}\n`;
