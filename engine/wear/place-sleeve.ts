import { cross, plus, type Spatial, scaled, unit } from '../geometry/space.ts';
import type { SewnPanel } from './sewn.ts';
import type { Stand } from './stand.ts';

/** How far below the shoulder point the arm's middle lies, as a share of the sleeve's radius. */
const INSIDE = 0.9;

/** A sleeve laid round the left arm: its middle on top, its seam below, the crown at the shoulder point. */
export function roundArm({ mesh }: SewnPanel, { arm }: Stand): (x: number, y: number) => Spatial {
  let [left, right, top] = [Infinity, -Infinity, Infinity];
  for (let i = 0; i < mesh.points.length; i += 2) {
    left = Math.min(left, mesh.points[i] as number);
    right = Math.max(right, mesh.points[i] as number);
    top = Math.min(top, mesh.points[i + 1] as number);
  }
  const half = (right - left) / 2;
  const radius = half / Math.PI;
  const forward: Spatial = [0, 0, 1];
  const above = unit(cross(arm.way, forward));
  // The way points out and down: what is square to it and to the front must point up.
  const up = above[1] > 0 ? above : scaled(above, -1);
  const middle = plus(arm.from, scaled(up, -INSIDE * radius));
  return (x, y) => {
    const turn = ((x - (left + right) / 2) / half) * Math.PI;
    return plus(
      plus(middle, scaled(arm.way, y - top)),
      plus(scaled(up, radius * Math.cos(turn)), scaled(forward, radius * Math.sin(turn))),
    );
  };
}
