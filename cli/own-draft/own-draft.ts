import { resolve } from 'node:path';
import type { Draft } from '../../engine/pattern/draft.ts';
import { reason } from '../input/reason.ts';
import { Unusable, unusable } from '../input/unusable.ts';
import { checkedDraft } from './checked-draft.ts';
import { draftSource } from './draft-source.ts';
import { heldBack } from './held-back.ts';
import { loadModule, NotReadable } from './load-module.ts';
import type { DraftSource } from './source-places.ts';
import { thrownWords } from './thrown-words.ts';
import { Endless, withinTime } from './within-time.ts';

/** Told of the file that is being read as a module, and of none once it is. */
type Reading = (file: string | undefined) => void;

/**
 * Takes `--draft FILE` out of a command line, wherever it stands and as often as it does: garments drafted elsewhere, each
 * the default export of a module, in TypeScript or JavaScript, with their files. Throws `Unusable` where a file holds none.
 */
export async function withOwnDrafts(
  words: readonly string[],
  reading?: Reading,
): Promise<{ readonly words: readonly string[]; readonly drafts: ReadonlyMap<Draft, string> }> {
  const left: string[] = [];
  const drafts = new Map<Draft, string>();
  for (let i = 0; i < words.length; i++) {
    const word = words[i] ?? '';
    const [, joined] = /^--draft=(.*)$/s.exec(word) ?? [];
    if (word !== '--draft' && joined === undefined) left.push(word);
    else {
      const file = joined ?? words[++i] ?? '';
      drafts.set(await ownDraft(file, reading), file);
    }
  }
  return { words: left, drafts };
}

/** So many calls may lie between a line of the draft and what is thrown over it: a sentence is read bracket in bracket. */
const deepest = 200;

/** A draft takes half a second, on a slow machine a few; one that has run for so long, ms, runs for ever. */
const longest = 20_000;

/** The draft in a file of one's own, checked as far as it can be unread; what it throws later is told with its line. */
export async function ownDraft(file: string, reading: Reading = () => undefined): Promise<Draft> {
  if (file === '')
    throw unusable('draft-missing', '--draft', 'Say which file holds the draft: --draft ./my-apron.ts.');
  Error.stackTraceLimit = Math.max(Error.stackTraceLimit, deepest);
  const source = draftSource(file, resolve(file));
  reading(file);
  const letGo = heldBack();
  try {
    return ended(checkedDraft(await loaded(file, source), file, source), source);
  } finally {
    letGo();
    reading(undefined);
  }
}

/** Where a draft has run for ever once, it is waited for a tenth as long from then on: many bodies take no hours. */
const SHORTER = 10;

/** A draft of which nothing runs without end: where it would, that is what it answers. */
export function ended(draft: Draft, source: DraftSource, limit: number = longest): Draft {
  let allowed = limit;
  return {
    ...draft,
    draw: (...given) => {
      const letGo = heldBack();
      try {
        return withinTime(() => draft.draw(...given), allowed);
      } catch (error) {
        if (!(error instanceof Endless)) throw error;
        allowed = limit / SHORTER;
        const place = source.placeOf(['draw']);
        const issue = {
          code: 'draft-endless',
          severity: 'error',
          path: 'draw',
          message: error.message,
        } as const;
        return { ok: false, issues: [{ ...issue, ...(place && { source: place }) }] };
      } finally {
        letGo();
      }
    },
  };
}

async function loaded(file: string, source: DraftSource): Promise<{ readonly default?: unknown }> {
  try {
    return await loadModule(file);
  } catch (error) {
    const { source: place } = error instanceof NotReadable ? { source: error.place } : source.mistake(error);
    const message = `Cannot load the draft in ${file}: ${thrownWords(error, reason(error))}`;
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
