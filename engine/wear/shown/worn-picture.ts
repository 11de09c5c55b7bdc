import { cross, minus, plus } from '../../geometry/space.ts';
import type { Seen, ViewName } from '../../render/form/view.ts';
import { document, element, type Node, words } from '../../render/markup.ts';
import { fixed } from '../../text/figure.ts';
import { BEYOND, type DrawnKind, type DrawnLine, drawnLines } from './drawn-lines.ts';
import { LEGEND, legendOf, lettering } from './legend.ts';
import type { WornMap } from './maps.ts';
import { pieceTints } from './piece-tints.ts';
import { STEEP } from './seen-lines.ts';
import { type SeenPart, type SeenWorn, seenWorn } from './seen-worn.ts';
import type { ShownWorn } from './shown-worn.ts';

const skin = '#efe6df';

/** Room beside what is drawn, mm; on the right there is room for the names of levels. */
const [MARGIN, NAMES] = [20, 80];

/** The form is drawn so far behind where it is, mm, that cloth which lies on it covers it. */
const BEHIND = 12;

/** How a worn garment is drawn: pieces in tints of their own, coloured by a map, or in black line alone. */
export type Drawn = 'tints' | 'lines' | WornMap;

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
export function wornPicture(shown: ShownWorn, view: ViewName, title: string, as: Drawn = 'tints'): string {
  const seen = seenWorn(shown, view);
  const lines = drawnLines(shown, seen);
  const map = typeof as === 'string' ? undefined : as;
  const [low, high] = [seen.low - BEYOND, seen.high + BEYOND];
  const height = Math.ceil(high - low);
  const reach = Math.round(seen.reach + BEYOND);
  const box = [-reach - MARGIN, 0, 2 * reach + MARGIN + NAMES, height + (map ? LEGEND : 0)];
  const told = map ? `${title}, ${view}: ${map.title.toLowerCase()}` : `${title}, ${view}`;
  const facets = as === 'lines' ? [] : facetsOf(seen, high, coloursOf(shown, seen, map));
  const size = { x: String(box[0]), width: String(box[2]) };
  return document(
    element(
      'svg',
      {
        xmlns: 'http://www.w3.org/2000/svg',
        viewBox: box.join(' '),
        width: `${box[2]}`,
        height: `${box[3]}`,
        role: 'img',
      },
      [
        element('title', {}, words(told)),
        element('rect', { ...size, y: '0', height: String(box[3]), fill: '#fff' }),
        element('g', { 'stroke-width': '0.5', 'stroke-linejoin': 'round' }, facets),
        // What hangs over the picture's lower edge.
        element('rect', { ...size, y: String(height), height: String(LEGEND), fill: '#fff' }),
        ...(as === 'lines' ? [] : levelsOf(shown, seen, high, reach)),
        ...strokes(lines, high, as),
        ...(map ? [legendOf(map, -reach, height, 2 * reach)] : []),
      ],
    ),
  );
}

/** The colour of each triangle of the cloth. */
function coloursOf({ worn }: ShownWorn, { cloth }: SeenWorn, map: WornMap | undefined): readonly string[] {
  if (map) return map.colours;
  const { panels } = worn.sewn;
  const tints = pieceTints(panels.map(({ panel }) => panel.name));
  return panels.flatMap(({ panel, triangles: [first, count] }) =>
    Array.from({ length: count }, (_, i) => shaded(cloth, first + i, tints.get(panel.name) ?? skin)),
  );
}

/** The facets that are in sight, the farthest first. */
function facetsOf(seen: SeenWorn, high: number, colours: readonly string[]): readonly Node[] {
  const facets: { readonly depth: number; readonly node: Node }[] = [];
  const put = ({ points, triangles }: SeenPart, t: number, fill: string, behind = 0): void => {
    const corners = cornersOf(triangles, t).map((p) => points[p] as Seen) as [Seen, Seen, Seen];
    if (!corners.some(([right, up, near]) => seen.isSeen([right, up, near + STEEP]))) return;
    if (Math.min(...corners.map(([, up]) => high - up)) > high - seen.low + BEYOND) return;
    if (Math.max(...corners.map(([, up]) => high - up)) < 0) return;
    const [a, b, c] = corners;
    const d = `M${place(a, high)}l${step(a, b)} ${step(b, c)}Z`;
    // The stroke closes the hair between two facets.
    facets.push({
      depth: (a[2] + b[2] + c[2]) / 3 - behind,
      node: element('path', { d, fill, stroke: fill }),
    });
  };
  const { cloth, form } = seen;
  for (let t = 0; t < form.triangles.length / 3; t++) if (isTurned(form, t)) put(form, t, skin, BEHIND);
  for (let t = 0; t < cloth.triangles.length / 3; t++) put(cloth, t, colours[t] as string);
  facets.sort((a, b) => a.depth - b.depth);
  return facets.map(({ node }) => node);
}

/** Lines over each other: what bounds the cloth last. */
function strokes(lines: readonly DrawnLine[], high: number, as: Drawn): readonly Node[] {
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

const place = ([u, v]: Seen, high: number): string => `${fixed(u, 1)} ${fixed(high - v, 1)}`;

const step = (from: Seen, to: Seen): string => `${fixed(to[0] - from[0], 1)} ${fixed(from[1] - to[1], 1)}`;

const cornersOf = (triangles: ArrayLike<number>, t: number): readonly [number, number, number] => [
  triangles[3 * t] as number,
  triangles[3 * t + 1] as number,
  triangles[3 * t + 2] as number,
];

/** Whether a triangle whose corners run anticlockwise from outside shows its outside. */
function isTurned({ points, triangles }: SeenPart, t: number): boolean {
  const [a, b, c] = cornersOf(triangles, t).map((p) => points[p] as Seen) as [Seen, Seen, Seen];
  return cross(minus(b, a), minus(c, a))[2] > 0;
}

/** How light a tint is where the cloth turns away from the light, which comes from the left, above and before whoever looks. */
const [DARKEST, LIGHT] = [0.66, [-0.35, 0.45, 0.82] as const];

/** Shades that are told apart: fewer colours, smaller files. */
const SHADES = 40;

/** A tint darkened where the cloth turns away from the light; its inside is in the shade. */
function shaded(part: SeenPart, t: number, tint: string): string {
  const normals = cornersOf(part.triangles, t).map((p) => part.normals[p] as Seen);
  const normal = normals.reduce((sum, each) => plus(sum, each));
  const lit = LIGHT.reduce((sum, way, k) => sum + way * (normal[k] as number), 0) / (Math.hypot(...normal) || 1);
  const light = isTurned(part, t) ? DARKEST + (1 - DARKEST) * Math.max(0, lit) : DARKEST;
  const step = Math.round(light * SHADES) / SHADES;
  const channels = [1, 3, 5].map((at) => Math.round(Number.parseInt(tint.slice(at, at + 2), 16) * step));
  return `#${channels.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
}
