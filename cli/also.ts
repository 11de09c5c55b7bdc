import { InvalidArgumentError, Option } from 'commander';
import type { Flavour } from '../engine/cutting-file/flavour.ts';

/** The cutting files there are, by what they are asked for with, and what their names end in. */
const cuttingFiles = {
  dxf: { flavour: 'polylines', end: '.dxf' },
  'dxf-curves': { flavour: 'splines', end: '-curves.dxf' },
} as const satisfies Readonly<Record<string, { flavour: Flavour; end: string }>>;

/** What can be written besides. */
export type Also = keyof typeof cuttingFiles;

const known = Object.keys(cuttingFiles) as readonly Also[];

/** `--also KIND`, as often as wanted. */
export const alsoOption = (): Option =>
  new Option(
    '--also <kind>',
    'also write a cutting file, every piece a block: dxf with curves as polylines for any machine (DXF R12), dxf-curves with exact curves (DXF R2000); repeat for both',
  )
    .choices(known)
    .argParser((text: string, before: readonly Also[] = []) => {
      const kind = known.find((one) => one === text);
      if (!kind) throw new InvalidArgumentError(`Choose ${known.join(' or ')}.`);
      return [...new Set([...before, kind])];
    });

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

/** What a result says of them; nothing where none were asked for. */
export const alsoResult = (files: ReadonlyMap<string, string>): { readonly cuttingFiles?: string[] } =>
  files.size > 0 ? { cuttingFiles: [...files.keys()] } : {};

/** The same in words, after others that were written. */
export const alsoWords = (files: ReadonlyMap<string, string>): string =>
  [...files.keys()].map((name) => `, ${name}`).join('');
