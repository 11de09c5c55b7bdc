import { placeAt } from '../../geometry/space.ts';
import { type Depth, type IsSeen, type SeenSurface, seenSurface } from '../../render/form/depth.ts';
import { type Seen, seenFrom, type ViewName } from '../../render/form/view.ts';
import type { ShownSurface, ShownWorn } from './shown-worn.ts';

/** Cloth is drawn with its folds: finer than a form with tapes. */
const folds: Depth = { step: 2, hidden: 5 };

/** A worn garment and the form it hangs on, as they are seen from one side. */
export interface SeenWorn {
  readonly view: ViewName;
  readonly cloth: SeenPart;
  /** The torso alone: arms would hide what they hang beside. */
  readonly torso: SeenPart;
  readonly isSeen: IsSeen;
  /** How far the cloth reaches: to either side of the middle at most, down and up; mm. */
  readonly reach: number;
  readonly low: number;
  readonly high: number;
}

/** Points as they are seen, triangles, and how far the surface at each point is turned to the eye: 1 straight, -1 away. */
export interface SeenPart {
  readonly points: readonly Seen[];
  readonly triangles: Uint32Array;
  readonly facing: readonly number[];
}

export function seenWorn({ cloth, body }: ShownWorn, view: ViewName): SeenWorn {
  const torso = body.parts.find(({ name }) => name === 'torso');
  const own = torso
    ? body.triangles.subarray(3 * torso.firstTriangle, 3 * (torso.firstTriangle + torso.triangles))
    : new Uint32Array(0);
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
  const heights = clothSeen.map(([, up]) => up);
  return {
    view,
    cloth: { points: clothSeen, triangles: cloth.triangles, facing: facing(cloth, view) },
    torso: { points: all.points.slice(count), triangles: own, facing: facing(body, view) },
    isSeen: all.isSeen,
    reach: Math.max(...clothSeen.map(([right]) => Math.abs(right))),
    low: Math.min(...heights),
    high: Math.max(...heights),
  };
}

const facing = ({ normals }: ShownSurface, view: ViewName): readonly number[] =>
  Array.from({ length: normals.length / 3 }, (_, p) => seenFrom(view, placeAt(normals, p))[2]);
