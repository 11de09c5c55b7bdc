import type { Solution } from '../../engine/constraints/solution.ts';
import type { Curve } from '../../engine/geometry/curve.ts';
import { edgeLength, edgeOf, lengthUpTo } from '../../engine/geometry/edge.ts';
import { edgeCrossings } from '../../engine/geometry/intersect.ts';
import { transformedCurve, turnedBy } from '../../engine/geometry/transform.ts';
import { heading } from '../../engine/geometry/vector.ts';
import { solvedCurve } from '../piece-edges.ts';
import { type ArmholeHalf, armholeParts } from './armhole-parts.ts';
import type { BodicePlan } from './bodice.ts';

/** Cuts both halves of the armhole from piece to piece, and at their notches, `share` of their height up. */
export function cutArmholes(
  plan: BodicePlan,
  solution: Solution,
  share: number,
): { readonly front: ArmholeHalf; readonly back: ArmholeHalf } {
  return { front: half(plan, solution, 'front', share), back: half(plan, solution, 'back', share) };
}

function half(plan: BodicePlan, solution: Solution, part: 'front' | 'back', share: number): ArmholeHalf {
  const { foundation, lines } = plan;
  const { style } = lines;
  const [upper, lower] = plan[part].armhole.map((name) => solvedCurve(solution, name)) as [Curve, Curve];
  const panel = `side ${part}`;
  if (style.princess[part] === 'armhole') {
    const pivot = part === 'front' ? foundation.front.pivot : foundation.back.blade;
    const together = lines[part].turned + lines[part].turnedIn;
    const laid = transformedCurve(upper, turnedBy(pivot, together));
    const length = edgeLength(edgeOf('upper', [laid]));
    const centre = style.front === 'parted' && part === 'front' ? 'upper centre front' : `centre ${part}`;
    return armholeParts(
      [laid, lower],
      [
        { piece: centre, edge: 'armhole', upTo: length, own: turnedBy(pivot, -together) },
        { piece: panel, edge: 'armhole', upTo: Number.POSITIVE_INFINITY },
      ],
      share,
    );
  }
  const panelAlone = { piece: panel, edge: 'armhole', upTo: Number.POSITIVE_INFINITY } as const;
  if (style.shoulder === 'whole') return armholeParts([upper, lower], [panelAlone], share);
  const edge = edgeOf('armhole', [upper, lower]);
  const { sideCorner, turned } = lines[part];
  const seam = edgeCrossings(edge, { through: sideCorner, heading: heading(turned) }).find(
    ({ along }) => along > 0,
  );
  if (!seam) throw new Error(`The ${part} strap does not reach its panel.`);
  return armholeParts(
    [upper, lower],
    [{ piece: `${part} strap`, edge: 'outer', upTo: lengthUpTo(edge, seam) }, panelAlone],
    share,
  );
}
