import { lengthOf, type SketchBuilder, scalarOf, yOf } from '../../engine/constraints/sketch-builder.ts';
import { arc } from '../../engine/geometry/arc.ts';
import type { Curve } from '../../engine/geometry/curve.ts';
import { type Point, point, vectorBetween } from '../../engine/geometry/point.ts';
import { COINCIDENCE, RELATION, RELATION_ANGLE } from '../../engine/geometry/tolerance.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { fairLine } from '../fair-lines.ts';
import { keepNear } from '../keep-near.ts';
import { straight } from '../piece-edges.ts';
import { skirtRules as rules } from './rules.ts';

/** What a gore is drawn from: widths across it and lengths along its two seams, mm. */
export interface GoreShape {
  readonly name: string;
  /** A centre gore is drawn as its side half: its left edge is the straight centre line. */
  readonly half: boolean;
  readonly waist: number;
  readonly hip: number;
  readonly hem: number;
  readonly leftToHip: number;
  readonly rightToHip: number;
  readonly belowHip: number;
}

/** A gore's lines: what the sketch will solve, and what is known without it. Hip level is y = 0. */
export interface GoreLines {
  readonly waist: string;
  readonly left: string | undefined;
  readonly right: string;
  readonly waistLeft: string;
  readonly waistRight: string;
  readonly hipLeft: Point;
  readonly hipRight: Point;
  readonly hemLeft: Point;
  readonly hemRight: Point;
  /** From right to left, as the outline runs: square to both seams. */
  readonly hem: readonly Curve[];
}

/**
 * Asks for a gore. Below the hip it is a sector: straight seams leaning out by one angle, and a hem that is an arc
 * about the place where they would meet, so that it is square to both. Above, each seam runs on smoothly to the
 * waist with the length asked for, and the waist is square to both seams.
 */
export function planGore(sketch: SketchBuilder, shape: GoreShape): GoreLines {
  const { name, half, waist, hip, hem, belowHip } = shape;
  const out = half ? hip : hip / 2;
  const lean = seamLean(out, half ? hem : hem / 2, belowHip);
  // A level is an arc about the same place as the hem: in the middle of the gore it lies this much lower.
  const sag = out * Math.tan(lean / 2);
  const hipRight = point(out, 0);
  const hipLeft = point(half ? 0 : -out, 0);
  const hemRight = point(out + belowHip * Math.sin(lean), belowHip * Math.cos(lean));
  const hemLeft = half ? point(0, belowHip + sag) : point(-hemRight.x, hemRight.y);

  const hipRightName = sketch.fixed(`${name} hip, right`, hipRight);
  const waistOut = half ? waist : waist / 2;
  const waistRight = sketch.point(`${name} waist, right`, point(waistOut, -shape.rightToHip));
  const waistLeft = half
    ? sketch.point(`${name} waist, left`, point(0, sag - shape.leftToHip), 'none')
    : sketch.point(`${name} waist, left`, point(-waistOut, -shape.leftToHip));

  const straightDown = Math.PI / 2 - lean;
  const right = sketch.curve(`${name} right seam`, waistRight, hipRightName, {
    end: { angle: sketch.fixedAngle(`${name} right seam below the hip`, straightDown) },
  });
  const waistCurve = sketch.curve(
    `${name} waist`,
    waistLeft,
    waistRight,
    half ? { start: { angle: sketch.fixedAngle(`${name} waist square to the centre`, 0) } } : {},
  );
  fairLine(sketch, right, rules.seamStraightness.value);
  fairLine(sketch, waistCurve);
  sketch.relation(
    {
      kind: 'length',
      name: `${name} right seam is as long as its neighbour`,
      terms: [lengthOf([right])],
      mm: shape.rightToHip,
    },
    { kind: 'length', name: `${name} waist equals the bodice`, terms: [lengthOf([waistCurve])], mm: waist },
    {
      kind: 'sum',
      name: `${name} waist square to the right seam`,
      terms: [scalarOf(`${right} start angle`), scalarOf(`${waistCurve} end angle`, -1)],
      value: Math.PI / 2,
    },
  );
  keepNear(sketch, `${name} waist level`, [yOf(waistRight)], -shape.rightToHip, 'loose');

  let left: string | undefined;
  if (!half) {
    const hipLeftName = sketch.fixed(`${name} hip, left`, hipLeft);
    left = sketch.curve(`${name} left seam`, hipLeftName, waistLeft, {
      start: { angle: sketch.fixedAngle(`${name} left seam below the hip`, lean - Math.PI / 2) },
    });
    fairLine(sketch, left, rules.seamStraightness.value);
    sketch.relation(
      {
        kind: 'length',
        name: `${name} left seam is as long as its neighbour`,
        terms: [lengthOf([left])],
        mm: shape.leftToHip,
      },
      {
        kind: 'sum',
        name: `${name} waist square to the left seam`,
        terms: [scalarOf(`${waistCurve} start angle`), scalarOf(`${left} end angle`, -1)],
        value: Math.PI / 2,
      },
    );
  }
  return {
    waist: waistCurve,
    left,
    right,
    waistLeft,
    waistRight,
    hipLeft,
    hipRight,
    hemLeft,
    hemRight,
    hem: hemArc(out, lean, hemLeft, hemRight),
  };
}

/**
 * The angle (radians) by which straight seams of length `below` lean out from a level that reaches `out` from the
 * middle, so that the arc square to them measures `hem` from the middle: angle (out / sin(angle) + below) = hem,
 * by Newton's method to rounding.
 */
function seamLean(out: number, hem: number, below: number): number {
  const perSine = (angle: number): number =>
    Math.abs(angle) < 1e-4 ? 1 + angle ** 2 / 6 : angle / Math.sin(angle);
  let angle = (hem - out) / below;
  for (let step = 0; step < 50; step++) {
    const miss = out * perSine(angle) + angle * below - hem;
    const slope = below + (out * angle) / 3;
    angle -= miss / slope;
    if (Math.abs(miss) < RELATION) break;
  }
  return angle;
}

/** The hem from right to left: an arc about the place where the seams would meet, or a line when they never do. */
function hemArc(out: number, lean: number, left: Point, right: Point): readonly Curve[] {
  if (Math.abs(lean) < RELATION_ANGLE) return straight(right, left);
  const centre = point(0, -out / Math.tan(lean));
  const spoke = vectorBetween(centre, right);
  const turn = angleOf(vectorBetween(centre, left)) - angleOf(spoke);
  const { curves } = arc(centre, spoke, turn, COINCIDENCE);
  return curves;
}
