import type { Evaluation, ProvenSheet } from '../../../drafts/index.ts';
import type { DraftPart, DraftParts } from '../draft-parts.ts';

/** A garment as it was drafted and written: what its parts are made of. */
export interface WrittenGarment {
  readonly evaluation: Evaluation;
  readonly proven: ProvenSheet;
  readonly units: 'mm' | 'in';
}

type Makers = { readonly [Part in DraftPart]: (made: WrittenGarment) => DraftParts[Part] };

const makers: Makers = {
  files: ({ proven }) => [...proven.pieces()].map(([name, text]) => ({ name, text })),
};

/** Those parts that are wanted. */
export const draftParts = (made: WrittenGarment, wanted: readonly DraftPart[]): Partial<DraftParts> =>
  Object.fromEntries(wanted.map((part) => [part, makers[part](made)]));
