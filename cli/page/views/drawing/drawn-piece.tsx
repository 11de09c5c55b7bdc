import type { ScreenLine, ScreenPiece } from '../../../../drafts/index.ts';
import { sameIn, unlessSame } from '../unless-same.ts';

/** What a line is told by in sets of lines that are lit. */
export const lineKey = (piece: string, edge: string): string => `${piece}\n${edge}`;

interface DrawnPieceProps {
  readonly piece: ScreenPiece;
  /** What it was before: its stitching and cutting lines are drawn in grey under it. */
  readonly earlier?: ScreenPiece | undefined;
  /** Edges that are lit, by `lineKey`. */
  readonly lit?: ReadonlyMap<string, 'touched' | 'partner'>;
  readonly transform?: string;
  /** Smallest letters that can be read, mm. */
  readonly letters: number;
  readonly onTouch?: (piece: string, edge: string) => void;
}

const Piece = ({ piece, earlier, lit, transform, letters, onTouch }: DrawnPieceProps) => (
  <g class="drawn-piece" transform={transform}>
    {earlier?.lines.filter(isOutline).map((line, i) => (
      <path key={`earlier ${i}`} class="earlier" d={line.d} />
    ))}
    {piece.lines.map((line, i) => (
      <path key={i} class={line.turn === 'fold' ? 'on-fold' : line.class} d={line.d} />
    ))}
    <text class="piece-name" x={piece.middle[0]} y={piece.middle[1]} font-size={letters}>
      {piece.number} {piece.name}
    </text>
    {lit &&
      piece.lines.map(({ edge, d }) => {
        const how = edge === undefined ? undefined : lit.get(lineKey(piece.name, edge));
        return how && <path key={`lit ${edge}`} class={`lit ${how}`} d={d} />;
      })}
    {onTouch &&
      piece.lines.map(
        ({ edge, d }) =>
          edge !== undefined && (
            // biome-ignore lint/a11y/noStaticElementInteractions: the edges are buttons in the list beside the drawing.
            <path key={`touch ${edge}`} class="touch" d={d} onClick={() => onTouch(piece.name, edge)} />
          ),
      )}
  </g>
);

/** Whether two pieces look the same: a new draft makes all its pieces anew. */
const looksSame = (before: ScreenPiece | undefined, now: ScreenPiece | undefined): boolean =>
  before === now ||
  (before !== undefined &&
    now !== undefined &&
    before.name === now.name &&
    before.number === now.number &&
    before.middle.every((at, i) => at === now.middle[i]) &&
    before.lines.length === now.lines.length &&
    before.lines.every((line, i) => line.d === now.lines[i]?.d && line.class === now.lines[i]?.class));

/** One piece on the screen. */
export const DrawnPiece = unlessSame<DrawnPieceProps>(
  Piece,
  (before, now) =>
    sameIn<DrawnPieceProps>(['lit', 'transform', 'letters', 'onTouch'])(before, now) &&
    looksSame(before.piece, now.piece) &&
    looksSame(before.earlier, now.earlier),
);

const isOutline = ({ class: type, turn }: ScreenLine): boolean =>
  type === 'cut' || (type === 'stitch' && turn !== 'fold');
