import { causeWords } from '../../engine/grading/cause-words.ts';
import type { Grade } from '../../engine/grading/grade.ts';
import { inTiles, onOnePage } from '../../engine/grading/nest/nest-pages.ts';
import { type NestOptions, nestFiles, nestSheets } from '../../engine/grading/nest/nest-papers.ts';
import { nestPdf } from '../../engine/grading/nest/nest-pdf.ts';
import type { AxisGrade } from '../../engine/grading/rule-table.ts';
import type { Fonts } from '../../engine/render/pdf/fonts.ts';
import type { Paper } from '../../engine/render/tiles/papers.ts';
import { fixed } from '../../engine/text/figure.ts';
import { csv } from '../input/csv.ts';
import { issuesResult, json } from '../output/walk-result.ts';
import type { GradeResult } from '../results/grade.ts';

/** What `grade` writes: nests, the rule table as CSV, one for each way of the chart, and all of it as JSON. */
export function gradeFiles(grade: Grade, nests: NestOptions): ReadonlyMap<string, string> {
  const files = new Map(nestFiles(grade, nests));
  for (const along of ['sizes', 'cups'] as const) {
    const axes = grade.axes.filter((axis) => axis.along === along);
    if (axes.length > 0) files.set(along === 'sizes' ? 'grade.csv' : 'grade-cups.csv', ruleTable(axes));
  }
  files.set('grade.json', json(gradeResult(grade)));
  return files;
}

/** All nests as a PDF whose sizes are layers: each on a page as large as it is, or in tiles of a paper. */
export const nestBook = (
  grade: Grade,
  nests: NestOptions,
  fonts: Fonts,
  paper?: Paper,
): Promise<Uint8Array> =>
  nestPdf(
    nestSheets(grade, nests).map((sheet) => (paper ? inTiles(sheet, paper) : onOnePage(sheet))),
    `${grade.garment}, ${grade.chart.name}`,
    fonts,
  );

/**
 * The grade rule table: a row for the length of every edge and for x and y of every corner and notch, at the first size and
 * the steps from size to size, mm.
 */
function ruleTable(axes: readonly AxisGrade[]): string {
  const [first] = axes;
  const names = first?.names ?? [];
  const steps = names.slice(1).map((name, i) => `${names[i]} to ${name}`);
  const head = [first?.along === 'sizes' ? 'cup' : 'size', 'piece', 'laid on', 'kind', 'name', 'quantity'];
  const rows = axes.flatMap(({ at, pieces }) =>
    pieces.flatMap(({ piece, anchor, edges, points }) => [
      ...edges.map(({ edge, lengths, steps: by }) => [
        ...[at, piece, anchor, 'edge', edge, 'length'],
        ...[lengths[0] ?? 0, ...by].map(rounded),
      ]),
      ...points.flatMap(({ kind, point, places, steps: by }) =>
        (['x', 'y'] as const).map((axis) => [
          ...[at, piece, anchor, kind, point, `d${axis}`],
          ...[places[0]?.[axis] ?? 0, ...by.map((move) => move[axis])].map(rounded),
        ]),
      ),
    ]),
  );
  return csv([[...head, `at ${names[0] ?? ''}`, ...steps], ...rows]);
}

/** The same and everything else as data; lengths in mm. */
export const gradeResult = ({ garment, chart, sizes, axes, issues, ok }: Grade): GradeResult => ({
  ok,
  garment,
  chart: { name: chart.name, source: chart.source, sizes: chart.sizes, cups: chart.cups.filter(Boolean) },
  sizes: sizes.map(({ of, made }) => ({
    name: of.name,
    size: of.size,
    cup: of.cup || null,
    alone: of.alone,
    ok: made.report.ok,
    given: of.given,
    girths: made.report.girths.map(({ level, body, ease, finished }) => ({
      level,
      body: rounded(body),
      ease: rounded(ease),
      finished: rounded(finished),
    })),
    issues: issuesResult(made.report.issues),
  })),
  axes: axes.map(({ along, at, names, pieces, looked, greatest, uneven }) => ({
    along,
    at: at || null,
    names,
    pieces: pieces.map(({ piece, number, anchor, edges, points }) => ({
      piece,
      number,
      anchor,
      edges: edges.map(({ edge, lengths, steps }) => ({
        edge,
        lengths: lengths.map(rounded),
        steps: steps.map(rounded),
      })),
      points: points.map(({ kind, point, places, steps }) => ({
        kind,
        point,
        places: places.map(({ x, y }) => ({ x: rounded(x), y: rounded(y) })),
        steps: steps.map(({ x, y }) => ({ dx: rounded(x), dy: rounded(y) })),
      })),
    })),
    looked,
    greatest: greatest === undefined ? null : rounded(greatest),
    uneven: uneven.map(({ cause, before, after, allowed, along: _, at: __, ...where }) => ({
      ...where,
      before: rounded(before),
      after: rounded(after),
      allowed: rounded(allowed),
      cause: { ...cause, words: causeWords(cause) },
    })),
  })),
  issues: issuesResult(issues),
});

/** To a thousandth of a millimetre, finer than any pen. */
const rounded = (mm: number): number => Number(fixed(mm, 3));
