import { InvalidArgumentError, Option } from 'commander';
import { type Also, type AlsoWritten, alsoKinds } from './cutting-files.ts';

/** `--also KIND`, as often as wanted. */
export const alsoOption = (): Option =>
  new Option(
    '--also <kind>',
    'also write a cutting file, every piece a block: dxf with curves as polylines for any machine (DXF R12), dxf-curves with exact curves (DXF R2000); repeat for both',
  )
    .choices(alsoKinds)
    .argParser((text: string, before: readonly Also[] = []) => {
      const kind = alsoKinds.find((one) => one === text);
      if (!kind) throw new InvalidArgumentError(`Choose ${alsoKinds.join(' or ')}.`);
      return [...new Set([...before, kind])];
    });

/** What a result says of them; nothing where none were asked for. */
export const alsoResult = ({ files }: AlsoWritten): { readonly cuttingFiles?: string[] } =>
  files.size > 0 ? { cuttingFiles: [...files.keys()] } : {};

/** The same in words, after others that were written. */
export const alsoWords = ({ files }: AlsoWritten): string =>
  [...files.keys()].map((name) => `, ${name}`).join('');
