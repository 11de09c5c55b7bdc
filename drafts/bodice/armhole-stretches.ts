import type { Solution } from '../../engine/constraints/solution.ts';
import type { Curve } from '../../engine/geometry/curve.ts';
import { edgeLength, edgeOf, lengthUpTo } from '../../engine/geometry/edge.ts';
import { edgeCrossings } from '../../engine/geometry/intersect.ts';
import { transformedCurve, turnedBy } from '../../engine/geometry/transform.ts';
import { heading } from '../../engine/geometry/vector.ts';
import type { Issue } from '../../engine/issue.ts';
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
  const upTo = strapLength(plan, solution, part);
  if (upTo === undefined) throw new Error(`The ${part} strap ends beyond its armhole.`);
  return armholeParts([upper, lower], [{ piece: `${part} strap`, edge: 'outer', upTo }, panelAlone], share);
}

/** How far down the armhole a strap goes, mm; undefined where its end passes the armhole by. */
function strapLength(plan: BodicePlan, solution: Solution, part: 'front' | 'back'): number | undefined {
  const armhole = edgeOf(
    'armhole',
    plan[part].armhole.map((name) => solvedCurve(solution, name)),
  );
  const { sideCorner, turned } = plan.lines[part];
  const seam = edgeCrossings(armhole, { through: sideCorner, heading: heading(turned) }).find(
    ({ along }) => along > 0,
  );
  return seam && lengthUpTo(armhole, seam);
}

/** What is wrong with straps that find no panel to be sewn to; nothing on whole shoulders. */
export function strapsBeyondArmhole(
  plan: BodicePlan,
  solution: Solution,
  strapWidth: number,
): readonly Issue[] {
  if (plan.lines.style.shoulder === 'whole') return [];
  return (['front', 'back'] as const)
    .filter((part) => strapLength(plan, solution, part) === undefined)
    .map((part) => ({
      code: 'strap-beyond-armhole',
      severity: 'error',
      path: 'strapWidth',
      value: strapWidth,
      message: `The end of the ${part} strap would pass the armhole by and meet no panel. Choose a narrower strap (strapWidth), one nearer to the neck (strapPosition), or a deeper neckline.`,
    }));
}
