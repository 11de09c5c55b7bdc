import { edgeLength } from '../geometry/edge.ts';
import type { Garment, Wearer } from '../pattern/garment.ts';
import type { CutCount, Piece, PieceEdge } from '../pattern/piece.ts';
import type { Girth } from '../pattern/seam.ts';
import { lengthFigure, lengthIn, SIXTEENTHS } from '../text/length.ts';
import type { Unit } from '../text/units.ts';
import type { ReadAs } from './print-options.ts';

/** What the piece says on paper: its heading, then the lines below it. */
export interface LabelWords {
  readonly heading: string;
  readonly lines: readonly string[];
  /** Whose it is, in measurements: on the first piece of a garment always, on any other where there is room. */
  readonly wearer?: readonly string[];
}

/**
 * Heading and lines of a piece's label. `unplaced` are words of its level lines that found no place there. The date is
 * whatever the caller wants printed.
 */
export function labelWords(
  garment: Garment,
  piece: Piece,
  unplaced: readonly string[],
  { date, units = 'mm' }: ReadAs,
): LabelWords {
  const [first] = garment.pieces;
  const wearer = garment.wearer && wearerWords(garment.wearer, units);
  const always = wearer !== undefined && piece.name === first?.name;
  return {
    heading: `${piece.number} ${piece.name}`,
    ...(wearer === undefined || always ? {} : { wearer }),
    lines: [
      ...piece.cut.map(cutWords),
      ...allowanceWords(piece, units),
      ...levelsOf(garment, piece).map((girth) => girthWords(girth, units)),
      ...unplaced,
      [`${garment.name} for ${garment.body}`, date].filter(Boolean).join(', '),
      ...(always ? wearer : []),
    ],
  };
}

const wearerWords = ({ cup, bust, underBust, waist, hip }: Wearer, units: Unit): readonly string[] => [
  `cup ${cup}, bust ${lengthFigure(bust, units)}, under-bust ${lengthFigure(underBust, units)},`,
  `waist ${lengthFigure(waist, units)}, hip ${lengthIn(hip, units)}`,
];

/** How often a piece is cut of a cloth, and how: “cut 2 lining, a pair”. */
export const cutWords = ({ cloth, count, onFold, pair, printedSide }: CutCount): string => {
  const pairs = pair ? (count === 2 ? ', a pair' : ', in pairs') : '';
  return `cut ${count} ${cloth}${onFold ? ' on the fold' : ''}${pairs}${printedSide ? `, printed side ${printedSide}` : ''}`;
};

/**
 * The allowance that most of the outline has, and beside it, in a line of their own, the edges that have another.
 */
function allowanceWords({ edges }: Piece, units: Unit): readonly string[] {
  const figure = (width: number): string => lengthFigure(width, units, SIXTEENTHS);
  const cutOut = edges.filter(({ allowance }) => allowance > 0);
  const lengths = new Map<string, number>();
  for (const edge of cutOut) {
    const width = figure(edge.allowance);
    lengths.set(width, (lengths.get(width) ?? 0) + edgeLength(edge));
  }
  const [most] = [...lengths].toSorted(([, a], [, b]) => b - a)[0] ?? [];
  if (most === undefined) return ['no allowance'];
  const others = cutOut.filter(({ allowance }) => figure(allowance) !== most);
  const named = others.map((edge) => `${kindOf(edge, cutOut)} ${figure(edge.allowance)}`);
  return [
    `seam allowance ${most} ${units} included`,
    ...(named.length > 0 ? [`but ${[...new Set(named)].join(', ')} ${units}`] : []),
  ];
}

/** The words that an edge's name begins with like those of its kind, where all of these are cut alike; else its name. */
function kindOf({ name, allowance }: PieceEdge, edges: readonly PieceEdge[]): string {
  const wordsOf = (other: string): readonly string[] => other.split(' ');
  const words = wordsOf(name);
  const kin = edges.filter((other) => wordsOf(other.name)[0] === words[0]);
  if (kin.some((other) => other.allowance !== allowance)) return name;
  const shared = words.findIndex((word, i) => kin.some((other) => wordsOf(other.name)[i] !== word));
  return shared < 0 ? name : words.slice(0, shared).join(' ');
}

/** The girths that this piece is part of and that no words on one of its level lines tell. */
const levelsOf = (garment: Garment, piece: Piece): readonly Girth[] =>
  garment.girths.filter((girth) =>
    girth.parts.some((part) => {
      if (part.piece !== piece.name) return false;
      const line = part.kind === 'line' && piece.lines.find(({ name }) => name === part.line);
      return !line || line.text === undefined;
    }),
  );

const girthWords = ({ level, body, ease }: Girth, units: Unit): string =>
  `${level} finished ${lengthIn(body + ease, units)}`;
