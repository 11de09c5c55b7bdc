import { labelPlace } from '../finishing/label.ts';
import { type Point, point } from '../geometry/point.ts';
import type { Piece } from '../pattern/piece.ts';
import { broken } from './booklet/paragraph.ts';
import { withBox } from './crowded.ts';
import type { InkWords } from './ink.ts';
import type { LabelWords } from './label-words.ts';
import { textSizes } from './line-types.ts';
import { textWidth } from './text-size.ts';

/** Distance from line to line as a share of the font size. */
export const leading = 1.35;

/** Smaller settings, tried in turn where the piece is too narrow for a larger one. */
const settings = [1, 0.85, 0.7, 0.55, 0.45] as const;

/** Characters that longer lines are broken to where there is no room for them. */
const BROKEN_TO = 34;

/** Distance that a label keeps from every line, mm; half of it where nothing else helps. */
const clearance = 3;

/** How large letters are, as a share of the usual size, and how far they keep from every line, mm. */
type Try = readonly [setting: number, away: number];

/**
 * Letters that are tried in turn before the wearer's measurements are left out: as long as they can be read well. In each turn
 * smaller letters come before broken lines.
 */
const readable: readonly (readonly Try[])[] = [
  [
    [1, clearance],
    [0.85, clearance],
  ],
  [[0.7, clearance]],
];

/** What is tried in turn: how large the letters are, and how far from every line. */
const tries: readonly Try[] = [
  ...settings.map((setting) => [setting, clearance] as const),
  [0.55, clearance / 2] as const,
  [0.45, clearance / 2] as const,
];

export interface LabelRow {
  readonly text: string;
  readonly size: number;
  readonly heading: boolean;
}

/**
 * The label of a piece, at the roomiest place inside it. A narrow piece has its letters set smaller and its lines broken, as
 * long as they can be read well; then it goes without the wearer's measurements, its letters get smaller still, and at last
 * every row finds a place of its own.
 * Undefined where there is no room even so.
 */
export function label(piece: Piece, { heading, lines, wearer }: LabelWords): readonly InkWords[] | undefined {
  const withWearer = wearer === undefined ? [] : ways([...lines, ...wearer]);
  const whole = readable.flatMap((turn) => withWearer.flatMap((each) => tried(turn, [each])));
  for (const [setting, away, said] of [...whole, ...tried(tries, ways(lines))]) {
    const rows: readonly LabelRow[] = [
      { text: heading, size: textSizes.heading * setting, heading: true },
      ...said.map((text) => ({ text, size: textSizes.plain * setting, heading: false })),
    ];
    const size = {
      width: Math.max(...rows.map((row) => textWidth(row.text, row.size))),
      height: rows.reduce((sum, row) => sum + row.size * leading, 0),
    };
    const place = labelPlace(piece, size, away);
    if (place) return block(rows, place.middle, size.height, place.rotation === 90);
  }
  return rowByRow(piece, heading, lines);
}

/** Lines as they are, and broken where they are long. */
const ways = (lines: readonly string[]): readonly (readonly string[])[] => [
  lines,
  lines.flatMap((text) => broken(text, BROKEN_TO)),
];

/** Every way of saying it in every setting: large letters before small ones. */
const tried = (settingsOf: readonly Try[], said: readonly (readonly string[])[]) =>
  settingsOf.flatMap(([setting, away]) => said.map((each) => [setting, away, each] as const));

/** How a label is set whose rows find places of their own: the letters, how far from every line, and how long a row may be. */
const splits = [
  { setting: 0.55, away: clearance / 2, longest: BROKEN_TO },
  { setting: 0.45, away: clearance / 2, longest: BROKEN_TO },
  { setting: 0.45, away: 0.8, longest: BROKEN_TO },
  { setting: 0.45, away: 0.8, longest: 20 },
] as const;

/** A label split into its rows, each at a place of its own; nothing where one of them finds none. */
function rowByRow(piece: Piece, heading: string, lines: readonly string[]): readonly InkWords[] | undefined {
  for (const { setting, away, longest } of splits) {
    const rows = [heading, ...lines.flatMap((text) => broken(text, longest))].map((text, i) => ({
      text,
      size: setting * (i === 0 ? textSizes.heading : textSizes.plain),
      heading: i === 0,
    }));
    let crowded = piece;
    const placed: InkWords[] = [];
    for (const row of rows) {
      const place = labelPlace(
        crowded,
        { width: textWidth(row.text, row.size), height: row.size * leading },
        away,
      );
      if (!place) break;
      placed.push(...block([row], place.middle, row.size * leading, place.rotation === 90));
      crowded = withBox(crowded, place);
    }
    if (placed.length === rows.length) return placed;
  }
  return undefined;
}

export function block(
  rows: readonly LabelRow[],
  middle: Point,
  height: number,
  upwards: boolean,
): readonly InkWords[] {
  let top = middle.y - height / 2;
  return rows.map(({ text, size, heading }) => {
    top += size * leading;
    return {
      kind: 'words',
      text,
      at: point(middle.x, top - size * (leading - 1)),
      size,
      anchored: 'middle',
      ...(heading && { bold: true }),
      ...(upwards && { turnedAbout: middle }),
    };
  });
}
