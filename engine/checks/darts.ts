import { flatMapped } from '../flat-mapped.ts';
import type { Curve, Edge } from '../geometry/curve.ts';
import { type EdgePlace, edgeLength } from '../geometry/edge.ts';
import { pointAt } from '../geometry/evaluate.ts';
import { edgeCrossings, type StraightLine } from '../geometry/intersect.ts';
import { moved, type Point, vectorBetween } from '../geometry/point.ts';
import { part } from '../geometry/split.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { mirroredIn, type Transform } from '../geometry/transform.ts';
import { cross } from '../geometry/vector.ts';
import type { Issue } from '../issue.ts';
import { type SewnDart, sewnDarts, shut, shutBack } from '../pattern/dart.ts';
import type { Piece } from '../pattern/piece.ts';
import { inMm } from '../text/figure.ts';
import { drawn, nearest } from './nearest.ts';

/** The two legs of every dart are walked along each other, within `bound` (mm), and no leg stands alone. */
export function dartLegFaults(piece: Piece, bound: number): Issue[] {
  const darts = sewnDarts(piece.edges);
  const paired = new Set(flatMapped(darts, ({ legs }) => legs));
  const lone = piece.edges.filter((edge) => edge.turn === 'dart' && !paired.has(edge));
  return [
    ...lone.map(({ name }): Issue => {
      const message = `The edge "${name}" of ${piece.name} is a dart's leg, but the leg it is sewn to does not follow.`;
      return { code: 'dart-leg-alone', severity: 'error', path: `${piece.name}/${name}`, message };
    }),
    ...flatMapped(darts, (dart): Issue[] => {
      const [one, other] = dart.legs;
      const difference = legDifference(dart);
      if (difference <= bound) return [];
      const message =
        `The legs "${one.name}" and "${other.name}" of a dart in ${piece.name} differ by ${inMm(difference)}: ` +
        'ease the longer one in, or true the edge across the mouth with the dart folded shut.';
      const path = `${piece.name}/${one.name}`;
      const limits = { max: bound, unit: 'mm' };
      return [{ code: 'dart-legs-differ', severity: 'warning', path, message, value: difference, limits }];
    }),
  ];
}

const legDifference = ({ legs: [one, other] }: SewnDart): number =>
  Math.abs(edgeLength(one) - edgeLength(other));

/** Places looked at on each curve across a mouth. */
const PLACES = 8;

/** Chords this near the cutting line take little from the bound, mm. */
const FINE = 0.005;

/**
 * Folds every dart shut and presses it to one side, as on paper: the cutting line across its mouth must lie on the
 * cutting line beside it, within `bound` (mm).
 */
export const dartCapFaults = (piece: Piece, cut: Edge, bound: number): Issue[] =>
  flatMapped(sewnDarts(piece.edges), (dart): Issue[] => {
    // Legs that differ leave a step at the fold; `dartLegFaults` tells of them.
    const most = bound + legDifference(dart);
    const gap = capGap(dart, cut);
    if (gap <= most) return [];
    const { name } = dart.legs[0];
    const message =
      `Folded shut, the dart "${name}" of ${piece.name} does not lie flush: across its mouth the cutting line is up to ` +
      `${inMm(gap)} away from that of the edge it is pressed over.`;
    const [path, limits] = [`${piece.name}/${name}`, { max: most, unit: 'mm' }];
    return [{ code: 'dart-not-flush', severity: 'error', path, message, value: gap, limits }];
  });

/** How far the folded cloth of a dart is from flush with the edge it is pressed over, mm: the better of the two. */
function capGap(dart: SewnDart, cut: Edge): number {
  const parted = partedAtSeams(cut, dart);
  if (!parted) return Number.POSITIVE_INFINITY;
  const beside = drawn(parted.beside, FINE);
  const places = flatMapped(parted.across, (curve) =>
    Array.from({ length: PLACES }, (_, i) => pointAt(curve, (i + 0.5) / PLACES)),
  );
  const gapWith = (toFirst: Transform, toSecond: Transform): number =>
    Math.max(
      ...places.map((p) => {
        const laid = isBefore(dart.middle, p) ? toFirst(p) : toSecond(p);
        return nearest(beside, laid, Number.POSITIVE_INFINITY)?.distance ?? 0;
      }),
    );
  return Math.min(
    gapWith(mirroredOver(dart.first), shut(dart)),
    gapWith(shutBack(dart), mirroredOver(dart.second)),
  );
}

const mirroredOver = ({ through, heading }: StraightLine): Transform =>
  mirroredIn(through, moved(through, heading));

/** Whether a place at a mouth lies before the middle of the dart, clockwise. */
const isBefore = ({ through, heading }: StraightLine, p: Point): boolean =>
  cross(heading, vectorBetween(through, p)) < 0;

/** The cutting line from one seam of a dart, prolonged, to the other, and the rest of it. */
function partedAtSeams(cut: Edge, { first, second }: SewnDart) {
  const [from, to] = [first, second].map(
    (ray) =>
      edgeCrossings(cut, ray)
        .filter(({ along }) => along >= -COINCIDENCE)
        .toSorted((a, b) => a.along - b.along)[0],
  );
  return from && to ? { across: walked(cut, from, to), beside: walked(cut, to, from) } : undefined;
}

/** A closed edge from one place on to another. */
function walked({ curves }: Edge, from: EdgePlace, to: EdgePlace): readonly Curve[] {
  const count = curves.length;
  const on =
    to.curve > from.curve || (to.curve === from.curve && to.t >= from.t) ? to.curve : to.curve + count;
  return flatMapped(
    Array.from({ length: on - from.curve + 1 }, (_, i) => i + from.curve),
    (place) => {
      const curve = curves[place % count];
      const [t0, t1] = [place === from.curve ? from.t : 0, place === on ? to.t : 1];
      return curve && t1 > t0 ? [part(curve, t0, t1)] : [];
    },
  );
}
