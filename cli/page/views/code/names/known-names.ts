import {
  type Choice,
  howTaken,
  type MeasurementName,
  measurementNames,
  measurementWords,
} from '../../../../../drafts/index.ts';
import { type DraftFiles, importedBy } from '../../../../own-draft/draft-files.ts';
import { lately } from './lately.ts';
import type { NameMeaning } from './name-meaning.ts';
import type { ProgramNames } from './program-names.ts';
import { readCode, type Used } from './read-code.ts';
import { rulesIn } from './rules-in.ts';

/** What names in a file of a draft may mean. */
export interface KnownNames {
  readonly file: string;
  readonly files: DraftFiles;
  readonly program: ProgramNames;
  /** The choices that any draft here declares. */
  readonly choices: readonly Choice[];
}

export type NameMeanings = ReadonlyMap<string, NameMeaning>;

/** Each measurement, as a draft reads it. */
export const measurements: NameMeanings = new Map(
  measurementNames.map((name: MeasurementName) => [
    name,
    {
      signature: `${measurementWords(name)}, ${name === 'shoulderSlope' ? 'radians' : 'mm'}`,
      says: howTaken[name],
    },
  ]),
);

const choiceNames = lately((text) =>
  [...text.matchAll(/\bkind: '(?:number|number or auto|word)',\s*name: '(\w+)'/g)].map(
    ([, name = '']) => name,
  ),
);

/** The choices that the files of the draft declare, and those of the program. */
function choicesOf({ files, choices }: Pick<KnownNames, 'files' | 'choices'>): NameMeanings {
  const own = Object.values(files)
    .flatMap(choiceNames)
    .map((name) => [name, { signature: `choice ${name}`, says: '' }] as const);
  return new Map([...own, ...choices.map((choice) => [choice.name, meaningOf(choice)] as const)]);
}

const meaningOf = (choice: Choice): NameMeaning => {
  const among =
    choice.kind === 'word' ? choice.words.join(', ') : `${choice.min} to ${choice.max} ${choice.unit}`;
  return { signature: `choice ${choice.name}: ${among}; usually ${choice.default}`, says: choice.help };
};

/** What can be taken from where an import leads; nothing where it leads nowhere. */
export function takenFrom(source: string, known: KnownNames): NameMeanings | undefined {
  const found = importedBy(known.file, source, new Set(Object.keys(known.files)));
  if (found === undefined) return undefined;
  return found === 'program' ? programMeanings(known.program) : exportsOf(found.file, known);
}

const programMeanings = (program: ProgramNames): NameMeanings => new Map(Object.entries(program));

/** What a file of the draft exports, with what it passes on from others. */
function exportsOf(file: string, known: KnownNames, before: ReadonlySet<string> = new Set()): NameMeanings {
  const { declared, exported, passed } = readCode(known.files[file] ?? '');
  const found = new Map<string, NameMeaning>();
  for (const name of exported) found.set(name, declared.get(name) ?? { signature: name, says: '' });
  for (const { name, local, source } of passed) {
    const from = importedBy(file, source, new Set(Object.keys(known.files)));
    if (from === undefined || (from !== 'program' && before.has(from.file))) continue;
    const others =
      from === 'program'
        ? programMeanings(known.program)
        : exportsOf(from.file, known, new Set([...before, file]));
    if (name === '*') for (const [each, meaning] of others) found.set(each, meaning);
    else found.set(local, others.get(name) ?? { signature: local, says: '' });
  }
  return found;
}

/** What the types are called whose parts go by these names in every draft. */
const usual: Readonly<Record<string, string>> = {
  sketch: 'SketchBuilder',
  table: 'DraftingTable',
  body: 'Body',
  solution: 'Solution',
  garment: 'Garment',
  piece: 'Piece',
};

/** What may stand behind a name and a dot; nothing where that is not known. `strict` where it may be nothing else. */
export function partsOf(
  { of = '', parted }: Pick<Used, 'of' | 'parted'>,
  known: KnownNames,
):
  | { readonly parts: NameMeanings; readonly strict: 'measurement' | 'choice' | 'rule' | undefined }
  | undefined {
  if (parted && of === 'size') return { parts: measurements, strict: 'measurement' };
  if (parted && (of === 'choice' || of === 'styling')) return { parts: choicesOf(known), strict: 'choice' };
  const rules = rulesCalled(of, known);
  if (rules) return { parts: rules, strict: 'rule' };
  const members = known.program[usual[of] ?? '']?.members;
  return members && { parts: new Map(Object.entries(members)), strict: undefined };
}

/** The rules of a table that goes by this name in the file. */
function rulesCalled(name: string, known: KnownNames): NameMeanings | undefined {
  const text = known.files[known.file] ?? '';
  const here = rulesIn(text).get(name);
  if (here) return here;
  const taken = readCode(text).imports.find(({ local }) => local === name);
  if (!taken) return undefined;
  const from = importedBy(known.file, taken.source, new Set(Object.keys(known.files)));
  return typeof from === 'object' ? rulesIn(known.files[from.file] ?? '').get(taken.name) : undefined;
}

/** What a name means that stands by itself in the file. */
export function meaningIn(name: string, known: KnownNames): NameMeaning | undefined {
  const { declared, imports } = readCode(known.files[known.file] ?? '');
  const own = declared.get(name);
  if (own) return own;
  const taken = imports.find(({ local }) => local === name);
  return taken && takenFrom(taken.source, known)?.get(taken.name);
}
