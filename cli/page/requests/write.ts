import { stringify } from 'yaml';
import { json } from '../../walk-result.ts';
import type { BodyFields } from '../body-form.ts';
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

/** The measurements as a file that the command line reads as the page does. */
export function written({ as, body }: WriteRequest): WriteAnswer {
  const named = { name: 'unnamed', ...body };
  const name = String(named.name)
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  const text = as === 'json' ? json(named) : stringify(named);
  return { kind: 'written', file: { name: `${name || 'body'}.${as}`, text } };
}
