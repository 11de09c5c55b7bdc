import type { FittingChange } from '../../engine/body/fitting.ts';
import { changeWords } from '../../engine/body/fitting.ts';
import type { Issue } from '../../engine/issue.ts';
import type { Piece } from '../../engine/pattern/piece.ts';

/** Notes for the changes of a fitting that a garment has no piece for: a skirt on its own knows nothing of a strap. */
export const withoutPlace = (changes: readonly FittingChange[], pieces: readonly Piece[]): readonly Issue[] =>
  changes
    .filter((change) => !pieces.some(({ name }) => name === pieceFor(change)))
    .map((change) => ({
      code: 'fitting-without-place',
      severity: 'note',
      path: 'fitting',
      message: `"${changeWords(change)}" changes nothing here: this garment has no ${pieceFor(change)}.`,
    }));

const pieceFor = ({ kind }: FittingChange): string => (kind === 'more upper arm' ? 'sleeve' : 'side front');
