import { labelPlace } from '../finishing/label.ts';
import type { Curve } from '../geometry/curve.ts';
import { between, moved, type Point } from '../geometry/point.ts';
import { type Ink, type InkWords, stroke } from '../render/ink.ts';
import { textWidth } from '../render/text-size.ts';
import type { LaidCopy, LayPlan } from './lay-plan.ts';

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
export function copyInk(drawn: DrawnCopy, label: Label): Ink[] {
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
    ...label.ink,
  ];
}

/** A copy where it lies on the paper. */
export interface DrawnCopy extends LaidCopy {
  readonly curves: readonly Curve[];
  readonly from: Point;
  readonly to: Point;
}

/** What stands on a copy; only its number where no more has room, and then the words stand in the key. */
interface Label {
  readonly ink: readonly InkWords[];
  readonly inKey: boolean;
}

/** The words on a copy, as large as there is room for. */
export function labelOf(drawn: DrawnCopy, folded: boolean): Label {
  const { of } = drawn;
  const words = [`${of.number} ${of.piece}`, manner(of, folded)].filter(Boolean);
  for (const size of labelSizes) {
    const ink = block(drawn, words, size, clearance);
    if (ink) return { ink, inKey: false };
  }
  const number = [String(of.number)];
  for (const size of labelSizes) {
    const ink = block(drawn, number, size, clearance / 2);
    if (ink) return { ink, inKey: true };
  }
  // Hardly larger than the figure itself: it stands across the grain.
  const corner = drawn.curves[0]?.from ?? drawn.from;
  for (const size of tightSizes) {
    const ink = block({ ...drawn, from: corner, to: corner }, number, size, 0);
    if (ink) return { ink, inKey: true };
  }
  const size = tightSizes[tightSizes.length - 1] ?? 1;
  const at = moved(between(drawn.from, drawn.to, 0.5), { x: 0, y: (ascent * size) / 2 });
  return {
    ink: [{ kind: 'words', text: number.join(''), at, size, centred: true }],
    inKey: true,
  };
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
    centred: true,
    ...(rotation === 90 && { turnedAbout: middle }),
  }));
}

/** What the numbers of small pieces stand for, a line each below the cloth. */
export function keyInk(plan: LayPlan, numbered: readonly LaidCopy['of'][], at: Point): InkWords[] {
  const texts = numbered.map((of) =>
    [`${of.number} ${of.piece}`, manner(of, plan.cloth.folded)].filter(Boolean).join(', '),
  );
  return [...new Set(texts)].map((text, i) => ({
    kind: 'words',
    text,
    at: moved(at, { x: 0, y: keyStep * i }),
    size: plainSize,
  }));
}

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
