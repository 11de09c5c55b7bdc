import type { PageAnswer, PageRequest } from './messages.ts';

/** Answers that say which question they are to. */
type Numbered = Extract<PageAnswer, { readonly number: number }>;

interface Hearing<Own> {
  /** What it asks of the worker. */
  readonly asks: PageRequest['kind'];
  /** How it stands where that comes to nothing. */
  readonly refused: (own: Own) => Own;
  /** What it makes of each answer, by its kind. */
  readonly hears: {
    readonly [Kind in Numbered['kind']]?: (
      own: Own,
      answer: Extract<Numbered, { readonly kind: Kind }>,
    ) => Own;
  };
}

/** How a view hears that counts what it asks: only answers to the newest of its questions change anything. */
export const hearing =
  <Own extends { readonly number: number }>({ asks, refused, hears }: Hearing<Own>) =>
  (own: Own, answer: PageAnswer): Own => {
    if (answer.kind === 'refused') return answer.asked === asks ? refused(own) : own;
    if (!('number' in answer) || answer.number !== own.number) return own;
    const hear = hears[answer.kind] as ((own: Own, answer: PageAnswer) => Own) | undefined;
    return hear ? hear(own, answer) : own;
  };
