import { Command } from 'commander';
import type { Body } from '../engine/body/body.ts';
import { readBody } from '../engine/body/read.ts';
import type { Issue } from '../engine/issue.ts';
import { bodyResult, bodyTable } from './body-table.ts';
import { jsonOption, setOption, stylingOption } from './options.ts';
import { plain } from './plain.ts';
import { readBodyFile } from './read-body.ts';
import { reconciledTable } from './reconciled-table.ts';
import { sayIssues } from './say-issues.ts';
import { type SensitivityOptions, saySensitivity } from './sensitivity.ts';
import type { ExitCode, Session } from './session.ts';
import { Unusable, unusable } from './unusable.ts';
import { json } from './walk-result.ts';

interface BodyOptions extends Partial<SensitivityOptions> {
  readonly sensitivity?: true;
  readonly reconcile?: true;
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
    .option('--garment <garment>', 'the garment for --sensitivity (see “bodkin list”)')
    .addOption(stylingOption())
    .addOption(setOption())
    .addOption(jsonOption())
    .action(async (file: string, options: BodyOptions) => {
      const asked = sensitivityAsked(options);
      const data = await readBodyFile(file);
      const read = readBody(options.reconcile ? toReconcile(data) : data);
      if (!read.ok) throw new Unusable(read.issues);
      if (asked) await saySensitivity(session, read.value, asked, read.issues);
      else await sayBody(session, read.value, read.issues, options);
      finish(0);
    });

async function sayBody(
  session: Session,
  body: Body,
  issues: readonly Issue[],
  options: BodyOptions,
): Promise<void> {
  const { garments } = session;
  await session.write(
    options.json
      ? json(bodyResult(body, garments, issues))
      : plain(bodyTable(body, garments) + (options.reconcile ? reconciledTable(body) : '')),
  );
  sayIssues(session, issues);
}

/** The same measurements with the wish that what contradicts be reconciled. */
const toReconcile = (data: unknown): unknown =>
  typeof data === 'object' && data !== null && !Array.isArray(data) ? { ...data, reconcile: true } : data;

/** What `--sensitivity` is to be about, if it is asked for. */
function sensitivityAsked({ sensitivity, garment, ...rest }: BodyOptions): SensitivityOptions | undefined {
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
