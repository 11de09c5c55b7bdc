import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { tableIn } from '../../../cli/input/table-file.ts';
import { garments } from '../../../drafts/garments.ts';
import type { Evaluation } from '../../../engine/evaluate.ts';
import type { Chart } from '../../../engine/grading/chart.ts';
import { draftSizes } from '../../../engine/grading/draft-sizes.ts';
import { type Grade, gradeOf } from '../../../engine/grading/grade.ts';
import { readChart } from '../../../engine/grading/read-chart.ts';
import type { Draft } from '../../../engine/pattern/draft.ts';

/** A garment's draft by its name. */
export function draftOf(name: string): Draft {
  const draft = garments.find((one) => one.name === name);
  if (!draft) throw new Error(`no garment ${name}`);
  return draft;
}

/** What a chart that ships says, unread. */
export function shippedChart(file: string): unknown {
  const text = readFileSync(new URL(`../../../measurements/charts/${file}`, import.meta.url), 'utf8');
  return file.endsWith('.csv') ? { name: file, sizes: tableIn(file, text) } : parse(text);
}

/** A chart read for a garment; throws with the issues where it cannot be. */
export function chartOf(data: unknown, garment: Draft = draftOf('dress')): Chart {
  const read = readChart(data, { choices: garment.choices, bodies: new Map() });
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join('\n'));
  return read.value;
}

/** A garment graded by a chart; throws with the issues where it cannot be. */
export function gradedBy(garment: Draft, chart: Chart, styling: object = {}, align?: string): Grade {
  const made = [...draftSizes(garment, chart, styling)].map((size): Evaluation => {
    if (!size.ok) throw new Error(size.issues.map(({ message }) => message).join('\n'));
    return size.value;
  });
  const grade = gradeOf(garment, chart, made, align);
  if (!grade.ok) throw new Error(grade.issues.map(({ message }) => message).join('\n'));
  return grade.value;
}
