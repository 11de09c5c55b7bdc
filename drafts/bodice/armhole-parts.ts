import type { Curve } from '../../engine/geometry/curve.ts';
import { edgeOf, lengthUpTo, splitEdgeAt } from '../../engine/geometry/edge.ts';
import { edgeCrossings, levelAt } from '../../engine/geometry/intersect.ts';
import type { Point } from '../../engine/geometry/point.ts';
import { type Transform, transformedCurve } from '../../engine/geometry/transform.ts';
import type { EdgeRef } from '../../engine/pattern/seam.ts';
import { bodiceRules as rules } from './rules.ts';

/** A stretch of one half of the armhole that lies on one piece, up to so far from the shoulder (mm). */
export interface ArmholeStretch {
  readonly piece: string;
  /** What its edges are called: `armhole`, or `outer` on a strap. */
  readonly edge: 'armhole' | 'outer';
  readonly upTo: number;
  /** From the drawing of the armhole to the piece's own, where the piece lies otherwise. */
  readonly own?: Transform;
}

/** An edge of the armhole: sewn flat to a sleeve, or gathered or eased to it. */
export interface ArmholeEdge extends EdgeRef {
  readonly curves: readonly Curve[];
  readonly flat: boolean;
}

/** One half of the armhole, from the shoulder to the underarm. */
export interface ArmholeHalf {
  /** The whole of it, laid flat as it is sewn together. */
  readonly laid: readonly Curve[];
  readonly edges: readonly ArmholeEdge[];
  /** Where the notch stands: at the start of this edge. */
  readonly notched: EdgeRef;
  /** From the shoulder to the notch, mm. */
  readonly toNotch: number;
}

/**
 * Cuts one half of the armhole, drawn from the shoulder to the underarm, into edges: where it passes from piece to
 * piece, and at the notch, `share` of its height above the underarm, beyond which a sleeve is gathered or eased in.
 */
export function armholeParts(
  curves: readonly Curve[],
  stretches: readonly ArmholeStretch[],
  share: number,
): ArmholeHalf {
  const whole = edgeOf('armhole', curves);
  const notch = notchPlace(curves, stretches, share);
  const edges: ArmholeEdge[] = [];
  let from = 0;
  let rest = whole;
  for (const { piece, edge, upTo, own = (p: Point): Point => p } of stretches) {
    const cut = (to: number, name: string, flat: boolean): void => {
      const [before, after] =
        to === Number.POSITIVE_INFINITY ? [rest, rest] : splitEdgeAt(rest, to - from, ['before', 'after']);
      edges.push({
        piece,
        edge: name,
        curves: before.curves.map((curve) => transformedCurve(curve, own)),
        flat,
      });
      [from, rest] = [to, after];
    };
    const [upper, lower] =
      edge === 'armhole' ? ['armhole upper', 'armhole underarm'] : ['outer', 'outer underarm'];
    if (notch > from && notch < upTo) cut(notch, upper, false);
    cut(upTo, notch < upTo ? lower : upper, notch < upTo);
  }
  const notched = edges.find(({ flat }) => flat);
  if (!notched) throw new Error('An armhole has no notch.');
  return { laid: curves, edges, notched: { piece: notched.piece, edge: notched.edge }, toNotch: notch };
}

/** How far from the shoulder the notch stands, mm; on a seam that crosses the armhole where it would stand beside it. */
function notchPlace(curves: readonly Curve[], stretches: readonly ArmholeStretch[], share: number): number {
  const whole = edgeOf('armhole', curves);
  const top = curves[0]?.from.y ?? 0;
  const foot = curves.at(-1)?.to.y ?? 0;
  const [crossing] = edgeCrossings(whole, levelAt(foot - share * (foot - top)));
  if (!crossing) throw new Error('An armhole does not reach from the shoulder to the underarm.');
  const at = lengthUpTo(whole, crossing);
  const seam = stretches.slice(0, -1).find(({ upTo }) => Math.abs(upTo - at) < rules.notchClear.value);
  return seam?.upTo ?? at;
}

/** The edges of one piece, in the order of its outline. */
export const edgesOn = ({ edges }: ArmholeHalf, piece: string): readonly ArmholeEdge[] =>
  edges.filter((edge) => edge.piece === piece);
