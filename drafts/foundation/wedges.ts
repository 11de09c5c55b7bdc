import { distance, type Point } from '../../engine/geometry/point.ts';
import type { Angle } from '../../engine/pattern/quantity.ts';
import { figure } from '../../engine/text/figure.ts';
import type { FoundationTable } from './table.ts';

/*
 * A gaping edge is pinned out in a wedge that ends at the bust point, behind at the shoulder blade. Closed on paper,
 * its cloth goes into the princess seam, which takes up that much more there. Pivoting a dart, common practice, no
 * source.
 */

const wedges = {
  'wedge from neckline': { endsAt: 'bust point', takesUp: 'bust dart', again: 'front' },
  'wedge from armhole': { endsAt: 'bust point', takesUp: 'bust dart', again: 'front' },
  'wedge from back neckline': { endsAt: 'shoulder blade', takesUp: 'back princess seam', again: 'back' },
  'wedge from back armhole': { endsAt: 'shoulder blade', takesUp: 'back princess seam', again: 'back' },
} as const;

type Wedge = keyof typeof wedges;

/** Angle (radians) about `pivot` that brings a neckline corner above it nearer to the centre by what was pinned. */
export function necklineWedge(
  table: FoundationTable,
  kind: Extract<Wedge, `${string}neckline`>,
  pivot: Point,
  corner: Point,
): number {
  const pinned = table.fitted(kind);
  if (pinned.value === 0) return 0;
  const away = table.measured(
    `From the ${wedges[kind].endsAt} to the neckline`,
    'on the drawing',
    distance(pivot, corner),
    pivot,
    corner,
  );
  const across = table.measured('The same, across', 'on the drawing', corner.x - pivot.x, pivot, corner);
  return checked(
    table,
    kind,
    table.angle`Fitting, ${kind}: arc sine of (${across} / ${away}) - arc sine of ((${across} - ${pinned}) / ${away}); pinned out, to nothing at the ${wedges[kind].endsAt}, and taken up by the ${wedges[kind].takesUp} [pivoting a dart, common practice, no source]`,
  );
}

/** Angle (radians) about `pivot` that brings a place on the armhole nearer to the underarm by what was pinned. */
export function armholeWedge(
  table: FoundationTable,
  kind: Extract<Wedge, `${string}armhole`>,
  pivot: Point,
  onArmhole: Point,
  underarm: Point,
): number {
  const pinned = table.fitted(kind);
  if (pinned.value === 0) return 0;
  const { endsAt, takesUp } = wedges[kind];
  const a = table.measured(
    `From the ${endsAt} to the armhole`,
    'on the drawing',
    distance(pivot, onArmhole),
    pivot,
  );
  const b = table.measured(
    `From the ${endsAt} to the underarm`,
    'on the drawing',
    distance(pivot, underarm),
    pivot,
    underarm,
  );
  const chord = table.measured(
    'From there to the armhole',
    'on the drawing',
    distance(onArmhole, underarm),
    underarm,
  );
  return checked(
    table,
    kind,
    table.angle`Fitting, ${kind}: arc cosine of ((square of ${a} + square of ${b} - square of ${chord}) / (2 x ${a} x ${b})) - arc cosine of ((square of ${a} + square of ${b} - square of (${chord} - ${pinned})) / (2 x ${a} x ${b})); pinned out, to nothing at the ${endsAt}, and taken up by the ${takesUp} [pivoting a dart, common practice, no source]`,
  );
}

function checked(table: FoundationTable, kind: Wedge, { value }: Angle): number {
  if (Number.isFinite(value)) return value;
  const mm = table.fitted(kind).value;
  table.refuse({
    code: 'fitting-too-much',
    severity: 'error',
    path: 'fitting',
    value: mm,
    message: `${figure(mm)} mm is more than there is to give for a ${kind}. Pin out less, and measure the ${wedges[kind].again} again.`,
  });
  return 0;
}
