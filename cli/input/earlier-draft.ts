import { stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { KnownDraft } from '../../engine/comparison/known-draft.ts';
import { sameDraft } from '../../engine/comparison/same-draft.ts';
import { sheetDraft } from '../../engine/comparison/sheet-draft.ts';
import type { Issue, Result } from '../../engine/issue.ts';
import { dataIn, largest } from './data-in.ts';
import { largestDocument, readTextFile } from './read-data.ts';
import { isReport, readReport } from './read-report.ts';
import { Unusable, unusable } from './unusable.ts';

/** What `--before` names: a draft that was written earlier, or measurements to draft again. */
export type Earlier =
  | { readonly kind: 'written'; readonly draft: KnownDraft; readonly issues: readonly Issue[] }
  | { readonly kind: 'measurements'; readonly data: unknown };

/** The help of `--before` wherever it is. */
export const beforeWords = 'report.json or sheet.svg of an earlier draft, the folder they lie in';

const [SHEET, REPORT] = ['sheet.svg', 'report.json'];

/**
 * Reads an earlier draft. A sheet has the outlines and the measurements, a report the styling too: whichever is named, the
 * other one is looked for beside it and counts too, if it is of the same draft.
 *
 * Throws `Unusable` when what is named cannot be read; what lies beside it becomes a note.
 */
export async function readEarlier(path: string): Promise<Earlier> {
  if (path !== '-' && (await isFolder(path))) return readFolder(path);
  const text = await readTextFile(path, largestDocument);
  if (/^\uFEFF?\s*</.test(text)) {
    const sheet = usable(sheetDraft(text));
    return written(sheet, path === '-' ? undefined : await beside(join(dirname(path), REPORT)));
  }
  const report = reportIn(text);
  if (report === undefined && text.length > largest)
    throw unusable(
      'file-too-large',
      path,
      `${path} is no report of a draft, and too large for measurements: it has more than ${largest / 1e6} MB.`,
    );
  const data = report ?? dataIn(path, text);
  if (!isReport(data)) return { kind: 'measurements', data };
  return written(
    usable(readReport(path, data)),
    path === '-' ? undefined : await beside(join(dirname(path), SHEET)),
  );
}

/** The draft in a folder: of its sheet and its report the sheet is believed where they differ. */
async function readFolder(folder: string): Promise<Earlier> {
  const [sheet, report] = [await beside(join(folder, SHEET)), await beside(join(folder, REPORT))];
  const [first, other] = sheet ? [sheet, report] : [report, undefined];
  if (!first)
    throw unusable('no-earlier-draft', folder, `There is neither ${SHEET} nor ${REPORT} in ${folder}.`);
  return written(usable(first.read), other);
}

/** A file that lies where a sheet or a report would; nothing where there is none. */
interface Beside {
  readonly file: string;
  readonly read: Result<KnownDraft>;
}

async function beside(file: string): Promise<Beside | undefined> {
  if (!(await stat(file).catch(() => undefined))?.isFile()) return undefined;
  const text = await readTextFile(file, largestDocument);
  return { file, read: file.endsWith(SHEET) ? sheetDraft(text) : readReport(file, reportIn(text)) };
}

function written(
  { value, issues }: Extract<Result<KnownDraft>, { ok: true }>,
  other: Beside | undefined,
): Earlier {
  if (!other) return { kind: 'written', draft: value, issues };
  const { read, file } = other;
  if (!read.ok)
    return { kind: 'written', draft: value, issues: [...issues, leftOut(file, 'cannot be read')] };
  if (!sameDraft(value, read.value))
    return { kind: 'written', draft: value, issues: [...issues, leftOut(file, 'is of another draft')] };
  // A report has more figures than a sheet: also those that no paper shows.
  const [sheet, report] = value.sheet ? [value, read.value] : [read.value, value];
  return { kind: 'written', draft: { ...sheet, ...report }, issues: [...issues, ...read.issues] };
}

const leftOut = (file: string, why: string): Issue => ({
  code: 'not-of-that-draft',
  severity: 'note',
  path: file,
  message: `${file} ${why} and was left out of the comparison.`,
});

/** The report of a dress has 1300 commas: a text of more letters or commas than these is something else. */
const [LONGEST, MOST_COMMAS] = [1_000_000, 30_000];

/** A report as data; nothing where a text is no JSON, or more than any report. */
function reportIn(text: string): unknown {
  if (text.length > LONGEST || text.split(',').length > MOST_COMMAS) return undefined;
  try {
    const data: unknown = JSON.parse(text);
    return isReport(data) ? data : undefined;
  } catch {
    return undefined;
  }
}

const isFolder = async (path: string): Promise<boolean> =>
  (await stat(path).catch(() => undefined))?.isDirectory() ?? false;

/** What could be read, with its remarks, or the end of the command. */
function usable(read: Result<KnownDraft>): Extract<Result<KnownDraft>, { ok: true }> {
  if (!read.ok) throw new Unusable(read.issues);
  return read;
}
