import type { Curve } from '../geometry/curve.ts';
import { type Point, point } from '../geometry/point.ts';
import { transformedCurve } from '../geometry/transform.ts';
import type { FoundElement } from './read-markup.ts';
import { type ChainsReading, type PathChain, readChains } from './read-path.ts';
import { byMatrix, type Matrix, product, readTransform, unmoved } from './read-transform.ts';

/** A line that someone drew, in units of the drawing, with the words it is marked by. */
export interface DrawnLine extends PathChain {
  readonly element: FoundElement;
}

/** All lines of a drawing, and what could not be read or is not drawn. */
export interface DrawnLines {
  readonly lines: readonly DrawnLine[];
  /** Elements that could not be read, with the reason. */
  readonly unreadable: readonly { readonly element: FoundElement; readonly reason: string }[];
  /** Names of elements that were left alone though they may draw something. */
  readonly leftOut: ReadonlySet<string>;
  /** There is more in the drawing than is ever read. */
  readonly tooMany: boolean;
}

/** More numbers in one path, and more curves in one drawing, than any pattern has. */
const MOST_NUMBERS = 60_000;
const MOST_CURVES = 100_000;

/** What stands inside these is not drawn where it stands. */
const notDrawn = new Set(['defs', 'symbol', 'clipPath', 'mask', 'pattern', 'marker', 'metadata', 'template']);

/** What may show a line but is no line to follow. */
const notFollowed = new Set(['use', 'image', 'foreignObject', 'script']);

const shapes = new Set(['path', 'line', 'rect', 'polygon', 'polyline', 'circle', 'ellipse']);

/** Reads every path and shape of a drawing with all transforms about it applied. */
export function readShapes([root, ...elements]: readonly FoundElement[]): DrawnLines {
  const places = new Map<FoundElement, Matrix | undefined>();
  const lines: DrawnLine[] = [];
  const unreadable: { element: FoundElement; reason: string }[] = [];
  const leftOut = new Set<string>();
  let count = 0;
  if (root) places.set(root, own(root));
  for (const element of elements) {
    const around = element.parent ? places.get(element.parent) : unmoved;
    if (!around || isHidden(element)) continue;
    const here = own(element);
    if (here) places.set(element, product(around, here));
    if (notFollowed.has(element.name)) leftOut.add(element.name);
    if (element.name === 'style' && /transform|display\s*:\s*none/.test(element.text)) leftOut.add('style');
    if (element.name === 'svg') {
      leftOut.add('svg');
      places.delete(element);
    }
    if (!here && element.name !== 'svg') unreadable.push({ element, reason: 'its transform makes no sense' });
    if (!here || !shapes.has(element.name)) continue;
    const read = chainsOf(element);
    if (!read.ok) unreadable.push({ element, reason: read.reason });
    else
      for (const chain of read.chains) {
        count += chain.curves.length;
        if (count > MOST_CURVES) return { lines, unreadable, leftOut, tooMany: true };
        const to = byMatrix(product(around, here));
        lines.push({ ...chain, element, curves: chain.curves.map((curve) => transformedCurve(curve, to)) });
      }
  }
  return { lines, unreadable, leftOut, tooMany: false };
}

/** What an element does to what it holds; a transform in its style goes before the attribute, as in CSS. */
function own({ attributes }: FoundElement): Matrix | undefined {
  const styled = /(?:^|;)\s*transform\s*:([^;]*)/.exec(attributes.style ?? '')?.[1];
  return readTransform(styled ?? attributes.transform ?? '');
}

const isHidden = ({ name, attributes }: FoundElement): boolean =>
  notDrawn.has(name) ||
  attributes.display === 'none' ||
  /(?:^|;)\s*display\s*:\s*none/.test(attributes.style ?? '');

function chainsOf({ name, attributes }: FoundElement): ChainsReading {
  if (name === 'path') return readChains(attributes.d ?? '', MOST_NUMBERS);
  if (name === 'polygon' || name === 'polyline') {
    const read = readChains(`M${attributes.points ?? ''}`, MOST_NUMBERS);
    if (!read.ok || name === 'polyline') return read;
    return { ok: true, chains: read.chains.map(({ curves }) => ({ curves: closed(curves), closed: true })) };
  }
  const numbers = (...keys: readonly string[]): number[] => keys.map((key) => lengthOf(attributes[key]));
  if (name === 'line') {
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = numbers('x1', 'y1', 'x2', 'y2');
    return sound([x1, y1, x2, y2], () => [[{ kind: 'line', from: point(x1, y1), to: point(x2, y2) }], false]);
  }
  if (name === 'rect') {
    const [x = 0, y = 0, width = 0, height = 0] = numbers('x', 'y', 'width', 'height');
    const round = radiiOf(attributes, width, height);
    if (round) return roundedRectangle(x, y, width, height, round);
    const corners = [point(x, y), point(x + width, y), point(x + width, y + height), point(x, y + height)];
    return sound([x, y, width, height], () => [closed(through(corners)), true]);
  }
  const [cx = 0, cy = 0, r = 0] = numbers('cx', 'cy', 'r');
  const [rx = r, ry = r] = name === 'circle' ? [r, r] : numbers('rx', 'ry');
  if (![cx, cy, rx, ry].every(Number.isFinite)) return notPlain;
  if (rx === 0 || ry === 0) return { ok: true, chains: [] };
  return readChains(
    `M${cx - rx} ${cy}A${rx} ${ry} 0 0 1 ${cx + rx} ${cy}A${rx} ${ry} 0 0 1 ${cx - rx} ${cy}Z`,
    20,
  );
}

/** The radii of a rectangle's corners (SVG 1.1, section 9.2): one given stands for both, none is over half a side. */
function radiiOf(
  { rx, ry }: Readonly<Record<string, string>>,
  width: number,
  height: number,
): readonly [number, number] | undefined {
  if (rx === undefined && ry === undefined) return undefined;
  const radii = [Math.min(lengthOf(rx ?? ry), width / 2), Math.min(lengthOf(ry ?? rx), height / 2)] as const;
  return radii.some((radius) => radius <= 0) ? undefined : radii;
}

function roundedRectangle(
  x: number,
  y: number,
  width: number,
  height: number,
  [rx, ry]: readonly [number, number],
): ChainsReading {
  if (![x, y, width, height, rx, ry].every((value) => Math.abs(value) <= 1e6)) return notPlain;
  const corner = (across: number, down: number): string => `a${rx} ${ry} 0 0 1 ${across} ${down}`;
  const [long, tall] = [width - 2 * rx, height - 2 * ry];
  return readChains(
    `M${x + rx} ${y}h${long}${corner(rx, ry)}v${tall}${corner(-rx, ry)}h${-long}${corner(-rx, -ry)}v${-tall}${corner(rx, -ry)}Z`,
    40,
  );
}

const notPlain: ChainsReading = { ok: false, reason: 'its measures are not plain numbers' };

const sound = (
  numbers: readonly number[],
  draw: () => readonly [curves: readonly Curve[], closed: boolean],
): ChainsReading => {
  if (!numbers.every((value) => Math.abs(value) <= 1e6)) return notPlain;
  const [curves, isClosed] = draw();
  return { ok: true, chains: [{ curves, closed: isClosed }] };
};

const through = (corners: readonly Point[]): readonly Curve[] =>
  corners.slice(1).map((to, i): Curve => ({ kind: 'line', from: corners[i] ?? to, to }));

function closed(curves: readonly Curve[]): readonly Curve[] {
  const [from, to] = [curves.at(-1)?.to, curves[0]?.from];
  if (!from || !to || (from.x === to.x && from.y === to.y)) return curves;
  return [...curves, { kind: 'line', from, to }];
}

/** A coordinate in units of the drawing; percentages and other units are not numbers here. */
const lengthOf = (text: string | undefined): number =>
  text === undefined ? 0 : text.trim() === '' ? Number.NaN : Number(text.trim().replace(/px$/, ''));
