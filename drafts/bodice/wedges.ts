import { distance, type Point } from '../../engine/geometry/point.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';

/*
 * A gaping edge is pinned out in a wedge that ends at the bust point. Closed on paper, its cloth goes where the bust
 * dart is: the princess seam takes up that much more over the bust. Pivoting a dart, common practice, no source.
 */

/** Angle (radians) about `pivot` that brings a neckline corner above it nearer to the centre front by `mm`. */
export function necklineWedge(pivot: Point, corner: Point, mm: number, log: ConstructionLog): number {
  if (mm === 0) return 0;
  const radius = distance(pivot, corner);
  const lean = (corner.x - pivot.x) / radius;
  return wedge('neckline', mm, Math.asin(lean) - Math.asin(lean - mm / radius), log);
}

/** Angle (radians) about `pivot` that brings the strap's outer end nearer to the underarm by `mm`. */
export function armholeWedge(
  pivot: Point,
  strapOuter: Point,
  underarm: Point,
  mm: number,
  log: ConstructionLog,
): number {
  if (mm === 0) return 0;
  const [a, b] = [distance(pivot, strapOuter), distance(pivot, underarm)];
  const chord = distance(strapOuter, underarm);
  const angleFor = (c: number): number => Math.acos((a * a + b * b - c * c) / (2 * a * b));
  return wedge('armhole', mm, angleFor(chord) - angleFor(chord - mm), log);
}

function wedge(edge: string, mm: number, angle: number, log: ConstructionLog): number {
  if (Number.isFinite(angle))
    return log.angle(
      `Fitting, wedge from the ${edge}`,
      `${figure(mm)} mm pinned out, to nothing at the bust point; the bust dart takes up`,
      angle,
      'pivoting a dart, common practice, no source',
    );
  log.refuse({
    code: 'fitting-too-much',
    severity: 'error',
    path: 'fitting',
    value: mm,
    message: `A wedge of ${figure(mm)} mm is more than the ${edge} has to give. Pin out less, and measure the front again.`,
  });
  return 0;
}
