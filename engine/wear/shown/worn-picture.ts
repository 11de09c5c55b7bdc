import type { ViewName } from '../../render/form/view.ts';
import { document, element, type Node, words } from '../../render/markup.ts';
import { fixed } from '../../text/figure.ts';
import { type DrawnKind, drawnLines, type LineInSight } from './drawn-lines.ts';
import { facetsOf, paintOf, place } from './facets.ts';
import { LEGEND, legendOf, lettering } from './legend.ts';
import type { WornMap } from './maps.ts';
import { BEYOND, type SeenWorn, seenWorn } from './seen-worn.ts';
import type { ShownWorn } from './shown-worn.ts';

/** Room beside what is drawn, mm; on the right there is room for the names of levels. */
const [MARGIN, NAMES] = [20, 80];

/** How a worn garment is drawn: pieces in tints of their own, coloured by a map, or in black line alone. */
export type DrawnAs = 'tints' | 'lines' | WornMap;

/** Widths of lines, mm; a form stands back behind what it wears. */
const widths: Readonly<Record<DrawnKind, string>> = {
  form: '0.8',
  fold: '1',
  border: '1.4',
  seam: '1',
  grain: '0.6',
};

/**
 * A worn garment from one side, as an SVG file at a scale of 1 mm to a unit: its pieces, seams and grain, the body's levels
 * beside it, the form behind; under a map its legend.
 */
export const wornPicture = (shown: ShownWorn, view: ViewName, title: string, as: DrawnAs = 'tints'): string =>
  document(wornSide(shown, view, title, as).node);

/** The same of several sides, one beside the other, in black line. */
export function sidesBeside(shown: ShownWorn, views: readonly ViewName[], title: string): string {
  const sides = views.map((view) => wornSide(shown, view, title, 'lines'));
  let width = 0;
  const placed = sides.map(({ node, width: own }) => {
    const left = width;
    width += own;
    return { ...node, attributes: { ...node.attributes, x: String(left) } };
  });
  const height = Math.max(...sides.map((side) => side.height));
  return document(
    element(
      'svg',
      {
        xmlns: 'http://www.w3.org/2000/svg',
        viewBox: `0 0 ${width} ${height}`,
        width: String(width),
        height: String(height),
        role: 'img',
      },
      [element('title', {}, words(title)), ...placed],
    ),
  );
}

interface ShownSide {
  readonly node: Node;
  readonly width: number;
  readonly height: number;
}

function wornSide(shown: ShownWorn, view: ViewName, title: string, as: DrawnAs): ShownSide {
  const seen = seenWorn(shown, view);
  const lines = drawnLines(shown, seen);
  const map = typeof as === 'string' ? undefined : as;
  const [low, high] = [seen.low - BEYOND, seen.high + BEYOND];
  const height = Math.ceil(high - low);
  const reach = Math.round(seen.reach + BEYOND);
  const names = as === 'lines' ? MARGIN : NAMES;
  const [left, width, tall] = [-reach - MARGIN, 2 * reach + MARGIN + names, height + (map ? LEGEND : 0)];
  const told = map ? `${title}, ${view}: ${map.title.toLowerCase()}` : `${title}, ${view}`;
  const facets = as === 'lines' ? [] : facetsOf(seen, high, paintOf(shown, seen, map));
  const across = { x: String(left), width: String(width) };
  const node = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `${left} 0 ${width} ${tall}`,
      width: `${width}`,
      height: `${tall}`,
      role: 'img',
    },
    [
      element('title', {}, words(told)),
      element('rect', { ...across, y: '0', height: String(tall), fill: '#fff' }),
      // Edges that are smoothed would let a hair of what lies behind through between two facets.
      element('g', { 'shape-rendering': 'crispEdges' }, facets),
      // What hangs over the picture's lower edge.
      element('rect', { ...across, y: String(height), height: String(LEGEND), fill: '#fff' }),
      ...(as === 'lines' ? [] : levelsOf(shown, seen, high, reach)),
      ...strokes(lines, high, as),
      ...(map ? [legendOf(map, -reach, height, 2 * reach)] : []),
    ],
  );
  return { node, width, height: tall };
}

/** Lines over each other: what bounds the cloth last. */
function strokes(lines: readonly LineInSight[], high: number, as: DrawnAs): readonly Node[] {
  const path = (kinds: readonly DrawnKind[]): string =>
    lines
      .filter(({ kind }) => kinds.includes(kind))
      .map(({ points }) => `M${points.map((at) => place(at, high)).join('L')}`)
      .join('');
  const line = { fill: 'none', 'stroke-linecap': 'round', 'stroke-linejoin': 'round' };
  // On a dark colour of a map a black line is seen by the light beside it.
  const under =
    typeof as === 'string'
      ? []
      : [element('path', { ...line, d: path(['border', 'seam']), stroke: '#fff', 'stroke-width': '2.4' })];
  const kinds: readonly DrawnKind[] =
    as === 'lines'
      ? ['form', 'fold', 'seam', 'border']
      : [...(as === 'tints' ? (['grain'] as const) : []), 'seam', 'border'];
  return [
    ...under,
    ...kinds.map((kind) =>
      element('path', {
        ...line,
        class: kind,
        d: path([kind]),
        stroke: as === 'lines' && kind === 'form' ? '#777' : '#222',
        'stroke-width': widths[kind],
      }),
    ),
  ];
}

/** The body's levels: a level is a straight line from every side. */
const levelsOf = (
  { levels }: ShownWorn,
  { low, high: top }: SeenWorn,
  high: number,
  reach: number,
): readonly Node[] =>
  Object.entries(levels)
    .filter(([, up]) => up > low - BEYOND && up < top + BEYOND)
    .flatMap(([name, up]) => [
      element('path', {
        d: `M${-reach} ${fixed(high - up, 1)}H${reach}`,
        stroke: '#555',
        'stroke-width': '0.5',
        'stroke-dasharray': '6 4',
      }),
      element('text', { ...lettering, x: String(reach + 4), y: fixed(high - up + 4, 1) }, words(name)),
    ]);
