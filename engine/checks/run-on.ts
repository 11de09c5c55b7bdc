import { flatMapped } from '../flat-mapped.ts';
import type { Issue } from '../issue.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';
import type { EdgeRef, Join, JoinPlace, Seam, SeamCorner } from '../pattern/seam.ts';
import type { Tape } from './tape.ts';

/**
 * Places where a line goes on from one edge to another once the garment is sewn, and that no join speaks of: whether it
 * runs on there or turns by design, nobody has said. Such a line crosses a fold, or a seam that is sewn before it; or two
 * edges of one piece, one after the other, are sewn to what is one line itself. What is left open waits for another draft.
 */
export function unjoined(garment: Garment, tape: Tape): Issue[] {
  const lines = sewnLines(garment, tape);
  return [
    ...flatMapped(garment.pieces, (piece) => placesOn(piece, lines)),
    ...flatMapped(garment.seams, (seam) => placesAcross(seam, tape, lines)),
  ]
    .filter((place) => !garment.joins.some((join) => speaksOf(join, place)))
    .map(complaint);
}

function speaksOf(join: Join, place: JoinPlace): boolean {
  if (join.kind === 'along')
    return (
      place.kind === 'along' && join.piece === place.piece && join.from === place.from && join.to === place.to
    );
  if (place.kind !== join.kind) return false;
  if (join.kind === 'mirror' || place.kind === 'mirror') return isCorner(join.a, place.a);
  return (
    (isCorner(join.a, place.a) && isCorner(join.b, place.b)) ||
    (isCorner(join.a, place.b) && isCorner(join.b, place.a))
  );
}

const isCorner = (one: SeamCorner, other: SeamCorner): boolean =>
  one.piece === other.piece && one.edge === other.edge && one.seam === other.seam;

/** Which edges are one line with which, once all but what is felled over them is sewn. */
interface SewnLines {
  /** The seams that an edge is part of, and where in their chains. */
  readonly stands: ReadonlyMap<PieceEdge, readonly Standing[]>;
  /** The edges that an edge meets at either of its ends, on its own piece or across a seam. */
  readonly meets: ReadonlyMap<PieceEdge, ReadonlySet<PieceEdge>>;
}

interface Standing {
  readonly seam: Seam;
  readonly side: 'a' | 'b';
  readonly index: number;
  /** What the edge is sewn to. */
  readonly opposite: readonly PieceEdge[];
}

function sewnLines({ pieces, seams }: Garment, tape: Tape): SewnLines {
  const stands = new Map<PieceEdge, Standing[]>();
  const meets = new Map<PieceEdge, Set<PieceEdge>>();
  const meet = (one: PieceEdge, other: PieceEdge): void => {
    (meets.get(one) ?? added(meets, one, new Set())).add(other);
    (meets.get(other) ?? added(meets, other, new Set())).add(one);
  };
  const edgesOf = (chain: readonly EdgeRef[]): readonly PieceEdge[] =>
    flatMapped(chain, ({ piece, edge }) => tape.edge(piece, edge) ?? []);
  for (const { edges } of pieces) for (const [one, next] of inTurn(edges)) meet(one, next);
  for (const seam of seams) {
    if (seam.felled) continue;
    const [a, b] = [edgesOf(seam.a), edgesOf(seam.b)];
    for (const [index, edge] of a.entries())
      (stands.get(edge) ?? added(stands, edge, [])).push({ seam, side: 'a', index, opposite: b });
    for (const [index, edge] of b.entries())
      (stands.get(edge) ?? added(stands, edge, [])).push({ seam, side: 'b', index, opposite: a });
    for (const ends of endsOf(seam, tape)) meet(ends[0].running, ends[1].running);
  }
  return { stands, meets };
}

function added<K, V>(map: Map<K, V>, key: K, value: V): V {
  map.set(key, value);
  return value;
}

/** Each edge with the next, the last with the first. */
const inTurn = (edges: readonly PieceEdge[]): (readonly [PieceEdge, PieceEdge])[] =>
  edges.map((edge, i) => [edge, edges[(i + 1) % edges.length] ?? edge]);

/** The end of a seam on one of its pieces: the edge that is sewn, and the one that runs on from there. */
interface SeamEnd {
  readonly piece: string;
  readonly sewn: PieceEdge;
  readonly running: PieceEdge;
}

/** Both ends of a seam, each on its two sides; an end is left out where a piece or an edge is not there. */
const endsOf = (seam: Seam, tape: Tape): (readonly [SeamEnd, SeamEnd])[] =>
  flatMapped([false, true], (last) => {
    const a = seamEnd(seam.a.at(last ? -1 : 0), last, tape);
    const b = seamEnd(seam.b.at(last ? -1 : 0), last, tape);
    return a && b ? [[a, b] as const] : [];
  });

function seamEnd(ref: EdgeRef | undefined, last: boolean, tape: Tape): SeamEnd | undefined {
  const edges = (ref && tape.piece(ref.piece)?.edges) ?? [];
  const at = edges.findIndex(({ name }) => name === ref?.edge);
  const ahead = last === (ref?.reversed === undefined);
  const sewn = edges[at];
  const running = edges[(at + (ahead ? 1 : edges.length - 1)) % edges.length];
  return ref && sewn && running && { piece: ref.piece, sewn, running };
}

/** Whether two edges that meet are one line: next to each other in a seam, or sewn to edges that meet themselves. */
const isOneLine = (one: PieceEdge, other: PieceEdge, { stands, meets }: SewnLines): boolean =>
  (stands.get(one) ?? []).some((x) =>
    (stands.get(other) ?? []).some((y) =>
      x.seam === y.seam
        ? x.side === y.side && Math.abs(x.index - y.index) === 1
        : x.opposite.some((u) => y.opposite.some((v) => meets.get(u)?.has(v))),
    ),
  );

/** On a piece: where a line comes to a fold, and where one line has two edges. */
const placesOn = ({ name, edges }: Piece, lines: SewnLines): JoinPlace[] =>
  flatMapped(inTurn(edges), ([from, to]): JoinPlace[] => {
    const [fold, running] = from.turn === 'fold' ? [from, to] : [to, from];
    if (fold.turn === 'fold')
      return running.allowance > 0 && !running.open
        ? [{ kind: 'mirror', a: { piece: name, edge: running.name, seam: fold.name } }]
        : [];
    return from.rank === to.rank && from.turn === 'seam' && isOneLine(from, to, lines)
      ? [{ kind: 'along', piece: name, from: from.name, to: to.name }]
      : [];
  });

/** Where a line goes on across the ends of a seam that is sewn before it. */
const placesAcross = (seam: Seam, tape: Tape, lines: SewnLines): JoinPlace[] =>
  seam.felled
    ? []
    : flatMapped(endsOf(seam, tape), ([a, b]): JoinPlace[] => {
        if (a.running.turn === 'fold') return [];
        const later = a.running.rank > a.sewn.rank && b.running.rank > b.sewn.rank;
        if (!later || a.running.rank !== b.running.rank || a.running.turn !== b.running.turn) return [];
        if (a.running === b.running && a.sewn === b.sewn)
          return isLayered(a.running, lines) ? [] : [{ kind: 'mirror', a: cornerOf(a) }];
        return a.running.turn === 'hem' || isOneLine(a.running, b.running, lines)
          ? [{ kind: 'across', a: cornerOf(a), b: cornerOf(b) }]
          : [];
      });

/** Whether an edge is sewn to its own twin: two layers, one turned over the other. */
const isLayered = (edge: PieceEdge, { stands }: SewnLines): boolean =>
  (stands.get(edge) ?? []).some(({ opposite }) => opposite.includes(edge));

const cornerOf = ({ piece, running, sewn }: SeamEnd): SeamCorner => ({
  piece,
  edge: running.name,
  seam: sewn.name,
});

function complaint(place: JoinPlace): Issue {
  const where =
    place.kind === 'along'
      ? `from "${place.from}" to "${place.to}" of ${place.piece}`
      : place.kind === 'mirror'
        ? `along "${place.a.edge}" of ${place.a.piece}, past "${place.a.seam}" to its own other half`
        : `from "${place.a.edge}" of ${place.a.piece} to "${place.b.edge}" of ${place.b.piece}`;
  return {
    code: 'line-unjoined',
    severity: 'error',
    path: place.kind === 'along' ? `${place.piece}/${place.from}` : `${place.a.piece}/${place.a.edge}`,
    message: `A line goes on ${where}, and nothing says whether it runs on there or turns by design.`,
  };
}
