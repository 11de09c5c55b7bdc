import { cross, minus, plus } from '../../geometry/space.ts';
import type { Seen } from '../../render/form/view.ts';
import { element, type Node } from '../../render/markup.ts';
import { fixed } from '../../text/figure.ts';
import { BEYOND } from './drawn-lines.ts';
import type { WornMap } from './maps.ts';
import { pieceTints } from './piece-tints.ts';
import { STEEP } from './seen-lines.ts';
import type { SeenPart, SeenWorn } from './seen-worn.ts';
import type { ShownWorn } from './shown-worn.ts';

const skin = '#efe6df';

/** The form is drawn so far behind where it is, mm, that cloth which lies on it covers it. */
const BEHIND = 12;

/** The colour of each triangle of the cloth: its piece's tint, shaded, or what a map says. */
export function coloursOf(
  { worn }: ShownWorn,
  { cloth }: SeenWorn,
  map: WornMap | undefined,
): readonly string[] {
  if (map) return map.colours;
  const { panels } = worn.sewn;
  const tints = pieceTints(panels.map(({ panel }) => panel.name));
  return panels.flatMap(({ panel, triangles: [first, count] }) =>
    Array.from({ length: count }, (_, i) => shaded(cloth, first + i, tints.get(panel.name) ?? skin)),
  );
}

/** The facets that are in sight, the farthest first. */
export function facetsOf(seen: SeenWorn, high: number, colours: readonly string[]): readonly Node[] {
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

/** A place on the page: `high` is the height of its upper edge. */
export const place = ([u, v]: Seen, high: number): string => `${fixed(u, 1)} ${fixed(high - v, 1)}`;

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
  const lit =
    LIGHT.reduce((sum, way, k) => sum + way * (normal[k] as number), 0) / (Math.hypot(...normal) || 1);
  const light = isTurned(part, t) ? DARKEST + (1 - DARKEST) * Math.max(0, lit) : DARKEST;
  const step = Math.round(light * SHADES) / SHADES;
  const channels = [1, 3, 5].map((at) => Math.round(Number.parseInt(tint.slice(at, at + 2), 16) * step));
  return `#${channels.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
}
