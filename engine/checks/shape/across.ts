import type { Edge } from '../../geometry/curve.ts';
import { edgeEnd, edgeLength, edgeStart, lengthUpTo, pointAlong } from '../../geometry/edge.ts';
import { edgeCrossings, level } from '../../geometry/intersect.ts';
import { moved, type Point, point, turnedAbout, vectorBetween } from '../../geometry/point.ts';
import { STRAIGHTNESS } from '../../geometry/tolerance.ts';
import { type Transform, transformedEdge } from '../../geometry/transform.ts';
import { cross, outward, unit } from '../../geometry/vector.ts';
import type { Chain } from '../../pattern/shape.ts';
import { turnBetween } from '../corner.ts';
import type { Tape } from '../tape.ts';
import { asDrawn, laidOut } from './chain.ts';
import type { Measured, MeasureOf } from './measured.ts';

/** Turns of the search for where the line across meets the seam. */
const ROUNDS = 40;

/**
 * From a centre line square across to a place up the armhole, mm: the side panel is laid against the centre panel along
 * their seam, at the very place where the line across meets it, as both lie there when they are sewn. Where that lies
 * beyond the end of the seam, they are laid together at its end.
 */
export function acrossAt(measure: MeasureOf<'across'>, { tape }: Measured): number | undefined {
  const { share, middle, plus = 0 } = measure;
  const [side, centre] = [asDrawn(measure.side, tape), asDrawn(measure.centre, tape)];
  const place = placeUp(measure.armhole, share, tape);
  const edge = tape.edge(middle.piece, middle.edge);
  if (!place || !side || !centre || !edge) return undefined;
  // Two edges of which one runs with its outline and the other against it have their cloth on either side.
  const facing: Transform =
    measure.side.edges[0]?.reversed === measure.centre.edges[0]?.reversed
      ? ({ x, y }) => point(x, -y)
      : (p) => p;
  const sideLine = transformedEdge(side.line, facing);
  const down = unit(vectorBetween(edgeStart(edge), edgeEnd(edge)));
  const length = Math.min(edgeLength(sideLine), edgeLength(centre.line));

  let along = length / 2;
  let at = place;
  for (let round = 0; round < ROUNDS; round++) {
    at = layingAt(sideLine, centre.line, along)(facing(place));
    const [met] = edgeCrossings(centre.line, { through: at, heading: outward(down) });
    const next = met ? Math.min(length, lengthUpTo(centre.line, met)) : length;
    if (Math.abs(next - along) < STRAIGHTNESS) break;
    along = (along + next) / 2;
  }
  return Math.abs(cross(down, vectorBetween(edgeStart(edge), at))) + plus;
}

/** The place on the first piece of an armhole that lies a share of its height up; its top end where it reaches less. */
function placeUp(armhole: Chain, share: number, tape: Tape): Point | undefined {
  const whole = laidOut(armhole, tape);
  const [first] = armhole.edges;
  const own = asDrawn({ edges: armhole.edges.filter(({ piece }) => piece === first?.piece) }, tape);
  const met = whole && edgeCrossings(whole, level(share * edgeEnd(whole).y))[0];
  return met && own && pointAlong(own.line, lengthUpTo(whole, met)).point;
}

/** Lays one edge on another at the same distance along both, so that they run the same way there. */
function layingAt(edge: Edge, on: Edge, along: number): Transform {
  const [from, to] = [pointAlong(edge, along), pointAlong(on, along)];
  const turn = turnBetween(from.direction, to.direction);
  return (p) => moved(turnedAbout(p, from.point, turn), vectorBetween(from.point, to.point));
}
