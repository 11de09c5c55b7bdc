import { boundingBox } from '../../geometry/bounds.ts';
import { distance, type Point, point } from '../../geometry/point.ts';
import { movedBy, transformedCurve } from '../../geometry/transform.ts';
import type { Garment } from '../../pattern/garment.ts';
import { document, element, type Node, words } from '../../render/markup.ts';
import { metadataOf, metadataText, sealed } from '../../render/metadata.ts';
import { numeral, pathData } from '../../render/path-data.ts';
import { svgInk } from '../../render/svg-ink.ts';
import { testSquares } from '../../render/test-squares.ts';
import type { JoinedLine } from './join-tiles.ts';

/**
 * The lines that were found on the joined tiles as a sheet that can be walked. From the garment comes only what
 * no line can say: which edges are sewn together, allowances, counts. The test squares of a PDF stand on its first page,
 * and are measured there.
 */
export function sheetOfLines(lines: readonly JoinedLine[], garment: Garment): string {
  const { left, right, top, bottom } = boundingBox(lines.flatMap(({ curves }) => curves));
  const [width, height] = [right - left + 2 * BESIDE, bottom - top + 2 * BESIDE].map(Math.ceil);
  const clear = movedBy({ x: BESIDE - left, y: BESIDE - top });
  const beside = (line: JoinedLine): JoinedLine => ({
    ...line,
    curves: line.curves.map((curve) => transformedCurve(curve, clear)),
  });
  return document(
    element('svg', { width: `${width}mm`, height: `${height}mm`, viewBox: `0 0 ${width} ${height}` }, [
      element('metadata', {}, words(metadataText(sealed(metadataOf(garment, garment.pieces, 'sheet', {}))))),
      ...withCorners(lines).map(beside).map(nodeOf),
      ...testSquares(point(0, 0)).map(svgInk),
    ]),
  );
}

/** Room for the test squares beside the lines, mm. */
const BESIDE = 150;

/** Two ends nearer than this are one corner: the reader keeps seven digits of a coordinate of metres; mm. */
const oneCorner = 0.001;

/** Lines of one piece come from different tiles, each laid by its own marks; where they meet they get one end. */
function withCorners(lines: readonly JoinedLine[]): readonly JoinedLine[] {
  const corners: Point[] = [];
  const corner = (p: Point): Point => {
    const known = corners.find((other) => distance(other, p) < oneCorner);
    if (!known) corners.push(p);
    return known ?? p;
  };
  return lines.map((line) => ({
    ...line,
    curves: line.curves.map((curve) => ({ ...curve, from: corner(curve.from), to: corner(curve.to) })),
  }));
}

function nodeOf({ tag, curves, closed }: JoinedLine): Node {
  const [kind = '', piece = '', own = ''] = tag.split('|');
  const names = { class: kind, 'data-piece': piece, ...ownName(kind, own) };
  if (kind !== 'drill') return element('path', { ...names, d: pathData(curves, closed) });
  const { left, right, top, bottom } = boundingBox(curves);
  return element('circle', {
    ...names,
    cx: numeral((left + right) / 2),
    cy: numeral((top + bottom) / 2),
  });
}

function ownName(kind: string, own: string): Readonly<Record<string, string>> {
  if (own === '') return {};
  if (kind === 'stitch') return { 'data-edge': own };
  if (kind === 'notch') return { 'data-notch': own };
  if (kind === 'level') return { 'data-level': own };
  return kind === 'drill' || kind === 'buttonhole' ? { 'data-mark': own } : { 'data-line': own };
}
