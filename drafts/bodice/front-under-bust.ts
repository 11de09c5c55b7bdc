import { type SketchBuilder, xOf } from '../../engine/constraints/sketch-builder.ts';
import { isLong } from '../../engine/constraints/statements.ts';
import { distance, point } from '../../engine/geometry/point.ts';
import type { Foundation } from '../foundation/foundation.ts';
import { keepNear } from '../keep-near.ts';
import type { SideLine } from './side-lines.ts';
import type { Style } from './style.ts';

/**
 * The princess line where the under-bust seam meets it, on both panels. A gathered insert ends where the foundation has it;
 * on a plain front the line may pass to either side, if the panels keep their width from the centre to the side seam.
 */
export function planUnderBust(
  sketch: SketchBuilder,
  { underBust, side: seam }: Foundation['front'],
  { front }: Style,
  sideLine: SideLine,
): { readonly centre: string; readonly side: string } {
  const free = front === 'gathered' ? 'none' : 'x';
  const centre = sketch.point('centre front under bust', underBust.centre, free);
  const side = sketch.point('side front under bust', underBust.side, free);
  if (front === 'gathered') return { centre, side };
  const name = 'front princess under the bust';
  keepNear(sketch, `${name} near its place`, [xOf(centre)], underBust.centre.x, 'loose');
  const fold = sketch.fixed('centre front fold under bust', point(0, underBust.centre.y));
  const end = sideLine.underBust ?? sketch.fixed('front side under bust', seam.underBust);
  const across = [
    sketch.line('centre front across under the bust', fold, centre),
    sketch.line('side front across under the bust', side, end),
  ];
  const width = underBust.centre.x + distance(underBust.side, seam.underBust);
  sketch.relation(isLong(`${name} takes its share`, across, width));
  return { centre, side };
}
