import { labelPlace } from '../finishing/label.ts';
import type { Curve } from '../geometry/curve.ts';
import { between, moved, type Point } from '../geometry/point.ts';
import { type Ink, type InkWords, stroke } from '../render/ink.ts';
import { textWidth } from '../render/text-size.ts';
import type { LaidCopy } from './lay-plan.ts';

/** Of words beside the cloth, mm of paper, and from row to row of the key. */
export const plainSize = 3;
export const keyStep = 4.5;

/** Of the words on a copy, mm, the largest first; and of a number that has hardly room, down to what can still be read. */
const labelSizes = [2.6, 2.2, 1.8] as const;
const tightSizes = [1.8, 1.5, 1.2, 1] as const;

/** How far letters stand above their line and hang below it, and from line to line, as shares of their size. */
const [ascent, descent, leading] = [0.8, 0.25, 1.2];

/** White round a label, mm. */
const clearance = 1.2;

/** A copy: its cutting line, its grain, and its label. */
export function copyInk(drawn: DrawnCopy, label: readonly InkWords[]): Ink[] {
  const { of, copy, curves, from, to } = drawn;
  return [
    {
      kind: 'chain',
      class: 'outline',
      curves,
      closed: true,
      names: { piece: of.piece, line: `copy ${copy}` },
    },
    stroke('level', from, to, { piece: of.piece, line: `grain ${copy}` }),
    ...headInk(to, from.x < to.x ? -1 : 1),
    ...label,
  ];
}

/** A copy where it lies on the paper. */
export interface DrawnCopy extends LaidCopy {
  readonly curves: readonly Curve[];
  readonly from: Point;
  readonly to: Point;
}

/** The words on a copy, as large as there is room for; none where they have no room. */
export function wordsOn(drawn: DrawnCopy, folded: boolean): readonly InkWords[] | undefined {
  const words = [`${drawn.of.number} ${drawn.of.piece}`, manner(drawn.of, folded)].filter(Boolean);
  for (const size of labelSizes) {
    const ink = block(drawn, words, size, clearance);
    if (ink) return ink;
  }
  return undefined;
}

/** Only its mark on a copy, whose words stand in the key. */
export function markOn(drawn: DrawnCopy, mark: string): readonly InkWords[] {
  for (const size of labelSizes) {
    const ink = block(drawn, [mark], size, clearance / 2);
    if (ink) return ink;
  }
  // Hardly larger than the figure itself: it stands across the grain.
  const corner = drawn.curves[0]?.from ?? drawn.from;
  for (const size of tightSizes) {
    const ink = block({ ...drawn, from: corner, to: corner }, [mark], size, 0);
    if (ink) return ink;
  }
  const size = tightSizes[tightSizes.length - 1] ?? 1;
  const at = moved(between(drawn.from, drawn.to, 0.5), { x: 0, y: (ascent * size) / 2 });
  return [{ kind: 'words', text: mark, at, size, anchored: 'middle' }];
}

/** Lines of words inside a copy, clear of its line and its grain; none where they have no room. */
function block(
  { curves, from, to }: DrawnCopy,
  lines: readonly string[],
  size: number,
  clear: number,
): InkWords[] | undefined {
  const width = Math.max(...lines.map((text) => textWidth(text, size)));
  const height = size * (ascent + leading * (lines.length - 1) + descent);
  const outline = { edges: [{ name: '', curves }], lines: [], marks: [], grain: { from, to } };
  const place = labelPlace(outline, { width, height }, clear);
  if (!place) return undefined;
  const { middle, rotation } = place;
  return lines.map((text, i) => ({
    kind: 'words',
    text,
    at: moved(middle, { x: 0, y: size * (ascent + leading * i) - height / 2 }),
    size,
    anchored: 'middle',
    ...(rotation === 90 && { turnedAbout: middle }),
  }));
}

/** A line of the key below the cloth: what is marked so on its copies. */
export interface KeyLine {
  readonly mark: string;
  readonly words: string;
}

/**
 * The key to the copies that have only a mark: their number, and where one number stands for several (the sizes of a piece, the two of
 * a pair) a letter behind it.
 */
export function keyOf(marked: readonly LaidCopy['of'][], folded: boolean): readonly KeyLine[] {
  const numbers = [...new Set(marked.map(({ number }) => number))];
  return numbers.flatMap((number) => {
    const own = marked.filter((of) => of.number === number);
    const all = [...new Set(own.map((of) => inKey(of, folded)))];
    return all.map((words, i) => ({ mark: `${number}${all.length > 1 ? letters(i) : ''}`, words }));
  });
}

/** How a copy is marked by a key. */
export const markIn = (key: readonly KeyLine[], of: LaidCopy['of'], folded: boolean): string =>
  key.find(({ words }) => words === inKey(of, folded))?.mark ?? String(of.number);

/** What the words of a key are drawn as, a line each. */
export const keyInk = (key: readonly KeyLine[], at: Point): InkWords[] =>
  key.map(({ mark, words }, i) => ({
    kind: 'words',
    text: `${mark} ${words}`,
    at: moved(at, { x: 0, y: keyStep * i }),
    size: plainSize,
  }));

const inKey = (of: LaidCopy['of'], folded: boolean): string =>
  [of.piece, manner(of, folded)].filter(Boolean).join(', ');

/** a to z, then aa and on. */
const letters = (i: number): string =>
  (i < 26 ? '' : letters(Math.floor(i / 26) - 1)) + String.fromCharCode(97 + (i % 26));

/** A small head at the foot of the grain, which is where all point on cloth with nap. */
const headInk = (tip: Point, back: number): Ink[] => [
  stroke('level', tip, moved(tip, { x: 2 * back, y: 0.8 })),
  stroke('level', tip, moved(tip, { x: 2 * back, y: -0.8 })),
];

/** How a copy is cut, where that does not go without saying. */
function manner({ gives, onFold, turnedOver }: LaidCopy['of'], folded: boolean): string {
  if (onFold) return 'on the fold';
  if (gives === 2) return 'both layers';
  if (turnedOver) return folded ? 'upper layer, turned over' : 'turned over';
  return folded ? 'upper layer only' : '';
}
