import type { Form } from '../form/form.ts';
import { placeAt, triangleNormal } from '../geometry/space.ts';
import { type Seen, seenFrom, type ViewName } from '../render/form/view.ts';
import { document, element, type Node, words } from '../render/markup.ts';
import { fixed } from '../text/figure.ts';
import { LEGEND, legendOf, type WornMap } from './map.ts';
import { alongChain } from './sewn.ts';
import type { Worn } from './worn.ts';

/** Pieces told apart: light enough for black lines on them, and apart for the colour-blind (Okabe & Ito, 2008, paled). */
const tints = ['#cfe3f3', '#f8e3b8', '#c3e6da', '#f7f3bd', '#c4d5e6', '#f3d0b8', '#ecd3e3'];

const skin = '#efe6df';

/** Room beside what is drawn, mm. */
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
  view: ViewName,
  title: string,
  map?: WornMap,
): string {
  const { x, sewn } = worn;
  const heights = Array.from({ length: x.length / 3 }, (_, i) => x[3 * i + 1] as number);
  const [low, high] = [Math.min(...heights) - BEYOND, Math.max(...heights) + BEYOND];
  // Down the page, as SVG has it.
  const flat = (points: Float64Array, p: number): Seen => {
    const [right, up, near] = seenFrom(view, placeAt(points, p));
    return [right, high - up, near];
  };
  const facets: Facet[] = [];
  const put = (points: Float64Array, corners: readonly [number, number, number], fill: string): void => {
    const [a, b, c] = corners.map((p) => flat(points, p)) as [Seen, Seen, Seen];
    // What lies across the edge of the picture is cut off by it.
    if (Math.min(a[1], b[1], c[1]) > high - low || Math.max(a[1], b[1], c[1]) < 0) return;
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
          shaded(x, sewn.sheet.triangles, t, view, tints[names.indexOf(panel.name) % tints.length] ?? skin),
      );
  const torso = form.surface.parts.find(({ name }) => name === 'torso');
  if (torso)
    for (let t = torso.firstTriangle; t < torso.firstTriangle + torso.triangles; t++)
      if (faces(form.surface.points, cornersOf(form.surface.triangles, t), view))
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
  const box = [-reach - MARGIN, 0, 2 * (reach + MARGIN), high - low + below].map((n) => fixed(n, 0));
  const told = map ? `${title}, ${view}: ${map.title.toLowerCase()}` : `${title}, ${view}`;
  const legend = map ? [legendOf(map, Math.round(-reach), Math.round(high - low), 2 * reach)] : [];
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

const place = ([u, v]: Seen): string => `${fixed(u, 1)} ${fixed(v, 1)}`;

const cornersOf = (triangles: ArrayLike<number>, t: number): readonly [number, number, number] => [
  triangles[3 * t] as number,
  triangles[3 * t + 1] as number,
  triangles[3 * t + 2] as number,
];

/** Whether a triangle of a surface, its corners seen from outside anticlockwise, is turned to the eye. */
const faces = (points: Float64Array, corners: readonly [number, number, number], view: ViewName): boolean =>
  seenFrom(view, triangleNormal(points, ...corners))[2] > 0;

/** A tint darkened where the cloth turns away from the eye. */
function shaded(
  x: Float64Array,
  triangles: ArrayLike<number>,
  t: number,
  view: ViewName,
  tint: string,
): string {
  const normal = seenFrom(view, triangleNormal(x, ...cornersOf(triangles, t)));
  const facing = Math.abs(normal[2]) / (Math.hypot(...normal) || 1);
  const light = 0.72 + 0.28 * facing;
  const channels = [1, 3, 5].map((at) => Math.round(Number.parseInt(tint.slice(at, at + 2), 16) * light));
  return `#${channels.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
}
