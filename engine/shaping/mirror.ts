import type { Edge } from '../geometry/curve.ts';
import {
  edgeEnd,
  edgeLength,
  edgeStart,
  endDirection,
  joinedEdges,
  reversedEdge,
  startDirection,
} from '../geometry/edge.ts';
import { isStraight } from '../geometry/inflections.ts';
import { mirroredIn, transformedEdge } from '../geometry/transform.ts';
import { cross, dot } from '../geometry/vector.ts';
import type { Result } from '../issue.ts';
import type { Notch, Piece, PieceEdge } from '../pattern/piece.ts';
import { noSuchEdge } from './cut-up.ts';
import { levelLine } from './reassemble.ts';
import { refused } from './refusal.ts';

/** A straight edge strays no farther than this from its chord, mm: half a pencil line. */
const STRAIGHT = 0.25;

/** Edges that meet the fold within this of square run on across it (radians): one degree, and are one edge. */
const RUNS_ON = Math.PI / 90;

/**
 * Unfolds a piece: draws its other half, mirrored in one straight edge. Edges that run square into that line go on
 * across it under their own name; the others are there twice, the new ones as “other ...”. Level lines run right
 * across.
 *
 * Issues: `no-such-edge`, `mirror-not-straight`, `mirror-only-edge`.
 */
export function mirror(piece: Piece, line: string): Result<Piece> {
  const at = piece.edges.findIndex(({ name }) => name === line);
  const centre = piece.edges[at];
  if (!centre) return noSuchEdge(line, piece.edges);
  if (!centre.curves.every((curve) => isStraight(curve, STRAIGHT)) || !isStraightOn(centre))
    return refused(
      'mirror-not-straight',
      line,
      `“${line}” is not straight, so no half can be mirrored in it.`,
    );
  const own = [...piece.edges.slice(at + 1), ...piece.edges.slice(0, at)];
  if (own.length === 0) return refused('mirror-only-edge', line, 'The piece has no other edge to mirror.');
  const flip = mirroredIn(edgeStart(centre), edgeEnd(centre));
  const others = own
    .toReversed()
    .map((edge) => ({ ...reversedEdge(transformedEdge(edge, flip)), name: `other ${edge.name}` }));
  const notches = own.flatMap(({ name }) =>
    piece.notches.filter(({ edge, mark }) => edge === name && mark !== 'fold'),
  );
  const lengths = new Map(own.map((edge) => [edge.name, edgeLength(edge)]));
  const mirrored = notches.map(
    (notch): Notch => ({
      ...notch,
      name: `other ${notch.name}`,
      edge: `other ${notch.edge}`,
      at: (lengths.get(notch.edge) ?? 0) - notch.at,
    }),
  );
  const whole = acrossFold({ edges: [...own, ...others], notches: [...notches, ...mirrored] }, own);
  const lines = piece.lines.flatMap((inside) => {
    const y = inside.curves[0]?.from.y;
    if (inside.kind === 'level') return y === undefined ? [] : levelLine(inside, whole.edges, y);
    return [inside, { ...transformedEdge(inside, flip), name: `other ${inside.name}` }];
  });
  const marks = piece.marks.flatMap((mark) => [
    mark,
    { ...mark, name: `other ${mark.name}`, at: flip(mark.at) },
  ]);
  const cut = piece.cut.map((count) => ({ ...count, onFold: false }));
  return { ok: true, value: { ...piece, ...whole, lines, marks, cut }, issues: [] };
}

type DrawnHalf = Pick<Piece, 'notches'> & { readonly edges: readonly PieceEdge[] };

/** Makes one edge of each pair that runs on across the centre line. */
function acrossFold(drawn: DrawnHalf, own: readonly PieceEdge[]): DrawnHalf {
  const [first, last] = [own[0], own.at(-1)];
  if (!first || !last || own.length === 1) return drawn;
  const ended = joinedPair(drawn, last, `other ${last.name}`, last.name);
  return joinedPair(ended, `other ${first.name}`, first, first.name);
}

function joinedPair(drawn: DrawnHalf, a: PieceEdge | string, b: PieceEdge | string, name: string): DrawnHalf {
  const named = (edge: PieceEdge | string): string => (typeof edge === 'string' ? edge : edge.name);
  const before = drawn.edges.find((edge) => edge.name === named(a));
  const after = drawn.edges.find((edge) => edge.name === named(b));
  if (!before || !after || Math.abs(turnBetween(before, after)) > RUNS_ON) return drawn;
  const start = edgeLength(before);
  const joined = {
    ...before,
    curves: joinedEdges(name, [before, after]).curves,
    name,
    inflections: 2 * before.inflections,
  };
  const edges = drawn.edges.flatMap((edge) => (edge === before ? [joined] : edge === after ? [] : [edge]));
  const notches = drawn.notches.map((notch) => {
    if (notch.edge === after.name) return { ...notch, edge: name, at: start + notch.at };
    return notch.edge === before.name ? { ...notch, edge: name } : notch;
  });
  return { edges, notches };
}

function turnBetween(before: Edge, after: Edge): number {
  const [into, outOf] = [endDirection(before), startDirection(after)];
  return Math.atan2(cross(into, outOf), dot(into, outOf));
}

/** Whether an edge of straight lines is one straight line. */
const isStraightOn = (edge: Edge): boolean =>
  isStraight(
    {
      kind: 'cubic',
      from: edgeStart(edge),
      handle1: edge.curves[0]?.to ?? edgeStart(edge),
      handle2: edge.curves.at(-1)?.from ?? edgeEnd(edge),
      to: edgeEnd(edge),
    },
    STRAIGHT,
  );
