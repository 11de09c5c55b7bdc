import { arc } from '../geometry/arc.ts';
import type { Curve } from '../geometry/curve.ts';
import { type Point, point } from '../geometry/point.ts';
import { transformedCurve } from '../geometry/transform.ts';
import { vector } from '../geometry/vector.ts';

/** An arc of an ellipse as SVG gives it between two points. */
export interface EllipticalArc {
  readonly rx: number;
  readonly ry: number;
  /** Radians. */
  readonly tilt: number;
  readonly large: boolean;
  readonly clockwise: boolean;
}

/** Cubics stray from an arc by no more than this share of its larger radius. */
const STRAY = 1e-6;

/**
 * The arc from one point to another as cubics (SVG 2, appendix B.2.4: from end points to centre). Radii too short
 * to reach are made longer together, as that standard asks; an arc without a radius is a straight line, and one
 * that leads nowhere draws nothing.
 */
export function ellipticalArc(from: Point, to: Point, shape: EllipticalArc): readonly Curve[] {
  const { tilt, large, clockwise } = shape;
  if (from.x === to.x && from.y === to.y) return [];
  if (shape.rx === 0 || shape.ry === 0) return [{ kind: 'line', from, to }];
  const [c, s] = [Math.cos(tilt), Math.sin(tilt)];
  const halfX = (from.x - to.x) / 2;
  const halfY = (from.y - to.y) / 2;
  const given = { rx: Math.abs(shape.rx), ry: Math.abs(shape.ry) };
  // The half chord in the ellipse's own axes, as shares of its radii: a circle of radius 1 from here on.
  const chord = { x: (c * halfX + s * halfY) / given.rx, y: (c * halfY - s * halfX) / given.ry };
  const reach = Math.max(1, Math.hypot(chord.x, chord.y));
  const [rx, ry] = [given.rx * reach, given.ry * reach];
  const [x, y] = [chord.x / reach, chord.y / reach];
  const away = Math.sqrt(Math.max(0, 1 / (x * x + y * y) - 1)) * (large === clockwise ? -1 : 1);
  const centre = { x: away * y, y: -away * x };
  const start = Math.atan2(y - centre.y, x - centre.x);
  const end = Math.atan2(-y - centre.y, -x - centre.x);
  const full = 2 * Math.PI;
  const turn = clockwise ? (((end - start) % full) + full) % full : -((((start - end) % full) + full) % full);
  const middle = point((from.x + to.x) / 2, (from.y + to.y) / 2);
  const place = (p: Point): Point => {
    const [u, v] = [rx * p.x, ry * p.y];
    return point(middle.x + c * u - s * v, middle.y + s * u + c * v);
  };
  const spoke = vector(Math.cos(start), Math.sin(start));
  const curves = arc(point(centre.x, centre.y), spoke, turn, STRAY).curves.map((curve) =>
    transformedCurve(curve, place),
  );
  return curves.map((curve, i) => ({
    ...curve,
    ...(i === 0 ? { from } : {}),
    ...(i === curves.length - 1 ? { to } : {}),
  }));
}
