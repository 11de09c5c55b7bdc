import type { Report } from '../../engine/checks/report.ts';
import { type Evaluation, evaluate } from '../../engine/evaluate.ts';
import { edgeLength } from '../../engine/geometry/edge.ts';
import type { Issue, Result } from '../../engine/issue.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { rounded } from '../../engine/text/figure.ts';
import { readJsonLine } from '../input/json-line.ts';
import { programFault } from '../output/program-fault.ts';
import { issuesResult } from '../output/walk-result.ts';
import type { WalkedLineResult } from '../results/report.ts';
import { type ExitCode, FAULT } from '../session.ts';

/** One line of `walk --bodies`: the JSON to print, and what it means for the exit code. */
export interface WalkedLine {
  readonly text: string;
  readonly code: ExitCode;
}

/** So many issues of a line are told, the gravest first; the rest are counted. */
const mostIssues = 20;

const gravestFirst = (issues: readonly Issue[]): readonly Issue[] =>
  (['error', 'warning', 'note'] as const).flatMap((severity) =>
    issues.filter((issue) => issue.severity === severity),
  );

/**
 * Drafts and checks the body of one line. A line that cannot be read, or a body that cannot be drafted, gives a
 * result with its issues like any other: the stream goes on. `lengths` tells finished girths and lengths of edges too.
 */
export function walkLine(
  draft: Draft,
  styling: unknown,
  line: { readonly number: number; readonly text: string | undefined },
  clock: () => number,
  lengths = false,
): WalkedLine {
  const start = clock();
  const { id, body, issue } = readLine(line.number, line.text);
  const evaluated = issue ? { ok: false as const, issues: [issue] } : drafted(draft, body, styling);
  return answer(id, evaluated, clock() - start, lengths);
}

/** The answer for a line over which the program itself came to an end. */
export const faultOf = (line: { readonly number: number }, error: unknown): WalkedLine =>
  answer(line.number, { ok: false, issues: [faultOnBody(error)] }, 0);

function answer(
  id: string | number,
  evaluated: Result<Evaluation>,
  milliseconds: number,
  lengths = false,
): WalkedLine {
  const report = evaluated.ok ? evaluated.value.report : undefined;
  const result: WalkedLineResult = {
    id,
    ...verdict(report, evaluated.issues),
    milliseconds: rounded(milliseconds, 2),
    ...(lengths && lengthsOf(evaluated.ok ? evaluated.value : undefined)),
  };
  return { text: `${JSON.stringify(result)}\n`, code: codeOf(report, evaluated.issues) };
}

/** What an answer means for the exit code: a fault of the program is graver than anything that is wrong with the input. */
export const codeOf = (
  report: Pick<Report, 'ok'> | undefined,
  issues: readonly Pick<Issue, 'code'>[],
): ExitCode =>
  issues.some(({ code }) => code === 'program-fault') ? FAULT : report ? (report.ok ? 0 : 1) : 2;

/** How a body came out, in a few figures; without a report nothing was drafted. */
export const verdict = (report: Report | undefined, issues: readonly Issue[]) => ({
  ok: report?.ok ?? false,
  issues: issuesResult(gravestFirst(issues).slice(0, mostIssues)),
  issuesLeftOut: Math.max(0, issues.length - mostIssues),
  worst: {
    seam: largest(report?.seams.map((seam) => seam.mismatch)),
    join: largest(report?.joins.map((join) => join.angle)),
    girth: largest(report?.girths.map((girth) => girth.error)),
  },
});

/** Finished girths by level, and the length of every edge by piece, mm; nothing in them where nothing was drafted. */
const lengthsOf = (made: Evaluation | undefined) => ({
  girths: Object.fromEntries(
    made?.report.girths.map(({ level, finished }) => [level, rounded(finished, decimals)]) ?? [],
  ),
  edges: Object.fromEntries(
    made?.garment.pieces.map(({ name, edges }) => [
      name,
      Object.fromEntries(edges.map((edge) => [edge.name, rounded(edgeLength(edge), decimals)])),
    ]) ?? [],
  ),
});

/** Decimals of a length, mm. */
const decimals = 3;

/** A fault of the program on one body must not take the results of all others with it. */
export function drafted(draft: Draft, body: unknown, styling: unknown): Result<Evaluation> {
  try {
    return evaluate(draft, body, styling);
  } catch (error) {
    return { ok: false, issues: [faultOnBody(error)] };
  }
}

/** Told of a body on which the program itself fails. */
export const faultOnBody = (error: unknown): Issue => programFault(error, 'on this body');

/** The longest id of a body, so that what is answered stays in proportion to what is asked. */
const longestId = 200;

/** What a line says: the body's own `id`, or its name, or the number of its line; and the body, or why it cannot be read. */
export function readLine(
  number: number,
  text: string | undefined,
): { readonly id: string | number; readonly body?: unknown; readonly issue?: Issue } {
  const read = readJsonLine(number, text);
  if (read.issue) return { id: number, issue: read.issue };
  const { data } = read;
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return { id: number, body: data };
  const { id, ...body } = data as Record<string, unknown>;
  if (typeof id === 'string' && id.length > longestId)
    return {
      id: number,
      issue: {
        code: 'id-too-long',
        severity: 'error',
        path: `line ${number}`,
        message: `The id on line ${number} has ${id.length} signs, and may have ${longestId}.`,
      },
    };
  const own = [id, body.name].find((word) => typeof word === 'string' || typeof word === 'number');
  return { id: typeof own === 'string' || typeof own === 'number' ? own : number, body };
}

/** The largest in size, or null when there is nothing to compare. */
const largest = (values: readonly number[] | undefined): number | null =>
  values && values.length > 0 ? Math.max(...values.map(Math.abs)) : null;
