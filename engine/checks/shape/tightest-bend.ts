import type { Curve, Edge } from '../../geometry/curve.ts';
import { curvatureAt, curvatureSlopeAt } from '../../geometry/evaluate.ts';
import { placeOfGreatest } from '../../geometry/greatest.ts';
import { joints } from '../../geometry/inflections.ts';
import { distance } from '../../geometry/point.ts';
import { CORNER, FLATNESS } from '../../geometry/tolerance.ts';
import { laidOut } from './chain.ts';
import type { Measured, MeasureOf } from './measured.ts';

/** Looks along each curve before its tightest place is narrowed down. */
const LOOKS = 32;

/** The least radius of a line laid out flat, mm. */
export const tightestBend = ({ of }: MeasureOf<'tightest bend'>, { tape }: Measured): number | undefined => {
  const line = laidOut(of, tape);
  return line && leastRadiusOf(line);
};

/**
 * The least radius of an edge, mm: 0 where it has a corner that would be seen, infinite where it is straight. Slivers, such
 * as the digits of a file leave of the next curve where a stretch ends at a joint, do not count.
 */
export function leastRadiusOf(edge: Edge): number {
  if (joints(edge).some(({ angle }) => Math.abs(angle) > CORNER)) return 0;
  const curves = edge.curves.filter(({ from, to }) => distance(from, to) > FLATNESS);
  return 1 / Math.max(0, ...curves.map(greatestCurvature));
}

function greatestCurvature(curve: Curve): number {
  if (curve.kind === 'line') return 0;
  const bent = (t: number): number => Math.abs(curvatureAt(curve, t));
  const bending = (t: number): number => Math.sign(curvatureAt(curve, t)) * curvatureSlopeAt(curve, t);
  return bent(placeOfGreatest(bent, bending, 0, 1, LOOKS));
}
