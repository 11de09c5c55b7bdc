import { betweenPlaces } from '../../geometry/between-places.ts';
import type { Edge } from '../../geometry/curve.ts';
import {
  edgeEnd,
  edgeStart,
  endDirection,
  joinedEdges,
  reversedEdge,
  startDirection,
} from '../../geometry/edge.ts';
import { type Point, point } from '../../geometry/point.ts';
import { COINCIDENCE } from '../../geometry/tolerance.ts';
import { type Transform, transformedEdge, turnedBy } from '../../geometry/transform.ts';
import type { Vector } from '../../geometry/vector.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { EdgeRef } from '../../pattern/seam.ts';
import type { EdgeChain } from '../../pattern/shape.ts';
import { turnBetween } from '../corner.ts';
import type { Tape } from '../tape.ts';

/**
 * A chain laid out flat as one line, as it lies when its pieces are sewn: it starts at the origin, heads along x and
 * has the cloth on its right. Each next piece is placed, turned and never stretched, so that the line runs on through
 * the seam without a corner; edges that follow each other on one piece keep what corner they have. An edge that is
 * walked against its outline is drawn from its other side, so that any two lines laid out so can be laid on each
 * other, whichever way their pieces were drawn.
 *
 * Undefined where the chain names an edge or a notch that does not exist, or nothing is left of it between its notches.
 */
export function laidOut(chain: EdgeChain, tape: Tape): Edge | undefined {
  const laid: Edge[] = [];
  let lay: Transform = (p) => p;
  let before: EdgeRef | undefined;
  for (const ref of chain.edges) {
    const found = tape.edge(ref.piece, ref.edge);
    if (!found) return undefined;
    const edge: Edge = { name: found.name, curves: found.curves };
    const walked = ref.reversed ? fromOtherSide(edge) : edge;
    if (!(before && runsOn(before, ref, tape))) lay = layingOn(laid.at(-1), walked);
    laid.push(transformedEdge(walked, lay));
    before = ref;
  }
  if (laid.length === 0) return undefined;
  const whole = joinedEdges('laid out', laid);
  if (chain.from === undefined && chain.to === undefined) return whole;
  const stops = stopsOf(chain, tape);
  if (!stops || stops.to - stops.from < COINCIDENCE) return undefined;
  return betweenPlaces(whole, stops.from, stops.to);
}

/**
 * A chain on one piece as it is drawn there, walked from its first edge to its last. Undefined as for `laidOut`, and
 * where the chain runs over more than one piece.
 */
export function asDrawn(
  chain: EdgeChain,
  tape: Tape,
): { readonly piece: Piece; readonly line: Edge } | undefined {
  const [first] = chain.edges;
  const piece = first && tape.piece(first.piece);
  const stops = stopsOf(chain, tape);
  if (!piece || !stops || chain.edges.some((ref) => ref.piece !== piece.name)) return undefined;
  const edges = chain.edges.flatMap((ref) => {
    const edge = tape.edge(ref.piece, ref.edge);
    return edge ? [ref.reversed ? reversedEdge(edge) : edge] : [];
  });
  return { piece, line: betweenPlaces(joinedEdges('as drawn', edges), stops.from, stops.to) };
}

/** Length of a chain between its notches, mm; undefined as for `laidOut`. */
export function chainLength(chain: EdgeChain, tape: Tape): number | undefined {
  const stops = stopsOf(chain, tape);
  return stops && stops.to - stops.from;
}

/** How far along a chain, all its edges counted, a notch stands (mm): the first of its name. */
export function alongChain(chain: EdgeChain, notch: string, tape: Tape): number | undefined {
  let length = 0;
  for (const { piece, edge: name, reversed } of chain.edges) {
    const edge = tape.edge(piece, name);
    if (!edge) return undefined;
    const found = tape.notches(piece, name).find((n) => n.name === notch);
    const whole = tape.length(edge);
    if (found) return length + (reversed ? whole - found.at : found.at);
    length += whole;
  }
  return undefined;
}

function stopsOf(chain: EdgeChain, tape: Tape): { readonly from: number; readonly to: number } | undefined {
  let whole = 0;
  for (const { piece, edge: name } of chain.edges) {
    const edge = tape.edge(piece, name);
    if (!edge) return undefined;
    whole += tape.length(edge);
  }
  const from = chain.from === undefined ? 0 : alongChain(chain, chain.from, tape);
  const to = chain.to === undefined ? whole : alongChain(chain, chain.to, tape);
  return from === undefined || to === undefined ? undefined : { from, to };
}

/** Whether one edge follows another on the same piece, walked the same way. */
function runsOn(from: EdgeRef, to: EdgeRef, tape: Tape): boolean {
  if (from.piece !== to.piece || from.reversed !== to.reversed) return false;
  const edges = tape.piece(from.piece)?.edges ?? [];
  const [a, b] = [from, to].map(({ edge }) => edges.findIndex(({ name }) => name === edge));
  if (a === undefined || b === undefined) return false;
  return from.reversed ? (b + 1) % edges.length === a : (a + 1) % edges.length === b;
}

/** Turned and moved so that an edge runs on from the one before it, or starts the line at the origin. */
function layingOn(before: Edge | undefined, edge: Edge): Transform {
  const start = edgeStart(edge);
  const at: Point = before ? edgeEnd(before) : point(0, 0);
  const heading: Vector = before ? endDirection(before) : { x: 1, y: 0 };
  const turn = turnBetween(startDirection(edge), heading);
  const turned = turnedBy(start, turn);
  return (p) => {
    const { x, y } = turned(p);
    return point(x - start.x + at.x, y - start.y + at.y);
  };
}

/** Walked from its end and seen from the back of the cloth, which so lies on the right again. */
const fromOtherSide = (edge: Edge): Edge => transformedEdge(reversedEdge(edge), ({ x, y }) => point(x, -y));
