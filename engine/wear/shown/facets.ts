import { cross, minus, plus } from '../../geometry/space.ts';
import type { Seen } from '../../render/form/view.ts';
import { element, type Node } from '../../render/markup.ts';
import { fixed } from '../../text/figure.ts';
import type { WornMap } from './maps.ts';
import { pieceTints } from './piece-tints.ts';
import { STEEP } from './seen-lines.ts';
import { BEYOND, type SeenPart, type SeenWorn } from './seen-worn.ts';
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
  const facets: { readonly depth: number; readonly fill: string; readonly d: string }[] = [];
  const put = ({ points, triangles }: SeenPart, t: number, fill: string, behind = 0): void => {
    const corners = cornersOf(triangles, t).map((p) => points[p] as Seen) as [Seen, Seen, Seen];
    if (!corners.some(([right, up, near]) => seen.isSeen([right, up, near + STEEP]))) return;
    if (Math.min(...corners.map(([, up]) => high - up)) > high - seen.low + BEYOND) return;
    if (Math.max(...corners.map(([, up]) => high - up)) < 0) return;
    const depth = corners.reduce((sum, [, , near]) => sum + near, 0) / 3;
    facets.push({ depth: depth - behind, fill, d: triangle(corners, high) });
  };
  const { cloth, form } = seen;
  for (let t = 0; t < form.triangles.length / 3; t++) if (isTurned(form, t)) put(form, t, skin, BEHIND);
  for (let t = 0; t < cloth.triangles.length / 3; t++) put(cloth, t, colours[t] as string);
  facets.sort((a, b) => a.depth - b.depth);
  const runs: Node[] = [];
  for (let i = 0; i < facets.length; ) {
    const fill = facets[i]?.fill;
    let d = '';
    for (; facets[i]?.fill === fill && i < facets.length; i++) d += facets[i]?.d;
    runs.push(element('path', { d, fill }));
  }
  return runs;
}

/** A place on the page: `high` is the height of its upper edge. */
export const place = ([u, v]: Seen, high: number): string => `${fixed(u, 1)} ${fixed(high - v, 1)}`;

/** A triangle on the page, in whole tenths of a mm, so that two that share a corner share it still. */
function triangle(corners: readonly Seen[], high: number): string {
  let [x, y] = [0, 0];
  const steps = corners.map(([right, up]) => {
    const [toX, toY] = [Math.round(10 * right), Math.round(10 * (high - up))];
    const step = `${(toX - x) / 10} ${(toY - y) / 10}`;
    [x, y] = [toX, toY];
    return step;
  });
  return `M${steps[0]}l${steps.slice(1).join(' ')}Z`;
}

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
