import { type Point, point, turnedAbout, vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import type { Foundation } from '../foundation/foundation.ts';
import { alongShoulder, type Shoulder } from '../foundation/neck-and-shoulder.ts';
import type { FoundationTable } from '../foundation/table.ts';
import { armholeWedge, necklineWedge } from '../foundation/wedges.ts';
import { fittedShoulder } from './fitted-shoulder.ts';
import { bodiceRules as rules } from './rules.ts';
import type { PlacesOnShoulder, Style } from './style.ts';

/** The style lines of one half, front or back, as they are drawn on the foundation. */
export interface HalfStyle {
  /** Where the neckline and the armhole meet the shoulder, as the panel at the side lies. */
  readonly inner: Point;
  readonly outer: Point;
  /** The headings of armhole and neckline where they leave the shoulder, there: radians. */
  readonly square: number;
  readonly neckHeading: number;
  /** The corner of the neckline on the panel at the centre, and on the panel at the side. */
  readonly corner: Point;
  readonly sideCorner: Point;
  /** The neckline at the centre. */
  readonly centre: Point;
  /** Where the shoulder meets neckline and armhole, and the heading square to it, as the panel at the centre lies. */
  readonly atCentre: { readonly inner: Point; readonly outer: Point; readonly square: number };
  /** Where the princess line begins, on the panel at the centre and on the one at the side; unless on the armhole. */
  readonly princess: { readonly centre: Point; readonly side: Point };
  /** How far what lies above the bust level has turned on the panel at the side: out, radians. */
  readonly turned: number;
  /** And on the panel at the centre: in, where a wedge was pinned out of the neckline. */
  readonly turnedIn: number;
}

export interface StyleLines {
  readonly style: Style;
  readonly front: HalfStyle;
  readonly back: HalfStyle;
  readonly onShoulder: PlacesOnShoulder;
}

/** Where the neckline turns: its corner, or where it meets the shoulder, and where it crosses the centre. */
export interface Neckline {
  readonly corner: Point;
  readonly centre: Point;
}

/** A style as one half has it: where its lines cross the shoulder, and its neckline. */
interface HalfChosen extends Neckline {
  readonly style: Style;
  readonly onShoulder: PlacesOnShoulder;
  /** How much longer a strap is before or behind the shoulder than its way. */
  readonly longer: Mm | undefined;
}

/** The style lines of front and back, from where they cross the shoulder and where the neckline runs. */
export function styleLines(
  table: FoundationTable,
  foundation: Foundation,
  style: Style,
  onShoulder: PlacesOnShoulder,
  necklines: { readonly front: Neckline; readonly back: Neckline },
): StyleLines {
  const longer = foundation.held
    ? table.mm`Strap is longer than its way, before the shoulder and behind: ${rules.strapGives} of (upper chest girth ${table.size.upperChestGirth} - ${rules.strapGivesFrom}) / 2; without sleeves`
    : undefined;
  const back = backHalf(table, foundation, { style, onShoulder, longer, ...necklines.back });
  const front = frontHalf(table, foundation, { style, onShoulder, longer, ...necklines.front });
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
    front: { ...front, neckHeading: front.neckHeading + leans },
    back: { ...back, neckHeading: back.neckHeading - leans },
  };
}

function backHalf(table: FoundationTable, { back }: Foundation, chosen: HalfChosen): HalfStyle {
  const turnedIn = necklineWedge(table, 'wedge from back neckline', back.blade, chosen.corner);
  const turned = armholeWedge(table, 'wedge from back armhole', back.blade, back.across, back.side.underarm);
  return half(table, { part: 'back', shoulder: back.shoulder, pivot: back.blade, turnedIn, turned }, chosen);
}

const frontHalf = (table: FoundationTable, { front }: Foundation, chosen: HalfChosen): HalfStyle =>
  half(
    table,
    {
      part: 'front',
      shoulder: front.shoulder,
      pivot: front.pivot,
      turnedIn: necklineWedge(table, 'wedge from neckline', front.pivot, chosen.corner),
      turned: front.turned,
    },
    chosen,
  );

/** One half of the foundation: what lies beside the princess line turns about its pivot when darts and wedges close. */
interface Turning {
  readonly part: 'front' | 'back';
  readonly shoulder: Shoulder;
  readonly pivot: Point;
  /** How far the panel at the centre turns in above the pivot, and the one at the side out, radians. */
  readonly turnedIn: number;
  readonly turned: number;
}

function half(
  table: FoundationTable,
  { part, shoulder, pivot, turnedIn, turned }: Turning,
  { style, onShoulder, longer, corner, centre }: HalfChosen,
): HalfStyle {
  const fitted = fittedShoulder(table, { part, shoulder, style, onShoulder, corner, longer });
  const outwards = (p: Point): Point => turnedAbout(p, pivot, turned);
  const inwards = (p: Point): Point => turnedAbout(p, pivot, -turnedIn);
  const { slope } = fitted;
  const level = style.neckline === 'square' && part === 'front';
  const princess = style.princess[part] === 'neckline' ? corner : fitted.princess;
  const cornerAtCentre = inwards(corner);
  return {
    inner: outwards(fitted.inner),
    outer: outwards(fitted.outer),
    square: slope.atArmhole + Math.PI / 2 + turned,
    neckHeading: slope.atNeckline + Math.PI / 2 + turned,
    corner: cornerAtCentre,
    sideCorner: outwards(corner),
    centre: level ? point(centre.x, cornerAtCentre.y) : centre,
    atCentre: {
      inner: inwards(fitted.inner),
      outer: inwards(fitted.outer),
      square: slope.atNeckline + Math.PI / 2 - turnedIn,
    },
    princess: { centre: inwards(princess), side: outwards(princess) },
    turned,
    turnedIn,
  };
}
