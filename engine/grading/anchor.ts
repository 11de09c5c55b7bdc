import { edgeStart } from '../geometry/edge.ts';
import { nearestOnEdge } from '../geometry/nearest.ts';
import { between, type Point } from '../geometry/point.ts';
import type { InsideLine, Piece, PieceEdge } from '../pattern/piece.ts';

/** The place of a piece that is laid on itself in all sizes, and what it is called. */
export interface Anchor {
  readonly name: string;
  readonly at: Point;
}

/** A corner of a stitching line: where one edge ends and the next begins, clockwise. */
export interface PieceCorner extends Anchor {
  readonly before: PieceEdge;
  readonly after: PieceEdge;
}

/** The corners of a piece, in the order of its edges. */
export const cornersOf = ({ edges }: Piece): readonly PieceCorner[] =>
  edges.flatMap((after, i) => {
    const before = edges.at(i - 1);
    return before ? [{ name: `${before.name} to ${after.name}`, at: edgeStart(after), before, after }] : [];
  });

/** The places by which nests may be laid, in the order in which one stands in for another on a piece that has it not. */
export const alignments = ['waist', 'hip', 'bust point', 'underarm'] as const;

export type Alignment = (typeof alignments)[number];

const finders: Readonly<Record<Alignment, (piece: Piece) => Anchor | undefined>> = {
  waist: (piece) => {
    const ends = cornersOf(piece).filter(({ before, after }) => [before, after].some(isCalled('waist')));
    const centre = ends.find(({ before, after }) => [before, after].some(isCentre));
    const at = centre ?? nearestToCentre(ends, piece);
    return at && { name: centre ? 'centre line at the waist' : `waist, ${at.name}`, at: at.at };
  },
  hip: (piece) => levelOf(piece, 'hip', 'centre'),
  'bust point': (piece) => levelOf(piece, 'bust', 'princess'),
  underarm: (piece) => {
    const at = cornersOf(piece).find(
      ({ before, after }) =>
        [before, after].some(({ name }) => /armhole|cap/.test(name)) &&
        [before, after].some(({ name }) => /side|seam/.test(name)),
    );
    return at && { name: 'underarm', at: at.at };
  },
};

/**
 * Where a piece is laid on itself: at the place that is asked for, or, on a piece that has it not, at the first of the
 * others that it has; at its first corner where it has none. `asked` is one of `alignments`, or the name of a corner.
 */
export function anchorOf(piece: Piece, asked: string): Anchor {
  const corner = cornersOf(piece).find(({ name }) => name === asked);
  if (corner) return { name: corner.name, at: corner.at };
  const wanted = alignments.filter((name) => name === asked);
  for (const name of [...wanted, ...alignments]) {
    const found = finders[name](piece);
    if (found) return found;
  }
  const [first] = cornersOf(piece);
  return first ? { name: first.name, at: first.at } : { name: 'grain', at: piece.grain.from };
}

const isCalled =
  (word: string) =>
  ({ name }: PieceEdge): boolean =>
    name.split(' ').includes(word);

const isCentre = ({ name, turn }: PieceEdge): boolean => turn === 'fold' || name.startsWith('centre');

/** x runs to the wearer's side, so that the centre is where it is least; on a piece drawn as a mirror image where it is most. */
function nearestToCentre(places: readonly PieceCorner[], { oneOf }: Piece): PieceCorner | undefined {
  const way = oneOf?.mirrored ? -1 : 1;
  return places.toSorted((a, b) => way * (a.at.x - b.at.x))[0];
}

/** The place of a level line at the centre or at a princess seam; its middle where it runs across a whole piece. */
function levelOf(piece: Piece, level: string, end: 'centre' | 'princess'): Anchor | undefined {
  const line = piece.lines.find(({ kind, name }) => kind === 'level' && name === `${level} level`);
  const ends = line && endsOf(line);
  if (!line || !ends) return undefined;
  const on = ends.map((at) => ({ at, edge: edgeAt(piece, at) }));
  const seam = on.find(({ edge }) =>
    end === 'centre' ? edge && isCentre(edge) : /princess/.test(edge?.name ?? ''),
  );
  if (seam) return { name: `${line.name} at ${seam.edge?.name ?? end}`, at: seam.at };
  const [a, b] = ends;
  return { name: `${line.name}, its middle`, at: between(a, b, 0.5) };
}

function endsOf({ curves }: InsideLine): readonly [Point, Point] | undefined {
  const [first, last] = [curves[0], curves.at(-1)];
  return first && last && [first.from, last.to];
}

/** The edge that a level line ends on. */
const edgeAt = (piece: Piece, at: Point): PieceEdge | undefined =>
  piece.edges
    .map((edge) => ({ edge, away: nearestOnEdge(edge, at).distance }))
    .toSorted((a, b) => a.away - b.away)[0]?.edge;
