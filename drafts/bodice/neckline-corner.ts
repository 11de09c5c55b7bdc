import { type Point, point, turnedAbout } from '../../engine/geometry/point.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import type { Foundation } from '../foundation/foundation.ts';
import { alongShoulder } from '../foundation/neck-and-shoulder.ts';
import { bodiceRules as rules } from './rules.ts';
import type { BodiceTable, PlacesOnShoulder, Style } from './style.ts';

/** The corner of the front neckline, dart open: as wide as was chosen, where the lines beside it leave it room. */
export function necklineCorner(
  table: BodiceTable,
  foundation: Foundation,
  style: Style,
  onShoulder: PlacesOnShoulder,
): Point {
  const { choice } = table;
  const { front, levels } = foundation;
  const height = table.mm`Front neckline above the bust level, as chosen: (1 - ${depthOf(table, foundation, style)}) x ${front.neckHeight}`;
  const chosen = table.mm`Front neckline half width, as chosen: ${choice.necklineWidth} x bust point ${front.bustPoint}`;
  const above = style.shoulder === 'strap' ? aboveUnderarm(table, foundation, height) : height;
  const beside = besideArmhole(table, foundation, style, { half: chosen, above }, onShoulder);
  const half = besidePrincess(table, foundation, style, { half: beside, above }, onShoulder);
  const bust = levels.bust.value;
  const corner = table.point('front', 'corner of the front neckline', point(half.value, bust - above.value));
  const asked = point(chosen.value, bust - height.value);
  table.dimension('front', chosen, point(0, asked.y), asked);
  table.dimension('front', height, asked, point(asked.x, bust));
  table.dimension('front', half, point(0, corner.y), corner);
  table.dimension('front', above, corner, point(corner.x, bust));
  return corner;
}

/**
 * How far down from side neck to bust point the neckline is asked for. On straps without sleeves the raised underarm is what
 * it ends above: deep enough that it does so in every size and cup, not in the fuller ones only.
 */
function depthOf({ choice }: BodiceTable, { sleeves }: Foundation, { shoulder }: Style) {
  if (choice.necklineDepth !== 'auto') return choice.necklineDepth;
  return shoulder === 'strap' && !sleeves ? rules.deepestNeckline : rules.necklineDepth;
}

/** A corner of the front neckline: how far from the centre, and how far above the bust level. */
interface NecklineCorner {
  readonly half: Mm;
  readonly above: Mm;
}

/**
 * A strap must meet its panel above the underarm as the body has it, or no armhole could run from one to the other
 * without a shelf.
 */
function aboveUnderarm(table: BodiceTable, { front }: Foundation, height: Mm): Mm {
  const { pivot, turned, side } = front;
  const underarm = turnedAbout(side.underarm, pivot, -turned);
  const open = table.measured(
    'Underarm above the bust level, dart open',
    'the underarm turned back by the dart about the bust point',
    pivot.y - underarm.y,
    front.dart,
    side.underarm,
  );
  table.dimension('front', open, underarm, point(underarm.x, pivot.y));
  return table.mm`Front neckline above the bust level: as chosen ${height}, at least underarm ${open} + ${rules.aboveUnderarm}`;
}

/** Inside the fold of the arm the armhole needs its room, and a strap, or what a whole shoulder leaves of the panel, its own. */
function besideArmhole(
  table: BodiceTable,
  { front }: Foundation,
  style: Style,
  { half, above }: NecklineCorner,
  onShoulder: PlacesOnShoulder,
): Mm {
  const { choice } = table;
  const fold = table.measured('Arm fold, from centre front', 'on the drawing', front.across.x, front.across);
  table.dimension('front', fold, point(0, front.across.y), front.across);
  if (style.shoulder === 'whole')
    return style.princess.front === 'neckline'
      ? table.mm`Front neckline inside the arm fold: half width ${half}, at most arm fold ${fold} - strap width ${choice.strapWidth}`
      : half;
  const outer = table.measured(
    'Outer edge of the strap',
    'from the side neck',
    onShoulder.outer,
    choice.strapWidth,
  );
  const { shoulder } = front;
  table.dimension('front', outer, shoulder.sideNeck, alongShoulder(shoulder, outer.value));
  const inside = table.mm`Armhole inside the arm fold, where the strap begins inside the shoulder point: ${rules.armholeInset} of (shoulder length ${table.size.shoulderLength} - ${outer})`;
  const foldAbove = table.measured(
    'Arm fold above the bust level',
    'on the drawing',
    front.pivot.y - front.across.y,
    front.across,
  );
  table.dimension('front', foldAbove, front.across, point(front.across.x, front.pivot.y));
  const turnsOut = table.mm`Armhole turns out below the arm fold, at the neckline: ${rules.strapBeyondFold} of (arm fold ${foldAbove} - neckline ${above}), at least 0, at most ${rules.strapBeyondFoldLimit}`;
  return table.mm`Front neckline inside the arm fold: half width ${half}, at most arm fold ${fold} - armhole inside it ${inside} - strap width ${choice.strapWidth} + what it turns out ${turnsOut}`;
}

/** A princess line that runs on past the neckline keeps clear of its corner; one that begins there must not lean far out. */
function besidePrincess(
  table: BodiceTable,
  { front }: Foundation,
  style: Style,
  { half, above }: NecklineCorner,
  onShoulder: PlacesOnShoulder,
): Mm {
  if (style.front === 'gathered') return half;
  const { pivot, shoulder, across } = front;
  const princess = table.measured('Princess line at bust level', 'from centre front', pivot.x, pivot);
  table.dimension('front', princess, point(0, pivot.y), pivot);
  switch (style.princess.front) {
    case 'neckline':
      return table.mm`Front neckline half width: ${half}, at most princess line ${princess} + ${above} x tangent of ${rules.princessSlant}`;
    case 'shoulder': {
      const top = alongShoulder(shoulder, onShoulder.princess);
      const share = above.value / (pivot.y - top.y);
      const line = table.measured(
        'Princess line at the neckline',
        'from centre front',
        pivot.x + share * (top.x - pivot.x),
        pivot,
        shoulder.sideNeck,
      );
      return table.mm`Front neckline half width: ${half}, at most princess line there ${line} - ${rules.besidePrincess}`;
    }
    case 'armhole': {
      const out = table.measured(
        'Arm fold beyond the princess line',
        'on the drawing',
        across.x - pivot.x,
        across,
        pivot,
      );
      const up = table.measured(
        'Rise of the princess line to the arm fold',
        'on the drawing',
        pivot.y - across.y,
        across,
        pivot,
      );
      const share = table.ratio`Neckline on the way up to the arm fold: ${above} / ${up}, at most 1`;
      return table.mm`Front neckline half width: ${half}, at most princess line ${princess} + ${out} x square of ${share} - ${rules.besidePrincess}; for it curves on its way to the arm fold`;
    }
  }
}
