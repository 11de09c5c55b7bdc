import { type Evaluation, notchesOf, type ProvenSheet, screenPieces } from '../../../drafts/index.ts';
import { json, walkResult } from '../../walk-result.ts';
import type { DraftPart, DraftParts } from '../draft-parts.ts';
import { screenSeams } from './screen-seams.ts';

/** A garment as it was drafted: what its parts are made of. */
export interface PartSource {
  readonly evaluation: Evaluation;
  /** The sheet, written and walked again; made when it is first asked for. */
  readonly proven: () => ProvenSheet;
  readonly units: 'mm' | 'in';
}

type Makers = { readonly [Part in DraftPart]: (made: PartSource) => DraftParts[Part] };

const makers: Makers = {
  lines: ({ evaluation: { garment, cutLines, styling } }) =>
    screenPieces(garment, cutLines, notchesOf(styling)),
  seams: ({ evaluation: { garment }, units }) => screenSeams(garment, units),
  proof: ({ proven }) => {
    proven();
    return true;
  },
  files: ({ evaluation, proven }) => {
    const { sheet, report, pieces } = proven();
    const files = new Map([
      ['sheet.svg', sheet],
      ['report.json', json(walkResult(report, evaluation))],
      ...pieces(),
    ]);
    return [...files].map(([name, text]) => ({ name, text }));
  },
};

/** Those parts that are wanted. */
export const draftParts = (made: PartSource, wanted: readonly DraftPart[]): Partial<DraftParts> =>
  Object.fromEntries(wanted.map((part) => [part, makers[part](made)]));
