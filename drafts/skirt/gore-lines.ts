import { lengthOf, type SketchBuilder, scalarOf, yOf } from '../../engine/constraints/sketch-builder.ts';
import { arc } from '../../engine/geometry/arc.ts';
import type { Curve } from '../../engine/geometry/curve.ts';
import { moved, type Point, point, vectorBetween } from '../../engine/geometry/point.ts';
import { COINCIDENCE, RELATION_ANGLE } from '../../engine/geometry/tolerance.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { fairLine } from '../fair-lines.ts';
import { keepNear } from '../keep-near.ts';
import { straight } from '../piece-edges.ts';
import { skirtRules as rules } from './rules.ts';

/** What a gore is drawn from: widths along its levels and lengths along its two seams, mm. */
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
  /** The angle by which the seams lean out below the hip. */
  readonly lean: number;
  /** Hip level and hem from right to left, as the outline runs: square to both seams. */
  readonly hip: readonly Curve[];
  readonly hem: readonly Curve[];
}

/**
 * Asks for a gore. Below the hip it is a sector: straight seams leaning out by one angle, and a hem that is an arc
 * about the place where they would meet, so that it is square to both. Above, each seam runs on smoothly to the
 * waist with the length asked for, and the waist is square to both seams.
 */
export function planGore(sketch: SketchBuilder, shape: GoreShape): GoreLines {
  const { name, half, waist, hip, hem, belowHip } = shape;
  const along = half ? hip : hip / 2;
  // A level lies on an arc about the place where the seams would meet, radius r: hip = r angle, hem = (r + below) angle.
  const lean = ((half ? hem : hem / 2) - along) / belowHip;
  const out = lean === 0 ? along : (along * Math.sin(lean)) / lean;
  // In the middle of the gore the arc lies this much lower than at its ends.
  const sag = out * Math.tan(lean / 2);
  const hipRight = point(out, 0);
  const hipLeft = half ? point(0, sag) : point(-out, 0);
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
    lean,
    hip: levelArc(lean, hipLeft, hipRight),
    hem: levelArc(lean, hemLeft, hemRight),
  };
}

/** The lines of a gore whose hem lies `up` mm further up both its seams. */
export function shorter(lines: GoreLines, up: number): GoreLines {
  const { lean, left } = lines;
  const hemRight = moved(lines.hemRight, { x: -up * Math.sin(lean), y: -up * Math.cos(lean) });
  const hemLeft =
    left === undefined ? moved(lines.hemLeft, { x: 0, y: -up }) : point(-hemRight.x, hemRight.y);
  return { ...lines, hemLeft, hemRight, hem: levelArc(lean, hemLeft, hemRight) };
}

/**
 * A level of a gore from right to left: an arc about the place where its seams, leaning by `lean`, would meet, or a
 * line when they never do.
 */
function levelArc(lean: number, left: Point, right: Point): readonly Curve[] {
  if (Math.abs(lean) < RELATION_ANGLE) return straight(right, left);
  const centre = point(0, right.y - right.x / Math.tan(lean));
  const spoke = vectorBetween(centre, right);
  const turn = angleOf(vectorBetween(centre, left)) - angleOf(spoke);
  return arc(centre, spoke, turn, COINCIDENCE).curves;
}
