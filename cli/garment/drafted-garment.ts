import type { Command } from 'commander';
import type { Report } from '../../engine/checks/report.ts';
import { choicesInVain } from '../../engine/choices-in-vain.ts';
import { type Evaluation, evaluate } from '../../engine/evaluate.ts';
import type { Issue } from '../../engine/issue.ts';
import { onlyTrue } from '../../engine/only-true.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import type { Unit } from '../../engine/text/units.ts';
import {
  findGarment,
  jsonOption,
  readDate,
  readStyling,
  setOption,
  stylingOption,
} from '../input/options.ts';
import { readBodyFile } from '../input/read-body.ts';
import { unusable } from '../input/unusable.ts';
import { used } from '../input/used.ts';
import { type Reader, readerOf, unitsOption } from '../output/reader.ts';
import { sayIssues } from '../output/say-issues.ts';
import type { Session } from '../session.ts';

/** What is said to a command that drafts a garment for one body: for whom, styled how, and how the answer is to be read. */
export interface GarmentOptions {
  readonly body?: string | undefined;
  readonly styling?: string | undefined;
  readonly set?: readonly string[] | undefined;
  readonly date?: string | undefined;
  readonly units?: Unit | undefined;
  readonly json?: true | undefined;
}

/** Adds those of these options that every such command takes; `--body` and `--date` are not the same in all. */
export const takesGarment = (command: Command): Command =>
  command.addOption(stylingOption()).addOption(setOption()).addOption(unitsOption()).addOption(jsonOption());

/** The garment that is asked for, before it is known for whom. */
export interface AskedGarment {
  readonly draft: Draft;
  /** Unchecked, as it was written. */
  readonly styling: Record<string, unknown>;
  readonly date: string | undefined;
}

/** Finds the garment of that name and reads its styling. Throws `Unusable` where one of them cannot be used. */
export const askedGarment = async (
  { garments }: Session,
  name: string,
  { styling, set, date }: Pick<GarmentOptions, 'styling' | 'set' | 'date'>,
): Promise<AskedGarment> => ({
  draft: findGarment(garments, name),
  styling: await readStyling(styling, set),
  date: readDate(date),
});

/** A garment drafted and checked for one body. */
export interface DraftedGarment extends Evaluation {
  readonly draft: Draft;
  readonly reader: Reader;
  /** The same garment for another body, unchecked as a file holds it. */
  readonly forAnother: (body: unknown) => Promise<Evaluation>;
}

/** Told of what stands in the way of a garment, before the command ends. */
type Refused = (issues: readonly Issue[]) => Promise<void>;

const untold: Refused = async () => undefined;

/**
 * Drafts what is asked for, for the body that the options name, and checks it; choices that change nothing are told at once. Throws `Unusable` where the body cannot be
 * read or nothing can be drafted for it; of this the command is told first, if it has more to print than the issues.
 * Whether every check holds is for whoever asks to see.
 */
export async function checkedGarment(
  session: Session,
  { draft, styling }: AskedGarment,
  { body, units }: GarmentOptions,
  refused: Refused = untold,
): Promise<DraftedGarment> {
  if (body === undefined)
    throw unusable('body-missing', '--body', 'Say whose measurements to use: --body FILE, or --bodies FILE.');
  const data = await readBodyFile(body);
  const reader = readerOf(session, units, data);
  const forAnother = async (other: unknown): Promise<Evaluation> => {
    const made = evaluate(draft, other, styling);
    if (!made.ok) await refused(made.issues);
    return used(made, reader.units);
  };
  const made = await forAnother(data);
  sayIssues(session, choicesInVain(draft, made), reader.units);
  return { ...made, draft, reader, forAnother };
}

/** The same for whoever writes or makes something of it: a garment that fails a check of its own is refused as well. */
export async function draftedGarment(
  session: Session,
  asked: AskedGarment,
  options: GarmentOptions,
  refused: Refused = untold,
): Promise<DraftedGarment> {
  const drafted = await checkedGarment(session, asked, options, refused);
  await refuseUntrue(drafted, drafted.report, undefined, refused);
  return drafted;
}

/**
 * Refuses a garment of which `report` says that it is not true, once there is more to go by than its pieces: the text of its
 * file. `holds` looks at another as closely.
 */
export async function refuseUntrue(
  drafted: DraftedGarment,
  report: Report,
  holds: ((other: Evaluation) => boolean) | undefined,
  refused: Refused = untold,
): Promise<void> {
  const made = onlyTrue(drafted.draft, drafted, report, holds);
  if (!made.ok) await refused(made.issues);
  used(made, drafted.reader.units);
}
