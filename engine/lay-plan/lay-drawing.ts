import { labelPlace } from '../finishing/label.ts';
import type { Curve } from '../geometry/curve.ts';
import { between, moved, type Point, point } from '../geometry/point.ts';
import { type Transform, transformedCurve } from '../geometry/transform.ts';
import { arrowheads } from '../render/arrows.ts';
import { type Ink, type InkWords, stroke } from '../render/ink.ts';
import { styleSheet } from '../render/line-types.ts';
import { document, element, words } from '../render/markup.ts';
import { numeral } from '../render/path-data.ts';
import { svgInk } from '../render/svg-ink.ts';
import { textWidth } from '../render/text-size.ts';
import { onPage, type Page } from '../render/tiles/page.ts';
import { fixed, plainFigure } from '../text/figure.ts';
import { lengthIn } from '../text/length.ts';
import type { Unit } from '../text/units.ts';
import {
  type Cloth,
  stripStart,
  stripWidth,
  washedRepeat,
  washedRepeatAcross,
  washedWidth,
} from './cloth.ts';
import type { Matching } from './hung.ts';
import type { LaidCopy, LayPlan } from './lay-plan.ts';

/** The plan is drawn so many times smaller than the cloth. */
export const layScale = 10;

/** White round the cloth, and height of the words above it, mm of paper. */
const margin = 12;
const headRoom = 26;

/** Of the words on pieces: as large as there is room for. */
const textSize = { heading: 4.5, plain: 3, piece: [2.6, 2.2, 1.8] } as const;

/** Smaller figures nobody reads, mm. */
const leastFigure = 1;

/** How far letters stand above their line and hang below it, as a share of their size. */
const [ascent, descent] = [0.8, 0.25];

/** From line to line of a label, as a share of its size; white round it; from row to row of the key; a stroke at a repeat, mm. */
const leading = 1.2;
const clearance = 1.2;
const keyStep = 4.5;
const tick = 2;

/** What is drawn and how large the paper is, mm of paper. */
interface LayDrawing {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly ink: readonly Ink[];
}

function layDrawing(plan: LayPlan, toBuy: string, units: Unit): LayDrawing {
  const say = (mm: number): string => lengthIn(units === 'in' ? mm : Math.round(10 * mm) / 10, units);
  const { cloth, length } = plan;
  const layerWidth = washedWidth(cloth) / (cloth.folded ? 2 : 1);
  const put: Transform = ({ x, y }) => point(margin + x / layScale, headRoom + margin + y / layScale);
  const title = `${plan.garment} for ${plan.body}: lay of the ${clothWords[plan.clothName]}`;
  const corner = put(point(0, 0));
  const [end, low] = [put(point(length, 0)).x, put(point(0, layerWidth)).y];
  const strip = {
    top: put(point(0, stripStart(cloth))).y,
    low: put(point(0, stripStart(cloth) + stripWidth(cloth))).y,
  };
  const across = (y: number, kind: 'fold' | 'join' | 'level') =>
    stroke(kind, point(corner.x, y), point(end, y));
  const edges: Ink[] = [
    across(corner.y, cloth.folded ? 'fold' : 'level'),
    across(low, 'level'),
    stroke('level', corner, point(corner.x, low)),
    stroke('level', point(end, corner.y), point(end, low)),
    ...(cloth.folded ? [] : [across(strip.top, 'join')]),
    across(strip.low, 'join'),
  ];
  const lines = [
    `${say(cloth.width)} wide, ${cloth.folded ? 'folded lengthwise, right sides together' : 'open, right side up'}${cloth.nap ? ', all pieces one way' : ''}; kept free: ${say(cloth.selvedge)} along each selvedge, ${say(cloth.gap)} between pieces${shrinkWords(cloth)}`,
    `${say(Math.ceil(length))} long, ${fixed(100 * plan.used, 1)} % used; buy ${toBuy}; no lay is shorter than ${say(units === 'in' ? plan.leastLength : Math.floor(plan.leastLength))}. Drawn at 1:${layScale}.`,
    ...stripeWords(plan, say),
  ];
  const heading: InkWords[] = [
    { kind: 'words', text: title, at: point(margin, margin), size: textSize.heading, bold: true },
    ...lines.map(
      (text, i): InkWords => ({
        kind: 'words',
        text,
        at: point(margin, margin + 6 + 5 * i),
        size: textSize.plain,
      }),
    ),
  ];
  const drawn = plan.copies.map(
    (copy): DrawnCopy => ({
      ...copy,
      curves: copy.line.curves.map((curve) => transformedCurve(curve, put)),
      from: put(copy.grain.from),
      to: put(copy.grain.to),
    }),
  );
  const labelled = drawn.map((copy) => ({ copy, label: labelOf(copy, cloth.folded) }));
  const numbered = labelled.flatMap(({ copy, label }) => (label.inKey ? [copy.of] : []));
  const key = keyInk(plan, numbered, point(margin, low + 1.5 * margin));
  const widest = Math.max(...[...heading, ...key].map(({ text, size }) => textWidth(text, size)));
  return {
    title,
    width: Math.ceil(Math.max(end, margin + widest) + margin),
    height: Math.ceil(low + 2 * margin + keyStep * key.length),
    ink: [
      ...heading,
      ...edges,
      ...dimension(corner.x, end, low + margin / 2, say(Math.ceil(length))),
      ...upright(corner.y, low, margin / 2, say(layerWidth)),
      ...repeatInk(plan, put, layerWidth),
      ...labelled.flatMap(({ copy, label }) => copyInk(copy, label)),
      ...key,
    ],
  };
}

/** What a cloth is called on its plan. */
const clothWords = { self: 'cloth', lining: 'lining', interfacing: 'interfacing' } as const;

const shrinkWords = ({ shrink }: Cloth): string =>
  shrink > 0 ? `; washed before cutting, losing ${plainFigure(100 * shrink, 1)} %` : '';

/** How stripes are matched, and where they cannot be, a line for each way in which they run. */
function stripeWords({ cloth, matched, matchedAlong }: LayPlan, say: (mm: number) => string): string[] {
  const first = cloth.folded ? 'fold on one' : 'the upper line on one';
  return [
    ...(matched
      ? [
          `Stripes across the cloth, a repeat every ${say(washedRepeat(cloth))}, marked at both edges: ${metWords(matched, ' along the grain')}`,
        ]
      : []),
    ...(matchedAlong
      ? [
          `Stripes along the cloth, a repeat every ${say(washedRepeatAcross(cloth))}, marked at both ends, ${first}: ${metWords(matchedAlong, '')}`,
        ]
      : []),
  ];
}

function metWords({ matched, unmatched }: Matching, which: string): string {
  const not = unmatched.length > 0 ? `, not at ${unmatched.length} more` : '';
  return `they meet at ${matched.length} ${matched.length === 1 ? 'seam' : 'seams'}${which}${not}.`;
}

function dimension(from: number, to: number, y: number, text: string): Ink[] {
  const [a, b] = [point(from, y), point(to, y)];
  return [
    stroke('level', a, b),
    ...arrowheads(a, b),
    { kind: 'words', text, at: point((from + to) / 2, y - 1), size: textSize.plain, centred: true },
  ];
}

function upright(from: number, to: number, x: number, text: string): Ink[] {
  const [a, b] = [point(x, from), point(x, to)];
  const at = point(x - 1, (from + to) / 2);
  return [
    stroke('level', a, b),
    ...arrowheads(a, b),
    { kind: 'words', text, at, size: textSize.plain, centred: true, turnedAbout: at },
  ];
}

/** A copy: its cutting line, its grain, and its label. */
function copyInk(drawn: DrawnCopy, label: Label): Ink[] {
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
interface DrawnCopy extends LaidCopy {
  readonly curves: readonly Curve[];
  readonly from: Point;
  readonly to: Point;
}

/** What stands on a copy; only its number where no more has room, and then the words stand in the key. */
interface Label {
  readonly ink: readonly InkWords[];
  readonly inKey: boolean;
}

function labelOf(drawn: DrawnCopy, folded: boolean): Label {
  const { of } = drawn;
  const words = [`${of.number} ${of.piece}`, manner(of, folded)].filter(Boolean);
  for (const size of textSize.piece) {
    const ink = block(drawn, words, size, clearance);
    if (ink) return { ink, inKey: false };
  }
  const number = [String(of.number)];
  for (const size of textSize.piece) {
    const ink = block(drawn, number, size, clearance / 2);
    if (ink) return { ink, inKey: true };
  }
  // Hardly larger than the figure itself: it stands across the grain, smaller and smaller until it is inside the piece.
  let size: number = textSize.piece[textSize.piece.length - 1] ?? 1;
  const corner = drawn.curves[0]?.from ?? drawn.from;
  const bare = { ...drawn, from: corner, to: corner };
  let ink = block(bare, number, size, 0);
  while (!ink && size > leastFigure) {
    size *= 0.8;
    ink = block(bare, number, size, 0);
  }
  const at = moved(between(drawn.from, drawn.to, 0.5), { x: 0, y: (ascent * size) / 2 });
  return {
    ink: ink ?? [{ kind: 'words', text: number.join(''), at, size, centred: true }],
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
function keyInk(plan: LayPlan, numbered: readonly LaidCopy['of'][], at: Point): InkWords[] {
  const texts = numbered.map((of) =>
    [`${of.number} ${of.piece}`, manner(of, plan.cloth.folded)].filter(Boolean).join(', '),
  );
  return [...new Set(texts)].map((text, i) => ({
    kind: 'words',
    text,
    at: moved(at, { x: 0, y: keyStep * i }),
    size: textSize.plain,
  }));
}

/** Where a repeat of stripes begins: a short stroke at either edge of the cloth, or at either end. */
function repeatInk({ cloth, length }: LayPlan, put: Transform, layerWidth: number): Ink[] {
  const start = stripStart(cloth);
  return [
    ...everyRepeat(washedRepeat(cloth), 0, length).flatMap((x) =>
      [0, layerWidth].map((y) => {
        const from = put(point(x, y));
        return stroke('join', from, moved(from, { x: 0, y: y === 0 ? -tick : tick }));
      }),
    ),
    ...everyRepeat(washedRepeatAcross(cloth), start, layerWidth).flatMap((y) =>
      [0, length].map((x) => {
        const from = put(point(x, y));
        return stroke('join', from, moved(from, { x: x === 0 ? -tick : tick, y: 0 }));
      }),
    ),
  ];
}

const everyRepeat = (repeat: number, from: number, to: number): number[] =>
  repeat === 0
    ? []
    : Array.from({ length: Math.floor((to - from) / repeat) + 1 }, (_, i) => from + i * repeat);

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

/** What a written plan says about itself, so that it can be proven by itself. */
const dataOf = (plan: LayPlan) => ({
  'data-cloth': plan.clothName,
  'data-length': numeral(plan.length),
  'data-width': numeral(stripWidth(plan.cloth)),
  'data-start': numeral(stripStart(plan.cloth)),
  'data-scale': String(layScale),
  ...(plan.matched && { 'data-repeat': numeral(washedRepeat(plan.cloth)) }),
  ...(plan.matchedAlong && { 'data-repeat-across': numeral(washedRepeatAcross(plan.cloth)) }),
});

/** The plan as an SVG file, 1:10, with the length to buy in the reader's words and all others in the reader's unit. */
export function laySvg(plan: LayPlan, toBuy: string, units: Unit = 'mm'): string {
  const { title, width, height, ink } = layDrawing(plan, toBuy, units);
  return document(
    element(
      'svg',
      {
        xmlns: 'http://www.w3.org/2000/svg',
        width: `${width}mm`,
        height: `${height}mm`,
        viewBox: `0 0 ${width} ${height}`,
      },
      [
        element('title', {}, words(title)),
        element('style', {}, words(styleSheet)),
        element('rect', { class: 'paper', width: numeral(width), height: numeral(height) }),
        element(
          'g',
          {
            class: 'lay',
            ...dataOf(plan),
            'data-left': numeral(margin),
            'data-top': numeral(headRoom + margin),
          },
          ink.map(svgInk),
        ),
      ],
    ),
  );
}

/** The same as a page to print. */
export function layPage(plan: LayPlan, toBuy: string, units: Unit = 'mm'): Page {
  const { width, height, ink } = layDrawing(plan, toBuy, units);
  return { width, height, parts: [onPage(ink)] };
}
