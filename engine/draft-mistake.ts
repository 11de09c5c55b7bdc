import { nearestWord } from './text/nearest-word.ts';

/**
 * A mistake in a draft itself, whoever it is drafted for: the program goes on for no body until it is mended. `words` are
 * names as the draft's source has them, what is wrong first, so that the line can be found where they stand.
 */
export class DraftMistake extends Error {
  readonly words: readonly string[];

  constructor(message: string, words: readonly string[]) {
    super(message);
    this.name = 'DraftMistake';
    this.words = words;
  }
}

/** Whether something thrown is such a mistake, be it of another copy of this program, as a draft of one's own brings one. */
export const isDraftMistake = (thrown: unknown): thrown is DraftMistake =>
  thrown instanceof Error &&
  thrown.name === 'DraftMistake' &&
  'words' in thrown &&
  Array.isArray(thrown.words);

/** The known name that was perhaps meant, as a sentence; else the few that there are; else nothing. */
export function perhapsMeant(name: string, known: readonly string[]): string {
  const near = nearestWord(name, known);
  if (near !== undefined) return ` Did you mean “${near}”?`;
  return known.length === 0 || known.length > SHOWN ? '' : ` Known are: ${known.join(', ')}.`;
}

/** More names than this are no help. */
const SHOWN = 12;
