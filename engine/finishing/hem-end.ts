import { moved, type Point } from '../geometry/point.ts';
import { dot, outward, plus, scaled, type Vector } from '../geometry/vector.ts';
import { trimmedAcross } from './edge-allowance.ts';
import type { Across, Through, TurnedCorner } from './turned-corner.ts';

/**
 * Turns the corner of a seam with a hem: the seam goes on through the hem's allowance with the heading `beyond`
 * (`hemSide`), its own allowance beside it, as far as the edge of the cloth, which runs through. Nothing is sewn across
 * that edge, so it needs no square end.
 */
export function hemEnd(at: Point, through: Through, across: Across, beyond: Vector): TurnedCorner {
  const side = outward(beyond);
  const normal = dot(outward(through.along), through.outward) > 0 ? side : scaled(side, -1);
  const { width } = through.edge;
  const beside = moved(at, scaled(normal, width));
  const trimmed = trimmedAcross(across.edge, beside, { along: beyond, outward: normal });
  const down =
    dot(through.along, outward(across.along)) > 0 ? outward(across.along) : scaled(outward(across.along), -1);
  const straight = (across.edge.width - width * dot(normal, down)) / dot(beyond, down);
  const bent = plus(through.outward, normal);
  // Bent inward, the two strips leave a gap that their edges close; bent outward, they cross, and the loop is cut away.
  const corner =
    dot(beyond, through.outward) < 0
      ? moved(at, scaled(bent, width / (1 + dot(through.outward, normal))))
      : beside;
  return {
    before: through.edge.parallel,
    between: [corner, moved(beside, scaled(beyond, trimmed?.along ?? straight))],
    after: trimmed?.rest ?? across.edge.parallel,
  };
}
