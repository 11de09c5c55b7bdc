import { InvalidArgumentError, Option } from 'commander';
import type { Draft } from '../../engine/pattern/draft.ts';
import { nearestWord } from '../../engine/text/nearest-word.ts';
import { readDataFile } from './read-data.ts';
import { unusable } from './unusable.ts';

/** `--set name=value`, as often as wanted. */
export const setOption = (): Option =>
  new Option(
    '--set <name=value>',
    'make one styling choice, over those of the file; repeat for more (see “bodkin list”)',
  ).argParser((text: string, before: readonly string[] = []) => [...before, text]);

/** `--styling FILE`. */
export const stylingOption = (): Option =>
  new Option('--styling <file>', 'take styling choices from a YAML or JSON file');

/** `--date TEXT`. */
export const dateOption = (): Option => new Option('--date <text>', 'a date to print on every piece');

/** `--json`. */
export const jsonOption = (): Option =>
  new Option('--json', 'print JSON instead of tables; its lengths are mm always');

/** More threads than any machine has cores is a slip of the finger. */
const mostThreads = 64;

/** `--workers COUNT`. */
export const workersOption = (help: string, usual: number): Option =>
  new Option('--workers <count>', help).argParser(wholeNumber(1, mostThreads)).default(usual);

/** Reads a whole number between limits. */
export const wholeNumber =
  (least: number, most: number) =>
  (text: string): number => {
    const count = Number(text);
    if (text.trim() !== '' && Number.isInteger(count) && count >= least && count <= most) return count;
    throw new InvalidArgumentError(`It should be a whole number from ${least} to ${most}.`);
  };

/** The garment of that name, or a sentence that lists the names there are. */
export function findGarment(garments: readonly Draft[], name: string): Draft {
  const found = garments.find((draft) => draft.name === name);
  if (found) return found;
  const names = garments.map((draft) => draft.name);
  const near = nearestWord(name, names);
  const hint = near ? `Did you mean “${near}”?` : `Known are: ${names.join(', ')}.`;
  throw unusable('unknown-garment', 'garment', `There is no draft called “${name.slice(0, 40)}”. ${hint}`);
}

/** The choices of a styling file with those of `--set` over them; unchecked, as they were written. */
export async function readStyling(
  file: string | undefined,
  settings: readonly string[] = [],
): Promise<Record<string, unknown>> {
  const written = file === undefined ? {} : ((await readDataFile(file)) ?? {});
  if (typeof written !== 'object' || Array.isArray(written))
    throw unusable(
      'styling-not-a-list',
      file ?? '',
      `${file} should list names with their values, such as “casingDepth: 15”.`,
    );
  const made = settings.map((setting): [string, string] => {
    const at = setting.indexOf('=');
    if (at < 1)
      throw unusable(
        'setting-not-understood',
        '--set',
        `“${setting}” should read name=value, such as casingDepth=15.`,
      );
    return [setting.slice(0, at).trim(), setting.slice(at + 1).trim()];
  });
  return Object.fromEntries([...Object.entries(written), ...made]);
}

/** The date as it was given, if it is short enough for a label. */
export function readDate(text: string | undefined): string | undefined {
  if (text !== undefined && text.length > 40)
    throw unusable('date-too-long', '--date', 'The date should be at most 40 letters, such as 2031-05-04.');
  return text;
}
