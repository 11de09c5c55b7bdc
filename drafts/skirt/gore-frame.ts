import { arc } from '../../engine/geometry/arc.ts';
import type { Curve } from '../../engine/geometry/curve.ts';
import { moved, type Point, point, vectorBetween } from '../../engine/geometry/point.ts';
import { COINCIDENCE, RELATION_ANGLE } from '../../engine/geometry/tolerance.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import type { Angle, Mm } from '../../engine/pattern/quantity.ts';
import { straight } from '../piece-edges.ts';
import { type GoreName, isHalf, seamsOf } from './by-gore.ts';
import type { SkirtTable } from './choices.ts';
import type { GoreSizes } from './gore-sizes.ts';

/**
 * A gore from its hip level, y = 0, down to its hem: a sector of a cone, whose seams run straight and lean out by one
 * angle, and whose levels are arcs about the place where the seams would meet, so that they are square to both. A
 * centre gore is drawn as its side half: its left edge is the straight centre line.
 */
export interface GoreFrame {
  readonly hipLeft: Point;
  readonly hipRight: Point;
  readonly hemLeft: Point;
  readonly hemRight: Point;
  /** From its middle straight out to the hip, mm, and the angle by which the seams lean out. */
  readonly out: Mm;
  readonly lean: Angle;
  /** How far the hip level dips between its seams, mm. */
  readonly sag: number;
  /** Hip level and hem from right to left, as the outline runs: square to both seams. */
  readonly hip: readonly Curve[];
  readonly hem: readonly Curve[];
}

/** Places hip and hem of a gore. */
export function drawFrame(table: SkirtTable, gore: GoreName, sizes: GoreSizes): GoreFrame {
  const { mm, angle } = table;
  table.heading(`Skirt, ${gore}`);
  const on = `skirt ${gore}`;
  const half = isHalf(gore);
  const [left, right] = seamsOf[gore];
  const [hip, hem, below] = [sizes.hip[gore], sizes.hem[gore], sizes.belowHip];
  const hipHalf = half ? hip : mm`Half hip of the ${gore} gore: ${hip} / 2`;
  const hemHalf = half ? hem : mm`Half hem of the ${gore} gore: ${hem} / 2`;
  const lean = angle`Seams of the ${gore} gore lean out: angle of arc ((half hem ${hemHalf} - half hip ${hipHalf}) / hip to hem ${below}) [sector of a cone]`;
  const out =
    lean.value === 0
      ? hipHalf
      : mm`Hip of the ${gore} gore, straight out from its middle: half hip ${hipHalf} x sine of lean ${lean} / arc of angle lean ${lean}; the level is an arc`;
  const hipRight = table.point(on, `hip at the ${right}`, point(out.value, 0));
  table.dimension(on, out, point(0, 0), hipRight);
  const sag = mm`Hip level of the ${gore} gore dips in the middle: hip straight out ${out} x tangent of (lean ${lean} / 2)`;
  const hipLeft = table.point(on, `hip at the ${left}`, half ? point(0, sag.value) : point(-out.value, 0));
  table.dimension(on, sag, point(0, 0), point(0, sag.value));
  const hemOut = mm`Hem of the ${gore} gore, straight out from its middle: hip straight out ${out} + hip to hem ${below} x sine of lean ${lean}`;
  const hemDown = mm`Hem of the ${gore} gore, straight down: hip to hem ${below} x cosine of lean ${lean}`;
  const hemRight = table.point(on, `hem at the ${right}`, point(hemOut.value, hemDown.value));
  table.dimension(on, hemOut, point(0, hemDown.value), hemRight);
  table.dimension(on, hemDown, point(hemOut.value, 0), hemRight);
  const plumb = moved(hipRight, { x: 0, y: below.value });
  table.angleAt(on, lean, hipRight, plumb, hemRight);
  // Where a fitting took in the hip, each gore leans as it must.
  if (Math.abs(lean.value - sizes.lean.value) <= RELATION_ANGLE)
    table.angleAt(on, sizes.lean, hipRight, plumb, hemRight);
  const hemLeft = table.point(
    on,
    `hem at the ${left}`,
    half ? point(0, below.value + sag.value) : point(-hemRight.x, hemRight.y),
  );
  const frame = { hipLeft, hipRight, hemLeft, hemRight, out, lean, sag: sag.value };
  const levels = {
    hip: levelArc(lean.value, hipLeft, hipRight),
    hem: levelArc(lean.value, hemLeft, hemRight),
  };
  table.say`Below the hip of the ${gore} gore: straight seams, and hip level and hem as arcs square to them [sector of a cone]`;
  table.line(on, 'hip level', levels.hip);
  table.line(on, 'hem', levels.hem);
  table.line(on, `${right}, below the hip`, straight(hipRight, hemRight));
  table.line(on, `${left}, below the hip`, straight(hemLeft, hipLeft));
  table.dimension(on, hip, 'hip level');
  table.dimension(on, hem, 'hem');
  table.dimension(on, below, hipRight, hemRight);
  return { ...frame, ...levels };
}

/** A gore whose hem lies `up` mm further up both its seams. */
export function shorter<Frame extends GoreFrame>(frame: Frame, gore: GoreName, up: number): Frame {
  const lean = frame.lean.value;
  const hemRight = moved(frame.hemRight, { x: -up * Math.sin(lean), y: -up * Math.cos(lean) });
  const hemLeft = isHalf(gore) ? moved(frame.hemLeft, { x: 0, y: -up }) : point(-hemRight.x, hemRight.y);
  return { ...frame, hemLeft, hemRight, hem: levelArc(lean, hemLeft, hemRight) };
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
