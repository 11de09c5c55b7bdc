import { cross, minus } from '../../geometry/space.ts';
import type { Seen } from '../../render/form/view.ts';
import { element, type Node } from '../../render/markup.ts';
import { fixed } from '../../text/figure.ts';
import type { WornMap } from './maps.ts';
import { pieceTints } from './piece-tints.ts';
import { STEEP } from './seen-lines.ts';
import { BEYOND, type SeenPart, type SeenWorn } from './seen-worn.ts';
import { shadeBands } from './shade-bands.ts';
import type { ShownWorn } from './shown-worn.ts';

const skin = '#efe6df';

/** The form is drawn so far behind where it is, mm, that cloth which lies on it covers it. */
const BEHIND = 12;

/** A triangle of the cloth, or a part of it, that is drawn in one colour. */
interface Painted {
  readonly corners: readonly Seen[];
  readonly fill: string;
}

/** What the triangle of that number is drawn as. */
export type Paint = (t: number) => readonly Painted[];

/** Cloth in its pieces' tints, shaded, or in the colours of a map. */
export function paintOf({ worn }: ShownWorn, { cloth }: SeenWorn, map: WornMap | undefined): Paint {
  if (map) return (t) => [{ corners: cornersOf(cloth, t), fill: map.colours[t] as string }];
  const { panels } = worn.sewn;
  const tints = pieceTints(panels.map(({ panel }) => panel.name));
  const tintOf = panels.flatMap(({ panel, triangles: [, count] }) =>
    Array.from({ length: count }, () => tints.get(panel.name) as string),
  );
  return (t) => shaded(cloth, t, tintOf[t] as string);
}

/** The facets that are in sight, the farthest first. */
export function facetsOf(seen: SeenWorn, high: number, paint: Paint): readonly Node[] {
  const facets: { readonly depth: number; readonly fill: string; readonly d: string }[] = [];
  const put = (part: SeenPart, t: number, paint: Paint, behind = 0): void => {
    const corners = cornersOf(part, t);
    if (!corners.some(([right, up, near]) => seen.isSeen([right, up, near + STEEP]))) return;
    if (Math.min(...corners.map(([, up]) => high - up)) > high - seen.low + BEYOND) return;
    if (Math.max(...corners.map(([, up]) => high - up)) < 0) return;
    const depth = corners.reduce((sum, [, , near]) => sum + near, 0) / 3 - behind;
    for (const { corners: own, fill } of paint(t)) facets.push({ depth, fill, d: outline(own, high) });
  };
  const { cloth, form } = seen;
  for (let t = 0; t < form.triangles.length / 3; t++)
    if (isTurned(form, t)) put(form, t, (own) => [ofSkin(form, own)], BEHIND);
  for (let t = 0; t < cloth.triangles.length / 3; t++) put(cloth, t, paint);
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

/** A closed run of corners on the page, in whole tenths of a mm, so that what shares a corner shares it still. */
function outline(corners: readonly Seen[], high: number): string {
  let [x, y] = [0, 0];
  const steps = corners.map(([right, up]) => {
    const [toX, toY] = [Math.round(10 * right), Math.round(10 * (high - up))];
    const step = `${(toX - x) / 10} ${(toY - y) / 10}`;
    [x, y] = [toX, toY];
    return step;
  });
  return `M${steps[0]}l${steps.slice(1).join(' ')}Z`;
}

const atCorners = <Kind>(
  triangles: ArrayLike<number>,
  t: number,
  of: (p: number) => Kind,
): readonly [Kind, Kind, Kind] => [
  of(triangles[3 * t] as number),
  of(triangles[3 * t + 1] as number),
  of(triangles[3 * t + 2] as number),
];

const cornersOf = ({ points, triangles }: SeenPart, t: number): readonly [Seen, Seen, Seen] =>
  atCorners(triangles, t, (p) => points[p] as Seen);

/** Whether a triangle whose corners run anticlockwise from outside shows its outside. */
function isTurned(part: SeenPart, t: number): boolean {
  const [a, b, c] = cornersOf(part, t);
  return cross(minus(b, a), minus(c, a))[2] > 0;
}

/** Light comes from the left, above and before whoever looks. */
const LIGHT = [-0.35, 0.45, 0.82] as const;

/** How light a tint is where no light falls on it: a form is shaded less, to stand back behind what it wears. */
const DARKEST = { cloth: 0.66, form: 0.82 } as const;

/** Shades that are told apart: fewer of them, smaller files. */
const SHADES = 14;

/** A triangle in its tint, darkened where it turns away from the light; the inside is in the shade. */
function shaded(part: SeenPart, t: number, tint: string): readonly Painted[] {
  const corners = cornersOf(part, t);
  if (!isTurned(part, t)) return [{ corners, fill: darkened(tint, DARKEST.cloth, 0) }];
  const lights = atCorners(part.triangles, t, (p) => litBy(part.normals[p] as Seen));
  return shadeBands(corners, lights, SHADES).map((band) => ({
    corners: band.corners,
    fill: darkened(tint, DARKEST.cloth, band.shade / (SHADES - 1)),
  }));
}

const litBy = (normal: Seen): number =>
  Math.max(
    0,
    LIGHT.reduce((sum, way, k) => sum + way * (normal[k] as number), 0),
  );

/** A triangle of a form, which are small enough to be of one shade each. */
function ofSkin(part: SeenPart, t: number): Painted {
  const lights = atCorners(part.triangles, t, (p) => litBy(part.normals[p] as Seen));
  const shade = Math.round((lights.reduce((sum, light) => sum + light) / 3) * SHADES) / SHADES;
  return { corners: cornersOf(part, t), fill: darkened(skin, DARKEST.form, shade) };
}

/** A tint in a light from 0, where it is as dark as it gets, to 1. */
function darkened(tint: string, darkest: number, light: number): string {
  const by = darkest + (1 - darkest) * light;
  const channels = [1, 3, 5].map((at) => Math.round(Number.parseInt(tint.slice(at, at + 2), 16) * by));
  return `#${channels.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
}
