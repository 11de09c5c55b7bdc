import type { Report } from './checks/report.ts';
import { type Evaluation, evaluateIfDrawn } from './evaluate.ts';
import type { Result } from './issue.ts';
import type { Draft } from './pattern/draft.ts';
import type { Choice } from './pattern/styling.ts';
import { smallestThatHelps } from './smallest-that-helps.ts';
import { usualInstead, usualValues } from './styling-to-blame.ts';
import { counted } from './text/counted.ts';
import { listed } from './text/listed.ts';

/** Drafts that may be tried in the search for the choices that a check fails by, once it is known that they are. */
const ATTEMPTS = 2;

/**
 * Nothing more is tried for fewer choices where all that was drafted, and another like the first, would cost more than so many garments
 * with the usual choices: half of what one costs is the steps that its lines took, half the edges that are cut and checked; it comes to a
 * tenth more.
 */
const MOST_GARMENTS = 4.4;

/** So many places of failed checks are named in the first sentence; each has one of its own behind it. */
const NAMED = 3;

/**
 * A garment of which every check holds, or the refusal of one that fails any: it is not to be written. `report` is what was
 * found of it at last, its written file read back, and `holds` whether the same finds nothing in another. The refusal
 * names the checks, and the choices with whose usual values they would hold (at most three more drafts); behind it stands
 * what every check has to say.
 */
export function onlyTrue(
  draft: Draft,
  made: Evaluation,
  report: Report = made.report,
  holds: (other: Evaluation) => boolean = (other) => other.report.ok,
): Result<Evaluation> {
  if (report.ok) return { ok: true, value: made, issues: report.issues };
  const errors = report.issues.filter(({ severity }) => severity === 'error');
  const places = listed(errors.map(({ path }) => `“${path}”`));
  const named = errors.length > NAMED ? `“${errors[0]?.path}” and others` : places;
  const first = {
    code: 'draft-not-true',
    severity: 'error',
    path: errors[0]?.path ?? '',
    message: `${counted(errors.length, 'check')} of the ${report.garment} for ${report.body} ${errors.length === 1 ? 'fails' : 'fail'}, so it is not written: ${named}. ${wayOut(draft, made, holds)}`,
  } as const;
  return { ok: false, issues: [first, ...report.issues] };
}

/** What would do instead, as far as it can be found out. */
function wayOut(draft: Draft, made: Evaluation, holds: (other: Evaluation) => boolean): string {
  const { body, styling } = made;
  const changed = draft.choices.filter((choice) => styling[choice.name] !== choice.default);
  const drafted: Evaluation[] = [made];
  const helps = (choices: readonly Choice[]): boolean => {
    const other = evaluateIfDrawn(draft, body, { ...styling, ...usualValues(choices) });
    // What is not drawn cost less than the first.
    drafted.push(other ?? made);
    return other !== undefined && holds(other);
  };
  if (changed.length === 0 || !helps(changed))
    return 'It is not on account of the choices: “bodkin walk” shows every figure, “bodkin body” the measurements.';
  const usual = drafted[1] ?? made;
  const isAffordable = (): boolean =>
    [...drafted, made].reduce((sum, each) => sum + costBeside(each, usual), 0) <= MOST_GARMENTS;
  const blamed = smallestThatHelps(changed, (some) => isAffordable() && helps(some), ATTEMPTS);
  const together = blamed.length === 1 ? '' : ', all together';
  return `This would do: ${listed(usualInstead(blamed, styling))}${together}. Something between, or another choice, may do as well.`;
}

/** What a garment costs, drafted and checked, beside another. */
const costBeside = (one: Evaluation, other: Evaluation): number =>
  (one.steps / other.steps + edgesOf(one) / edgesOf(other)) / 2;

const edgesOf = ({ garment }: Evaluation): number =>
  garment.pieces.reduce((sum, { edges }) => sum + edges.length, 0);
