import { type Point, point, turnedAbout, vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import { figure } from '../../engine/pattern/written.ts';
import type { Foundation } from '../foundation/foundation.ts';
import { alongShoulder, type Shoulder } from '../foundation/neck-and-shoulder.ts';
import { armholeWedge, necklineWedge } from '../foundation/wedges.ts';
import { loweredShoulder } from './lowered-shoulder.ts';
import { bodiceRules as rules } from './rules.ts';
import type { BodiceTable, Style } from './style.ts';

/** The style lines of one half, front or back, as they are drawn on the foundation. */
export interface HalfStyle {
  /** Where the neckline and the armhole meet the shoulder, as the panel at the side lies. */
  readonly inner: Point;
  readonly outer: Point;
  /** The heading of a line that leaves the shoulder square to it there, radians. */
  readonly square: number;
  /** The heading of the neckline where it leaves the shoulder, there. */
  readonly neckHeading: number;
  /** The corner of the neckline on the panel at the centre, and on the panel at the side. */
  readonly corner: Point;
  readonly sideCorner: Point;
  /** The neckline at the centre. */
  readonly centre: Point;
  /** Where the shoulder meets the neckline, as the panel at the centre lies. */
  readonly innerAtCentre: Point;
  /** Where the princess line begins, on the panel at the centre and on the one at the side; unless on the armhole. */
  readonly princess: { readonly centre: Point; readonly side: Point };
  /** How far what lies above the bust level has turned on the panel at the side, radians. */
  readonly turned: number;
}

export interface StyleLines {
  readonly style: Style;
  readonly front: HalfStyle;
  readonly back: HalfStyle;
  /** From the side neck along the shoulder to the neckline, to the princess line, and to the armhole, mm. */
  readonly onShoulder: { readonly inner: number; readonly princess: number; readonly outer: number };
}

/** Where along the shoulder the style lines cross it: the same in front and behind. */
function placesOnShoulder(table: BodiceTable, style: Style): StyleLines['onShoulder'] {
  const { size, choice } = table;
  if (style.neckline === 'natural') {
    const middle = table.mm`Princess line at the shoulder, from the side neck: shoulder length ${size.shoulderLength} / 2`;
    return { inner: 0, princess: middle.value, outer: size.shoulderLength.value };
  }
  if (style.shoulder === 'strap') {
    const inner = table.mm`Strap from the side neck: ${choice.strapPosition}, at most shoulder length ${size.shoulderLength} - strap width ${choice.strapWidth}`;
    const outer = table.mm`Strap ends from the side neck: ${inner} + strap width ${choice.strapWidth}`;
    return { inner: inner.value, princess: inner.value, outer: outer.value };
  }
  const inner = table.mm`Neckline at the shoulder, from the side neck: ${choice.strapPosition}, at most shoulder length ${size.shoulderLength} - strap width ${choice.strapWidth}`;
  const princess = table.mm`Princess line at the shoulder, from the side neck: (${inner} + shoulder length ${size.shoulderLength}) / 2`;
  return { inner: inner.value, princess: princess.value, outer: size.shoulderLength.value };
}

/** Draws neckline, shoulder and the beginning of the princess line on the foundation, front and back. */
export function drawStyleLines(table: BodiceTable, foundation: Foundation, style: Style): StyleLines {
  table.heading('Style lines');
  const onShoulder = placesOnShoulder(table, style);
  const places = { table, foundation, style, onShoulder };
  const back = backCorner(places);
  const front = frontCorner(places);
  const lean = (shoulder: Shoulder, corner: Point): number =>
    angleOf(vectorBetween(alongShoulder(shoulder, onShoulder.inner), corner)) -
    (shoulder.slope.value + Math.PI / 2);
  // Laid together at the shoulder, what leans to the centre in front leans from it behind: the line runs on.
  const leans =
    style.shoulder === 'strap'
      ? (lean(foundation.front.shoulder, front.corner) - lean(foundation.back.shoulder, back.corner)) / 2
      : 0;
  return {
    style,
    onShoulder,
    front: { ...front, neckHeading: front.square + leans },
    back: { ...back, neckHeading: back.square - leans },
  };
}

interface Places {
  readonly table: BodiceTable;
  readonly foundation: Foundation;
  readonly style: Style;
  readonly onShoulder: StyleLines['onShoulder'];
}

type Corner = Omit<HalfStyle, 'neckHeading'>;

function backCorner({ table, foundation, style, onShoulder }: Places): Corner {
  const { choice } = table;
  const { back } = foundation;
  const depth =
    style.backNeckline === 'natural'
      ? 0
      : table.mm`Back neckline below the back neck point: ${choice.backNecklineDepth}`.value;
  const centre = table.point('back', 'back neckline at the centre', point(back.centreBackAt(depth), depth));
  const crossing = alongShoulder(back.shoulder, onShoulder.inner);
  let corner = crossing;
  if (style.shoulder === 'strap') {
    const rise =
      style.backNeckline === 'pointed'
        ? table.mm`Back neckline rises from its point to the strap: ${rules.backNecklinePoint} of ${choice.backNecklineDepth}`
        : table.mm`Back neckline rises from the centre to the strap: ${rules.backNecklineRise}`;
    const down = table.measured(
      'Strap end below the shoulder',
      'down the back',
      depth - rise.value - crossing.y,
    );
    const at = table.measured('Strap at the shoulder', 'from the centre back', crossing.x);
    const most = table.measured('Underarm, from the centre back', 'on the drawing', back.side.underarm.x);
    const out = table.mm`Back neckline corner from the centre back: ${at} + ${rules.backStrapLean} of ${down}, at most ${most} - ${rules.strapInsideUnderarm} - strap width ${choice.strapWidth}`;
    corner = table.point('back', 'corner of the back neckline', point(out.value, depth - rise.value));
  }
  const { fitting } = table.body;
  const atNeckline =
    fitting.length === 0 ? 0 : necklineWedge(table, 'wedge from back neckline', back.blade, corner);
  const atArmhole =
    fitting.length === 0
      ? 0
      : armholeWedge(table, 'wedge from back armhole', back.blade, back.across, back.side.underarm);
  const shoulder = loweredShoulder(table, 'back', back.shoulder);
  const turn = (p: Point): Point => turnedAbout(p, back.blade, atArmhole);
  const turnedIn = (p: Point): Point => turnedAbout(p, back.blade, -atNeckline);
  const moved = strapShortened(table, 'back', shoulder.slope.value);
  const princess =
    style.princess.back === 'neckline' ? corner : alongShoulder(back.shoulder, onShoulder.princess);
  return {
    inner: turn(moved(alongShoulder(shoulder, onShoulder.inner))),
    outer: turn(moved(alongShoulder(shoulder, onShoulder.outer))),
    square: shoulder.slope.value + Math.PI / 2 + atArmhole,
    corner: turnedIn(corner),
    sideCorner: turn(corner),
    centre,
    innerAtCentre: turnedIn(crossing),
    princess: { centre: turnedIn(princess), side: turn(princess) },
    turned: atArmhole,
  };
}

function frontCorner({ table, foundation, style, onShoulder }: Places): Corner {
  const { front } = foundation;
  const { fitting } = table.body;
  const crossing = alongShoulder(front.shoulder, onShoulder.inner);
  const natural = style.neckline === 'natural';
  const corner = natural ? crossing : necklineCorner(table, foundation, style, onShoulder);
  const lower = natural ? naturalDepth(table, foundation) : belowCorner(table, style, corner, front.pivot.y);
  const centre = table.point('front', 'front neckline at the centre', point(0, lower));
  const atNeckline =
    fitting.length === 0 ? 0 : necklineWedge(table, 'wedge from neckline', front.pivot, corner);
  const shoulder = loweredShoulder(table, 'front', front.shoulder);
  const turnedIn = (p: Point): Point => turnedAbout(p, front.pivot, -atNeckline);
  const moved = strapShortened(table, 'front', shoulder.slope.value);
  const princess =
    style.princess.front === 'neckline' ? corner : alongShoulder(front.shoulder, onShoulder.princess);
  return {
    inner: front.closed(moved(alongShoulder(shoulder, onShoulder.inner))),
    outer: front.closed(moved(alongShoulder(shoulder, onShoulder.outer))),
    square: shoulder.slope.value + Math.PI / 2 + front.turned,
    corner: turnedIn(corner),
    sideCorner: front.closed(corner),
    centre,
    innerAtCentre: turnedIn(crossing),
    princess: { centre: turnedIn(princess), side: front.closed(princess) },
    turned: front.turned,
  };
}

/** The neck base at the centre front. */
function naturalDepth(table: BodiceTable, { front }: Foundation): number {
  const width = table.measured('Front neck, centre to side', 'on the drawing', front.shoulder.sideNeck.x);
  const depth = table.mm`Front neck below the side neck: ${width} + ${rules.frontNeckDepth}`;
  return front.shoulder.sideNeck.y + depth.value;
}

/** How far down a neckline lies at the centre front that is lower there than at its corner. */
function belowCorner(table: BodiceTable, style: Style, corner: Point, bustLevel: number): number {
  const share =
    style.neckline === 'round'
      ? rules.roundScoop
      : style.neckline === 'pointed'
        ? rules.pointedDrop
        : style.neckline === 'sweetheart'
          ? rules.sweetheartDrop
          : undefined;
  if (!share) return corner.y;
  const half = table.measured('Half the neckline', 'from centre front to its corner', corner.x);
  const above = table.measured(
    'Neckline corner above the bust level',
    'on the drawing',
    bustLevel - corner.y,
  );
  const drop = table.mm`Front neckline lower at the centre: ${share} of ${half}, at most ${above} - ${rules.aboveBust}, at least 0`;
  return corner.y + drop.value;
}

/**
 * The corner of the front neckline, dart open. A strap must meet its panel above the underarm as the body has it, and
 * inside the fold of the arm: else no armhole could run from one to the other without a hook or a shelf.
 */
function necklineCorner(
  table: BodiceTable,
  { front, levels }: Foundation,
  style: Style,
  onShoulder: StyleLines['onShoulder'],
): Point {
  const { choice } = table;
  const { pivot, turned, side } = front;
  const height = table.mm`Front neckline above the bust level, as chosen: (1 - ${choice.necklineDepth}) x ${front.neckHeight}`;
  if (style.shoulder === 'whole') {
    const half = table.mm`Front neckline half width: ${choice.necklineWidth} x bust point ${front.bustPoint}`;
    const top = alongShoulder(front.shoulder, onShoulder.princess);
    const share = height.value / (pivot.y - top.y);
    const line = table.measured(
      'Princess line at the neckline',
      'from centre front',
      pivot.x + share * (top.x - pivot.x),
    );
    const free =
      style.princess.front === 'shoulder'
        ? table.mm`Front neckline corner: ${half}, at most ${line} - ${rules.besidePrincess}`
        : half;
    return table.point(
      'front',
      'corner of the front neckline',
      point(free.value, levels.bust.value - height.value),
    );
  }
  const inside = table.mm`Armhole inside the arm fold, where the strap begins inside the shoulder point: ${rules.armholeInset} of (shoulder length ${table.size.shoulderLength} - ${table.measured('Outer edge of the strap', 'from the side neck', onShoulder.outer)})`;
  const fold = table.measured('Arm fold, from centre front', 'on the drawing', front.across.x, front.across);
  const half = table.mm`Front neckline half width: ${choice.necklineWidth} x bust point ${front.bustPoint}, at most ${fold} - ${inside} - strap width ${choice.strapWidth} + ${rules.strapBeyondFold}`;
  const underarm = turnedAbout(side.underarm, pivot, -turned);
  const open = table.measured(
    'Underarm above the bust level, dart open',
    'the underarm turned back by the dart about the bust point',
    pivot.y - underarm.y,
    front.dart,
  );
  const above = table.mm`Front neckline above the bust level: ${height}, at least ${open} + ${rules.aboveUnderarm}`;
  return table.point(
    'front',
    'corner of the front neckline',
    point(half.value, levels.bust.value - above.value),
  );
}

/**
 * Moves the shoulder end of a strap nearer to its panel by what the fitting shortened, half before and half behind the
 * shoulder, and forward by what the shoulder lies further forward.
 */
function strapShortened(table: BodiceTable, part: 'front' | 'back', slope: number): (p: Point) => Point {
  const shorter = (table.fitted('shorten strap').value - table.fitted('lengthen strap').value) / 2;
  const forward = table.fitted('forward shoulder').value * (part === 'front' ? 1 : -1);
  const less = shorter + forward;
  if (less === 0) return (p) => p;
  const down = slope + Math.PI / 2;
  const moved: Mm = table.measured(
    `Fitting, ${part} of the shoulder lies lower by`,
    `${figure(shorter)} shorter, ${figure(forward)} for the forward shoulder`,
    less,
    table.fitted('shorten strap'),
    table.fitted('lengthen strap'),
    table.fitted('forward shoulder'),
  );
  return (p) => point(p.x + moved.value * Math.cos(down), p.y + moved.value * Math.sin(down));
}
