import { type DraftFiles, importedBy } from '../../../own-draft/draft-files.ts';
import type { BodyFields } from '../../body-form.ts';
import type { Coding } from './coding.ts';
import type { ProgramNames } from './names/program-names.ts';

/** The source of the drafts, as the build leaves it. */
export interface Sources {
  readonly files: DraftFiles;
  /** By garment: the file that exports its draft, by the garment's name. */
  readonly garments: Readonly<Record<string, string>>;
  /** The belt of the lesson on writing a draft. */
  readonly belt: string;
}

const fetched = async (file: string): Promise<Response> => {
  const response = await fetch(file);
  if (!response.ok) throw new Error(`${file} could not be loaded.`);
  return response;
};

/** What is loaded once, when it is first wanted. */
const once = <Value>(load: () => Promise<Value>): (() => Promise<Value>) => {
  let loading: Promise<Value> | undefined;
  return () => {
    loading ??= load().catch((error: unknown) => {
      loading = undefined;
      throw error;
    });
    return loading;
  };
};

const sources = once(async () => (await (await fetched('drafts.json')).json()) as Sources);
export const shippedBodies = once(
  async () => (await (await fetched('bodies.json')).json()) as readonly BodyFields[],
);
/** What the program's names mean. */
export const programNames = once(async () => (await (await fetched('names.json')).json()) as ProgramNames);
/** The program that edited code is run by. */
export const runner = once(async () => (await fetched('runner.js')).blob());

/** What it takes to begin with the code of a garment, or with the belt of the lesson. */
export async function beginning(name: string): Promise<Extract<Coding, { does: 'begin' }>> {
  const all = await sources();
  if (name === 'belt')
    return {
      does: 'begin',
      of: { kind: 'own', name: ownBelt },
      original: { [ownBelt]: all.belt },
      file: ownBelt,
      strange: false,
    };
  const [, file = first] = /^\.\/(.*)$/.exec(all.garments[name] ?? '') ?? [];
  return {
    does: 'begin',
    of: { kind: 'garment', name },
    original: garmentFiles(all, name),
    file,
    strange: false,
  };
}

const ownBelt = 'my-belt.ts';

/** The first file of a garment's code: it exports the draft. */
const first = 'draft.ts';

/** The files that a garment's draft is made of, with all that they import of each other. */
export function garmentFiles({ files, garments }: Sources, garment: string): DraftFiles {
  const names = new Set(Object.keys(files));
  const from = garments[garment] ?? garments.dress ?? '';
  const found: Record<string, string> = { [first]: `export { ${garment} as default } from '${from}';\n` };
  const wanted = [importedBy(first, from, names)];
  while (wanted.length > 0) {
    const next = wanted.pop();
    if (typeof next !== 'object' || next.file in found) continue;
    const text = files[next.file] ?? '';
    found[next.file] = text;
    for (const [, specifier = ''] of text.matchAll(/\bfrom '(\.[^']+)'/g))
      wanted.push(importedBy(next.file, specifier, names));
  }
  const { [first]: begin = '', ...others } = found;
  return {
    [first]: begin,
    ...Object.fromEntries(Object.entries(others).toSorted(([a], [b]) => (a < b ? -1 : 1))),
  };
}
