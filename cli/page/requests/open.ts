import { dataIn } from '../../input/data-in.ts';
import { unusable } from '../../input/unusable.ts';
import type { BodyFields } from '../body-form.ts';

export interface OpenRequest {
  readonly kind: 'open';
  readonly file: string;
  readonly text: string;
}

export interface OpenAnswer {
  readonly kind: 'opened';
  readonly file: string;
  readonly body: BodyFields;
}

/** A file of measurements read as the command line reads it: a body that has no name gets the file's. */
export function opened({ file, text }: Pick<OpenRequest, 'file' | 'text'>): OpenAnswer {
  const data = dataIn(file, text);
  if (typeof data !== 'object' || data === null || Array.isArray(data))
    throw unusable(
      'no-measurements',
      file,
      `${file} holds no measurements: one a line, such as “bustGirth: 92”.`,
    );
  return { kind: 'opened', file, body: { name: file.replace(/(?<=.)\.[^.]*$/, ''), ...data } };
}
