import { type FittingChange, fitted } from '../../engine/body/fitting.ts';
import { distance, type Point } from '../../engine/geometry/point.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';

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
  kind: Extract<Wedge, `${string}neckline`>,
  changes: readonly FittingChange[],
  pivot: Point,
  corner: Point,
  log: ConstructionLog,
): number {
  const mm = fitted(changes, kind);
  if (mm === 0) return 0;
  const radius = distance(pivot, corner);
  const lean = (corner.x - pivot.x) / radius;
  return logged(kind, mm, Math.asin(lean) - Math.asin(lean - mm / radius), log);
}

/** Angle (radians) about `pivot` that brings the strap's outer end nearer to the underarm by what was pinned. */
export function armholeWedge(
  kind: Extract<Wedge, `${string}armhole`>,
  changes: readonly FittingChange[],
  pivot: Point,
  strapOuter: Point,
  underarm: Point,
  log: ConstructionLog,
): number {
  const mm = fitted(changes, kind);
  if (mm === 0) return 0;
  const [a, b] = [distance(pivot, strapOuter), distance(pivot, underarm)];
  const chord = distance(strapOuter, underarm);
  const angleFor = (c: number): number => Math.acos((a * a + b * b - c * c) / (2 * a * b));
  return logged(kind, mm, angleFor(chord) - angleFor(chord - mm), log);
}

function logged(kind: Wedge, mm: number, angle: number, log: ConstructionLog): number {
  const { endsAt, takesUp, again } = wedges[kind];
  if (Number.isFinite(angle))
    return log.angle(
      `Fitting, ${kind}`,
      `${figure(mm)} mm pinned out, to nothing at the ${endsAt}; the ${takesUp} takes up`,
      angle,
      'pivoting a dart, common practice, no source',
    );
  log.refuse({
    code: 'fitting-too-much',
    severity: 'error',
    path: 'fitting',
    value: mm,
    message: `${figure(mm)} mm is more than there is to give for a ${kind}. Pin out less, and measure the ${again} again.`,
  });
  return 0;
}
