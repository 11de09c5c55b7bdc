import { type Point, point, turnedAbout } from '../../engine/geometry/point.ts';
import type { Angle, Mm } from '../../engine/pattern/quantity.ts';
import { figure } from '../../engine/text/figure.ts';
import { straight } from '../piece-edges.ts';
import { type Behind, drawAcrossFront } from './across-front.ts';
import { bustDart, heldIn } from './bust-dart.ts';
import type { Levels } from './levels.ts';
import { drawFrontShoulder, type Shoulder } from './neck-and-shoulder.ts';
import { foundationRules as rules } from './rules.ts';
import { drawSide, type SideSeam } from './side-seam.ts';
import type { FoundationTable } from './table.ts';
import type { Widths } from './take-in.ts';
import { drawUnderTheBust, type FrontLevels } from './under-the-bust.ts';
import { armholeWedge } from './wedges.ts';

/**
 * The front of the foundation, its bust dart still open above the bust level. Centre front is x = 0; levels are those
 * of the back.
 */
export interface FrontFoundation {
  readonly shoulder: Shoulder;
  /** The bust point's distance from centre front, and the side neck's height above it. */
  readonly bustPoint: Mm;
  readonly neckHeight: Mm;
  /** Where the princess line crosses the bust level: the pivot of the bust dart. */
  readonly pivot: Point;
  /** The bust dart. */
  readonly dart: Angle;
  /** How far all above the bust level turns to the side once the dart is closed into the princess seam, radians. */
  readonly turned: number;
  /** A place above the bust level (dart open) as it lies once the dart is closed. */
  readonly closed: (p: Point) => Point;
  /** The armhole's innermost place, between the folds of the arms, dart open. */
  readonly across: Point;
  readonly side: SideSeam;
  /** The princess seam at under-bust and waist level: centre front panel, then side front. */
  readonly underBust: { readonly centre: Point; readonly side: Point };
  readonly waist: { readonly centre: Point; readonly side: Point };
  /** The waist at the centre front. */
  readonly centreWaist: Point;
}

/** Draws the front: neck, shoulder, across front, bust dart and side seam, and where its princess seam runs. */
export function drawFront(
  table: FoundationTable,
  behind: Behind,
  levels: Levels,
  widths: Widths,
  held: boolean,
): FrontFoundation {
  const { size, choice } = table;
  const bustPoint = table.mm`Bust point from centre front: bust point width ${size.bustPointWidth} / 2`;
  const princess = table.mm`Front princess line at bust level: bust point ${bustPoint} + ${choice.princessOffset}`;
  const pivot = point(princess.value, levels.bust.value);
  table.point('front', 'bust point', point(bustPoint.value, levels.bust.value));
  table.point('front', 'princess line at bust level', pivot);
  const bustAt = (x: number): Point => point(x, levels.bust.value);
  table.dimension('front', bustPoint, bustAt(0), bustAt(bustPoint.value));
  table.dimension('front', princess, bustAt(0), pivot);
  table.dimension('front', choice.princessOffset, bustAt(bustPoint.value), pivot);
  const shoulder = drawFrontShoulder(table, behind.neck, levels.bust, bustPoint);

  const across = drawAcrossFront(table, levels, behind, shoulder);
  const dart = bustDart(table, behind.neck, widths.front, princess, pivot);

  const side = drawSide(table, 'front', widths.front, levels, widths);
  const wedge = armholeWedge(
    table,
    'wedge from armhole',
    pivot,
    turnedAbout(across, pivot, dart.value),
    side.underarm,
  );
  const closes = held ? heldIn(table, dart, pivot, side.bust) : dart;
  const turned = closes.value + wedge;
  table.say`Dart into the princess seam: cut the princess line and close the dart; all above the bust level turns ${closes} to the side about the bust level; pivoting a dart [common practice, no source]`;

  const atUnderBust = princessEdges(table, princess, widths, 'underBust');
  const atWaist = princessEdges(table, princess, widths, 'waist');
  const lower = drawUnderTheBust(table, levels);
  const sloped = slopedTo(table, widths, atUnderBust, levels, lower);
  const underBust = placeEdges(table, 'under the bust', sloped, lower.underBust);
  const waist = placeEdges(table, 'at the waist', atWaist, lower.waist);
  table.dimension('front', widths.frontPrincess.waist, waist.centre, waist.side);
  return {
    shoulder,
    bustPoint,
    neckHeight: shoulder.neckHeight,
    pivot,
    dart,
    turned,
    closed: (p) => turnedAbout(p, pivot, turned),
    across,
    side,
    underBust,
    waist,
    centreWaist: table.point('front', 'centre front at waist', point(0, lower.waistAtCentre.value)),
  };
}

/** How far from the centre front the two edges of the princess seam lie. */
interface PrincessEdges {
  readonly centre: Mm;
  readonly side: Mm;
}

/** The two edges of the front princess seam at a level: the centre front panel gives its part of what it takes in. */
function princessEdges(
  table: FoundationTable,
  princess: Mm,
  widths: Widths,
  at: 'underBust' | 'waist',
): PrincessEdges {
  const where = at === 'waist' ? 'at the waist' : 'under the bust';
  const drafted = widths.drafted.frontPrincess[at];
  const now = widths.frontPrincess[at];
  const centre =
    now === drafted
      ? table.mm`Centre front panel ${where}: princess line ${princess} - ${rules.centreFrontPart} of what the seam takes in ${drafted}`
      : table.mm`Centre front panel ${where}: princess line ${princess} - ${rules.centreFrontPart} of what the seam takes in ${drafted} - (after the fitting ${now} - before ${drafted}) / 2`;
  const side = table.mm`Side front panel ${where}: centre front panel ${centre} + what the seam takes in ${now}; from the centre front too`;
  return { centre, side };
}

/** The edges where the under-bust seam lies lower than its level: the side front is as wide as there, along the slope to the side seam. */
function slopedTo(
  table: FoundationTable,
  widths: Widths,
  { centre, side: level }: PrincessEdges,
  levels: Levels,
  lower: FrontLevels,
): PrincessEdges {
  if (lower.underBust.value === levels.underBust.value) return { centre, side: level };
  const { bust, underBust, sideWaist } = levels;
  const seam = table.mm`Front side seam at the under-bust level: front width ${widths.front} - side seam ${widths.sideAtWaist} x (under-bust level ${underBust} - bust level ${bust}) / (waist level at the side seam ${sideWaist} - bust level ${bust}) - what it gives in ${widths.sideUnderBust}`;
  const [wide, down] = [seam.value - level.value, lower.underBust.value - underBust.value];
  if (wide <= down) {
    refuseNarrow(table, wide, down);
    return { centre, side: level };
  }
  return {
    centre,
    side: table.mm`Side front panel, lower down: side seam ${seam} - root of (square of (side seam ${seam} - panel at the level ${level}) - square of (front under-bust level ${lower.underBust} - under-bust level ${underBust}))`,
  };
}

/** Refuses a side front that is no wider (mm) than its under-bust seam lies lower: no slope is so steep. */
const refuseNarrow = (table: FoundationTable, wide: number, down: number): void =>
  table.refuse({
    code: 'measurements-contradict',
    severity: 'error',
    path: 'underBustGirth',
    message: `Under the bust the side front panel would be only ${figure(wide)} mm wide, and its seam lies ${figure(down)} mm lower than the under-bust level. Measure again: under-bust girth (larger would help), bust girth (smaller would help), bust point width (smaller would help).`,
    value: wide,
    limits: { min: down, unit: 'mm' },
  });

/** Places the edges at a level of the front, and draws the level to them. */
function placeEdges(
  table: FoundationTable,
  where: string,
  { centre, side }: PrincessEdges,
  { value: level }: Mm,
): { readonly centre: Point; readonly side: Point } {
  const edges = { centre: point(centre.value, level), side: point(side.value, level) };
  table.point('front', `centre front panel ${where}`, edges.centre);
  table.point('front', `side front panel ${where}`, edges.side);
  table.line('front', `level ${where}`, straight(point(0, level), edges.side));
  table.dimension('front', centre, point(0, level), edges.centre);
  table.dimension('front', side, point(0, level), edges.side);
  return edges;
}
