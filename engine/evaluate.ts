import type { Body } from './body/body.ts';
import { readBody } from './body/read.ts';
import { isContradictory } from './body/reconcile/reconcile.ts';
import { reconcileOffered } from './body/reconcile/say-moved.ts';
import { draftBounds } from './checks/bounds.ts';
import { checkGarment } from './checks/check-garment.ts';
import { cutReady } from './checks/cut-ready.ts';
import type { Report } from './checks/report.ts';
import { type Attempt, noted, stepsOf } from './constraints/attempts.ts';
import { type Solver, solve } from './constraints/solve.ts';
import { draftToBlame } from './draft-to-blame.ts';
import { cuttingLines } from './finishing/cut-lines.ts';
import type { Edge } from './geometry/curve.ts';
import { PARALLEL } from './geometry/tolerance.ts';
import type { Issue, Result } from './issue.ts';
import type { Draft } from './pattern/draft.ts';
import type { Garment } from './pattern/garment.ts';
import type { Styling } from './pattern/styling.ts';
import { madeOtherwise, resolveStyling } from './pattern/styling-values.ts';
import { isUnsolved, stylingToBlame } from './styling-to-blame.ts';
import { withFields } from './when-asked.ts';

/** One garment drafted for one body, with everything that was found out on the way. */
export interface Evaluation {
  readonly body: Body;
  readonly styling: Styling;
  readonly garment: Garment;
  /** The cutting lines by piece name. */
  readonly cutLines: ReadonlyMap<string, Edge>;
  /** All checks; its issues hold the remarks of the body's reader and of the draft too. */
  readonly report: Report;
  /** Steps that it took to find its lines, usually some thirty. */
  readonly steps: number;
}

/**
 * The one way in: measurements and styling as they came from a file, to pieces that were checked. Pure; the same
 * words give the same garment to the byte.
 *
 * Fails with the issues of body and styling together when either cannot be used, and with the draft's own when no
 * garment can be drawn for this body. A garment that was drawn but fails a check is a success with `report.ok`
 * false. `solver` finds the places in its sketches: another than `solve` may know where to look first.
 */
export function evaluate(
  draft: Draft,
  bodyData: unknown,
  stylingData?: unknown,
  solver: Solver = solve,
): Result<Evaluation> {
  const body = readBody(bodyData);
  const styling = resolveStyling(draft.choices, stylingData);
  const read = [...body.issues, ...styling.issues];
  if (!body.ok || !styling.ok) return { ok: false, issues: read };
  return evaluateRead(draft, body.value, styling.value, read, solver);
}

/** The same for what has been read; `read` is what its readers had to say. */
export function evaluateRead(
  draft: Draft,
  body: Body,
  styling: Styling,
  read: readonly Issue[] = [],
  solver: Solver = solve,
): Result<Evaluation> {
  // Reasons take long to find, and which are to be found is known only when the draft has failed.
  const { solver: noting, attempts } = noted(solver);
  const drawn = draft.draw(body, styling, noting);
  if (!drawn.ok) {
    const issues = refusal(draft, body, styling, drawn.issues, attempts);
    const offered = isContradictory(body) ? [reconcileOffered] : [];
    return { ok: false, issues: [...read, ...issues, ...offered].map((issue) => placed(issue, draft)) };
  }
  try {
    return checked(draft, body, styling, drawn, read, stepsOf(attempts));
  } catch (error) {
    // The pieces of the program's own drafts are as the types say; what else a draft hands back only its writer knows.
    if (!draft.placeOf || !(error instanceof Error)) throw error;
    return { ok: false, issues: [...read, placed(unfit(error), draft)] };
  }
}

/** The same where only a garment is of use: nothing where none can be drawn, and no reasons are looked for. */
export function evaluateIfDrawn(draft: Draft, body: Body, styling: Styling): Evaluation | undefined {
  const { solver, attempts } = noted();
  const drawn = draft.draw(body, styling, solver);
  if (!drawn.ok) return undefined;
  const made = checked(draft, body, styling, drawn, [], stepsOf(attempts));
  return made.ok ? made.value : undefined;
}

/** What a draft of one's own handed back that the checks break over. */
const unfit = ({ message }: Error): Issue => ({
  code: 'draft-garment-unfit',
  severity: 'error',
  path: 'draw',
  message: `The checks cannot be carried out on what the draft hands back: ${message}.`,
});

/** A garment as it was drawn, with its cutting lines and all that the checks find. */
function checked(
  draft: Draft,
  body: Body,
  styling: Styling,
  drawn: Extract<Result<Garment>, { readonly ok: true }>,
  read: readonly Issue[],
  steps: number,
): Result<Evaluation> {
  const { wearer, size, fitting } = body;
  const garment = withFields(drawn.value, {
    // One of a copied draft may still be drawn as the one it was copied from.
    name: draft.name,
    choices: madeOtherwise(draft.choices, styling),
    drawnFor: { wearer, size, fitting },
  });
  const cutLines = cuttingLines(garment, PARALLEL);
  const walked = checkGarment(garment, draftBounds);
  const cut = cutReady(garment, cutLines, draftBounds.cutLine);
  const found = distinct([...read, ...drawn.issues, ...garment.issues, ...walked.issues, ...cut]);
  const issues = found.map((issue) => placed(issue, draft));
  const report = { ...walked, issues, ok: !issues.some(({ severity }) => severity === 'error') };
  return { ok: true, value: { body, styling, garment, cutLines, report, steps }, issues };
}

/**
 * Why a draft cannot be drawn: on account of the styling or a fitting, where it could be without; else of measurements, or
 * of the draft itself, where it could be drawn for nobody.
 */
function refusal(
  draft: Draft,
  body: Body,
  styling: Styling,
  issues: readonly Issue[],
  attempts: readonly Attempt[],
): readonly Issue[] {
  const others = issues.filter((issue) => !isUnsolved(issue));
  if (others.some(({ severity }) => severity === 'error')) return others;
  const blamed = stylingToBlame(draft, body, styling, issues, attempts);
  return blamed ? [blamed, ...others] : draftToBlame(draft, draft.draw(body, styling).issues);
}

/** An issue that fails a draft, with the line of the draft's source where what it is about is written, if that is known. */
function placed(issue: Issue, { placeOf }: Draft): Issue {
  if (!placeOf || issue.severity !== 'error' || issue.source) return issue;
  const quoted = [...issue.message.matchAll(/["“]([^"“”]+)["”]/g)].map(([, word = '']) => word);
  const source = placeOf([issue.path, ...issue.path.split('/'), ...quoted]);
  return source ? { ...issue, source } : issue;
}

/** The same remark made at two places is said once. */
function distinct(issues: readonly Issue[]): readonly Issue[] {
  const seen = new Map(issues.map((i) => [`${i.code}\n${i.path}\n${i.message}`, i]));
  return [...seen.values()];
}
