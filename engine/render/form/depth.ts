import type { Surface } from '../../form/form.ts';
import { IN_SPACE } from '../../geometry/tolerance.ts';
import { type Seen, seenFrom, type ViewName } from './view.ts';

/** How finely it is found what hides what. */
export interface Depth {
  /** From one place of the depth map to the next, mm. */
  readonly step: number;
  /** What is this far behind the nearest thing counts as hidden, mm: more than the map is off on a steep flank. */
  readonly hidden: number;
}

/** Whether a place of a view is seen, or hidden behind a nearer part of the body. */
export type IsSeen = (place: Seen) => boolean;

/** Steep flanks are off by more than a mm from one place of the map to the next. */
export const tapesSeen: Depth = { step: 4, hidden: 9 };

/** The surface's points and triangles as they are seen, and which places nothing hides. */
export interface SeenSurface {
  readonly points: readonly Seen[];
  readonly isSeen: IsSeen;
}

/** A surface as it is seen. Triangles whose corners run clockwise to the eye are the far side of something, and hide nothing. */
export function seenSurface(
  { points, triangles }: Pick<Surface, 'points' | 'triangles'>,
  view: ViewName,
  { step, hidden }: Depth,
): SeenSurface {
  const seen: Seen[] = [];
  for (let i = 0; i < points.length; i += 3)
    seen.push(seenFrom(view, [points[i] as number, points[i + 1] as number, points[i + 2] as number]));
  const cell = (value: number): number => Math.round(value / step);
  const [left, low, wide, tall] = boxOf(seen, cell);
  const nearest = new Float64Array(wide * tall).fill(Number.NEGATIVE_INFINITY);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [
      seen[triangles[t] as number],
      seen[triangles[t + 1] as number],
      seen[triangles[t + 2] as number],
    ];
    if (!a || !b || !c) continue;
    const whole = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    if (whole <= IN_SPACE) continue;
    for (let i = cell(Math.min(a[0], b[0], c[0])); i <= cell(Math.max(a[0], b[0], c[0])); i++)
      for (let j = cell(Math.min(a[1], b[1], c[1])); j <= cell(Math.max(a[1], b[1], c[1])); j++) {
        const [x, y] = [i * step, j * step];
        const u = ((x - a[0]) * (c[1] - a[1]) - (y - a[1]) * (c[0] - a[0])) / whole;
        const v = ((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) / whole;
        if (u < -0.01 || v < -0.01 || u + v > 1.01) continue;
        const near = a[2] + u * (b[2] - a[2]) + v * (c[2] - a[2]);
        const at = (j - low) * wide + i - left;
        if (near > (nearest[at] as number)) nearest[at] = near;
      }
  }
  return {
    points: seen,
    isSeen: ([right, up, near]) => {
      const [i, j] = [cell(right) - left, cell(up) - low];
      return (
        i < 0 || i >= wide || j < 0 || near > (nearest[j * wide + i] ?? Number.NEGATIVE_INFINITY) - hidden
      );
    },
  };
}

/** The cells that a view takes: the first to the right and up, and how many. */
function boxOf(
  seen: readonly Seen[],
  cell: (value: number) => number,
): readonly [left: number, low: number, wide: number, tall: number] {
  let [left, right, low, high] = [0, 0, 0, 0];
  for (const [x, y] of seen) {
    left = Math.min(left, cell(x));
    right = Math.max(right, cell(x));
    low = Math.min(low, cell(y));
    high = Math.max(high, cell(y));
  }
  return [left, low, right - left + 1, high - low + 1];
}
