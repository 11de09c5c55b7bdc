import { endOf, startOf, yOf } from '../../engine/constraints/sketch-builder.ts';
import { isLong, square } from '../../engine/constraints/statements.ts';
import type { Curve } from '../../engine/geometry/curve.ts';
import { point } from '../../engine/geometry/point.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import { fairLine } from '../fair-lines.ts';
import { keepNear } from '../keep-near.ts';
import { straight } from '../piece-edges.ts';
import { type GoreName, isHalf, seamsOf } from './by-gore.ts';
import type { SkirtTable } from './choices.ts';
import { drawTurn, type FlareTurn } from './flare-turn.ts';
import { drawFrame, type GoreFrame } from './gore-frame.ts';
import type { GoreSizes } from './gore-sizes.ts';
import { skirtRules as rules } from './rules.ts';

/** A gore: what is known of it below the hip, and its lines above, as the sketch knows them. */
export interface GoreLines extends GoreFrame {
  readonly turn: FlareTurn;
  readonly waist: string;
  readonly left: string | undefined;
  readonly right: string;
  readonly waistLeft: string;
  readonly waistRight: string;
}

/**
 * Draws a gore up to its hip, and asks for what lies above: each seam runs on smoothly to the waist with the length
 * asked for, and the waist is square to both seams.
 */
export function planGore(table: SkirtTable, gore: GoreName, sizes: GoreSizes): GoreLines {
  const { sketch } = table;
  const frame = drawFrame(table, gore, sizes);
  const { sag } = frame;
  const turn = drawTurn(table, gore, sizes, frame);
  const lean = turn.lean;
  const half = isHalf(gore);
  const name = `skirt ${gore}`;
  const [leftSeam, rightSeam] = seamsOf[gore];
  const waist = sizes.waist[gore].value;
  const [leftToHip, rightToHip] = [sizes.toHip[leftSeam].value, sizes.toHip[rightSeam].value];

  const turnRight = sketch.fixed(`${name} turn, right`, turn.from);
  const waistOut = half ? waist : waist / 2;
  const waistRight = sketch.point(`${name} waist, right`, point(waistOut, -rightToHip));
  const centreWaist = point(0, sag - leftToHip);
  const waistLeft = half
    ? sketch.fixed(`${name} waist, left`, centreWaist)
    : sketch.point(`${name} waist, left`, point(-waistOut, -leftToHip));

  const right = sketch.curve(`${name} right seam`, waistRight, turnRight, {
    end: { angle: sketch.fixedAngle(`${name} right seam above its turn`, Math.PI / 2 - lean) },
  });
  const waistLine = sketch.curve(
    `${name} waist`,
    waistLeft,
    waistRight,
    half ? { start: { angle: sketch.fixedAngle(`${name} waist square to the centre`, 0) } } : {},
  );
  fairLine(sketch, right, rules.seamStraightness.value);
  fairLine(sketch, waistLine);
  sketch.relation(
    isLong(`${name} right seam is as long as its neighbour`, [right], rightToHip - turn.length),
    isLong(`${name} waist equals the bodice`, [waistLine], waist),
    square(`${name} waist square to the right seam`, endOf(waistLine), startOf(right), 1),
  );
  keepNear(sketch, `${name} waist level`, [yOf(waistRight)], -rightToHip, 'loose');
  const lines = { ...frame, turn, waist: waistLine, right, waistLeft, waistRight };
  const above = [waistLine, right];
  table.say`Above the hip of the ${gore} gore: the ${rightSeam} seam curves on to the waist, its length from there to the hip ${sizes.toHip[rightSeam]} mm; the waist is square to the seams, its length ${sizes.waist[gore]} mm`;
  table.points(name, { [waistLeft]: `waist at the ${leftSeam}`, [waistRight]: `waist at the ${rightSeam}` });
  table.dimension(name, sizes.waist[gore], waistLine);
  toHipLies(table, sizes.toHip[rightSeam], name, right, turn.right);
  if (half) {
    table.curves(name, above);
    table.line(name, `${leftSeam}, above the hip`, straight(frame.hipLeft, centreWaist));
    table.dimension(name, sizes.toHip[leftSeam], frame.hipLeft, centreWaist);
    return { ...lines, left: undefined };
  }

  const turnLeft = sketch.fixed(`${name} turn, left`, turn.left.at(-1)?.to ?? frame.hipLeft);
  const left = sketch.curve(`${name} left seam`, turnLeft, waistLeft, {
    start: { angle: sketch.fixedAngle(`${name} left seam above its turn`, lean - Math.PI / 2) },
  });
  fairLine(sketch, left, rules.seamStraightness.value);
  sketch.relation(
    isLong(`${name} left seam is as long as its neighbour`, [left], leftToHip - turn.length),
    square(`${name} waist square to the left seam`, endOf(left), startOf(waistLine), 1),
  );
  table.curves(name, [...above, left]);
  toHipLies(table, sizes.toHip[leftSeam], name, left, turn.left);
  return { ...lines, left };
}

/** Waist to hip lies along a seam and its turn. */
const toHipLies = (
  { laidOut }: SkirtTable,
  toHip: Mm,
  on: string,
  seam: string,
  turn: readonly Curve[],
): void =>
  laidOut(toHip, 1, () => [
    { on, name: seam },
    { on, curves: turn },
  ]);
