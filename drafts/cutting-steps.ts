import type { Piece } from '../engine/pattern/piece.ts';
import { cautions } from './cautions.ts';
import type { StagedSewing } from './sewing-stages.ts';

/** What comes before all sewing: cutting and marking. */
export const cuttingSteps = (pieces: readonly Piece[]): StagedSewing => ({
  cut: [
    {
      title: 'Cut out',
      brings: pieces.map(({ name }) => ({ piece: name, is: 'cut' })),
      how: [
        'Measure the printed test squares with a ruler before you cut anything.',
        'Wash the cloth as the dress will be washed, and press it.',
        'Lay the pieces out with their arrows along the grain and their folds on the fold; cut along the outer line.',
      ],
      cautions: [cautions.iron, cautions.rotaryCutter],
    },
  ],
  mark: [
    {
      title: 'Mark',
      needs: pieces.map(({ name }) => ({ piece: name, is: 'cut' })),
      brings: pieces.map(({ name }) => ({ piece: name, is: 'marked' })),
      how: [
        'Snip or chalk every notch. Mark casing lines, gathering lines, folds and buttonholes on the wrong side.',
        'Pin a slip with its name on each piece, and keep lefts and rights apart.',
      ],
    },
  ],
});
