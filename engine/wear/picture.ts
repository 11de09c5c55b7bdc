import type { Form } from '../form/form.ts';
import { document, element, type Node, words } from '../render/markup.ts';
import { fixed } from '../text/figure.ts';
import { LEGEND, legendOf, type WornMap } from './map.ts';
import { alongChain } from './sewn.ts';
import type { Worn } from './worn.ts';

/** From where a worn garment is looked at: whither x and z of the body run across the page, and towards the eye. */
const views = {
  front: { across: [1, 0], towards: [0, 1] },
  side: { across: [0, -1], towards: [1, 0] },
  back: { across: [-1, 0], towards: [0, -1] },
} as const;

export type WornView = keyof typeof views;

export const viewNames = Object.keys(views) as readonly WornView[];

/** Pieces told apart: light enough for black lines on them, and apart for the colour-blind (Okabe & Ito, 2008, paled). */
const tints = ['#cfe3f3', '#f8e3b8', '#c3e6da', '#f7f3bd', '#c4d5e6', '#f3d0b8', '#ecd3e3'];

const skin = '#efe6df';

/** Room about what is drawn, mm. */
const MARGIN = 20;

/** How much of the form is drawn above and below the garment, mm. */
const BEYOND = 90;

/** The form is drawn so far behind where it is, mm, that cloth which lies on it covers it. */
const BEHIND = 8;

interface Facet {
  readonly depth: number;
  readonly node: Node;
}

/**
 * A worn garment from one side, as an SVG file at a scale of 1 mm to a unit: the pieces told apart, or coloured by a map with
 * its legend below; seams, form behind.
 */
export function wornPicture(
  form: Pick<Form, 'surface'>,
  worn: Worn,
  view: WornView,
  title: string,
  map?: WornMap,
): string {
  const { across, towards } = views[view];
  const { x, sewn } = worn;
  const heights = Array.from({ length: x.length / 3 }, (_, i) => x[3 * i + 1] as number);
  const [low, high] = [Math.min(...heights) - BEYOND, Math.max(...heights) + BEYOND];
  const flat = (points: Float64Array, p: number): readonly [number, number, number] => {
    const [px, py, pz] = [points[3 * p] as number, points[3 * p + 1] as number, points[3 * p + 2] as number];
    return [across[0] * px + across[1] * pz, high - py, towards[0] * px + towards[1] * pz];
  };
  const facets: Facet[] = [];
  const put = (points: Float64Array, corners: readonly [number, number, number], fill: string): void => {
    const [a, b, c] = corners.map((p) => flat(points, p)) as [Flat, Flat, Flat];
    if (Math.max(a[1], b[1], c[1]) > high - low || Math.min(a[1], b[1], c[1]) < 0) return;
    const d = `M${place(a)}L${place(b)}L${place(c)}Z`;
    // The stroke closes the hair between two facets.
    facets.push({
      depth: (a[2] + b[2] + c[2]) / 3 - (fill === skin ? BEHIND : 0),
      node: element('path', { d, fill, stroke: fill, 'stroke-width': '0.4' }),
    });
  };
  const names = [...new Set(sewn.panels.map(({ panel }) => panel.name))];
  for (const { panel, triangles } of sewn.panels)
    for (let t = triangles[0]; t < triangles[0] + triangles[1]; t++)
      put(
        x,
        cornersOf(sewn.sheet.triangles, t),
        map?.colours[t] ??
          shaded(
            x,
            sewn.sheet.triangles,
            t,
            towards,
            tints[names.indexOf(panel.name) % tints.length] ?? skin,
          ),
      );
  const torso = form.surface.parts.find(({ name }) => name === 'torso');
  if (torso)
    for (let t = torso.firstTriangle; t < torso.firstTriangle + torso.triangles; t++)
      if (faces(form.surface.points, cornersOf(form.surface.triangles, t), towards))
        put(form.surface.points, cornersOf(form.surface.triangles, t), skin);
  // Seams lie on the cloth: a little nearer to the eye than it.
  for (const { a } of sewn.seams) {
    const chain = alongChain(sewn, a).map((p) => flat(x, p));
    for (const [i, to] of chain.entries()) {
      const from = chain[i - 1];
      if (!from) continue;
      const d = `M${place(from)}L${place(to)}`;
      const depth = (from[2] + to[2]) / 2 + 3;
      const line = { d, 'stroke-linecap': 'round', fill: 'none' };
      // On a dark colour of a map a black line is seen by the light beside it.
      if (map)
        facets.push({
          depth: depth - 0.01,
          node: element('path', { ...line, stroke: '#fff', 'stroke-width': '2.4' }),
        });
      facets.push({ depth, node: element('path', { ...line, stroke: '#222', 'stroke-width': '0.9' }) });
    }
  }
  facets.sort((a, b) => a.depth - b.depth);
  const reach = Math.max(...Array.from({ length: x.length / 3 }, (_, p) => Math.abs(flat(x, p)[0]))) + BEYOND;
  const below = map ? LEGEND : 0;
  const box = [-reach - MARGIN, -MARGIN, 2 * (reach + MARGIN), high - low + 2 * MARGIN + below].map((n) =>
    fixed(n, 0),
  );
  const told = map ? `${title}, ${view}: ${map.title.toLowerCase()}` : `${title}, ${view}`;
  const legend = map
    ? [legendOf(map, Math.round(-reach), Math.round(high - low + MARGIN / 2), 2 * reach)]
    : [];
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
      [element('title', {}, words(told)), ...facets.map(({ node }) => node), ...legend],
    ),
  );
}

type Flat = readonly [across: number, down: number, depth: number];

const place = ([u, v]: Flat): string => `${fixed(u, 1)} ${fixed(v, 1)}`;

const cornersOf = (triangles: ArrayLike<number>, t: number): readonly [number, number, number] => [
  triangles[3 * t] as number,
  triangles[3 * t + 1] as number,
  triangles[3 * t + 2] as number,
];

/** Whether a triangle of a surface, its corners seen from outside anticlockwise, is turned to the eye. */
function faces(
  points: Float64Array,
  [a, b, c]: readonly [number, number, number],
  towards: readonly [number, number],
): boolean {
  const [nx, , nz] = normalOf(points, a, b, c);
  return nx * towards[0] + nz * towards[1] > 0;
}

/** The direction across a triangle, as long as twice its area. */
function normalOf(x: Float64Array, a: number, b: number, c: number): readonly [number, number, number] {
  const [u, v] = [b, c].map((p) =>
    [0, 1, 2].map((k) => (x[3 * p + k] as number) - (x[3 * a + k] as number)),
  ) as [[number, number, number], [number, number, number]];
  return [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
}

/** A tint darkened where the cloth turns away from the eye. */
function shaded(
  x: Float64Array,
  triangles: ArrayLike<number>,
  t: number,
  towards: readonly [number, number],
  tint: string,
): string {
  const [nx, ny, nz] = normalOf(x, ...cornersOf(triangles, t));
  const facing = Math.abs(nx * towards[0] + nz * towards[1]) / (Math.hypot(nx, ny, nz) || 1);
  const light = 0.72 + 0.28 * facing;
  const channels = [1, 3, 5].map((at) => Math.round(Number.parseInt(tint.slice(at, at + 2), 16) * light));
  return `#${channels.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
}
