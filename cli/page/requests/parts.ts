import type { Evaluation } from '../../../engine/evaluate.ts';
import type { ProvenSheet } from '../../../engine/proven-sheet.ts';
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
  cautions: ({ evaluation }) => [
    ...new Set(evaluation.garment.sewing?.flatMap(({ cautions = [] }) => cautions)),
  ],
};

/** Those parts that are wanted. */
export const draftParts = (made: WrittenGarment, wanted: readonly DraftPart[]): Partial<DraftParts> =>
  Object.fromEntries(wanted.map((part) => [part, makers[part](made)]));
