import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Draft } from '../engine/pattern/draft.ts';
import { unusable } from './unusable.ts';
import { reason } from './write-files.ts';

/**
 * Takes `--draft FILE` out of a command line, wherever it stands and as often as it does: garments drafted elsewhere, each
 * the default export of a module, in TypeScript or JavaScript. Throws `Unusable` where a file holds none.
 */
export async function withOwnDrafts(
  words: readonly string[],
): Promise<{ readonly words: readonly string[]; readonly drafts: readonly Draft[] }> {
  const left: string[] = [];
  const drafts: Draft[] = [];
  for (let i = 0; i < words.length; i++) {
    const word = words[i] ?? '';
    const [, joined] = /^--draft=(.*)$/s.exec(word) ?? [];
    if (word !== '--draft' && joined === undefined) left.push(word);
    else drafts.push(await ownDraft(joined ?? words[++i]));
  }
  return { words: left, drafts };
}

async function ownDraft(file: string | undefined): Promise<Draft> {
  if (file === undefined || file === '')
    throw unusable('draft-missing', '--draft', 'Say which file holds the draft: --draft ./my-apron.ts.');
  const address = pathToFileURL(resolve(file)).href;
  let found: { readonly default?: unknown };
  try {
    // Only a draft written elsewhere needs the loader of TypeScript.
    const { tsImport } = await import('tsx/esm/api');
    found = await tsImport(address, import.meta.url);
  } catch (error) {
    throw unusable('draft-not-loaded', file, `Cannot load the draft in ${file}: ${reason(error)}`);
  }
  const draft = defaultOf(found);
  if (isDraft(draft)) return draft;
  throw unusable(
    'no-draft',
    file,
    `${file} exports no draft: write “export default defineDraft({ name, title, choices, shapedBy, draw })”.`,
  );
}

/** A module's default export, once more where the module was taken for one of the older kind. */
function defaultOf(found: { readonly default?: unknown }): unknown {
  const own = found.default;
  return typeof own === 'object' && own !== null && 'default' in own ? own.default : own;
}

const isDraft = (value: unknown): value is Draft =>
  typeof value === 'object' &&
  value !== null &&
  'name' in value &&
  typeof value.name === 'string' &&
  'choices' in value &&
  Array.isArray(value.choices) &&
  'shapedBy' in value &&
  Array.isArray(value.shapedBy) &&
  'draw' in value &&
  typeof value.draw === 'function';
