import type { Surface } from '../../form/form.ts';
import { cross, minus, scaled } from '../../geometry/space.ts';
import { element, type Node } from '../markup.ts';
import type { SeenSurface } from './depth.ts';
import type { Seen } from './view.ts';

/** Where light comes from: the left, above and before whoever looks. */
const light = [-0.42, 0.48, 0.77] as const;

/** Shades from dark to light. */
const shades = 22;
const [dark, bright] = [
  [118, 104, 98],
  [247, 236, 228],
] as const;

const shadeColour = (shade: number): string => {
  const t = shade / (shades - 1);
  const part = (k: number): string =>
    Math.round((dark[k] as number) + t * ((bright[k] as number) - (dark[k] as number)))
      .toString(16)
      .padStart(2, '0');
  return `#${part(0)}${part(1)}${part(2)}`;
};

interface Face {
  readonly corners: readonly Seen[];
  readonly depth: number;
  readonly shade: number;
}

/**
 * The faces that are seen, shaded, the farthest first. Two triangles that follow each other on a surface are one face of
 * four corners where they share an edge.
 */
export function drawnFaces({ triangles }: Surface, { points, isSeen }: SeenSurface): Node {
  const faces: Face[] = [];
  for (let t = 0; t < triangles.length; ) {
    const ids = [triangles[t] as number, triangles[t + 1] as number, triangles[t + 2] as number];
    const merged = quad(ids, [triangles[t + 3], triangles[t + 4], triangles[t + 5]]);
    t += merged ? 6 : 3;
    const face = faceOf((merged ?? ids).map((id) => points[id] as Seen));
    if (face?.corners.some(isSeen)) faces.push(face);
  }
  faces.sort((a, b) => a.depth - b.depth);
  const paths: Node[] = [];
  for (let i = 0; i < faces.length; ) {
    const shade = faces[i]?.shade ?? 0;
    let d = '';
    for (; faces[i]?.shade === shade; i++) d += pathOf(faces[i]?.corners ?? []);
    const colour = shadeColour(shade);
    paths.push(element('path', { d, fill: colour, stroke: colour }));
  }
  return element('g', { 'stroke-width': '0.7', 'stroke-linejoin': 'round' }, paths);
}

/** Four corners of two triangles that share an edge; nothing where they do not. */
function quad(
  first: readonly number[],
  second: readonly (number | undefined)[],
): readonly number[] | undefined {
  const rest = second.filter((id) => id !== undefined && !first.includes(id));
  const [apex] = rest;
  if (rest.length !== 1 || apex === undefined) return undefined;
  const lone = first.findIndex((id) => !second.includes(id));
  if (lone < 0) return undefined;
  const [a, b, c] = [first[lone], first[(lone + 1) % 3], first[(lone + 2) % 3]] as [number, number, number];
  return [a, b, apex, c];
}

/** A face that is turned away so far is seen as a line at most: a sine. */
const edgeOn = 1e-3;

function faceOf(corners: readonly Seen[]): Face | undefined {
  const [a, b, c] = corners as [Seen, Seen, Seen];
  const d = corners[3] ?? a;
  const [u, v] = [minus(c, a), corners[3] ? minus(d, b) : minus(b, a)];
  const sign = corners[3] ? 1 : -1;
  const normal = scaled(cross(u, v), sign);
  const length = Math.hypot(...normal);
  if (!(normal[2] > edgeOn * length)) return undefined;
  const lit = (normal[0] * light[0] + normal[1] * light[1] + normal[2] * light[2]) / length;
  const shade = Math.round(Math.min(1, Math.max(0, 0.25 + 0.75 * lit)) * (shades - 1));
  return { corners, depth: Math.max(...corners.map(([, , near]) => near)), shade };
}

/** A closed run of corners, in whole tenths of a mm from corner to corner, downward as SVG has it. */
function pathOf(corners: readonly Seen[]): string {
  let [x, y] = [0, 0];
  const steps = corners.map(([right, up]) => {
    const [toX, toY] = [Math.round(right * 10), Math.round(-up * 10)];
    const step = `${(toX - x) / 10} ${(toY - y) / 10}`;
    [x, y] = [toX, toY];
    return step;
  });
  return `M${steps[0]}l${steps.slice(1).join(' ')}Z`;
}

export const tenths = (value: number): string => String(Math.round(value * 10) / 10 + 0);
