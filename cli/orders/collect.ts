import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { Command, Option } from 'commander';
import type { Issue } from '../../engine/issue.ts';
import { counted } from '../../engine/text/counted.ts';
import { writeWhole } from '../files/whole-file.ts';
import { writeFiles } from '../files/write-files.ts';
import { jsonOption } from '../input/options.ts';
import { reason } from '../input/reason.ts';
import { Unusable, unusable } from '../input/unusable.ts';
import { inOrder } from '../many-bodies/in-order.ts';
import { progress } from '../output/progress.ts';
import { say, tell } from '../output/say.ts';
import { sayIssues } from '../output/say-issues.ts';
import { issuesResult, json } from '../output/walk-result.ts';
import type { CollectedResult, OrderAnswer, OrderResult } from '../results/orders.ts';
import type { ExitCode, Session } from '../session.ts';
import { answersInStore, answersOfFilter } from './checked-answers.ts';
import type { Manifest } from './manifest.ts';
import { storeOption } from './order-options.ts';
import { parquetTable } from './parquet.ts';
import { isAnswered, knownStore, readManifest, type Store, setsIn, whySetAside } from './store.ts';

interface CollectOptions {
  readonly store?: string;
  readonly set?: string;
  readonly orders?: string;
  readonly out: string;
  readonly parquet?: true;
  readonly json?: true;
}

const help = `
The files of each order are laid into orders/ID below --out; results.ndjson has a line for each, in the order in which they were sent. Every answer is held to its order first: where one is missing, double or of another, nothing is called done.

  bodkin collect --store /mnt/orders --out out
  cat part-*.done | bodkin collect - --orders orders.ndjson --out out`;

/** `bodkin collect`: answers checked against their orders, and laid out by order. */
export const collectCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('collect')
    .description('check that every order was answered once, and lay out what was written by order')
    .argument('[file]', 'answers of “bodkin work” as a filter, with --orders; - is standard input')
    .addOption(storeOption())
    .option('--set <name>', 'which of several sets in the store, as “bodkin send” named it')
    .addOption(
      new Option('--orders <file>', 'the orders that a file of answers belongs to').conflicts('store'),
    )
    .requiredOption('--out <folder>', 'where to write; made if it is not there')
    .option('--parquet', 'write the results as a table too, results.parquet')
    .addOption(jsonOption())
    .addHelpText('after', help)
    .action(async (file: string | undefined, options: CollectOptions) =>
      finish(await collect(session, file, options)),
    );

/** What there is to collect. */
interface Collection {
  readonly answers: AsyncIterable<OrderAnswer>;
  /** How many, where that is known before. */
  readonly orders?: number;
  /** Lines that were no orders, as far as they are known when all answers are read. */
  readonly refused: () => number;
  readonly issues: readonly Issue[];
}

async function collect(
  session: Session,
  file: string | undefined,
  options: CollectOptions,
): Promise<ExitCode> {
  const { out, parquet, json: asJson } = options;
  const { answers, orders, refused, issues } = await collection(file, options);
  const tally = { orders: 0, allTrue: 0, notTrue: 0, notDrafted: 0, files: 0 };
  const bar = progress(session, 'collecting');
  await mkdir(out, { recursive: true }).catch((error: unknown) => {
    throw unusable('cannot-write', out, `Cannot write into ${out}: ${reason(error)}`);
  });
  const table = parquet ? await parquetTable(join(out, 'results.parquet')) : undefined;
  async function* results(): AsyncGenerator<Uint8Array> {
    for await (const { answer } of inOrder(answers, (each) => layOut(out, each), atOnce)) {
      tally.orders += 1;
      tally.files += answer.files.length;
      tally[answer.ok ? 'allTrue' : answer.drafted ? 'notTrue' : 'notDrafted'] += 1;
      table?.add(answer);
      if (orders) bar.reached(tally.orders / orders);
      yield Buffer.from(`${JSON.stringify(answer)}\n`);
    }
  }
  try {
    await writeWhole(join(out, 'results.ndjson'), results());
    await table?.end();
  } catch (error) {
    await table?.drop();
    if (error instanceof Unusable) throw error;
    throw unusable('cannot-write', out, `Cannot write into ${out}: ${reason(error)}`);
  } finally {
    bar.done();
  }
  const ok = tally.allTrue === tally.orders && refused() === 0;
  const result: CollectedResult = { ok, ...tally, refused: refused(), issues: issuesResult(issues) };
  if (asJson) await session.write(json(result));
  else await say(session, words(result));
  sayIssues(session, issues, 'mm');
  tell(session, `wrote ${counted(tally.files, 'file')} and results.ndjson into ${out}\n`);
  return tally.notDrafted + refused() > 0 ? 2 : ok ? 0 : 1;
}

const words = ({ orders, allTrue, notTrue, notDrafted, refused }: CollectedResult): string =>
  [
    `${counted(orders, 'order')}: ${allTrue} all true`,
    notTrue > 0 ? `, ${notTrue} NOT TRUE` : '',
    notDrafted > 0 ? `, ${notDrafted} not drafted` : '',
    refused > 0 ? `; ${counted(refused, 'line')} refused` : '',
    '\n',
  ].join('');

/** Orders laid out at once. */
const atOnce = 16;

/** Lays out the files of one order, and hands its result on without them. */
async function layOut(out: string, { files, ...answer }: OrderAnswer): Promise<OrderResult> {
  const contents = Object.entries(files).map(([name, content]): [string, string | Uint8Array] => [
    name,
    typeof content === 'string' ? content : Buffer.from(content.base64, 'base64'),
  ]);
  if (contents.length > 0 && answer.id !== null)
    await writeFiles(join(out, 'orders', answer.id), new Map(contents));
  return { ...answer, files: contents.map(([name]) => name) };
}

async function collection(
  file: string | undefined,
  { store, set, orders }: CollectOptions,
): Promise<Collection> {
  if (store !== undefined) {
    const known = await knownStore(store);
    const manifest = await readManifest(known, await setNamed(known, set));
    await allAnswered(known, manifest);
    const { refused } = manifest;
    return {
      answers: answersInStore(known, manifest),
      orders: manifest.orders,
      refused: () => refused,
      issues: [],
    };
  }
  if (file === undefined || orders === undefined)
    throw unusable(
      'option-missing',
      '--store',
      'Say --store FOLDER, or a file of answers with --orders FILE, the orders that they belong to.',
    );
  const issues: Issue[] = [];
  let refused = 0;
  const answers = answersOfFilter(orders, file, (issue) => {
    refused += 1;
    if (issues.length < mostTold) issues.push(issue);
  });
  return { answers, refused: () => refused, issues };
}

/** So many lines that are no orders are told. */
const mostTold = 10;

/** The set that is meant; where there is only one, it. */
async function setNamed(store: Store, set: string | undefined): Promise<string> {
  const sets = await setsIn(store);
  const listed = sets.slice(0, 10).join(', ');
  const only = sets.length === 1 ? sets[0] : undefined;
  const meant = set ?? only;
  if (sets.length === 0) throw unusable('no-set', store.folder, `Nothing was sent to ${store.folder} yet.`);
  if (meant === undefined)
    throw unusable('set-not-named', '--set', `Say which set to collect: --set ${listed}.`);
  if (!sets.includes(meant))
    throw unusable('no-set', '--set', `There is no set “${meant.slice(0, 40)}”. Known are: ${listed}.`);
  return meant;
}

/** Refuses to collect what is not all answered, and says how far it is and what was set aside. */
async function allAnswered(store: Store, { chunks, code }: Manifest): Promise<void> {
  let missing = 0;
  const aside: Issue[] = [];
  for (const { name } of chunks) {
    if (await isAnswered(store, name, code)) continue;
    missing += 1;
    const why = await whySetAside(store, name, code);
    if (why !== undefined && aside.length < mostTold)
      aside.push({
        code: 'chunk-set-aside',
        severity: 'error',
        path: name,
        message: `Chunk ${name} was set aside: ${why}. Sent again, it is tried again.`,
      });
  }
  if (missing === 0) return;
  const message = `${chunks.length - missing} of ${chunks.length} chunks in ${store.folder} are answered. Let the workers finish.`;
  throw new Unusable([{ code: 'orders-unfinished', severity: 'error', path: '--store', message }, ...aside]);
}
