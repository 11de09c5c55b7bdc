import type { PartName, Surface } from '../form.ts';

/** Where the nodes of a grid lie. */
export interface Grid {
  readonly origin: readonly [x: number, y: number, z: number];
  /** mm from node to node. */
  readonly spacing: number;
  /** Nodes along x, y and z. */
  readonly counts: readonly [x: number, y: number, z: number];
}

/** The grid around parts of a body and `margin` mm beyond them. */
export function gridAround(
  surface: Surface,
  names: readonly PartName[],
  spacing: number,
  margin: number,
): Grid {
  const least = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const most = least.map((value) => -value);
  for (const { name, firstPoint, points } of surface.parts) {
    if (!names.includes(name)) continue;
    for (let i = 3 * firstPoint; i < 3 * (firstPoint + points); i++) {
      const value = surface.points[i] as number;
      least[i % 3] = Math.min(least[i % 3] as number, value);
      most[i % 3] = Math.max(most[i % 3] as number, value);
    }
  }
  // Nodes lie at whole steps, so that the grid mirrors itself in x = 0.
  const from = least.map((value) => Math.floor((value - margin) / spacing));
  const to = most.map((value) => Math.ceil((value + margin) / spacing));
  const [x, y, z] = [0, 1, 2].map((k) => (from[k] as number) * spacing) as [number, number, number];
  const [nx, ny, nz] = [0, 1, 2].map((k) => (to[k] as number) - (from[k] as number) + 1) as [
    number,
    number,
    number,
  ];
  return { origin: [x, y, z], spacing, counts: [nx, ny, nz] };
}
