import { boundingBox } from '../geometry/bounds.ts';
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
import { figure, fixed } from '../text/figure.ts';
import { type Cloth, stripStart, stripWidth, washedWidth } from './cloth.ts';
import type { LaidCopy, LayPlan } from './lay-plan.ts';

/** The plan is drawn so many times smaller than the cloth. */
export const layScale = 10;

/** White round the cloth, and height of the words above it, mm of paper. */
const margin = 12;
const headRoom = 22;

const textSize = { heading: 4.5, plain: 3, piece: 2.6, least: 1.4 };

/** What is drawn and how large the paper is, mm of paper. */
interface LayDrawing {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly ink: readonly Ink[];
}

function layDrawing(plan: LayPlan, toBuy: string): LayDrawing {
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
    `${figure(cloth.width)} mm wide, ${cloth.folded ? 'folded lengthwise, right sides together' : 'open, right side up'}${cloth.nap ? ', all pieces one way' : ''}; kept free: ${figure(cloth.selvedge)} mm along each selvedge, ${figure(cloth.gap)} mm between pieces${shrinkWords(cloth)}`,
    `${figure(Math.ceil(length))} mm long, ${fixed(100 * plan.used, 1)} % used; buy ${toBuy}. Drawn at 1:${layScale}.`,
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
  const widest = Math.max(...heading.map(({ text, size }) => textWidth(text, size)));
  return {
    title,
    width: Math.ceil(Math.max(end, margin + widest) + margin),
    height: Math.ceil(low + 2 * margin),
    ink: [
      ...heading,
      ...edges,
      ...dimension(corner.x, end, low + margin / 2, `${figure(Math.ceil(length))} mm`),
      ...upright(corner.y, low, margin / 2, `${figure(layerWidth)} mm`),
      ...plan.copies.flatMap((copy) => copyInk(copy, cloth.folded, put)),
    ],
  };
}

/** What a cloth is called on its plan. */
const clothWords = { self: 'cloth', lining: 'lining', interfacing: 'interfacing' } as const;

const shrinkWords = ({ shrink }: Cloth): string =>
  shrink > 0 ? `; washed before cutting, losing ${figure(100 * shrink)} %` : '';

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

/** A copy: its cutting line, its grain, what it is above it and how it is cut below. */
function copyInk({ of, copy, line, grain }: LaidCopy, folded: boolean, put: Transform): Ink[] {
  const curves = line.curves.map((curve) => transformedCurve(curve, put));
  const [from, to] = [put(grain.from), put(grain.to)];
  const middle = between(from, to, 0.5);
  const { left, right } = boundingBox(curves);
  const room = 2 * Math.min(middle.x - left, right - middle.x);
  const said = (text: string, rows: number): InkWords[] => {
    const size = Math.max(textSize.least, Math.min(textSize.piece, (0.85 * room) / textWidth(text, 1)));
    const at = moved(middle, { x: 0, y: rows < 0 ? -0.9 : 0.6 + size });
    return text === '' ? [] : [{ kind: 'words', text, at, size, centred: true }];
  };
  return [
    {
      kind: 'chain',
      class: 'outline',
      curves,
      closed: true,
      names: { piece: of.piece, line: `copy ${copy}` },
    },
    stroke('level', from, to, { piece: of.piece, line: `grain ${copy}` }),
    ...said(`${of.number} ${of.piece}`, -1),
    ...said(manner(of, folded), 1),
    ...headInk(to, from.x < to.x ? -1 : 1),
  ];
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
  if (turnedOver) return folded ? 'lower layer, turned over' : 'turned over';
  return folded ? 'lower layer only' : '';
}

/** What a written plan says about itself, so that it can be proven by itself. */
const dataOf = (plan: LayPlan) => ({
  'data-cloth': plan.clothName,
  'data-length': numeral(plan.length),
  'data-width': numeral(stripWidth(plan.cloth)),
  'data-start': numeral(stripStart(plan.cloth)),
  'data-scale': String(layScale),
});

/** The plan as an SVG file, 1:10, with the length to buy in the reader's words. */
export function laySvg(plan: LayPlan, toBuy: string): string {
  const { title, width, height, ink } = layDrawing(plan, toBuy);
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

/** The plan as a page to print, 1:10. */
export function layPage(plan: LayPlan, toBuy: string): Page {
  const { width, height, ink } = layDrawing(plan, toBuy);
  return { width, height, parts: [onPage(ink)] };
}
