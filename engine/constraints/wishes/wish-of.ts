import { DraftMistake } from '../../draft-mistake.ts';
import { finite } from '../compile/slots.ts';
import type { Wish } from '../relations.ts';

/** The wish of one kind. */
export type WishOf<K extends Wish['kind']> = Extract<Wish, { readonly kind: K }>;

/** What a wish's residuals are multiplied by, so that the weight is that of their squares. */
export function rootOfWeight({ name, weight }: Wish): number {
  if (!(finite(weight, name) >= 0))
    throw new DraftMistake(`“${name}” needs a weight of zero or more, not ${weight}.`, [name]);
  return Math.sqrt(weight);
}
