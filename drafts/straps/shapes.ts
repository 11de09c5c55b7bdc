import { distance, moved } from '../../engine/geometry/point.ts';
import { heading, scaled } from '../../engine/geometry/vector.ts';
import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import type { StrapPath } from '../bodice/straps-path.ts';

/** A strap's edge may be longer or shorter than its path over the shoulder by this, mm. */
const PATH = 2;

/** Where a strap lies on one panel, and how far the shoulder falls there (radians). */
interface OnPanel {
  readonly strap: StrapPath;
  readonly slope: number;
}

/** Each edge of the strap is as long as its path, from panel to panel over the shoulder. */
export function strapShapes(front: OnPanel, back: OnPanel, width: number): readonly ShapeClaim[] {
  const inner = front.strap.length + back.strap.length;
  const outer = outerPath(front, width) + outerPath(back, width);
  const near = (path: number) => ({ low: path - PATH, high: path + PATH });
  const outside = 'the strap is cut straight, and its path over the sloping shoulder is not';
  return [
    {
      kind: 'length',
      name: 'strap, inner edge on its path',
      parts: [{ kind: 'line', piece: 'strap', line: 'fold', times: 1 }],
      ...near(inner),
      outside,
    },
    {
      kind: 'length',
      name: 'strap, outer edge on its path',
      parts: [{ kind: 'edge', piece: 'strap', edge: 'outer', times: 1 }],
      ...near(outer),
      outside,
    },
  ];
}

/** From the strap's outer corner on a panel to the shoulder, where its outer edge crosses it, mm. */
function outerPath({ strap: { inner, outer, down, length }, slope }: OnPanel, width: number): number {
  const crossing = moved(moved(inner, scaled(down, -length)), scaled(heading(slope), width));
  return distance(outer, crossing);
}
