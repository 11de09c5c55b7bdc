import { type Point, point } from '../../engine/geometry/point.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import type { Foundation } from '../foundation/foundation.ts';
import { alongShoulder } from '../foundation/neck-and-shoulder.ts';
import { straight } from '../piece-edges.ts';
import { necklineCorner } from './neckline-corner.ts';
import { bodiceRules as rules } from './rules.ts';
import type { BodiceTable, PlacesOnShoulder, Style } from './style.ts';
import { type Neckline, type StyleLines, styleLines } from './style-lines.ts';

/** Where along the shoulder the style lines cross it: the same in front and behind. */
function placesOnShoulder(table: BodiceTable, foundation: Foundation, style: Style): PlacesOnShoulder {
  const { size, choice } = table;
  if (style.shoulder === 'strap') {
    const inner = table.mm`Strap from the side neck: ${choice.strapPosition}, at most shoulder length ${size.shoulderLength} - strap width ${choice.strapWidth}`;
    const outer = table.mm`Strap ends from the side neck: ${inner} + strap width ${choice.strapWidth}`;
    sayAlongShoulder(table, foundation, [inner, outer]);
    const along = (mm: number): Point => alongShoulder(foundation.front.shoulder, mm);
    table.dimension('front', choice.strapWidth, along(inner.value), along(outer.value));
    return { inner: inner.value, princess: inner.value, outer: outer.value };
  }
  const inner = table.mm`Neckline at the shoulder, from the side neck: ${choice.strapPosition}, at most shoulder length ${size.shoulderLength} - strap width ${choice.strapWidth}`;
  const princess = table.mm`Princess line at the shoulder, from the side neck: (neckline at the shoulder ${inner} + shoulder length ${size.shoulderLength}) / 2`;
  sayAlongShoulder(table, foundation, [inner, princess]);
  return { inner: inner.value, princess: princess.value, outer: size.shoulderLength.value };
}

/** Where these lie on the shoulder, from the side neck. */
function sayAlongShoulder(table: BodiceTable, { front, back }: Foundation, places: readonly Mm[]): void {
  for (const place of places)
    for (const [on, { shoulder }] of [
      ['front', front],
      ['back', back],
    ] as const)
      table.dimension(on, place, shoulder.sideNeck, alongShoulder(shoulder, place.value));
}

/** Draws neckline, shoulder and the beginning of the princess line on the foundation, front and back. */
export function drawStyleLines(table: BodiceTable, foundation: Foundation, style: Style): StyleLines {
  table.heading('Style lines');
  const onShoulder = placesOnShoulder(table, foundation, style);
  const necklines = {
    back: backNeckline(table, foundation, style, onShoulder),
    front: frontNeckline(table, foundation, style, onShoulder),
  };
  return styleLines(table, foundation, style, onShoulder, necklines);
}

function backNeckline(
  table: BodiceTable,
  foundation: Foundation,
  style: Style,
  onShoulder: PlacesOnShoulder,
): Neckline {
  if (style.shoulder === 'strap') return behindStraps(table, foundation, style, onShoulder);
  const { back } = foundation;
  const depth = table.mm`Back neckline below the back neck point: ${table.choice.backNecklineDepth}`;
  const centre = backCentre(table, foundation, depth.value);
  table.dimension('back', depth, point(centre.x, 0), centre);
  return { corner: alongShoulder(back.shoulder, onShoulder.inner), centre };
}

/** Places the back neckline on the centre back seam, so far (mm) below the back neck point. */
const backCentre = (table: BodiceTable, { back }: Foundation, depth: number): Point =>
  table.point('back', 'back neckline at the centre', point(back.centreBackAt(depth), depth));

/**
 * The back neckline between straps: its corner is where the inner edge of the strap meets the panel, leaning outwards on its
 * way down. It lies low enough for the strap to have a length behind the shoulder, and inside the underarm.
 */
function behindStraps(
  table: BodiceTable,
  foundation: Foundation,
  style: Style,
  onShoulder: PlacesOnShoulder,
): Neckline {
  const { choice } = table;
  const { back } = foundation;
  const { sideNeck } = back.shoulder;
  const inner = alongShoulder(back.shoulder, onShoulder.inner);
  const outer = alongShoulder(back.shoulder, onShoulder.outer);
  const rise =
    style.backNeckline === 'pointed'
      ? table.mm`Back neckline rises from its point to the strap: ${rules.backNecklinePoint} of ${choice.backNecklineDepth}`
      : table.mm`Back neckline rises from the centre to the strap: ${rules.backNecklineRise}`;
  const armholeAt = table.measured(
    'Armhole at the shoulder, below the back neck point',
    'on the drawing',
    outer.y,
    sideNeck,
  );
  const depth = table.mm`Back neckline below the back neck point: as chosen ${choice.backNecklineDepth}, at least armhole at the shoulder ${armholeAt} + ${rules.strapFalls} + its rise ${rise}`;
  const centre = backCentre(table, foundation, depth.value);
  const level = depth.value - rise.value;
  const down = table.measured(
    'Strap end below the shoulder',
    'down the back',
    level - inner.y,
    rise,
    sideNeck,
  );
  const at = table.measured('Strap at the shoulder', 'from the centre back', inner.x, sideNeck);
  const { underarm } = back.side;
  const most = table.measured('Underarm, from the centre back', 'on the drawing', underarm.x, underarm);
  const out = table.mm`Back neckline corner from the centre back: strap at the shoulder ${at} + ${rules.backStrapLean} of its way down ${down}, at most underarm ${most} - ${rules.strapInsideUnderarm} - strap width ${choice.strapWidth}`;
  const corner = table.point('back', 'corner of the back neckline', point(out.value, level));
  table.dimension('back', armholeAt, point(outer.x, 0), outer);
  table.dimension('back', depth, point(centre.x, 0), centre);
  table.dimension('back', rise, point(corner.x, depth.value), corner);
  table.dimension('back', down, inner, point(inner.x, corner.y));
  table.dimension('back', at, point(0, inner.y), inner);
  table.dimension('back', most, point(0, underarm.y), underarm);
  table.dimension('back', out, point(0, corner.y), corner);
  return { corner, centre };
}

function frontNeckline(
  table: BodiceTable,
  foundation: Foundation,
  style: Style,
  onShoulder: PlacesOnShoulder,
): Neckline {
  const corner = necklineCorner(table, foundation, style, onShoulder);
  const lower = belowCorner(table, style, corner, foundation.front.pivot.y);
  const centre = table.point('front', 'front neckline at the centre', point(0, lower));
  table.line('front', 'level of the neckline corner', straight(point(0, corner.y), corner));
  return { corner, centre };
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
  const half = table.measured('Half the neckline', 'from centre front to its corner', corner.x, corner);
  const above = table.measured(
    'Neckline corner above the bust level',
    'on the drawing',
    bustLevel - corner.y,
    corner,
  );
  const drop = table.mm`Front neckline lower at the centre: ${share} of half width ${half}, at most corner above the bust level ${above} - ${rules.aboveBust}, at least 0`;
  table.dimension('front', half, point(0, corner.y), corner);
  table.dimension('front', above, corner, point(corner.x, bustLevel));
  table.dimension('front', drop, point(0, corner.y), point(0, corner.y + drop.value));
  return corner.y + drop.value;
}
