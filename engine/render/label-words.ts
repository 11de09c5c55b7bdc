import type { Garment, Girth } from '../pattern/garment.ts';
import type { CutCount, Piece } from '../pattern/piece.ts';

/** What the piece says on paper: its heading, then the lines below it. */
export interface LabelWords {
  readonly heading: string;
  readonly lines: readonly string[];
}

/**
 * Heading and lines of a piece's label. `unplaced` are words of its level lines that found no place there. The date is
 * whatever the caller wants printed.
 */
export function labelWords(
  garment: Garment,
  piece: Piece,
  unplaced: readonly string[],
  date: string | undefined,
): LabelWords {
  return {
    heading: `${piece.number} ${piece.name}`,
    lines: [
      ...piece.cut.map(cutWords),
      allowanceWords(piece),
      ...levelsOf(garment, piece).map(girthWords),
      ...unplaced,
      [`${garment.name} for ${garment.body}`, date].filter(Boolean).join(', '),
    ],
  };
}

export const cutWords = ({ cloth, count, onFold, pair, printedSide }: CutCount): string => {
  const pairs = pair ? (count === 2 ? ', a pair' : ', in pairs') : '';
  return `cut ${count} ${cloth}${onFold ? ' on the fold' : ''}${pairs}${printedSide ? `, printed side ${printedSide}` : ''}`;
};

/** Seam allowances are mostly one width; a hem of another width is named beside it. */
function allowanceWords({ edges }: Piece): string {
  const widths = (turns: readonly string[]): string =>
    [...new Set(edges.filter((edge) => turns.includes(edge.turn)).map((edge) => figure(edge.allowance)))]
      .filter((width) => width !== '0')
      .join(' and ');
  const [seam, hem] = [widths(['seam', 'finished']), widths(['hem'])];
  const words = [seam && `seam allowance ${seam} mm`, hem && `hem ${hem} mm`].filter(Boolean);
  return words.length > 0 ? `${words.join(', ')} included` : 'no allowance';
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

const girthWords = ({ level, body, ease }: Girth): string => `${level} finished ${figure(body + ease)} mm`;

const figure = (value: number): string => String(Math.round(value * 10) / 10);
