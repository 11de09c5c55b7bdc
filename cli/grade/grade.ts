import { Command, Option } from 'commander';
import type { Evaluation } from '../../engine/evaluate.ts';
import { alignments } from '../../engine/grading/anchor.ts';
import type { Chart } from '../../engine/grading/chart.ts';
import { chosenSizes } from '../../engine/grading/chosen-sizes.ts';
import { draftSizes, sizeToMake } from '../../engine/grading/draft-sizes.ts';
import { type Grade, gradeOf } from '../../engine/grading/grade.ts';
import { type NestLine, nestLines } from '../../engine/grading/nest/nest.ts';
import type { NestOptions } from '../../engine/grading/nest/nest-papers.ts';
import type { Issue } from '../../engine/issue.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { provenGradedCuttingFile } from '../../engine/proven-cutting-file.ts';
import { type Paper, paperWords, readPaper } from '../../engine/render/tiles/papers.ts';
import { alsoOption, alsoResult, alsoWords } from '../files/also.ts';
import { type Also, alsoWritten } from '../files/cutting-files.ts';
import { readFonts } from '../files/fonts.ts';
import { leftFromEarlier, ofGrade } from '../files/left-from-earlier.ts';
import { writeFiles } from '../files/write-files.ts';
import { askedGarment } from '../garment/drafted-garment.ts';
import { jsonOption, setOption, stylingOption } from '../input/options.ts';
import { readChartFile } from '../input/read-chart.ts';
import { Unusable, unusable } from '../input/unusable.ts';
import { used } from '../input/used.ts';
import { verdictLine } from '../output/heading.ts';
import { plain } from '../output/plain.ts';
import { progress } from '../output/progress.ts';
import { readerOf } from '../output/reader.ts';
import { tell } from '../output/say.ts';
import { sayIssues } from '../output/say-issues.ts';
import { json } from '../output/walk-result.ts';
import { wrapped } from '../output/wrap.ts';
import type { ExitCode, Session } from '../session.ts';
import { gradeFiles, gradeResult, nestBook } from './grade-files.ts';
import { gradeTable } from './grade-table.ts';
import { sayNearest } from './nearest.ts';

interface GradeOptions {
  readonly sizes: string;
  readonly units?: string;
  readonly align: string;
  readonly out?: string;
  readonly pdf?: true;
  readonly only?: string;
  readonly lines: NestLine;
  readonly tiles?: string;
  readonly nearest?: string;
  readonly also?: readonly Also[];
  readonly styling?: string;
  readonly set?: readonly string[];
  readonly json?: true;
}

/** `bodkin grade`: every size of a chart drafted from its own measurements, and the grade that comes out. */
export const gradeCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('grade')
    .description(
      'draft a garment in every size of a chart, check that sizes are true and steps even, and write nests and grade rule tables',
    )
    .argument('<garment>', 'what to draft (see “bodkin list”)')
    .requiredOption('--sizes <file>', 'the size chart, YAML, JSON or CSV')
    .addOption(new Option('--units <unit>', 'the chart’s unit, where it says none: cm, in or mm'))
    .addOption(
      new Option(
        '--align <place>',
        `what lies on itself in all sizes: ${alignments.join(', ')}, or a corner by its name`,
      ).default(alignments[0]),
    )
    .option('--out <folder>', 'where to write nests and tables; made if it is not there')
    .option(
      '--only <sizes>',
      'show only these in nests and cutting files, with commas between: “40 C, 42 C”; tables hold all of them',
    )
    .addOption(
      new Option('--lines <line>', 'the line that nests show: that of the seams, or that to cut on')
        .choices(nestLines)
        .default(nestLines[0]),
    )
    .option('--pdf', 'write all nests as a PDF too, every size on a layer of its own')
    .option(
      '--tiles <paper>',
      `write the sizes that are shown in tiles too, 1:1 and in layers, on ${paperWords}`,
    )
    .addOption(
      new Option(
        '--nearest <body>',
        'measurements, YAML or JSON: say instead which size is nearest to her, what it is off, and which alterations bring it home',
      ).conflicts('out'),
    )
    .addOption(alsoOption().conflicts('nearest'))
    .addOption(stylingOption())
    .addOption(setOption())
    .addOption(jsonOption())
    .action(async (name: string, options: GradeOptions) => finish(await grade(session, name, options)));

async function grade(session: Session, name: string, options: GradeOptions): Promise<ExitCode> {
  if (options.also && options.out === undefined)
    throw unusable('option-missing', '--out', 'Say where cutting files go: --out FOLDER.');
  const { draft, styling } = await askedGarment(session, name, options);
  const read = await readChartFile(options.sizes, draft, options.units);
  if (options.nearest !== undefined)
    return sayNearest(session, draft, read, options.nearest, { styling, asJson: options.json === true });
  const { chart, issues } = read;
  const nests: NestOptions = {
    line: options.lines,
    only: options.only === undefined ? undefined : used(chosenSizes(chart, options.only)),
  };
  const paper = options.tiles === undefined ? undefined : used(readPaper(options.tiles));
  const made = allSizes(session, draft, chart, styling);
  const graded = used(gradeOf(draft, chart, made, options.align));
  return show(session, graded, issues, { ...options, nests, paper });
}

/** Every row of the chart, drafted; what stands in the way of any is told of all of them together. */
function allSizes(session: Session, draft: Draft, chart: Chart, styling: object): readonly Evaluation[] {
  const bar = progress(session, 'drafting');
  const made: Evaluation[] = [];
  const failed: Issue[] = [];
  let reached = 0;
  for (const size of draftSizes(draft, chart, styling)) {
    const row = chart.rows[reached];
    const kept = size.ok && row ? sizeToMake(draft, row, size.value) : size;
    if (kept.ok) made.push(kept.value);
    else failed.push(...kept.issues);
    bar.reached(++reached / chart.rows.length);
  }
  bar.done();
  if (failed.length > 0) throw new Unusable(failed);
  return made;
}

/** What is asked for, its sizes and its paper found. */
interface Asked extends GradeOptions {
  readonly nests: NestOptions;
  readonly paper: Paper | undefined;
}

async function show(
  session: Session,
  graded: Grade,
  read: readonly Issue[],
  { out, pdf, also, json: asJson, nests, paper }: Asked,
): Promise<ExitCode> {
  const reader = readerOf(session, undefined, graded.sizes[0]?.of.body);
  const { only } = nests;
  const cut = only ? graded.sizes.filter(({ of }) => only.includes(of)) : graded.sizes;
  const cutting = alsoWritten(also, 'grade', (flavour) => provenGradedCuttingFile(cut, flavour));
  if (cutting.issues.length > 0) throw new Unusable(cutting.issues);
  const files =
    out === undefined
      ? new Map<string, string | Uint8Array>()
      : new Map<string, string | Uint8Array>([
          ...gradeFiles(graded, nests),
          ...cutting.files,
          ...(pdf ? [['nest.pdf', await nestBook(graded, nests, await readFonts())] as const] : []),
          ...(paper
            ? [['nest-tiles.pdf', await nestBook(graded, nests, await readFonts(), paper)] as const]
            : []),
        ]);
  if (out !== undefined) await writeFiles(out, files);
  const left = out === undefined ? [] : await leftFromEarlier(out, ofGrade, files.keys());
  if (asJson) await session.write(json({ ...gradeResult(graded), ...alsoResult(cutting) }));
  else {
    await session.write(
      gradeHeading(session, graded) + wrapped(plain(gradeTable(graded, reader)), session.columns),
    );
    if (out !== undefined)
      tell(session, `wrote nests, grade tables${alsoWords(cutting)} and grade.json into ${out}\n`);
  }
  for (const remark of left) tell(session, remark, 2);
  sayIssues(session, [...read, ...graded.issues], reader.units);
  return graded.ok ? 0 : 1;
}

/** The first line: what was graded, by which chart, and how it came out. */
function gradeHeading(session: Session, { garment, chart, sizes, axes, ok }: Grade): string {
  const uneven = axes.reduce((sum, axis) => sum + axis.uneven.length, 0);
  const even = uneven === 0 ? 'even' : `${uneven} uneven step${uneven === 1 ? '' : 's'}`;
  return verdictLine(session, `${garment} in ${sizes.length} sizes of ${chart.name}`, ok, `, ${even}`);
}
