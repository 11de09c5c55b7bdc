import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { garments } from '../../drafts/garments.ts';
import { type Evaluation, evaluate } from '../../engine/evaluate.ts';
import type { Result } from '../../engine/issue.ts';
import { randomFrom } from '../../engine/numeric/random.ts';
import { onlyTrue } from '../../engine/only-true.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import type { Choice, Styling } from '../../engine/pattern/styling.ts';
import { ownTime } from './own-time.ts';
import { figures, table } from './timing.ts';

/**
 * What refusals cost: random stylings of every garment on the eight bodies, until so many are refused. The time of each is put
 * beside that of the same garment for the same body as usual, in turn, the best of three each; drafts that are drawn are counted.
 * `npx tsx tests/bench/refusals.ts [refusals] [seed]`
 */
const wanted = Number(process.argv[2] ?? 2000);
const random = randomFrom(Number(process.argv[3] ?? 1));

const folder = new URL('../../measurements/', import.meta.url);
const bodies = readdirSync(folder)
  .filter((file) => file.endsWith('.yaml'))
  .map((file): { readonly name: string; readonly data: unknown } => ({
    name: file.replace('.yaml', ''),
    data: parse(readFileSync(new URL(file, folder), 'utf8')),
  }));

/** Each choice is made otherwise with one of these likelihoods: a few, or nearly all. */
const shares = [0.1, 0.2, 0.4, 0.8];

const oneOf = <T>(all: readonly T[]): T => all[Math.floor(random() * all.length)] as T;

function anyOf(choice: Choice): number | string {
  if (choice.kind === 'word') return oneOf(choice.words);
  const value = choice.min + random() * (choice.max - choice.min);
  return choice.unit === 'count' ? Math.round(value) : Math.round(value * 100) / 100;
}

const anyStyling = ({ choices }: Draft): Styling => {
  const share = oneOf(shares);
  return Object.fromEntries(choices.filter(() => random() < share).map((each) => [each.name, anyOf(each)]));
};

/** A garment that every check holds of, or its refusal, as every command asks for it. */
function made(draft: Draft, body: unknown, styling: Styling): Result<Evaluation> {
  const drawn = evaluate(draft, body, styling);
  return drawn.ok ? onlyTrue(draft, drawn.value) : drawn;
}

/** Milliseconds of a processor that each of some things takes, in turn, the best of three. */
function best(runs: readonly (() => unknown)[]): readonly number[] {
  const times = runs.map(() => Infinity);
  for (let round = 0; round < 3; round++)
    for (const [i, run] of runs.entries()) {
      const start = ownTime();
      run();
      times[i] = Math.min(times[i] ?? Infinity, ownTime() - start);
    }
  return times;
}

interface Refusal {
  readonly garment: string;
  readonly body: string;
  readonly styling: Styling;
  readonly code: string;
  readonly drafts: number;
  readonly ms: number;
  readonly own: number;
}

for (const draft of garments)
  best(
    bodies.map(
      ({ data }) =>
        () =>
          made(draft, data, {}),
    ),
  );

const refusals: Refusal[] = [];
let tried = 0;
while (refusals.length < wanted) {
  const [draft, { name, data }] = [oneOf(garments), oneOf(bodies)];
  const styling = anyStyling(draft);
  tried++;
  let drafts = 0;
  const counted: Draft = {
    ...draft,
    draw: (...given) => {
      drafts++;
      return draft.draw(...given);
    },
  };
  const result = made(counted, data, styling);
  if (result.ok) continue;
  const [ms = 0, own = 0] = best([() => made(draft, data, styling), () => made(draft, data, {})]);
  const code = result.issues.find(({ severity }) => severity === 'error')?.code ?? '';
  refusals.push({ garment: draft.name, body: name, styling, code, drafts, ms, own });
}

const costOf = ({ ms, own }: Refusal): number => ms / own;
const at = (values: readonly number[], share: number): number =>
  values.toSorted((a, b) => a - b)[Math.floor(share * (values.length - 1))] ?? 0;
const row = (label: string, some: readonly Refusal[]): readonly string[] => {
  const costs = some.map(costOf);
  return [
    label,
    `${some.length}`,
    `${Math.max(...some.map(({ drafts }) => drafts))}`,
    ...[0.5, 0.9, 0.99, 1].map((share) => figures(at(costs, share))),
    `${costs.filter((cost) => cost > 5).length}`,
    figures(Math.max(...some.map(({ ms }) => ms))),
  ];
};
const codes = [...new Set(refusals.map(({ code }) => code))];
process.stdout.write(
  `${tried} stylings, ${refusals.length} refused; cost in the body's own drafts\n${table([
    ['refused by', 'times', 'drafts at most', 'median', '90 %', '99 %', 'worst', 'over 5', 'ms at most'],
    ...codes.map((code) =>
      row(
        code,
        refusals.filter((each) => each.code === code),
      ),
    ),
    row('all', refusals),
  ])}\n`,
);
for (const each of refusals.toSorted((a, b) => costOf(b) - costOf(a)).slice(0, 12)) {
  const { garment, body, code, drafts, ms, own, styling } = each;
  process.stdout.write(
    `${figures(costOf(each))}: ${drafts} drafts, ${figures(ms)} ms of ${figures(own)}, ${code}, ${garment} ${body} ${JSON.stringify(styling)}\n`,
  );
}
