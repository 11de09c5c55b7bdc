import { cross, minus, plus, type Spatial, scaled, unit } from '../geometry/space.ts';
import { type Mesh, meshOf } from './mesh.ts';
import { at, type Profile } from './profile.ts';

/** A limb about an axis: loops square to it at each place along it. */
export interface Limb {
  /** From the end on the body to the free end; the axis is straight between joints. */
  readonly joints: readonly Spatial[];
  /** Half breadth (in the plane of x and the axis) and half depth over the length along the axis, mm. */
  readonly halfBreadth: Profile;
  readonly halfDepth: Profile;
  readonly roundness: number;
  readonly length: number;
}

/** Corners of a loop. */
export const AROUND = 36;
const LOOPS = 44;

/** The closed surface of a limb; both its ends are rounded by their profiles. */
export function limbMesh(limb: Limb): Mesh {
  const points = new Float64Array(3 * AROUND * LOOPS);
  for (let i = 0; i < LOOPS; i++) {
    // From the free end to the body, which is from below to above; closer together where the ends round.
    const t = 0.5 - 0.5 * Math.cos((Math.PI * (i + 0.35)) / (LOOPS - 0.3));
    for (const [j, place] of limbLoop(limb, limb.length * (1 - t)).entries())
      points.set(place, 3 * (i * AROUND + j));
  }
  return meshOf({ around: AROUND, points, bottom: axisAt(limb, limb.length).at, top: axisAt(limb, 0).at });
}

/** The loop square to the axis at a place along it, from the front over the outer side. */
export function limbLoop(limb: Limb, along: number): readonly Spatial[] {
  const { at: centre, axis } = axisAt(limb, along);
  // The axis points down the limb, so that this is to the wearer's left.
  const across = unit([-axis[1], axis[0], 0]);
  const forward = unit(cross(axis, across));
  const [a, b] = [at(limb.halfBreadth, along), at(limb.halfDepth, along)];
  const power = limb.roundness;
  return Array.from({ length: AROUND }, (_, j) => {
    const angle = Math.PI / 2 - (2 * Math.PI * j) / AROUND;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const reach = (Math.abs(c) ** power + Math.abs(s) ** power) ** (-1 / power);
    return plus(centre, plus(scaled(across, reach * a * c), scaled(forward, reach * b * s)));
  });
}

/** How far to either side of a joint the axis bends, as a share of the shorter bone. */
const bend = 0.3;

/** A place on the axis and the direction there, from the body outward; joints are rounded. */
export function axisAt({ joints }: Limb, along: number): { readonly at: Spatial; readonly axis: Spatial } {
  const bones = joints.slice(1).map((to, i) => {
    const from = joints[i] as Spatial;
    const by = minus(to, from);
    const length = Math.hypot(...by);
    return { from, way: scaled(by, 1 / length), length };
  });
  let left = along;
  for (const [i, bone] of bones.entries()) {
    const next = bones[i + 1];
    const before = bones[i - 1];
    const reach = (other: { readonly length: number } | undefined): number =>
      other ? bend * Math.min(bone.length, other.length) : 0;
    if (left > bone.length && next) {
      left -= bone.length;
      continue;
    }
    const [start, end] = [reach(before), reach(next)];
    const straight = plus(bone.from, scaled(bone.way, left));
    if (next && left > bone.length - end) {
      const t = (left - bone.length + end) / (2 * end);
      return rounded(plus(bone.from, scaled(bone.way, bone.length)), bone.way, next.way, end, t);
    }
    if (before && left < start) {
      const t = (left + start) / (2 * start);
      return rounded(bone.from, before.way, bone.way, start, t);
    }
    return { at: straight, axis: bone.way };
  }
  throw new RangeError('a limb has at least one bone');
}

/** A joint rounded by a parabola that leaves both bones `reach` away from it. */
function rounded(
  joint: Spatial,
  from: Spatial,
  to: Spatial,
  reach: number,
  t: number,
): { readonly at: Spatial; readonly axis: Spatial } {
  const [a, b] = [plus(joint, scaled(from, -reach)), plus(joint, scaled(to, reach))];
  const s = 1 - t;
  return {
    at: plus(plus(scaled(a, s * s), scaled(joint, 2 * s * t)), scaled(b, t * t)),
    axis: unit(plus(scaled(from, s), scaled(to, t))),
  };
}

/** A half-round end of a limb: half breadths over the first `depth` mm that grow from next to nothing to `full`. */
export const roundEnd = (depth: number, full: number): readonly (readonly [number, number])[] =>
  [0, 0.04, 0.15, 0.35, 0.65].map((t) => [t * depth, full * Math.sqrt(1 - (1 - t) ** 2)] as const);

export const lengthOf = (joints: readonly Spatial[]): number =>
  joints.slice(1).reduce((sum, to, i) => sum + Math.hypot(...minus(to, joints[i] as Spatial)), 0);
