import { labelPlace } from '../finishing/label.ts';
import { between, type Point, point } from '../geometry/point.ts';
import type { Piece } from '../pattern/piece.ts';
import { broken } from './booklet/paragraph.ts';
import type { Words } from './ink.ts';
import type { LabelWords } from './label-words.ts';
import { textSizes } from './line-types.ts';
import { textWidth } from './text-size.ts';

/** Distance from line to line as a share of the font size. */
const leading = 1.35;

/** Smaller settings, tried in turn where the piece is too narrow for a larger one. */
const settings = [1, 0.85, 0.7, 0.55, 0.45] as const;

/** Characters that longer lines are broken to where there is no room for them. */
const BROKEN_TO = 34;

/** Distance that a label keeps from every line, mm; half of it where nothing else helps. */
const clearance = 3;

/** What is tried in turn: how large the letters are, and how far from every line. */
const tries = [
  ...settings.map((setting) => [setting, clearance] as const),
  [0.55, clearance / 2] as const,
  [0.45, clearance / 2] as const,
];

interface Row {
  readonly text: string;
  readonly size: number;
  readonly heading: boolean;
}

/**
 * The label of a piece, at the roomiest place inside it. A narrow piece goes without the wearer's
 * measurements, then has its lines broken, then gets a smaller setting; one with no room at all gets its heading alone, on
 * the middle of the grainline.
 */
export function label(piece: Piece, { heading, lines, wearer }: LabelWords): readonly Words[] {
  const withWearer = wearer === undefined ? [] : [[...lines, ...wearer]];
  const ways = [...withWearer, lines, lines.flatMap((text) => broken(text, BROKEN_TO))];
  for (const [setting, away, said] of tries.flatMap(([size, far]) =>
    ways.map((each) => [size, far, each] as const),
  )) {
    const rows: readonly Row[] = [
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
  const { from, to } = piece.grain;
  const row = { text: heading, size: textSizes.heading * 0.45, heading: true };
  return block([row], between(from, to, 0.5), row.size, true);
}

function block(rows: readonly Row[], middle: Point, height: number, upwards: boolean): readonly Words[] {
  let top = middle.y - height / 2;
  return rows.map(({ text, size, heading }) => {
    top += size * leading;
    return {
      kind: 'words',
      text,
      at: point(middle.x, top - size * (leading - 1)),
      size,
      centred: true,
      ...(heading && { bold: true }),
      ...(upwards && { turnedAbout: middle }),
    };
  });
}
