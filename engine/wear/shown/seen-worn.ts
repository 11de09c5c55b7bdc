import { placeAt } from '../../geometry/space.ts';
import { type Depth, type IsSeen, type SeenSurface, seenSurface } from '../../render/form/depth.ts';
import { type Seen, seenFrom, type ViewName } from '../../render/form/view.ts';
import type { ShownSurface, ShownWorn } from './shown-worn.ts';

/** Cloth is drawn with its folds: finer than a form with tapes. */
const folds: Depth = { step: 2, hidden: 5 };

/** How much of the form is drawn above and below the garment, mm. */
export const BEYOND = 90;

/** A worn garment and the form it hangs on, as they are seen from one side. */
export interface SeenWorn {
  readonly view: ViewName;
  readonly cloth: SeenPart;
  readonly form: SeenPart;
  readonly isSeen: IsSeen;
  /** How far the cloth reaches: to either side of the middle at most, down and up; mm. */
  readonly reach: number;
  readonly low: number;
  readonly high: number;
}

/** Points as they are seen, triangles, and the direction away from the surface at each point, one long. */
export interface SeenPart {
  readonly points: readonly Seen[];
  readonly triangles: Uint32Array;
  readonly normals: readonly Seen[];
}

export function seenWorn({ cloth, body, sleeved }: ShownWorn, view: ViewName): SeenWorn {
  const heights = Array.from(
    { length: cloth.points.length / 3 },
    (_, p) => cloth.points[3 * p + 1] as number,
  );
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  const own = trianglesBetween(body, sleeved, low - 2 * BEYOND, high + 2 * BEYOND);
  const count = cloth.points.length / 3;
  const points = new Float64Array(cloth.points.length + body.points.length);
  points.set(cloth.points);
  points.set(body.points, cloth.points.length);
  const inside = cloth.triangles.toReversed();
  const all: SeenSurface = seenSurface(
    { points, triangles: Uint32Array.from([...cloth.triangles, ...inside, ...own.map((p) => p + count)]) },
    view,
    folds,
  );
  const clothSeen = all.points.slice(0, count);
  return {
    view,
    cloth: { points: clothSeen, triangles: cloth.triangles, normals: normalsSeen(cloth, view) },
    form: { points: all.points.slice(count), triangles: own, normals: normalsSeen(body, view) },
    isSeen: all.isSeen,
    reach: Math.max(...clothSeen.map(([right]) => Math.abs(right))),
    low,
    high,
  };
}

/** The form's triangles between two heights, for what lies far above or below is in no picture; arms only where they are dressed. */
function trianglesBetween(
  { points, triangles, parts }: ShownWorn['body'],
  arms: boolean,
  low: number,
  high: number,
): Uint32Array {
  const kept: number[] = [];
  for (const { name, firstTriangle, triangles: count } of parts) {
    if (!arms && name.endsWith('arm')) continue;
    for (let at = 3 * firstTriangle; at < 3 * (firstTriangle + count); at += 3) {
      const up = points[3 * (triangles[at] as number) + 1] as number;
      if (up > low && up < high) kept.push(...triangles.subarray(at, at + 3));
    }
  }
  return Uint32Array.from(kept);
}

const normalsSeen = ({ normals }: ShownSurface, view: ViewName): readonly Seen[] =>
  Array.from({ length: normals.length / 3 }, (_, p) => seenFrom(view, placeAt(normals, p)));
