import type { Body, MeasurementName } from '../../engine/body/body.ts';
import { measurementWords } from '../../engine/body/measurement-words.ts';
import { bodyForm } from '../../engine/form/body-form.ts';
import type { Assumption, Form } from '../../engine/form/form.ts';
import { readPosture } from '../../engine/form/posture.ts';
import { formRemarks } from '../../engine/form/remarks.ts';
import type { Issue } from '../../engine/issue.ts';
import { formView } from '../../engine/render/form/form-view.ts';
import { formGltf } from '../../engine/render/form/gltf.ts';
import { viewNames } from '../../engine/render/form/view.ts';
import { fixed } from '../../engine/text/figure.ts';
import { decimalCell, lengthCell } from '../../engine/text/length.ts';
import { withLengthsIn } from '../../engine/text/with-lengths-in.ts';
import { writeFiles } from '../files/write-files.ts';
import { readStyling } from '../input/options.ts';
import { Unusable } from '../input/unusable.ts';
import { lengthsLine, type Reader } from '../output/reader.ts';
import { say } from '../output/say.ts';
import { sayIssues } from '../output/say-issues.ts';
import { type Column, table } from '../output/table.ts';
import { issuesResult, json } from '../output/walk-result.ts';
import type { FormedResult } from '../results/form.ts';
import type { Session } from '../session.ts';

export interface FormOptions {
  readonly out: string;
  readonly set?: readonly string[];
  readonly json?: true;
}

/** `bodkin body --form`: the body as a closed form, drawn with its tapes. */
export async function sayForm(
  session: Session,
  body: Body,
  { out, set, json: asJson }: FormOptions,
  remarks: readonly Issue[],
  reader: Reader,
): Promise<void> {
  const posture = readPosture(await readStyling(undefined, set));
  if (!posture.ok) throw new Unusable(posture.issues, reader.units);
  const form = bodyForm(body, posture.value);
  const issues = [...remarks, ...formRemarks(form, body)];
  const drawn = new Map<string, string | Uint8Array>([
    ...viewNames.map((view) => [`${view}.svg`, formView(form, view, reader.units)] as const),
    ['form.glb', formGltf(form)],
  ]);
  const files = [...drawn.keys(), 'form.json'];
  const result = formResult(form, files, issues);
  await writeFiles(out, new Map([...drawn, ['form.json', json(result)]]));
  if (asJson) await session.write(json(result));
  else await say(session, `${formTable(form, reader)}\n${files.join(', ')} written into ${out}\n`);
  sayIssues(session, issues, reader.units);
}

const formResult = (
  { body, report, levels, landmarks }: Form,
  files: readonly string[],
  issues: readonly Issue[],
): FormedResult => ({
  ok: true,
  body,
  files,
  tapes: report.tapes,
  assumed: report.assumed.map((each) => ({ ...each, likely: each.likely ?? null })),
  sections: report.sections,
  notTaken: Object.entries(report.notTaken).map(([measurement, because]) => ({
    measurement: measurement as MeasurementName,
    because,
  })),
  levels,
  landmarks,
  issues: issuesResult(issues),
});

const tapeColumns: readonly Column[] = [
  { title: 'tape' },
  { title: 'given', right: true },
  { title: 'on the form', right: true },
  { title: 'off', right: true },
  { title: '' },
];

const sectionColumns: readonly Column[] = [
  { title: 'section' },
  { title: 'on the form', right: true },
  { title: 'by the survey', right: true },
  { title: '±', right: true },
];

const assumedColumns: readonly Column[] = [
  { title: 'left open' },
  { title: 'value', right: true },
  { title: 'nine in ten', right: true },
  { title: '' },
  { title: 'what it is, and where from' },
];

/** What was given and what is taken, section by section, and what was assumed; in the reader's unit. */
function formTable({ body, report }: Form, reader: Reader): string {
  const { units, columns } = reader;
  const cell = (mm: number): string => lengthCell(mm, units);
  const tapes = report.tapes.map(({ measurement, given, taken, held }) => [
    measurementWords(measurement),
    cell(given),
    cell(taken),
    decimalCell(taken - given, units, 2),
    held ? '' : 'not held',
  ]);
  const sections = report.sections.map(({ name, taken, expected, spread }) => [
    name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`),
    cell(taken),
    cell(expected),
    cell(spread),
  ]);
  const figure = (value: number, { unit }: Assumption): string =>
    unit === 'mm' ? cell(value) : unit === 'degrees' ? `${fixed(value, 0)}°` : fixed(value, 2);
  const assumed = report.assumed.map((each) => [
    each.name,
    figure(each.value, each),
    each.likely ? `${figure(each.likely[0], each)} to ${figure(each.likely[1], each)}` : '',
    each.how,
    withLengthsIn(`${each.says}; ${each.source}`, units),
  ]);
  const notTaken = Object.keys(report.notTaken).map((name) => measurementWords(name as MeasurementName));
  return `${body}; ${lengthsLine(reader)}\n${table(tapeColumns, tapes, columns)}no tape is laid for ${notTaken.join(', ')}\n\n${table(sectionColumns, sections, columns)}\n${table(assumedColumns, assumed, columns)}`;
}
