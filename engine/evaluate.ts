import type { Body } from './body/body.ts';
import { readBody } from './body/read.ts';
import { isContradictory } from './body/reconcile/reconcile.ts';
import { reconcileOffered } from './body/reconcile/say-moved.ts';
import { draftBounds } from './checks/bounds.ts';
import { checkGarment } from './checks/check-garment.ts';
import { cutReady } from './checks/cut-ready.ts';
import type { Report } from './checks/report.ts';
import { onlyWhether } from './constraints/only-whether.ts';
import { cuttingLines } from './finishing/cut-lines.ts';
import type { Edge } from './geometry/curve.ts';
import { PARALLEL } from './geometry/tolerance.ts';
import type { Issue, Result } from './issue.ts';
import type { Draft } from './pattern/draft.ts';
import type { Garment } from './pattern/garment.ts';
import type { Styling } from './pattern/styling.ts';
import { resolveStyling } from './pattern/styling-values.ts';
import { isUnsolved, stylingToBlame } from './styling-to-blame.ts';

/** One garment drafted for one body, with everything that was found out on the way. */
export interface Evaluation {
  readonly body: Body;
  readonly styling: Styling;
  readonly garment: Garment;
  /** The cutting lines by piece name. */
  readonly cutLines: ReadonlyMap<string, Edge>;
  /** All checks; its issues hold the remarks of the body's reader and of the draft too. */
  readonly report: Report;
}

/**
 * The one way in: measurements and styling as they came from a file, to pieces that were checked. Pure; the same
 * words give the same garment to the byte.
 *
 * Fails with the issues of body and styling together when either cannot be used, and with the draft's own when no
 * garment can be drawn for this body. A garment that was drawn but fails a check is a success with `report.ok`
 * false.
 */
export function evaluate(draft: Draft, bodyData: unknown, stylingData?: unknown): Result<Evaluation> {
  const body = readBody(bodyData);
  const styling = resolveStyling(draft.choices, stylingData);
  const read = [...body.issues, ...styling.issues];
  if (!body.ok || !styling.ok) return { ok: false, issues: read };
  // Reasons take long to find, and which are to be found is known only when the draft has failed.
  const drawn = draft.draw(body.value, styling.value, onlyWhether);
  if (!drawn.ok) {
    const issues = refusal(draft, body.value, styling.value, drawn.issues);
    const offered = isContradictory(body.value) ? [reconcileOffered] : [];
    return { ok: false, issues: [...read, ...issues, ...offered] };
  }
  const garment = drawn.value;
  const cutLines = cuttingLines(garment, PARALLEL);
  const checked = checkGarment(garment, draftBounds);
  const cut = cutReady(garment, cutLines, draftBounds.cutLine);
  const issues = distinct([...read, ...drawn.issues, ...garment.issues, ...checked.issues, ...cut]);
  const report = { ...checked, issues, ok: !issues.some(({ severity }) => severity === 'error') };
  return { ok: true, value: { body: body.value, styling: styling.value, garment, cutLines, report }, issues };
}

/** Why a draft cannot be drawn: on account of the styling or a fitting, where it could be without; else of measurements. */
function refusal(draft: Draft, body: Body, styling: Styling, issues: readonly Issue[]): readonly Issue[] {
  const others = issues.filter((issue) => !isUnsolved(issue));
  if (others.some(({ severity }) => severity === 'error')) return others;
  const blamed = stylingToBlame(draft, body, styling, issues);
  return blamed ? [blamed, ...others] : draft.draw(body, styling).issues;
}

/** The same remark made at two places is said once. */
function distinct(issues: readonly Issue[]): readonly Issue[] {
  const seen = new Map(issues.map((i) => [`${i.code}\n${i.path}\n${i.message}`, i]));
  return [...seen.values()];
}
