import { stringify } from 'yaml';
import { json } from '../../output/walk-result.ts';
import type { BodyFields } from '../body-form.ts';
import { fileWord } from '../file-word.ts';
import type { TakenFile } from '../taken-file.ts';

export interface WriteRequest {
  readonly kind: 'write';
  readonly as: 'yaml' | 'json';
  readonly body: BodyFields;
}

export interface WriteAnswer {
  readonly kind: 'written';
  readonly file: TakenFile;
}

export const written = ({ as, body }: WriteRequest): WriteAnswer => ({
  kind: 'written',
  file: bodyFile(body, as),
});

/** The measurements as a file that the command line reads as the page does. */
export function bodyFile(body: BodyFields, as: 'yaml' | 'json'): TakenFile {
  const named = { name: 'unnamed', ...body };
  const text = as === 'json' ? json(named) : stringify(named);
  return { name: `${fileWord(String(named.name)) || 'body'}.${as}`, text };
}
