import type { Curve, Edge } from '../geometry/curve.ts';
import { type Point, point } from '../geometry/point.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';
import type { Unit } from '../text/units.ts';
import { withLengthsIn } from '../text/with-lengths-in.ts';
import { withBox, withLines } from './crowded.ts';
import { finishedPieces } from './finish.ts';
import type { FinishedPiece } from './finished-piece.ts';
import { foldSigns } from './fold-sign.ts';
import type { InkWords } from './ink.ts';
import { label } from './label.ts';
import { labelBeside } from './label-beside.ts';
import { labelWords } from './label-words.ts';
import type { PrintOptions, ReadAs } from './print-options.ts';
import { type WordedLine, wordsAlong } from './words-along.ts';

/** The pieces of a garment as they go on paper, upright, each with its words. `cutLines` holds the cutting lines by name. */
export const letteredPieces = (
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  options: PrintOptions,
): readonly FinishedPiece[] =>
  finishedPieces(garment, cutLines, options.notches ?? 'slit', options.earlier).map((finished) =>
    lettered(finished, garment, options),
  );

/**
 * A finished piece with its words: those of its lines beside these, and its label inside, clear of every line, of an
 * earlier outline under it, and of `joints`, where the paper is cut; or beside the piece where it has no room.
 */
export function lettered(
  finished: FinishedPiece,
  garment: Garment,
  as: ReadAs,
  joints: readonly Curve[] = [],
): FinishedPiece {
  const { piece, earlier = [] } = finished;
  const signs = foldSigns(piece).flatMap(({ curves }) => curves);
  const signed = withLines(piece, [...signs, ...joints, ...earlier.flat()]);
  const { words, unplaced, crowded } = placedWords(signed, worded(piece, as.units ?? 'mm'));
  const said = labelWords(garment, piece, unplaced, as);
  return { ...finished, lettering: [...words, ...(label(crowded, said) ?? labelBeside(finished, said))] };
}

/** Words on the lines of a piece, one after the other, each clear of the others. */
function placedWords(piece: Piece, said: readonly WordedLine[]) {
  const words: InkWords[] = [];
  const unplaced: string[] = [];
  let crowded = piece;
  for (const line of said) {
    const placed = wordsAlong(line, crowded);
    if (placed) {
      words.push(placed.words);
      crowded = withBox(crowded, placed.box);
    } else if (line.matters) unplaced.push(line.text);
  }
  return { words, unplaced, crowded };
}

/** The words that stand on lines of a piece: beside crosses, on level lines, and on others that carry any. */
const worded = ({ lines, marks }: Piece, units: Unit): readonly WordedLine[] => [
  ...marks
    .filter(({ kind }) => kind === 'cross')
    .map(({ name, at }) => ({ curves: acrossCross(at), text: name, matters: false })),
  ...lines
    .filter(({ kind, text }) => kind === 'level' || text !== undefined)
    .map(({ name, curves, text }) => ({ curves, text: withLengthsIn(text ?? name, units), matters: true })),
];

/** The name of a cross stands within so much of its middle, mm. */
const besideCross = 25;

const acrossCross = ({ x, y }: Point): readonly Curve[] => [
  { kind: 'line', from: point(x - besideCross, y), to: point(x + besideCross, y) },
];
