import type { DraftFiles } from '../../../own-draft/draft-files.ts';
import { type Coded, coded } from './own.ts';
import type { CodeOf } from './written-code.ts';

/** What is kept of an edited draft until tomorrow: what was changed, and of a draft of one's own all of it. */
export const keptCode = ({ of, original, changed, file, strange }: Coded): unknown =>
  of && { of, changed, file, strange, ...(of.kind === 'own' ? { original } : {}) };

/** An edited draft from what was kept; nothing where it cannot be read, for another version may have written it. */
export function codeKept(kept: unknown): Coded {
  const { of, original, changed, file, strange } = group(kept);
  const whose = codeOf(group(of));
  if (!whose) return coded.empty;
  return {
    ...coded.empty,
    of: whose,
    original: files(original),
    changed: files(changed),
    file: typeof file === 'string' && whose.kind === 'own' ? file : '',
    strange: strange === true,
  };
}

const group = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};

const codeOf = ({ kind, name }: Readonly<Record<string, unknown>>): CodeOf | undefined =>
  (kind === 'garment' || kind === 'own') && typeof name === 'string' ? { kind, name } : undefined;

const files = (value: unknown): DraftFiles =>
  Object.fromEntries(
    Object.entries(group(value)).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  );
