import { type Curve, withEnds } from './curve.ts';
import { curveCrossings, least, most } from './curve-crossings.ts';
import { directionAt } from './evaluate.ts';
import { distance, type Point, vectorBetween } from './point.ts';
import { part } from './split.ts';
import { COINCIDENCE } from './tolerance.ts';
import { dot, type Vector } from './vector.ts';

/** A piece of a raw parallel: a curve, what it came from, and whether it reaches the piece after it. */
export interface RawPiece {
  readonly curve: Curve;
  readonly source: number;
  readonly joined: boolean;
}

/** A part of a raw piece between two crossings, and the stretch that follows it on the trimmed parallel. */
export interface TrimmedStretch {
  readonly curve: Curve;
  readonly source: number;
  readonly next: number | undefined;
}

interface TrimCut {
  readonly t: number;
  readonly point: Point;
  /** The piece crossed, and where on it. */
  readonly other: number;
  readonly otherT: number;
}

/**
 * Cuts a chain of raw pieces wherever it crosses itself, and says how the true parallel runs on. Where one parallel
 * crosses another from the outside, it is too near the other's source beyond the crossing, and the other was too
 * near before it: so the true parallel always changes over at a crossing.
 */
export function stretches(pieces: readonly RawPiece[], closed: boolean): TrimmedStretch[] {
  const cuts = cutsOf(pieces, closed);
  if (cuts.every((list) => list.length === 0))
    return pieces.map((piece, i) => ({
      curve: piece.curve,
      source: piece.source,
      next: piece.joined ? (i + 1) % pieces.length : undefined,
    }));
  const firstOf: number[] = [];
  let count = 0;
  for (const list of cuts) {
    firstOf.push(count);
    count += list.length + 1;
  }
  const stretchAfter = (piece: number, t: number, from: number): number | undefined => {
    const index = (cuts[piece] ?? []).findIndex((cut) => cut.other === from && cut.t === t);
    return index < 0 ? undefined : (firstOf[piece] ?? 0) + index + 1;
  };
  return pieces.flatMap((piece, i) => {
    const list = cuts[i] ?? [];
    return Array.from({ length: list.length + 1 }, (_, k): TrimmedStretch => {
      const cut = list[k];
      const t0 = list[k - 1]?.t ?? 0;
      const t1 = cut?.t ?? 1;
      const next = cut
        ? stretchAfter(cut.other, cut.otherT, i)
        : piece.joined
          ? firstOf[(i + 1) % pieces.length]
          : undefined;
      const curve =
        t1 > t0
          ? between(part(piece.curve, t0, t1), list[k - 1]?.point, cut?.point)
          : pointCurve(cut?.point ?? piece.curve.to);
      return { curve, source: piece.source, next };
    });
  });
}

/** A curve with its ends put exactly on the crossings it was cut at. */
function between(curve: Curve, from: Point | undefined, to: Point | undefined): Curve {
  return withEnds(curve, from ?? curve.from, to ?? curve.to);
}

const pointCurve = (at: Point): Curve => ({ kind: 'line', from: at, to: at });

function cutsOf(pieces: readonly RawPiece[], closed: boolean): TrimCut[][] {
  const cuts: TrimCut[][] = pieces.map(() => []);
  const boxes = pieces.map(({ curve }) => ({
    left: least(curve, 'x') - COINCIDENCE,
    right: most(curve, 'x'),
    top: least(curve, 'y') - COINCIDENCE,
    bottom: most(curve, 'y'),
  }));
  for (const [i, a] of pieces.entries()) {
    const boxA = boxes[i];
    for (let j = i + 1; j < pieces.length; j++) {
      const b = pieces[j];
      const boxB = boxes[j];
      if (!b || !boxA || !boxB) continue;
      if (boxA.left > boxB.right || boxB.left > boxA.right) continue;
      if (boxA.top > boxB.bottom || boxB.top > boxA.bottom) continue;
      const joints: Point[] = [];
      if (j === i + 1 && a.joined) joints.push(a.curve.to);
      if (closed && i === 0 && j === pieces.length - 1 && b.joined) joints.push(a.curve.from);
      if (joints.length === 1 && partAtJoint(j === i + 1 ? [a.curve, b.curve] : [b.curve, a.curve])) continue;
      for (const { t, u, point } of curveCrossings(a.curve, b.curve)) {
        if (joints.some((joint) => distance(joint, point) <= 10 * COINCIDENCE)) continue;
        cuts[i]?.push({ t, point, other: j, otherT: u });
        cuts[j]?.push({ t: u, point, other: i, otherT: t });
      }
    }
  }
  for (const list of cuts) list.sort((p, q) => p.t - q.t);
  return cuts;
}

/** Whether two curves that meet end to start can have nothing else in common: one heading parts them there. */
function partAtJoint([before, after]: readonly [Curve, Curve]): boolean {
  const into = directionAt(before, 'end');
  const outOf = directionAt(after, 'start');
  return [...sides(before), ...sides(after)].every(
    (side) => dot(side, { x: into.x + outOf.x, y: into.y + outOf.y }) >= 0,
  );
}

function sides(curve: Curve): readonly Vector[] {
  if (curve.kind === 'line') return [vectorBetween(curve.from, curve.to)];
  const { from, handle1, handle2, to } = curve;
  return [vectorBetween(from, handle1), vectorBetween(handle1, handle2), vectorBetween(handle2, to)];
}
