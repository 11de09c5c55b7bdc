import { stringify } from 'yaml';
import { dataIn } from '../data-in.ts';
import { json } from '../walk-result.ts';
import type { PageAnswer, PageRequest } from './messages.ts';

/** A file of measurements read as the command line reads it: a body that has no name gets the file's. */
export function opened({ file, text }: Extract<PageRequest, { kind: 'open' }>): PageAnswer {
  const data = dataIn(file, text);
  if (typeof data !== 'object' || data === null || Array.isArray(data))
    return {
      kind: 'refused',
      message: `${file} holds no measurements: one a line, such as “bustGirth: 92”.`,
    };
  return { kind: 'opened', file, body: { name: file.replace(/(?<=.)\.[^.]*$/, ''), ...data } };
}

/** The measurements as a file that the command line reads as the page does. */
export function written({ as, body }: Extract<PageRequest, { kind: 'write' }>): PageAnswer {
  const named = { name: 'unnamed', ...body };
  const name = String(named.name)
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  const text = as === 'json' ? json(named) : stringify(named);
  return { kind: 'written', file: { name: `${name || 'body'}.${as}`, text } };
}
