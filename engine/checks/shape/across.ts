import type { Edge } from '../../geometry/curve.ts';
import { edgeEnd, edgeLength, edgeStart, lengthUpTo, pointAlong } from '../../geometry/edge.ts';
import { edgeCrossings, levelAt, type StraightLine } from '../../geometry/intersect.ts';
import { distance, moved, type Point, point, turnedAbout, vectorBetween } from '../../geometry/point.ts';
import { STRAIGHTNESS } from '../../geometry/tolerance.ts';
import { type Transform, transformedEdge } from '../../geometry/transform.ts';
import { cross, outward } from '../../geometry/vector.ts';
import { turnBetween } from '../corner.ts';
import type { Tape } from '../tape.ts';
import { asDrawn, laidOut } from './chain.ts';
import { levelOf } from './level.ts';
import type { Measured, MeasureOf } from './measured.ts';

/** Turns of the search for where the line across meets the seam. */
const ROUNDS = 40;

/**
 * From a centre line square across to a place up the armhole, mm. Where the place is on the side panel, that is laid
 * against the centre panel along their seam, at the very place where the line across meets it, as both lie there when
 * they are sewn; at the end of the seam, where the line passes beyond it.
 */
export function acrossAt(measure: MeasureOf<'across'>, { tape }: Measured): number | undefined {
  const { middle, plus = 0 } = measure;
  const place = placeUp(measure, tape);
  const centreLine = levelOf(middle.piece, { kind: 'edge', name: middle.edge }, tape);
  if (!place || !centreLine) return undefined;
  const at = place.piece === middle.piece ? place.point : beside(centreLine, place.point, measure, tape);
  return at && Math.abs(cross(centreLine.heading, vectorBetween(centreLine.through, at))) + plus;
}

/** Where a place on the side panel lies on the drawing of the centre panel, once the two are laid together. */
function beside(
  { heading }: StraightLine,
  place: Point,
  measure: MeasureOf<'across'>,
  tape: Tape,
): Point | undefined {
  const [side, centre] = [asDrawn(measure.side, tape), asDrawn(measure.centre, tape)];
  if (!side || !centre) return undefined;
  // Two edges of which one runs with its outline and the other against it have their cloth on either side.
  const facing: Transform =
    measure.side.edges[0]?.reversed === measure.centre.edges[0]?.reversed
      ? ({ x, y }) => point(x, -y)
      : (p) => p;
  const sideLine = transformedEdge(side.line, facing);
  const length = Math.min(edgeLength(sideLine), edgeLength(centre.line));
  const [foot, top] = [edgeStart(centre.line), edgeEnd(centre.line)];

  const laid = (along: number): Point => layingAt(sideLine, centre.line, along)(facing(place));
  /** How much farther along the seam the line across meets it than where the panels are laid together. */
  const miss = (along: number): number => {
    const at = laid(along);
    const [met] = edgeCrossings(centre.line, { through: at, heading: outward(heading) });
    const beyond = distance(at, foot) < distance(at, top) ? 0 : length;
    return (met ? Math.min(length, lengthUpTo(centre.line, met, STRAIGHTNESS)) : beyond) - along;
  };
  return laid(zeroOf(miss, length));
}

/**
 * The place that lies a share of an armhole's height up it, and its panel. Higher up than side panel and centre panel
 * reach, the place is where they end.
 */
function placeUp(
  { armhole, share, side, middle }: MeasureOf<'across'>,
  tape: Tape,
): { readonly piece: string; readonly point: Point } | undefined {
  const whole = laidOut(armhole, tape);
  const met = whole && edgeCrossings(whole, levelAt(share * edgeEnd(whole).y))[0];
  if (!met) return undefined;
  let left = lengthUpTo(whole, met);
  const panels = [side.edges[0]?.piece, middle.piece];
  const edges = armhole.edges.filter(({ piece }) => panels.includes(piece));
  for (const [i, ref] of edges.entries()) {
    const drawn = asDrawn({ edges: [ref] }, tape);
    if (!drawn) return undefined;
    const length = edgeLength(drawn.line);
    if (left <= length || i === edges.length - 1)
      return { piece: ref.piece, point: pointAlong(drawn.line, left).point };
    left -= length;
  }
  return undefined;
}

/** Lays one edge on another at the same distance along both, so that they run the same way there. */
function layingAt(edge: Edge, on: Edge, along: number): Transform {
  const [from, to] = [pointAlong(edge, along, STRAIGHTNESS), pointAlong(on, along, STRAIGHTNESS)];
  const turn = turnBetween(from.direction, to.direction);
  return (p) => moved(turnedAbout(p, from.point, turn), vectorBetween(from.point, to.point));
}

/** Where a function that falls from above nothing to below it, from 0 to `most`, is nothing: halving, or chords. */
function zeroOf(f: (x: number) => number, most: number): number {
  let [low, high, atLow, atHigh] = [0, most, f(0), f(most)];
  if (atLow <= 0) return low;
  if (atHigh >= 0) return high;
  for (let round = 0; round < ROUNDS; round++) {
    // Every third look halves what is left, so that chords from one side cannot creep.
    const x = round % 3 === 2 ? (low + high) / 2 : low + ((high - low) * atLow) / (atLow - atHigh);
    const value = f(x);
    if (Math.abs(value) < STRAIGHTNESS) return x;
    if (value > 0) [low, atLow] = [x, value];
    else [high, atHigh] = [x, value];
  }
  return (low + high) / 2;
}
