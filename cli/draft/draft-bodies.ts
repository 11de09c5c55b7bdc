import { join } from 'node:path';
import { type Evaluation, evaluate } from '../../engine/evaluate.ts';
import type { Result } from '../../engine/issue.ts';
import { onlyTrue } from '../../engine/only-true.ts';
import { counted } from '../../engine/text/counted.ts';
import type { Unit } from '../../engine/text/units.ts';
import type { Also } from '../files/cutting-files.ts';
import { writeFiles } from '../files/write-files.ts';
import type { AskedGarment } from '../garment/drafted-garment.ts';
import { bodyLines, sizeOf } from '../input/bodies-file.ts';
import { unusable } from '../input/unusable.ts';
import { codeOf, faultOnBody, readLine } from '../many-bodies/walk-line.ts';
import { progress } from '../output/progress.ts';
import { unitsShown } from '../output/reader.ts';
import { say, tell } from '../output/say.ts';
import { countIssues, sayIssues } from '../output/say-issues.ts';
import { type Column, table } from '../output/table.ts';
import { issuesResult, json } from '../output/walk-result.ts';
import type { DraftedBodiesResult } from '../results/drafted-bodies.ts';
import type { ExitCode, Session } from '../session.ts';
import { type BodyFiles, bodyFiles, namedBody } from './body-files.ts';

/** What became of one body of a file. */
interface DraftedBody {
  readonly id: string | number;
  /** Where it was written; none where it could not be drafted. */
  readonly folder: string | undefined;
  readonly made: Pick<Result<Evaluation>, 'ok' | 'issues'>;
}

/** A body with its files, or why it has none. */
type MadeBody = Result<BodyFiles>;

const columns: readonly Column[] = [
  { title: 'body' },
  { title: 'folder' },
  { title: 'all true' },
  { title: 'issues' },
];

/**
 * Drafts every body of a file and writes each into a folder of its own. One that cannot be drafted keeps no other from it,
 * nor does one over which the program itself fails. The answer is the gravest of all: 2 where any cannot be drafted. Of each
 * body only its issues are kept, so that memory does not grow with the drawings.
 */
export async function draftBodies(
  session: Session,
  asked: AskedGarment,
  file: string,
  {
    out,
    also,
    units,
    json: asJson,
  }: {
    readonly out: string;
    readonly also?: readonly Also[] | undefined;
    readonly units?: Unit | undefined;
    readonly json?: true | undefined;
  },
): Promise<ExitCode> {
  const size = await sizeOf(file);
  const bar = progress(session, 'drafting');
  const taken = new Set<string>();
  const all: DraftedBody[] = [];
  try {
    for await (const line of bodyLines(file)) {
      const { id, body, issue } = readLine(line.number, line.text);
      const made: MadeBody = issue
        ? { ok: false, issues: [issue] }
        : madeOf(asked, namedBody(body, id), { also, units: units ?? unitsShown(body) });
      const folder = made.ok ? folderFor(String(id), taken) : undefined;
      if (made.ok && folder !== undefined) await write(join(out, folder), made.value);
      all.push({ id, folder, made: { ok: made.ok, issues: made.issues } });
      bar.reached(size > 0 ? line.end / size : 0);
    }
  } finally {
    bar.done();
  }
  if (all.length === 0)
    throw unusable('no-measurements', file, `There are no measurements in ${file}: write one body a line.`);
  const result: DraftedBodiesResult = all.map(resultOf);
  if (asJson) await session.write(json(result));
  else await say(session, table(columns, all.map(rowOf), session.columns));
  for (const { id, made } of all)
    if (!made.ok)
      sayIssues(
        session,
        made.issues.map((one) => ({ ...one, path: `${id}: ${one.path}` })),
        'mm',
      );
  tell(
    session,
    `wrote ${counted(all.filter(({ folder }) => folder !== undefined).length, 'folder')} into ${out}\n`,
  );
  return Math.max(...all.map(({ made }) => (made.ok ? 0 : codeOf(undefined, made.issues)))) as ExitCode;
}

/** The files of one body, all of them true; the program's own fault on it is an issue like any other. */
function madeOf(
  { draft, styling, date }: AskedGarment,
  body: unknown,
  { also, units }: { readonly also: readonly Also[] | undefined; readonly units: Unit },
): MadeBody {
  try {
    const found = evaluate(draft, body, styling);
    if (!found.ok) return found;
    const as = { date, units };
    const files = bodyFiles(found.value, { ...as, also });
    const made = onlyTrue(draft, found.value, files.report, (other) => bodyFiles(other, as).report.ok);
    return made.ok ? { ...made, value: files } : made;
  } catch (error) {
    return { ok: false, issues: [faultOnBody(error)] };
  }
}

/** Pieces, sheet and report of one body, as for a body alone. */
const write = (folder: string, { drawings, cuttingFiles, reportFile }: BodyFiles): Promise<void> =>
  writeFiles(folder, new Map([...drawings(), ...cuttingFiles, ...reportFile()]));

/** The longest name of a folder. */
const longest = 60;

/** A folder's name from a body's: letters and figures with hyphens between, and a number where another has that name. */
function folderFor(name: string, taken: Set<string>): string {
  const bare = name
    .normalize('NFKC')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  const first = Array.from(bare).slice(0, longest).join('') || 'body';
  let folder = first;
  for (let i = 2; taken.has(folder.toLowerCase()); i++) folder = `${first}-${i}`;
  taken.add(folder.toLowerCase());
  return folder;
}

const rowOf = ({ id, folder, made }: DraftedBody): readonly string[] => [
  String(id),
  folder ?? '',
  made.ok ? 'yes' : 'not written',
  countIssues(made.issues),
];

const resultOf = ({ id, folder, made }: DraftedBody) => ({
  id,
  ok: made.ok,
  folder: folder ?? null,
  issues: issuesResult(made.issues),
});
