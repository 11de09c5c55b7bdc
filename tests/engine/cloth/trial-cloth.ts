import type { WovenCloth } from '../../../engine/cloth/cloth.ts';
import { meshRegion } from '../../../engine/mesh/mesh-region.ts';
import type { TriangleMesh } from '../../../engine/mesh/triangle-mesh.ts';

/** Cloths and shapes with known answers, for the tests of the cloth. */

/** An even sheet: as stiff one way as the other, not crimped, stiff when pressed too. */
export const sheetMaterial = (
  rest: Partial<WovenCloth> & { stretch?: number; bending?: number } = {},
): WovenCloth => {
  const { stretch = 5, bending = 0.01, ...others } = rest;
  return {
    name: 'trial',
    weight: 150,
    thickness: 0.4,
    warp: { stretch, bending },
    weft: { stretch, bending },
    coupling: 0,
    shear: stretch / 2,
    pressed: 1,
    friction: 0,
    source: 'made up for the test',
    ...others,
  };
};

/** The border of a rectangle with a corner at 0, 0, clockwise as drawn, divided about every `spacing` mm. */
export const rectangle = (width: number, height: number, spacing: number): Float64Array => {
  const corners = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ] as const;
  return Float64Array.from(
    corners.flatMap(([x, y], i) => {
      const [toX, toY] = corners[(i + 1) % 4] ?? [0, 0];
      const count = Math.max(1, Math.round(Math.hypot(toX - x, toY - y) / spacing));
      return Array.from({ length: count }, (_, k) => [
        x + ((toX - x) * k) / count,
        y + ((toY - y) * k) / count,
      ]).flat();
    }),
  );
};

export const rectangleMesh = (width: number, height: number, spacing: number): TriangleMesh =>
  meshRegion(rectangle(width, height, spacing), spacing);

/** The points of a flat mesh that a test is true of. */
export const pointsWhere = (
  points: Float64Array,
  test: (x: number, y: number) => boolean,
): readonly number[] =>
  Array.from({ length: points.length / 2 }, (_, i) => i).filter((i) =>
    test(points[2 * i] as number, points[2 * i + 1] as number),
  );

/** Places in space of the points of a flat mesh. */
export const placed = (
  points: Float64Array,
  at: (x: number, y: number) => readonly [number, number, number],
): Float64Array =>
  Float64Array.from(
    Array.from({ length: points.length / 2 }, (_, i) =>
      at(points[2 * i] as number, points[2 * i + 1] as number),
    ).flat(),
  );

/** Which coordinates are held: all three of the given points. */
export const holding = (count: number, points: readonly number[]): Uint8Array => {
  const held = new Uint8Array(3 * count);
  for (const p of points) held.fill(1, 3 * p, 3 * p + 3);
  return held;
};

/** The left and right ends of a flat mesh sewn together, as a tube: which point each becomes, and how many are left. */
export function tubeOf(
  points: Float64Array,
  width: number,
): { readonly become: Int32Array; readonly count: number } {
  const become = new Int32Array(points.length / 2);
  let count = 0;
  const left = new Map<string, number>();
  for (let i = 0; i < become.length; i++)
    if ((points[2 * i] as number) < 1e-9) left.set((points[2 * i + 1] as number).toFixed(6), i);
  for (let i = 0; i < become.length; i++) {
    if ((points[2 * i] as number) > width - 1e-9) continue;
    become[i] = count++;
  }
  for (let i = 0; i < become.length; i++) {
    if ((points[2 * i] as number) <= width - 1e-9) continue;
    const partner = left.get((points[2 * i + 1] as number).toFixed(6));
    if (partner === undefined) throw new RangeError('no partner');
    become[i] = become[partner] as number;
  }
  return { become, count };
}

/** A flat mesh with its image mirrored in x = 0, where the two share points. */
export function withMirrorImage({
  points,
  triangles,
}: TriangleMesh): Pick<TriangleMesh, 'points' | 'triangles'> {
  const all = [...points];
  const image = Array.from({ length: points.length / 2 }, (_, i) => {
    if (Math.abs(points[2 * i] as number) < 1e-9) return i;
    all.push(-(points[2 * i] as number), points[2 * i + 1] as number);
    return all.length / 2 - 1;
  });
  const turned: number[] = [];
  for (let t = 0; t < triangles.length; t += 3)
    for (const k of [0, 2, 1]) turned.push(image[triangles[t + k] as number] as number);
  return { points: Float64Array.from(all), triangles: Int32Array.from([...triangles, ...turned]) };
}
