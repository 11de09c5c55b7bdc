import { availableParallelism } from 'node:os';
import { Command, Option } from 'commander';
import type { Draft } from '../../engine/pattern/draft.ts';
import { type Group, grouped, type Tried } from '../../engine/proof/groups.ts';
import { idleOf } from '../../engine/proof/idle.ts';
import { nearestFirst } from '../../engine/proof/nearest-first.ts';
import { shrunk } from '../../engine/proof/shrink.ts';
import { sketchNotes } from '../../engine/proof/sketch-notes.ts';
import { type TrialCase, trialCases } from '../../engine/proof/trial-case.ts';
import { thrownVerdict, type Verdict, verdictOf } from '../../engine/proof/verdict.ts';
import { findGarment, jsonOption, wholeNumber, workersOption } from '../input/options.ts';
import { draftThere } from '../many-bodies/draft-there.ts';
import { startWorkers } from '../many-bodies/workers.ts';
import { progress } from '../output/progress.ts';
import { say } from '../output/say.ts';
import { json } from '../output/walk-result.ts';
import { ownDraft } from '../own-draft/own-draft.ts';
import type { ExitCode, Session } from '../session.ts';
import { demoBodies } from './demo-bodies.ts';
import { type Proof, proofResult, proofText } from './proof-result.ts';

interface ProveOptions {
  readonly tries: number;
  readonly seed: number;
  readonly workers: number;
  readonly json?: true;
}

/** Where nobody can be drafted, nothing can change. */
const noneIdle = { measurements: [], choices: [] };

/** Cases handed to a worker at once: few, so that all end at about the same time. */
const batchSize = 4;

/** `bodkin prove`: a draft held to everybody, and to the whole range of its choices. */
export const proveCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('prove')
    .description('hold a draft to many bodies and to the whole range of its choices, and say what breaks it')
    .argument('<garment>', 'a garment (see “bodkin list”), or the file of a draft of your own: ./my-apron.ts')
    .addOption(
      new Option('--tries <count>', 'random combinations of choices')
        .argParser(wholeNumber(0, 100_000))
        .default(40),
    )
    .addOption(
      new Option('--seed <number>', 'another seed combines other choices')
        .argParser(wholeNumber(0, 2 ** 32 - 1))
        .default(1),
    )
    .addOption(workersOption('threads', Math.min(8, availableParallelism())))
    .addOption(jsonOption())
    .action(async (name: string, options: ProveOptions) => finish(await prove(session, name, options)));

async function prove(session: Session, name: string, options: ProveOptions): Promise<ExitCode> {
  const file = /\.[cm]?[jt]s$/.test(name) ? name : undefined;
  const draft =
    file === undefined ? findGarment(session.garments, name) : await ownDraft(file, session.reading);
  const bodies = await demoBodies();
  const cases = trialCases(draft.choices, bodies, options);
  const bar = progress(session, 'proving');
  const judge = judging(session, draft, file, options.workers);
  try {
    const tried = await tryAll(cases, judge.work, bar.reached);
    const groups = await smallest(grouped(tried), nearestFirst(bodies), judge.work);
    const drawn = tried.find(({ verdict }) => verdict.outcome === 'true');
    const proof: Proof = {
      garment: draft.name,
      ...options,
      tried,
      groups,
      notes: drawn && sketchNotes(draft, drawn.trial),
      idle: drawn ? idleOf(draft, bodies) : noneIdle,
    };
    const result = proofResult(proof);
    if (options.json) await session.write(json(result));
    else await say(session, proofText(proof));
    return result.ok ? 0 : 1;
  } finally {
    bar.done();
    await judge.stop();
  }
}

interface Judging {
  readonly work: (batch: readonly TrialCase[]) => Promise<readonly Verdict[]>;
  readonly stop: () => Promise<void>;
}

/** On threads where they can find the draft for themselves. */
function judging(session: Session, draft: Draft, file: string | undefined, workers: number): Judging {
  const there = draftThere(draft, file);
  if (workers > 1 && there)
    return startWorkers<TrialCase, Verdict>(
      workers,
      { does: 'prove', draft: there },
      session.tell,
      (_, error) => thrownVerdict(error),
    );
  return {
    work: async (batch) => batch.map((trial) => verdictOf(draft, trial)),
    stop: async () => undefined,
  };
}

async function tryAll(
  cases: readonly TrialCase[],
  work: Judging['work'],
  reached: (share: number) => void,
): Promise<readonly Tried[]> {
  let done = 0;
  const batches = Array.from({ length: Math.ceil(cases.length / batchSize) }, (_, i) =>
    cases.slice(i * batchSize, (i + 1) * batchSize),
  );
  const tried = await Promise.all(
    batches.map(async (batch) => {
      const verdicts = await work(batch);
      done += batch.length;
      reached(done / cases.length);
      return batch.map((trial, i): Tried => ({ trial, verdict: verdicts[i] as Verdict }));
    }),
  );
  return tried.flat();
}

/** Each group with a case as small as can be found; what is said of it is said of that one. */
const smallest = (
  groups: readonly Group[],
  plainer: readonly TrialCase['body'][],
  work: Judging['work'],
): Promise<readonly Group[]> =>
  Promise.all(
    groups.map(async (group) => {
      let { issue } = group;
      const found = await shrunk(group.smallest, plainer, async (smaller) => {
        const [verdict] = await work([smaller]);
        const same = verdict?.issues.find(({ code }) => code === group.code);
        if (!same || verdict?.outcome !== group.outcome) return false;
        issue = same;
        return true;
      });
      return { ...group, smallest: found, issue };
    }),
  );
