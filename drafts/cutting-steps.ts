import { flatMapped } from '../engine/flat-mapped.ts';
import type { Piece } from '../engine/pattern/piece.ts';
import { listed } from '../engine/text/listed.ts';
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
        `Snip or chalk every notch. Mark ${listed(markedOn(pieces))} on the wrong side.`,
        ...levelsDrawn(pieces),
        'Pin a slip with its name on each piece, and keep lefts and rights apart.',
      ],
    },
  ],
});

/** What is drawn on pieces and has to be seen on the cloth, besides their notches. */
function markedOn(pieces: readonly Piece[]): readonly string[] {
  const lines = new Set(flatMapped(pieces, (piece) => piece.lines.map(({ kind }) => kind)));
  const marks = new Set(flatMapped(pieces, (piece) => piece.marks.map(({ kind }) => kind)));
  return [
    ...(lines.has('casing') ? ['casing lines'] : []),
    ...(lines.has('gathering') ? ['gathering lines'] : []),
    'folds',
    ...(marks.has('buttonhole') ? ['buttonholes'] : []),
    ...(marks.has('cross') ? ['bust points'] : []),
  ];
}

/** Plumb lines are there to be looked at when it is tried on, and so are the levels beside them. */
const levelsDrawn = (pieces: readonly Piece[]): readonly string[] =>
  pieces.some(({ lines }) => lines.some(({ name }) => name === PLUMB))
    ? ['Trace all level and plumb lines onto the right side, where they can be seen and written on.']
    : [];

/** What the lines are called that hang upright on a trial bodice. */
export const PLUMB = 'plumb line';
