import type { NotchType } from '../finishing/notches.ts';
import { boundingBox } from '../geometry/bounds.ts';
import type { Curve, Edge } from '../geometry/curve.ts';
import type { Garment } from '../pattern/garment.ts';
import type { PieceEdge } from '../pattern/piece.ts';
import { drawing } from './drawing.ts';
import { finishedPieces } from './finish.ts';
import { type FinishedPiece, lineAround } from './finished-piece.ts';
import { type Ink, type InkNames, ownName } from './ink.ts';
import { cutWords } from './label-words.ts';
import type { InkClass } from './line-types.ts';
import { numeral, pathData } from './path-data.ts';

/** A piece for a screen: upright on its grain, in mm of its own place, without the words of a label. */
export interface ScreenPiece {
  readonly name: string;
  readonly number: number;
  /** How often of what it is cut, in words. */
  readonly cut: string;
  /** The upright rectangle about its cutting line. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** Half way down its grain line. */
  readonly middle: readonly [x: number, y: number];
  readonly lines: readonly ScreenLine[];
}

export interface ScreenLine {
  readonly class: InkClass;
  /** What it is called on its piece; nothing where it has no name of its own. */
  readonly name: string;
  /** The edge that this is, where it is one. */
  readonly edge?: string;
  readonly turn?: PieceEdge['turn'];
  /** A path's data, to a hundredth of a millimetre. */
  readonly d: string;
}

/** A screen shows no more than hundredths of a millimetre, however much is enlarged. */
const places = 2;

/**
 * The pieces of a garment as a screen shows them: what `sheetSvg` draws but for words, each line as a path of its own, so that
 * whoever draws again and again changes only what moved.
 */
export const screenPieces = (
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  notches: NotchType,
): readonly ScreenPiece[] => finishedPieces(garment, cutLines, notches).map(onScreen);

function onScreen(finished: FinishedPiece): ScreenPiece {
  const { name, number, cut, grain } = finished.piece;
  const { left, right, top, bottom } = boundingBox(lineAround(finished));
  return {
    name,
    number,
    cut: cut.map(cutWords).join('; '),
    left,
    top,
    width: right - left,
    height: bottom - top,
    middle: [(grain.from.x + grain.to.x) / 2, (grain.from.y + grain.to.y) / 2],
    lines: drawing(finished).flatMap(screenLine),
  };
}

function screenLine(ink: Ink): readonly ScreenLine[] {
  switch (ink.kind) {
    case 'chain':
      return [lineOf(ink.class, ink.names, pathData(ink.curves as readonly Curve[], ink.closed, places))];
    case 'circle': {
      const [x, y, r] = [ink.middle.x - ink.radius, ink.middle.y, ink.radius].map((n) => numeral(n, places));
      const half = (way: string): string => `a${r} ${r} 0 1 0 ${way}${numeral(2 * ink.radius, places)} 0`;
      return [lineOf(ink.class, ink.names, `M${x} ${y}${half('')}${half('-')}`)];
    }
    case 'box':
    case 'words':
      return [];
  }
}

const lineOf = (type: InkClass, names: InkNames = {}, d: string): ScreenLine => ({
  class: type,
  name: ownName(names),
  ...(type === 'stitch' && names.edge !== undefined
    ? { edge: names.edge, turn: names.turn as PieceEdge['turn'] }
    : {}),
  d,
});
