import type { Flavour } from '../engine/cutting-file/flavour.ts';

/** The cutting files there are, by what they are asked for with, and what their names end in. */
const cuttingFiles = {
  dxf: { flavour: 'polylines', end: '.dxf' },
  'dxf-curves': { flavour: 'splines', end: '-curves.dxf' },
} as const satisfies Readonly<Record<string, { flavour: Flavour; end: string }>>;

/** What can be written besides. */
export type Also = keyof typeof cuttingFiles;

export const alsoKinds = Object.keys(cuttingFiles) as readonly Also[];

/** The cutting files asked for, by file name, each of them written by `write`. */
export const alsoWritten = (
  also: readonly Also[] = [],
  name: string,
  write: (flavour: Flavour) => string,
): ReadonlyMap<string, string> =>
  new Map(
    also.map((kind) => {
      const { flavour, end } = cuttingFiles[kind];
      return [`${name}${end}`, write(flavour)];
    }),
  );
