import { point } from '../geometry/point.ts';
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
import {
  copyInk,
  type DrawnCopy,
  keyInk,
  keyOf,
  keyStep,
  markIn,
  markOn,
  plainSize,
  wordsOn,
} from './copy-drawing.ts';
import type { LayPlan } from './lay-plan.ts';
import { repeatInk, stripeWords } from './stripe-drawing.ts';

/** The plan is drawn so many times smaller than the cloth. */
export const layScale = 10;

/** White round the cloth, and height of the words above it, mm of paper. */
const margin = 12;
const headRoom = 26;

/** Size of the heading, mm of paper. */
const headingSize = 4.5;

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
    { kind: 'words', text: title, at: point(margin, margin), size: headingSize, bold: true },
    ...lines.map(
      (text, i): InkWords => ({
        kind: 'words',
        text,
        at: point(margin, margin + 6 + 5 * i),
        size: plainSize,
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
  const labelled = drawn.map((copy) => ({ copy, words: wordsOn(copy, cloth.folded) }));
  const keyLines = keyOf(
    labelled.flatMap(({ copy, words }) => (words ? [] : [copy.of])),
    cloth.folded,
  );
  const key = keyInk(keyLines, point(margin, low + 1.5 * margin));
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
      ...labelled.flatMap(({ copy, words }) =>
        copyInk(copy, words ?? markOn(copy, markIn(keyLines, copy.of, cloth.folded))),
      ),
      ...key,
    ],
  };
}

/** What a cloth is called on its plan. */
const clothWords = { self: 'cloth', lining: 'lining', interfacing: 'interfacing' } as const;

const shrinkWords = ({ shrink }: Cloth): string =>
  shrink > 0 ? `; washed before cutting, losing ${plainFigure(100 * shrink, 1)} %` : '';

function dimension(from: number, to: number, y: number, text: string): Ink[] {
  const [a, b] = [point(from, y), point(to, y)];
  return [
    stroke('level', a, b),
    ...arrowheads(a, b),
    { kind: 'words', text, at: point((from + to) / 2, y - 1), size: plainSize, anchored: 'middle' },
  ];
}

function upright(from: number, to: number, x: number, text: string): Ink[] {
  const [a, b] = [point(x, from), point(x, to)];
  const at = point(x - 1, (from + to) / 2);
  return [
    stroke('level', a, b),
    ...arrowheads(a, b),
    { kind: 'words', text, at, size: plainSize, anchored: 'middle', turnedAbout: at },
  ];
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
