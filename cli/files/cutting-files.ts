import type { Flavour } from '../../engine/cutting-file/flavour.ts';
import type { Issue } from '../../engine/issue.ts';
import type { ProvenCuttingFile } from '../../engine/proven-cutting-file.ts';

/** The cutting files there are, by what they are asked for with, and what their names end in. */
const cuttingFiles = {
  dxf: { flavour: 'polylines', end: '.dxf' },
  'dxf-curves': { flavour: 'splines', end: '-curves.dxf' },
} as const satisfies Readonly<Record<string, { flavour: Flavour; end: string }>>;

/** What can be written besides. */
export type Also = keyof typeof cuttingFiles;

export const alsoKinds = Object.keys(cuttingFiles) as readonly Also[];

export const isAlso = (word: string): word is Also => alsoKinds.some((kind) => kind === word);

/** Cutting files by file name, and what is wrong with them. */
export interface AlsoWritten {
  readonly files: ReadonlyMap<string, string>;
  readonly issues: readonly Issue[];
}

/** The cutting files asked for, each of them written and proven by `write`. */
export function alsoWritten(
  also: readonly Also[] = [],
  name: string,
  write: (flavour: Flavour) => ProvenCuttingFile,
): AlsoWritten {
  const written = also.map((kind) => {
    const { flavour, end } = cuttingFiles[kind];
    return { name: `${name}${end}`, ...write(flavour) };
  });
  return {
    files: new Map(written.map((file) => [file.name, file.text])),
    issues: written.flatMap(({ issues }) => issues),
  };
}

/** What cutting files after this name may be called. */
export const cuttingFileNames = (name: string): readonly string[] =>
  alsoKinds.map((kind) => `${name}${cuttingFiles[kind].end}`);
