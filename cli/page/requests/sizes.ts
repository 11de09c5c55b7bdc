import {
  type Chart,
  draftSizes,
  type Evaluation,
  type Grade,
  gradeOf,
  pieceNest,
  type Result,
} from '../../../drafts/index.ts';
import { gradeFiles, nestBook } from '../../grade/grade-files.ts';
import { evenTable, sizesTable } from '../../grade/grade-rows.ts';
import { Unusable } from '../../input/unusable.ts';
import { used } from '../../input/used.ts';
import type { AskedDraft } from '../asked-draft.ts';
import { fileWord } from '../file-word.ts';
import type { Drafting } from '../own-draft/drafting.ts';
import { draftingOf } from '../own-draft/drafting-of.ts';
import { takenBytes } from '../taken-file.ts';
import { bodiesOf, chartRead } from './asked-chart.ts';
import { breathe } from './breathe.ts';
import { readFonts } from './fonts.ts';
import { refusal } from './made-draft.ts';
import { nearest } from './nearest-size.ts';
import { nestFaults } from './nest-words.ts';
import type { ReaderUnits } from './reader-units.ts';
import { ruleRows } from './rule-rows.ts';
import type {
  ChartFile,
  GradeShown,
  NestAsked,
  NestShown,
  SizesAnswer,
  SizesRequest,
} from './sizes-messages.ts';
import { toldIssues } from './told-issues.ts';
import { zipFile } from './zip-file.ts';

type Tell = (answer: SizesAnswer) => void;

/** The grade made last, which nests are drawn of, and the number of the newest that is wanted. */
let graded: { readonly grade: Grade; readonly units: ReaderUnits } | undefined;
let newest = 0;

/** Answers what is asked about the sizes of a chart. */
export async function sizes(request: SizesRequest, tell: Tell): Promise<void> {
  const { number } = request;
  switch (request.does) {
    case 'grade':
      newest = number;
      return gradeAnswer(request, number, tell);
    case 'nearest':
      return tell({ kind: 'nearest found', number, ...(await nearest(request)) });
    case 'nest':
      return tell({ kind: 'nest drawn', number, nest: graded && nestOf(graded, request) });
    case 'take': {
      const handed = graded ? [await written(graded.grade, request)] : [];
      return tell({ kind: 'sizes written', number, handed });
    }
  }
}

async function gradeAnswer(
  { asked, chart: file }: { readonly asked: AskedDraft; readonly chart: ChartFile },
  number: number,
  tell: Tell,
): Promise<void> {
  let needs: readonly string[] = [];
  try {
    needs = bodiesOf(file).needs;
    const drafting = await draftingOf(asked);
    const { draft } = drafting;
    const { chart, issues, units } = chartRead(draft, file);
    const reached = (done: number, of: number): void => tell({ kind: 'grading', number, done, of });
    const sizes = await drafted(drafting, chart, asked.choices, () => newest === number, reached);
    if (!sizes) return;
    const failed = sizes.flatMap((size) => (size.ok ? [] : size.issues));
    if (failed.length > 0) throw new Unusable(failed, units);
    const made = sizes.flatMap((size) => (size.ok ? [size.value] : []));
    const grade = await drafting.done(() => used(gradeOf(draft, chart, made), units));
    graded = { grade, units };
    const said = toldIssues([...issues, ...grade.issues], units);
    tell({ kind: 'graded', number, grade: gradeShown(grade, units), issues: said, needs });
  } catch (error) {
    tell({ kind: 'graded', number, grade: undefined, issues: refusal(error), needs });
  }
}

/** Every size of a chart drafted, telling how far it is; nothing where it is not wanted any more. */
async function drafted(
  { draft, own, done, ahead }: Drafting,
  chart: Chart,
  choices: AskedDraft['choices'],
  isWanted: () => boolean,
  reached: (done: number, of: number) => void,
): Promise<readonly Result<Evaluation>[] | undefined> {
  if (own) {
    const all = (): readonly Result<Evaluation>[] => [...draftSizes(draft, chart, choices)];
    await ahead(all, reached);
    return isWanted() ? done(all) : undefined;
  }
  const sizes: Result<Evaluation>[] = [];
  for (const size of draftSizes(draft, chart, choices)) {
    sizes.push(size);
    reached(sizes.length, chart.rows.length);
    await breathe();
    if (!isWanted()) return undefined;
  }
  return sizes;
}

const gradeShown = (grade: Grade, units: ReaderUnits): GradeShown => ({
  garment: grade.garment,
  chart: grade.chart.name,
  source: grade.chart.source,
  ok: grade.ok,
  units,
  sizes: grade.chart.sizes,
  cups: grade.chart.cups,
  middle: grade.chart.middle,
  pieces: [...new Set(grade.sizes.flatMap(({ pieces }) => [...pieces.keys()]))],
  girths: sizesTable(grade, units),
  even: evenTable(grade, units),
});

/** The nest of a piece along an axis, the chosen size in a heavy line, and what each size adds to the one before. */
function nestOf(
  { grade, units }: { readonly grade: Grade; readonly units: ReaderUnits },
  { piece, size, cup, along, line, beside }: NestAsked,
): NestShown | undefined {
  const held = along === 'sizes' ? cup : size;
  const rows = grade.chart.rows.filter((row) =>
    row.alone ? false : along === 'sizes' ? row.cup === cup : row.size === size,
  );
  const chosen = rows.find((row) => row.size === size && row.cup === cup);
  const svg = pieceNest(grade, { piece, line, beside }, rows, chosen?.name ?? '');
  if (svg === undefined) return undefined;
  const axis = grade.axes.find((one) => one.along === along && one.at === held);
  const rules = axis ? ruleRows(axis, piece, units) : { rules: { titles: [], rows: [] }, uneven: [] };
  const names = rows.map(({ name }) => name);
  const heavy = chosen ? `; ${chosen.name} in a heavy line` : '';
  return {
    asked: { piece, size, cup, along, line, beside },
    svg,
    words: `${piece} in ${rows.length} sizes laid on each other: ${names.join(', ')}${heavy}. ${nestFaults(axis?.uneven ?? [], grade, piece, names)}`,
    ...rules,
  };
}

/** Nests, rule tables and the grade as data, as `bodkin grade --pdf` writes them, in one ZIP. */
async function written(grade: Grade, { line }: { readonly line: NestAsked['line'] }) {
  const files = takenBytes([
    ...gradeFiles(grade, { line }),
    ['nest.pdf', await nestBook(grade, { line }, await readFonts())],
  ]);
  return zipFile(`${[grade.garment, fileWord(grade.chart.name)].filter(Boolean).join('-')}.zip`, files);
}
