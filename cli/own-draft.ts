import { resolve } from 'node:path';
import type { Draft } from '../engine/pattern/draft.ts';
import { checkedDraft } from './checked-draft.ts';
import { draftSource } from './draft-source.ts';
import { loadModule, NotReadable } from './load-module.ts';
import { reason } from './reason.ts';
import type { DraftSource } from './source-places.ts';
import { Unusable, unusable } from './unusable.ts';

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

/** So many calls may lie between a line of the draft and what is thrown over it: a sentence is read bracket in bracket. */
const deepest = 200;

/** The draft in a file of one's own, checked as far as it can be unread; what it throws later is told with its line. */
export async function ownDraft(file: string | undefined): Promise<Draft> {
  if (file === undefined || file === '')
    throw unusable('draft-missing', '--draft', 'Say which file holds the draft: --draft ./my-apron.ts.');
  Error.stackTraceLimit = Math.max(Error.stackTraceLimit, deepest);
  const source = draftSource(file, resolve(file));
  return checkedDraft(await loaded(file, source), file, source);
}

async function loaded(file: string, source: DraftSource): Promise<{ readonly default?: unknown }> {
  try {
    return await loadModule(file);
  } catch (error) {
    const { source: place } = error instanceof NotReadable ? { source: error.place } : source.mistake(error);
    const message = `Cannot load the draft in ${file}: ${reason(error)}`;
    throw new Unusable([
      {
        code: 'draft-not-loaded',
        severity: 'error',
        path: file,
        message,
        ...(place ? { source: place } : {}),
      },
    ]);
  }
}
