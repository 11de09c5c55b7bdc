import type { ClothSheet } from '../cloth/sheet.ts';
import type { Strand } from '../cloth/strings.ts';
import type { Sewn } from './sewn.ts';

/** What of a sewn sheet is hung: its left half where left and right are alike, so that both hang alike; else all of it. */
export interface HungPart {
  readonly sheet: ClothSheet;
  /** For each of its points which of the whole sheet's it is. */
  readonly points: Int32Array;
}

/** What is to be hung of a garment. */
export function partToHang({ sheet, panels, mirror }: Sewn): HungPart {
  if (!mirror) return { sheet, points: Int32Array.from({ length: sheet.count }, (_, p) => p) };
  const kept = panels.flatMap(({ panel, mesh, triangles: [first, count] }) =>
    Array.from({ length: count }, (_, k) => k).flatMap((k) => {
      const [a = 0, b = 0, c = 0] = mesh.triangles.subarray(3 * k, 3 * k + 3);
      const across = [a, b, c].reduce((sum, p) => sum + (mesh.points[2 * p] as number), 0);
      return panel.side === 'left' || (panel.side === 'whole' && across > 0) ? [first + k] : [];
    }),
  );
  const numbers = new Int32Array(sheet.count).fill(-1);
  const points: number[] = [];
  const triangles = new Int32Array(3 * kept.length);
  const flat = new Float64Array(6 * kept.length);
  for (const [i, t] of kept.entries()) {
    flat.set(sheet.flat.subarray(6 * t, 6 * t + 6), 6 * i);
    for (let k = 0; k < 3; k++) {
      const p = sheet.triangles[3 * t + k] as number;
      if (numbers[p] === -1) numbers[p] = points.push(p) - 1;
      triangles[3 * i + k] = numbers[p] as number;
    }
  }
  return {
    points: Int32Array.from(points),
    sheet: {
      count: points.length,
      triangles,
      flat,
      layers: Float64Array.from(kept, (t) => sheet.layers[t] as number),
      cloth: sheet.cloth,
      middle: Uint8Array.from(points, (p) => (mirror[p] === p ? 1 : 0)),
    },
  };
}

/** Where the points of a part lie, those in the middle just there; and which of their x, y and z are to stay as they are. */
export function placesOf(
  { sheet, points }: HungPart,
  x: Float64Array,
): { readonly own: Float64Array; readonly held: Uint8Array } {
  const own = new Float64Array(3 * points.length);
  const held = new Uint8Array(own.length);
  for (const [i, p] of points.entries()) {
    own.set(x.subarray(3 * p, 3 * p + 3), 3 * i);
    if (sheet.middle?.[i] !== 1) continue;
    own[3 * i] = 0;
    held[3 * i] = 1;
  }
  return { own, held };
}

/** The strands between points of a part, by its own numbers. */
export function strandsOf({ points, sheet }: HungPart, strands: readonly Strand[]): readonly Strand[] {
  const numbers = new Map(Array.from(points, (p, i) => [p, i]));
  return strands.flatMap((strand): readonly Strand[] => {
    const [a, b] = [numbers.get(strand.a), numbers.get(strand.b)];
    if (a === undefined || b === undefined) return [];
    // Half of what runs along the middle belongs to either side.
    const shared = sheet.middle?.[a] === 1 && sheet.middle[b] === 1;
    return [{ ...strand, a, b, stretch: shared ? strand.stretch / 2 : strand.stretch }];
  });
}

/** The places of all points of a sheet from those of the part that was hung. */
export function placesOfAll({ sheet, mirror }: Sewn, { points }: HungPart, own: Float64Array): Float64Array {
  const x = new Float64Array(3 * sheet.count);
  for (const [i, p] of points.entries()) {
    const [right = 0, up = 0, forward = 0] = own.subarray(3 * i, 3 * i + 3);
    const q = mirror?.[p] ?? p;
    if (q !== p) x.set([-right, up, forward], 3 * q);
    x.set([right, up, forward], 3 * p);
  }
  return x;
}

/** What bears on every point of a sheet from what bears on those of the part: half of the cloth in the middle bears half of it. */
export function forcesOnAll(
  { sheet, mirror }: Sewn,
  { points, sheet: { middle } }: HungPart,
  own: Float64Array,
): Float64Array {
  const forces = new Float64Array(sheet.count);
  for (const [i, p] of points.entries()) {
    const force = (own[i] as number) * (middle?.[i] === 1 ? 2 : 1);
    forces[p] = force;
    forces[mirror?.[p] ?? p] = force;
  }
  return forces;
}
