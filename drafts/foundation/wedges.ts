import { distance, type Point } from '../../engine/geometry/point.ts';
import { figure } from '../../engine/pattern/construction-log.ts';
import type { FoundationTable } from './foundation.ts';

/*
 * A gaping edge is pinned out in a wedge that ends at the bust point, behind at the shoulder blade. Closed on paper,
 * its cloth goes into the princess seam, which takes up that much more there. Pivoting a dart, common practice, no
 * source.
 */

const wedges = {
  'wedge from neckline': { endsAt: 'bust point', takesUp: 'bust dart', again: 'front' },
  'wedge from armhole': { endsAt: 'bust point', takesUp: 'bust dart', again: 'front' },
  'wedge from back neckline': { endsAt: 'shoulder blade', takesUp: 'back princess seam', again: 'back' },
  'wedge from back armhole': { endsAt: 'shoulder blade', takesUp: 'back princess seam', again: 'back' },
} as const;

type Wedge = keyof typeof wedges;

/** Angle (radians) about `pivot` that brings a neckline corner above it nearer to the centre by what was pinned. */
export function necklineWedge(
  table: FoundationTable,
  kind: Extract<Wedge, `${string}neckline`>,
  pivot: Point,
  corner: Point,
): number {
  const { value: mm } = table.fitted(kind);
  if (mm === 0) return 0;
  const radius = distance(pivot, corner);
  const lean = (corner.x - pivot.x) / radius;
  return logged(table, kind, Math.asin(lean) - Math.asin(lean - mm / radius));
}

/** Angle (radians) about `pivot` that brings a place on the armhole nearer to the underarm by what was pinned. */
export function armholeWedge(
  table: FoundationTable,
  kind: Extract<Wedge, `${string}armhole`>,
  pivot: Point,
  onArmhole: Point,
  underarm: Point,
): number {
  const { value: mm } = table.fitted(kind);
  if (mm === 0) return 0;
  const [a, b] = [distance(pivot, onArmhole), distance(pivot, underarm)];
  const chord = distance(onArmhole, underarm);
  const angleFor = (c: number): number => Math.acos((a * a + b * b - c * c) / (2 * a * b));
  return logged(table, kind, angleFor(chord) - angleFor(chord - mm));
}

function logged(table: FoundationTable, kind: Wedge, angle: number): number {
  const { endsAt, takesUp, again } = wedges[kind];
  const pinned = table.fitted(kind);
  if (Number.isFinite(angle)) {
    table.log.angle(
      `Fitting, ${kind}`,
      `${figure(pinned.value)} mm pinned out, to nothing at the ${endsAt}; the ${takesUp} takes up`,
      angle,
      'pivoting a dart, common practice, no source',
    );
    return angle;
  }
  table.refuse({
    code: 'fitting-too-much',
    severity: 'error',
    path: 'fitting',
    value: pinned.value,
    message: `${figure(pinned.value)} mm is more than there is to give for a ${kind}. Pin out less, and measure the ${again} again.`,
  });
  return 0;
}
