import type { Group, Tried } from '../../engine/proof/groups.ts';
import type { Idle } from '../../engine/proof/idle.ts';
import type { SketchNotes } from '../../engine/proof/sketch-notes.ts';
import type { TrialCase } from '../../engine/proof/trial-case.ts';
import type { TrialOutcome } from '../../engine/proof/verdict.ts';
import { sentence } from '../output/say-issues.ts';
import { issueResult } from '../output/walk-result.ts';
import type { ProofResult } from '../results/proof.ts';

/** A draft held to everybody: what was tried, what came of it, and what its writer should know of its sketches. */
export interface Proof {
  readonly garment: string;
  readonly tries: number;
  readonly seed: number;
  readonly tried: readonly Tried[];
  readonly groups: readonly Group[];
  readonly notes: SketchNotes | undefined;
  readonly idle: Idle;
}

const outcomes: readonly TrialOutcome[] = ['true', 'refused', 'not true', 'thrown'];

const words: Readonly<Record<TrialOutcome, string>> = {
  true: 'drawn true',
  refused: 'refused by name',
  'not true': 'drawn and not true',
  thrown: 'thrown',
};

/** What `prove --json` prints. `ok`: somebody can be drafted, and nothing is to be mended. */
export function proofResult({ garment, tries, seed, tried, groups, notes, idle }: Proof): ProofResult {
  const count = (outcome: TrialOutcome): number => countOf(tried, outcome);
  const counts = {
    true: count('true'),
    refused: count('refused'),
    'not true': count('not true'),
    thrown: count('thrown'),
  };
  return {
    ok: countOf(tried, 'true') > 0 && groups.every(({ failure }) => !failure),
    garment,
    tries,
    seed,
    drafts: tried.length,
    counts,
    groups: groups.map(({ outcome, code, failure, count, smallest, issue }) => ({
      outcome,
      code,
      failure,
      count,
      smallest: { body: { ...smallest.body }, styling: { ...smallest.styling } },
      issue: issueResult(issue),
    })),
    sketch: notes ?? null,
    idle: { measurements: [...idle.measurements], choices: [...idle.choices] },
  };
}

/** The same in words, what is to be mended first. */
export function proofText(proof: Proof): string {
  const { garment, tried, groups, seed, notes, idle } = proof;
  const counts = outcomes.map((outcome) => `${countOf(tried, outcome)} ${words[outcome]}`).join(', ');
  const none = countOf(tried, 'true') === 0 ? ['Nobody can be drafted: mend this first.\n'] : [];
  return [
    `${garment}, held to ${tried.length} drafts (seed ${seed}): ${counts}\n`,
    ...none,
    ...groups.map(groupText),
    ...(notes ? notesText(notes) : []),
    ...idleText(idle),
  ].join('\n');
}

const groupText = ({ outcome, code, failure, count, smallest, issue }: Group): string =>
  [
    `${failure ? 'to be mended, ' : ''}${words[outcome]}: ${code}, ${count} ${count === 1 ? 'draft' : 'drafts'}`,
    `  for ${caseText(smallest)}`,
    `  ${sentence(issue)}\n`,
  ].join('\n');

/** The body by name, and the choices as `--set` takes them. */
function caseText({ body, styling }: TrialCase): string {
  const made = Object.entries(styling).map(([name, value]) => `--set ${name}=${quoted(String(value))}`);
  return [
    `${body.name ?? 'a body without a name'}`,
    made.length > 0 ? made.join(' ') : 'all choices as usual',
  ].join(', ');
}

const quoted = (value: string): string => (/^[\w.-]+$/.test(value) ? value : `"${value}"`);

const listed = (says: string, names: readonly string[]): readonly string[] =>
  names.length === 0 ? [] : [`  ${says}: ${names.join('; ')}\n`];

function idleText({ measurements, choices }: Idle): readonly string[] {
  const lines = [
    ...listed('measurements that shapedBy names, and that change nothing', measurements),
    ...listed('choices that change nothing', choices),
  ];
  return lines.length === 0 ? [] : [`look again\n${lines.join('')}`];
}

function notesText({ redundant, wished, adrift }: SketchNotes): readonly string[] {
  const lines = [
    ...listed('relations that say nothing new', redundant),
    ...listed('held by nothing, and so left at their first guess', adrift),
    ...listed('points left to the wishes', wished),
  ];
  return lines.length === 0 ? [] : [`its sketches\n${lines.join('')}`];
}

const countOf = (tried: readonly Tried[], outcome: TrialOutcome): number =>
  tried.filter(({ verdict }) => verdict.outcome === outcome).length;
