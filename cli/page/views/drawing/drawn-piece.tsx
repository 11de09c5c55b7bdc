import type { ScreenLine, ScreenPiece } from '../../../../drafts/index.ts';
import { sameIn, unlessSame } from '../unless-same.ts';

/** What a line is told by among those that are lit; without a name all edges of the piece are meant. */
export const lineKey = (piece: string, line: string): string => `${piece}\n${line}`;

/** How lines are lit, by `lineKey`. */
export type Lit = ReadonlyMap<string, 'touched' | 'partner'>;

interface DrawnPieceProps {
  readonly piece: ScreenPiece;
  /** What it is, in words. */
  readonly says: string;
  /** What it was before: its stitching and cutting lines are drawn in grey under it. */
  readonly earlier?: ScreenPiece | undefined;
  readonly lit?: Lit;
  readonly transform?: string;
  /** Smallest letters that can be read, mm. */
  readonly letters: number;
  readonly onTouch?: (piece: string, edge: string) => void;
}

const Piece = ({ piece, says, earlier, lit, transform, letters, onTouch }: DrawnPieceProps) => (
  // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a group of SVG is nothing that is acted on.
  <g class="drawn-piece" role="img" aria-label={says} transform={transform}>
    {earlier && <path class="earlier" d={dataOf(earlier.lines.filter(isOutline))} />}
    {byClass(piece.lines).map(([type, d]) => (
      <path key={type} class={type} d={d} />
    ))}
    <text class="piece-name" x={piece.middle[0]} y={piece.middle[1]} font-size={letters}>
      {nameFits(piece, letters) ? `${piece.number} ${piece.name}` : piece.number}
    </text>
    {lit &&
      piece.lines.map(({ name, edge, d }, i) => {
        const how =
          lit.get(lineKey(piece.name, name)) ??
          (edge === undefined ? undefined : lit.get(lineKey(piece.name, '')));
        return how && <path key={`lit ${i}`} class={`lit ${how}`} d={d} />;
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

/** Whether there is room for its name on a piece, at half a letter's height a letter. */
const nameFits = ({ number, name, width }: ScreenPiece, letters: number): boolean =>
  `${number} ${name}`.length * letters * 0.5 < width;

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
    sameIn<DrawnPieceProps>(['says', 'lit', 'transform', 'letters', 'onTouch'])(before, now) &&
    looksSame(before.piece, now.piece) &&
    looksSame(before.earlier, now.earlier),
);

/** Lines of one kind as one path: a browser paints few long paths sooner than many short ones. */
function byClass(lines: readonly ScreenLine[]): readonly (readonly [type: string, d: string])[] {
  const kinds = new Map<string, ScreenLine[]>();
  for (const line of lines) {
    // Where cloth is folded the cutting line runs.
    if (line.turn === 'fold') continue;
    const known = kinds.get(line.class);
    if (known) known.push(line);
    else kinds.set(line.class, [line]);
  }
  return [...kinds].map(([type, of]) => [type, dataOf(of)]);
}

const dataOf = (lines: readonly ScreenLine[]): string => lines.map(({ d }) => d).join('');

const isOutline = ({ class: type, turn }: ScreenLine): boolean =>
  type === 'cut' || (type === 'stitch' && turn !== 'fold');
