import { distance, moved, type Point } from '../../engine/geometry/point.ts';
import { heading, scaled } from '../../engine/geometry/vector.ts';
import type { Angle, Mm } from '../../engine/pattern/quantity.ts';
import { degrees, figure } from '../../engine/text/figure.ts';
import { alongShoulder, type Shoulder } from '../foundation/neck-and-shoulder.ts';
import type { FoundationTable } from '../foundation/table.ts';
import { bodiceRules as rules } from './rules.ts';
import { shortenedStrap } from './shortened-strap.ts';
import type { PlacesOnShoulder, Style } from './style.ts';

/** The shoulder of one half as the fitting left it: where the style lines cross it, and how it slopes (radians). */
export interface FittedShoulder {
  readonly inner: Point;
  readonly princess: Point;
  readonly outer: Point;
  readonly slope: { readonly atNeckline: number; readonly atArmhole: number };
}

/** The shoulder of one half as it was drafted, and the style lines that cross it. */
interface DraftedShoulder {
  readonly part: 'front' | 'back';
  readonly shoulder: Shoulder;
  readonly style: Style;
  readonly onShoulder: PlacesOnShoulder;
  /** Of the neckline: a strap runs from the shoulder down to it. */
  readonly corner: Point;
  /** How much longer a strap is on this side of the shoulder than its way. */
  readonly longer: Mm | undefined;
}

/** Draws the shoulder of one half as the fitting found it. */
export const fittedShoulder = (table: FoundationTable, drafted: DraftedShoulder): FittedShoulder =>
  drafted.style.shoulder === 'strap' ? underStrap(table, drafted) : wholeShoulder(table, drafted);

/**
 * Only the strap follows: the corner of the neckline stays where it was drafted, and so do the wedges pinned out there,
 * so that neckline, insert and princess seams of both sides remain mirror images.
 */
function underStrap(
  table: FoundationTable,
  { part, shoulder, onShoulder, corner, longer }: DraftedShoulder,
): FittedShoulder {
  const lower = table.fitted('lower shoulder');
  const slope = lowered(table, part, shoulder.slope, lower, shoulder.length);
  const fallen = { ...shoulder, slope };
  const shortened = shortenedStrap(table, part, alongShoulder(fallen, onShoulder.inner), corner, longer);
  const at = (mm: number): Point => shortened(alongShoulder(fallen, mm));
  const inner = at(onShoulder.inner);
  refuseShorter(
    table,
    part,
    distance(inner, corner),
    distance(alongShoulder(shoulder, onShoulder.inner), corner),
  );
  return {
    inner,
    princess: at(onShoulder.princess),
    outer: at(onShoulder.outer),
    slope: { atNeckline: slope.value, atArmhole: slope.value },
  };
}

/** Refuses a strap that a fitting leaves shorter (mm) than it was, and too short. */
function refuseShorter(table: FoundationTable, part: 'front' | 'back', left: number, before: number): void {
  const least = rules.leastStrap.value;
  if (left >= Math.min(least, before)) return;
  table.refuse({
    code: 'fitting-too-much',
    severity: 'error',
    path: 'fitting',
    value: left,
    limits: { min: least, unit: 'mm' },
    message: `The fitting leaves only ${figure(left)} mm of the ${part} strap. Shorten the strap by less, or bring the shoulder less far forward.`,
  });
}

/**
 * A whole shoulder falls, or moves forward, from the neckline on. What was found on one side only moves the shoulder of
 * the panel at the side alone: the panels at the centre are cut alike for both.
 */
function wholeShoulder(
  table: FoundationTable,
  { part, shoulder, style, onShoulder }: DraftedShoulder,
): FittedShoulder {
  const { inner, princess, outer } = onShoulder;
  const from = style.princess;
  const found = (on: 'both sides' | 'one side') => ({
    lower: table.fitted('lower shoulder', on),
    forward: table.fitted('forward shoulder', on),
  });
  const [both, own] = [found('both sides'), found('one side')];
  const beginsAt = from[part] === 'shoulder' ? princess : inner;
  if (part === 'front' && from.front === 'armhole' && own.lower.value + own.forward.value > 0)
    table.refuse({
      code: 'fitting-not-one-sided',
      severity: 'error',
      path: 'fitting',
      message:
        'A princess line from the armhole leaves the whole shoulder to the centre front, which is cut alike for both sides: it cannot be lower or further forward on one. Choose princess shoulder or neckline.',
    });
  const alike = pivoted(table, part, shoulder.slope, both, outer - inner);
  const atSide = pivoted(table, part, alike, own, outer - beginsAt);
  const start = alongShoulder(shoulder, inner);
  const along = (p: Point, slope: Angle, mm: number): Point => moved(p, scaled(heading(slope.value), mm));
  const side = along(start, alike, beginsAt - inner);
  return {
    inner: start,
    princess: along(start, alike, princess - inner),
    outer: along(side, atSide, outer - beginsAt),
    slope: { atNeckline: (beginsAt === inner ? atSide : alike).value, atArmhole: atSide.value },
  };
}

/** How far the armhole's end of a shoulder moves. */
interface Moves {
  readonly lower: Mm;
  readonly forward: Mm;
}

/** The slope of a shoulder so long (mm), once its end at the armhole has moved. */
function pivoted(
  table: FoundationTable,
  part: 'front' | 'back',
  slope: Angle,
  { lower, forward }: Moves,
  mm: number,
): Angle {
  if (lower.value === 0 && forward.value === 0) return slope;
  const length = table.measured(
    'Shoulder that moves',
    'to its end at the armhole',
    mm,
    table.size.shoulderLength,
  );
  const fallen = lowered(table, part, slope, lower, length);
  const turned = forwarded(table, part, fallen, forward, length);
  if (!(turned.value <= (rules.steepestShoulder.value * Math.PI) / 180))
    table.refuse({
      code: 'fitting-too-much',
      severity: 'error',
      path: 'fitting',
      value: (turned.value * 180) / Math.PI,
      limits: { max: rules.steepestShoulder.value, unit: 'degrees' },
      message: `The fitting would make the ${part} shoulder slope by ${degrees(turned.value)}. Move the shoulder by less, and measure the shoulder slope again.`,
    });
  return turned;
}

/** A shoulder whose shoulder point lies lower. */
const lowered = (
  { angle }: FoundationTable,
  part: 'front' | 'back',
  slope: Angle,
  lower: Mm,
  length: Mm,
): Angle =>
  lower.value === 0
    ? slope
    : angle`Fitting, ${part} shoulder slope: arc sine of (sine of ${slope} + ${lower} / shoulder length ${length}, at most 1)`;

/** A shoulder whose shoulder point lies further forward: the front loses what the back gains. */
function forwarded(
  { angle }: FoundationTable,
  part: 'front' | 'back',
  slope: Angle,
  forward: Mm,
  length: Mm,
): Angle {
  if (forward.value === 0) return slope;
  return part === 'front'
    ? angle`Fitting, front shoulder further down: ${slope} + 2 x arc sine of (${forward} / (2 x ${length}), at most 1)`
    : angle`Fitting, back shoulder further up: ${slope} - 2 x arc sine of (${forward} / (2 x ${length}), at most 1)`;
}
