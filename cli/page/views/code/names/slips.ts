import { nearestWord } from '../../../../../drafts/index.ts';
import { type KnownNames, partsOf, takenFrom } from './known-names.ts';
import { type ReadCode, readCode, type Stretch, type Taken } from './read-code.ts';

/** A name that there is not, where it is written, and what may be meant. */
export interface NameSlip extends Stretch {
  readonly message: string;
  /** What may be meant instead. */
  readonly instead?: string;
}

/** Types that every file knows. */
const typesOfTheLanguage = new Set(
  (
    'any bigint boolean never null number object readonly string symbol undefined unknown void const this ' +
    'Array Awaited Capitalize ConstructorParameters Exclude Extract InstanceType Iterable Iterator Generator Lowercase ' +
    'NonNullable Omit OmitThisParameter Parameters Partial Pick Promise PropertyKey Readonly ReadonlyArray ReadonlyMap ' +
    'ReadonlySet Record Required ReturnType ThisType Uncapitalize Uppercase undefined arguments'
  ).split(' '),
);

/** Names in a file that there are not: imports, measurements, choices, rules, and whatever is called nothing anywhere. */
export function* slipsIn(known: KnownNames): Generator<NameSlip, void> {
  const code = readCode(known.files[known.file] ?? '');
  // Of what cannot be read the rest would only be guessed.
  if (!code.whole) return;
  for (const taken of [...code.imports, ...code.passed]) yield* importSlip(taken, known);
  yield* memberSlips(code, known);
  yield* nameSlips(code, known);
}

function importSlip(taken: Taken, known: KnownNames): readonly NameSlip[] {
  const { name, source, isType, from, to } = taken;
  const there = takenFrom(source, known);
  if (!there)
    return [
      { from, to, message: `A draft imports from “bodkin” and its own files; there is no “${source}”.` },
    ];
  if (name === '*' || there.has(name)) return [];
  // Types of the engine are not all known here, and nothing of them is left when the code is run.
  if (isType && source !== 'bodkin' && /^(\.\.\/)+engine\//.test(source)) return [];
  const instead = nearestWord(name, [...there.keys()]);
  return [slip(taken, `There is no “${name}” in ${source === 'bodkin' ? 'the program' : source}.`, instead)];
}

const kinds = { measurement: 'measurement', choice: 'choice', rule: 'rule' } as const;

function* memberSlips({ members }: ReadCode, known: KnownNames): Generator<NameSlip, void> {
  for (const member of members) {
    const found = partsOf(member, known);
    if (!found?.strict || found.parts.has(member.name)) continue;
    const instead = nearestWord(member.name, [...found.parts.keys()]);
    yield slip(member, `There is no ${kinds[found.strict]} “${member.name}”.`, instead);
  }
}

function* nameSlips({ uses, names }: ReadCode, known: KnownNames): Generator<NameSlip, void> {
  const all = [...names, ...Object.keys(known.program)];
  for (const use of uses) {
    const { name } = use;
    if (names.has(name) || typesOfTheLanguage.has(name) || name in globalThis) continue;
    const toImport = name in known.program;
    const message = `Nothing is called “${name}” here.${toImport ? ' It can be imported from the program.' : ''}`;
    yield slip(use, message, toImport ? undefined : nearestWord(name, all));
  }
}

const slip = ({ from, to }: Stretch, message: string, instead: string | undefined): NameSlip => ({
  from,
  to,
  message: instead === undefined ? message : `${message} Do you mean “${instead}”?`,
  ...(instead === undefined ? {} : { instead }),
});
