import type { Curve } from '../geometry/curve.ts';
import { curveCrossings } from '../geometry/curve-crossings.ts';
import { distance, moved, type Point, vectorBetween } from '../geometry/point.ts';
import { part, reversed } from '../geometry/split.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { cross, dot, outward, plus, scaled, unit, type Vector } from '../geometry/vector.ts';
import { type EdgeAllowance, trimmedAcross, trimmedAt } from './edge-allowance.ts';
import { hemEnd } from './hem-end.ts';
import { runOut } from './run-out.ts';
import type { Across, Through, TurnedCorner } from './turned-corner.ts';

/** What meets at a corner of a piece: two edges, each with its allowance and its parallel as far as it goes. */
export interface AllowanceCorner {
  readonly at: Point;
  /** Unit headings with which the edge before arrives and the edge after leaves. */
  readonly into: Vector;
  readonly outOf: Vector;
  readonly before: EdgeAllowance;
  readonly after: EdgeAllowance;
  /** Unit heading in which the seam goes on beyond the corner, where that is not straight on: into a hem (`hemSide`). */
  readonly beyond?: Vector;
}

/** The rank of a fold: it runs through whatever meets it, and nothing is cut beyond it. */
export const FOLD = Number.NEGATIVE_INFINITY;

/** The rank of a hem: it is turned up when all that ends in it is sewn. */
export const HEM = Number.POSITIVE_INFINITY;

/** A corner point of the cutting line lies no farther out than this many allowances: sharper ones are cut off. */
export const SHARPEST = 2.5;

/**
 * Turns the cutting line around a corner. Let t be the angle the stitching line turns there (positive for an
 * outward corner), V the corner, and at V: u the heading of the edge that runs through, prolonged beyond V, n
 * its outward normal, d its allowance; w the allowance of the edge that crosses.
 *
 * - Square end, where one edge ranks lower: X, the place where the stitching line, prolonged, meets the parallel
 *   of the edge that crosses, then E = X + n d, square to the seam. Beside a straight edge X = V + u w / sin t. The
 *   parallel reaches the prolonged seam at a blunt corner, and at a sharp one where the edge is hollow with a radius
 *   below w at its very end; otherwise its straight prolongation does. The neighbour's corner is pi - t when the line
 *   across is true, its sine the same: both allowances end at one distance beyond the seam's end, flush.
 *   `reach` asks for a longer end, when the neighbour's comes out longer; it runs out into the parallel (`runOut`), unless
 *   the neighbour is longer by another allowance: then it is stepped. At a blunt corner the end is at least w cos t wide, or the strip of the edge that crosses would be cut short; not on folds, where the other half
 *   of the cloth has it.
 * - At a hem the seam does not go on straight but mirrored: `hemEnd`.
 * - Mitre, for equal ranks and where a square end would reach farther than `SHARPEST` allowances at a blunt
 *   corner, but of a fold: the two parallels prolonged meet at V + (n1 d1 + s u1), s = (d2 - d1 cos t) / sin t. Where one
 *   allowance is so much wider that they do not meet beyond the corner, a straight step joins them.
 * - Corners sharper than `SHARPEST` are cut off there: a square end across the seam's prolongation, a mitre
 *   across its bisector.
 * - At an inward corner the two parallels are cut off where they cross; if that is farther along than their
 *   curves at the corner, the loop beyond is cut away afterwards (`untangled`). Where
 *   one allowance is so much wider that they do not cross, it ends square to its edge on the other.
 *
 * The square end is common practice, no source.
 */
export function turnCorner(corner: AllowanceCorner, reach = 0): TurnedCorner {
  const { into, outOf, before, after, beyond } = corner;
  const turn = Math.atan2(cross(into, outOf), dot(into, outOf));
  const plain: TurnedCorner = { before: before.parallel, between: [], after: after.parallel };
  if (touching(before.parallel, after.parallel)) return plain;
  if (turn <= 0) return inward(corner);
  const square =
    before.rank < after.rank
      ? squareEnd(
          corner.at,
          { along: into, outward: outward(into), edge: before },
          { along: outOf, edge: after },
          reach,
          beyond,
        )
      : before.rank > after.rank
        ? walkedBack(
            squareEnd(
              corner.at,
              { along: scaled(outOf, -1), outward: outward(outOf), edge: after },
              {
                along: scaled(into, -1),
                edge: {
                  ...before,
                  curves: walkedFromEnd(before.curves),
                  parallel: walkedFromEnd(before.parallel),
                },
              },
              reach,
              beyond,
            ),
          )
        : undefined;
  return square ?? { ...plain, between: mitre(corner) };
}

/** Whether two parallels meet by themselves, as they do where one stitching line runs smoothly on into the next. */
function touching(before: readonly Curve[], after: readonly Curve[]): boolean {
  const [last, first] = [before.at(-1), after[0]];
  return last !== undefined && first !== undefined && distance(last.to, first.from) <= COINCIDENCE;
}

/** An inward corner: a much wider allowance ends square, on the narrower one. */
function inward({ at, into, outOf, before, after }: AllowanceCorner): TurnedCorner {
  const cosine = dot(into, outOf);
  const kept = { before: before.parallel, between: [], after: after.parallel };
  if (before.width * cosine > after.width) {
    return { ...kept, after: trimmedAt(after.parallel, at, outward(into))?.rest ?? kept.after };
  }
  if (after.width * cosine > before.width) {
    const rest = trimmedAt(walkedFromEnd(before.parallel), at, outward(outOf))?.rest;
    return { ...kept, before: rest ? walkedFromEnd(rest) : kept.before };
  }
  return crossed(before.parallel, after.parallel) ?? kept;
}

/** Two parallels cut off where the last curve of the one crosses the first of the other. */
function crossed(before: readonly Curve[], after: readonly Curve[]): TurnedCorner | undefined {
  const last = before.at(-1);
  const first = after[0];
  const crossing = last && first && curveCrossings(last, first).at(-1);
  if (!crossing || crossing.t <= 0 || crossing.u >= 1) return undefined;
  return {
    before: [...before.slice(0, -1), part(last, 0, crossing.t)],
    between: [],
    after: [part(first, crossing.u, 1), ...after.slice(1)],
  };
}

const walkedFromEnd = (curves: readonly Curve[]): readonly Curve[] => curves.toReversed().map(reversed);

const walkedBack = (turned: TurnedCorner | undefined): TurnedCorner | undefined =>
  turned && {
    ...turned,
    before: walkedFromEnd(turned.after),
    between: turned.between.toReversed(),
    after: turned.before,
  };

/** Turns a corner seen from the edge that runs through: `through` heads beyond the corner, `across` away from it. */
function squareEnd(
  at: Point,
  through: Through,
  across: Across,
  atLeast: number,
  beyond: Vector | undefined,
): TurnedCorner | undefined {
  if (beyond) return hemEnd(at, through, across, beyond);
  const width = across.edge.width;
  const limit = SHARPEST * Math.max(width, through.edge.width);
  const sine = Math.abs(cross(through.along, across.along));
  const straight = width === 0 ? 0 : width / sine;
  const blunt = dot(through.along, across.along) > 0;
  // The strip beside a blunt corner's crossing edge leans out over the seam's prolongation by this much.
  const leaning = blunt && through.edge.rank !== FOLD ? width * dot(through.along, across.along) : 0;
  const out = Math.max(through.edge.width, leaning);
  const outer = (along: number): Point =>
    moved(at, plus(scaled(through.along, along), scaled(through.outward, out)));
  const kept = { before: through.edge.parallel, after: across.edge.parallel };

  // Nothing is cut beyond a fold, so however blunt the corner, the allowance ends on it.
  if (straight > limit && !(blunt && through.edge.rank === FOLD)) {
    if (blunt) return undefined;
    // From the limit the end line goes on past the seam's prolongation to the other parallel, prolonged.
    const past = (straight - limit) * Math.abs(sine / dot(through.along, across.along));
    const inner = moved(at, plus(scaled(through.along, limit), scaled(through.outward, -past)));
    return { ...kept, between: [outer(limit), inner] };
  }
  const trimmed = trimmedAcross(across.edge, at, through);
  const natural = trimmed?.along ?? straight;
  const end = Math.max(natural, atLeast);
  const onSeam = (along: number): Point => moved(at, scaled(through.along, along));
  const rest = trimmed?.rest ?? (passes(kept.after, onSeam(natural), across.along) ? [] : kept.after);
  const ranOut = runOut(onSeam(end), onSeam(natural), rest, width);
  return {
    before: kept.before,
    between: [
      ...(out > through.edge.width ? [outer(0)] : []),
      outer(end),
      onSeam(end),
      ...(ranOut ? [] : [onSeam(natural)]),
    ],
    after: ranOut ?? rest,
    reach: end,
  };
}

/** Whether a place on a parallel's straight prolongation lies beyond all of it: a short edge beside a blunt corner. */
const passes = (parallel: readonly Curve[], place: Point, along: Vector): boolean =>
  parallel.length > 0 && parallel.every(({ to }) => dot(along, vectorBetween(to, place)) > 0);

/** The corner of two parallels prolonged, squared off when too sharp; none where they do not meet outside. */
function mitre({ at, into, outOf, before, after }: AllowanceCorner): Point[] {
  const normal1 = outward(into);
  const normal2 = outward(outOf);
  const sine = cross(into, outOf);
  const cosine = dot(into, outOf);
  const beyond1 = (after.width - before.width * cosine) / sine;
  const beyond2 = (before.width - after.width * cosine) / sine;
  if (!(beyond1 >= 0 && beyond2 >= 0)) return [];
  const foot1 = moved(at, scaled(normal1, before.width));
  const foot2 = moved(at, scaled(normal2, after.width));
  const tip = moved(foot1, scaled(into, beyond1));
  const limit = SHARPEST * Math.max(before.width, after.width);
  const reach = distance(at, tip);
  if (reach <= limit) return [tip];
  const bisector = unit(vectorBetween(at, tip));
  const upTo = (foot: Point, along: Vector): Point => {
    const short = limit - dot(bisector, vectorBetween(at, foot));
    return moved(foot, scaled(along, short / dot(bisector, along)));
  };
  return [upTo(foot1, into), upTo(foot2, outOf)];
}
