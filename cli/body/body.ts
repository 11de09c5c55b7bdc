import { Command } from 'commander';
import type { Body } from '../../engine/body/body.ts';
import { readBody } from '../../engine/body/read.ts';
import type { Issue } from '../../engine/issue.ts';
import type { Unit } from '../../engine/text/units.ts';
import { jsonOption, setOption, stylingOption } from '../input/options.ts';
import { readBodyFile } from '../input/read-body.ts';
import { Unusable, unusable } from '../input/unusable.ts';
import { type Reader, readerOf, unitsOption, unitsWritten } from '../output/reader.ts';
import { say } from '../output/say.ts';
import { sayIssues } from '../output/say-issues.ts';
import { json } from '../output/walk-result.ts';
import type { ExitCode, Session } from '../session.ts';
import { bodyResult, bodyTable } from './body-table.ts';
import { type FormOptions, sayForm } from './form.ts';
import { reconciledTable } from './reconciled-table.ts';
import { type SensitivityOptions, saySensitivity } from './sensitivity.ts';

interface BodyOptions extends Partial<SensitivityOptions> {
  readonly sensitivity?: true;
  readonly reconcile?: true;
  readonly form?: true;
  readonly out?: string;
  readonly units?: Unit;
}

/** `bodkin body`: one set of measurements, validated and completed, where each number came from, and what it acts on. */
export const bodyCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('body')
    .description(
      'read, validate and complete one set of measurements; show what was estimated, how well, and which garments each acts on',
    )
    .argument('<file>', 'measurements, YAML or JSON')
    .option(
      '--reconcile',
      'where measurements contradict each other, find the most likely body behind them and show what was moved; as reconcile: true in the file, which every command heeds',
    )
    .option(
      '--sensitivity',
      'show instead how far the garment moves with each measurement, and which to take again',
    )
    .option(
      '--form',
      'show instead the body as a closed form on which tapes give back the measurements, and write it into --out, drawn with its tapes; --set chooses its posture, such as --set backHollow=40',
    )
    .option('--out <folder>', 'where --form writes its files; made if it is not there')
    .option('--garment <garment>', 'the garment for --sensitivity (see “bodkin list”)')
    .addOption(stylingOption())
    .addOption(setOption())
    .addOption(unitsOption())
    .addOption(jsonOption())
    .action(async (file: string, options: BodyOptions) => {
      const form = formAsked(options);
      const asked = form ? undefined : sensitivityAsked(options);
      const data = await readBodyFile(file);
      const reader = readerOf(session, options.units, data);
      const read = readBody(options.reconcile ? toReconcile(data) : data);
      if (!read.ok) throw new Unusable(read.issues, reader.units);
      // Measurements are shown as they are written.
      const own = { ...reader, units: options.units ?? unitsWritten(data) ?? reader.units };
      if (form) await sayForm(session, read.value, form, read.issues, own);
      else if (asked) await saySensitivity(session, read.value, asked, read.issues, reader);
      else await sayBody(session, read.value, read.issues, options, own);
      finish(0);
    });

async function sayBody(
  session: Session,
  body: Body,
  issues: readonly Issue[],
  options: BodyOptions,
  reader: Reader,
): Promise<void> {
  const { garments } = session;
  if (options.json) await session.write(json(bodyResult(body, garments, issues)));
  else
    await say(
      session,
      bodyTable(body, garments, reader) + (options.reconcile ? reconciledTable(body, reader) : ''),
    );
  sayIssues(session, issues, reader.units);
}

/** The same measurements with the wish that what contradicts be reconciled. */
const toReconcile = (data: unknown): unknown =>
  typeof data === 'object' && data !== null && !Array.isArray(data) ? { ...data, reconcile: true } : data;

/** What `--sensitivity` is to be about, if it is asked for. */
function sensitivityAsked({
  sensitivity,
  garment,
  units,
  ...rest
}: BodyOptions): SensitivityOptions | undefined {
  if (!sensitivity) {
    if (garment === undefined && rest.styling === undefined && rest.set === undefined) return undefined;
    throw unusable(
      'sensitivity-not-asked',
      '--sensitivity',
      'A garment and its styling are only looked at with --sensitivity: add it, or leave them out.',
    );
  }
  if (garment === undefined)
    throw unusable(
      'garment-needed',
      '--garment',
      'Say which garment the measurements are for, such as --garment dress.',
    );
  return { ...rest, garment };
}

/** What `--form` is to be written with, if it is asked for. */
function formAsked({
  form,
  out,
  set,
  json,
  sensitivity,
  garment,
  styling,
}: BodyOptions): FormOptions | undefined {
  if (!form) {
    if (out === undefined) return undefined;
    throw unusable(
      'form-not-asked',
      '--out',
      'A folder is only written to with --form: add it, or leave the folder out.',
    );
  }
  if (sensitivity || garment !== undefined || styling !== undefined)
    throw unusable(
      'form-not-asked',
      '--form',
      'Ask for the form alone, without a garment, its styling or --sensitivity.',
    );
  if (out === undefined)
    throw unusable('option-missing', '--out', 'A form needs --out DIR, the folder it is written into.');
  return { out, ...(set ? { set } : {}), ...(json ? { json: true } : {}) };
}
