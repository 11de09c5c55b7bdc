import { moved, type Point, point } from '../../engine/geometry/point.ts';
import { heading, scaled } from '../../engine/geometry/vector.ts';
import type { Angle, Mm } from '../../engine/pattern/quantity.ts';
import { neckRules, foundationRules as rules } from './rules.ts';
import type { FoundationTable } from './table.ts';

/** A half neck, and the shoulder that falls from it. */
export interface Shoulder {
  readonly sideNeck: Point;
  readonly slope: Angle;
  readonly length: Mm;
}

/** The place on a shoulder line, so far (mm) from the side neck. */
export const alongShoulder = ({ sideNeck, slope }: Shoulder, mm: number): Point =>
  moved(sideNeck, scaled(heading(slope.value), mm));

/** Where the shoulder line ends. */
export const shoulderPoint = (shoulder: Shoulder): Point => alongShoulder(shoulder, shoulder.length.value);

/** The half back neck: how wide it is, and how far the side neck lies above the back neck point. */
export interface BackNeck {
  readonly width: Mm;
  readonly rise: Mm;
}

/** Measures out the back neck. */
export function drawBackNeck(table: FoundationTable): BackNeck {
  const width = table.mm`Back neck width: neck base girth ${table.size.neckBaseGirth} / ${neckRules.girthParts} + ${neckRules.beyond}`;
  const rise = table.mm`Side neck above the back neck point: back neck width ${width} / ${neckRules.widthParts}`;
  return { width, rise };
}

/** Draws the back shoulder from the side neck. */
export function drawBackShoulder(table: FoundationTable, neck: BackNeck): Shoulder {
  const { size } = table;
  const slope = table.angle`Back shoulder slope: shoulder slope ${size.shoulderSlope} - ${rules.shoulderTilt}`;
  const shoulder = {
    sideNeck: point(neck.width.value, -neck.rise.value),
    slope,
    length: size.shoulderLength,
  };
  table.say`Back shoulder: from the side neck, as long as shoulder length ${size.shoulderLength}, falling by ${slope}`;
  table.point('back', 'back neck point', point(0, 0));
  table.point('back', 'side neck', shoulder.sideNeck);
  table.point('back', 'shoulder point', shoulderPoint(shoulder));
  table.line('back', 'shoulder', [{ kind: 'line', from: shoulder.sideNeck, to: shoulderPoint(shoulder) }]);
  slopes(table, 'back', shoulder);
  table.dimension('back', shoulder.length, shoulder.sideNeck, shoulderPoint(shoulder));
  table.dimension('back', neck.width, point(0, shoulder.sideNeck.y), shoulder.sideNeck);
  table.dimension('back', neck.rise, point(0, 0), point(0, shoulder.sideNeck.y));
  return shoulder;
}

/** Draws the front shoulder: the side neck lies as far from the bust point as was measured. */
export function drawFrontShoulder(
  table: FoundationTable,
  neck: BackNeck,
  bust: Mm,
  bustPoint: Mm,
): Shoulder & { readonly neckHeight: Mm } {
  const { size } = table;
  const width = table.mm`Front neck width: back neck width ${neck.width} - ${rules.frontNeckNarrower}`;
  const neckHeight = table.mm`Side neck above the bust level: root of (square of neck to bust point ${size.neckShoulderPointToBustPoint} - square of (bust point ${bustPoint} - front neck width ${width}))`;
  const slope = table.angle`Front shoulder slope: shoulder slope ${size.shoulderSlope} + ${rules.shoulderTilt}`;
  const sideNeck = point(width.value, bust.value - neckHeight.value);
  const shoulder = { sideNeck, slope, length: size.shoulderLength, neckHeight };
  table.say`Front shoulder: from the side neck, as long as shoulder length ${size.shoulderLength}, falling by ${slope}`;
  table.point('front', 'side neck', sideNeck);
  table.point('front', 'shoulder point', shoulderPoint(shoulder));
  table.line('front', 'shoulder', [{ kind: 'line', from: sideNeck, to: shoulderPoint(shoulder) }]);
  slopes(table, 'front', shoulder);
  table.dimension('front', shoulder.length, sideNeck, shoulderPoint(shoulder));
  table.dimension('front', width, point(0, sideNeck.y), sideNeck);
  table.dimension('front', neckHeight, sideNeck, point(sideNeck.x, bust.value));
  const [toBustPoint, bustPlace] = [size.neckShoulderPointToBustPoint, point(bustPoint.value, bust.value)];
  table.dimension('front', toBustPoint, sideNeck, bustPlace);
  return shoulder;
}

/** The slope as it lies at the side neck, under the level there. */
function slopes(table: FoundationTable, on: 'back' | 'front', shoulder: Shoulder): void {
  const { sideNeck, slope, length } = shoulder;
  table.angleAt(on, slope, sideNeck, point(sideNeck.x + length.value, sideNeck.y), shoulderPoint(shoulder));
}
