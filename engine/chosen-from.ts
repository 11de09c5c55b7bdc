import type { FoundFrom } from './excluded-relation.ts';
import type { Choice } from './pattern/styling.ts';

/** A choice as what something was found from, with its word where it is one among words. */
export const chosenFrom = ({ kind, name }: Choice, made: number | string | undefined): FoundFrom => ({
  kind: 'choice',
  name,
  ...(kind === 'word' && made !== undefined && { word: String(made) }),
});
