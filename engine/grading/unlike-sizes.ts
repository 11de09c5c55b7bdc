import { COINCIDENCE } from '../geometry/tolerance.ts';
import type { Issue } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';
import type { GradedSize } from './laid-size.ts';

/**
 * What must be alike in all sizes of one garment, each size beside the one before it: the same pieces with the same edges
 * in the same order, every edge of the same kind (sewn, folded, turned up, finished; straight or curved; as often hollow
 * and round), and the same notches in the same order along it. A pattern with unlike sizes is several patterns.
 *
 * Issues: `piece-not-in-all-sizes`, `edge-not-in-all-sizes`, `edge-changes-kind`, `notch-not-in-all-sizes`,
 * `notches-change-order`.
 */
export const unlikeSizes = (sizes: readonly GradedSize[]): readonly Issue[] =>
  sizes.slice(1).flatMap((size, i) => {
    const before = sizes[i];
    return before ? unlike(before, size) : [];
  });

function unlike(before: GradedSize, after: GradedSize): readonly Issue[] {
  const [was, is] = [before.of.name, after.of.name];
  const names = [...new Set([...before.pieces.keys(), ...after.pieces.keys()])];
  return names.flatMap((name): readonly Issue[] => {
    const [one, other] = [before, after].map(({ pieces }) => pieces.get(name)?.finished.piece);
    if (one && other) return unlikePieces(one, other, was, is);
    const message = `Size ${one ? was : is} has a piece “${name}”, size ${one ? is : was} has none.`;
    return [issue('piece-not-in-all-sizes', is, name, message)];
  });
}

function unlikePieces(one: Piece, other: Piece, was: string, is: string): readonly Issue[] {
  const order = ({ edges }: Piece): string => edges.map(({ name }) => name).join(', ');
  if (order(one) !== order(other))
    return [
      issue(
        'edge-not-in-all-sizes',
        is,
        one.name,
        `${one.name} has the edges ${order(one)} in size ${was}, and ${order(other)} in size ${is}.`,
      ),
    ];
  return one.edges.flatMap((edge, i) => {
    const now = other.edges[i];
    if (!now) return [];
    const [kindBefore, kindAfter] = [kindOf(edge), kindOf(now)];
    const changed =
      kindBefore === kindAfter
        ? []
        : [
            issue(
              'edge-changes-kind',
              is,
              `${one.name}/${edge.name}`,
              `The edge “${edge.name}” of ${one.name} is ${kindBefore} in size ${was}, and ${kindAfter} in size ${is}.`,
            ),
          ];
    return [...changed, ...unlikeNotches(one, other, edge.name, was, is)];
  });
}

/** "sewn, curved, 1 turn from hollow to round". */
function kindOf({ turn, curves, inflections }: PieceEdge): string {
  const made = { seam: 'sewn', fold: 'a fold', hem: 'turned up', finished: 'finished', dart: 'a dart’s leg' }[
    turn
  ];
  const line = curves.every(({ kind }) => kind === 'line') ? 'straight' : 'curved';
  return inflections === 0 ? `${made}, ${line}` : `${made}, ${line}, turning ${inflections} times`;
}

function unlikeNotches(one: Piece, other: Piece, edge: string, was: string, is: string): readonly Issue[] {
  const along = (piece: Piece): Piece['notches'] =>
    piece.notches.filter((notch) => notch.edge === edge).toSorted((a, b) => a.at - b.at);
  const [before, after] = [along(one), along(other)];
  const names = (notches: Piece['notches']): string => notches.map(({ name }) => name).join(', ') || 'none';
  const path = `${one.name}/${edge}`;
  if (names(before) === names(after)) return [];
  const [sortedBefore, sortedAfter] = [before, after].map((list) =>
    list
      .map(({ name }) => name)
      .toSorted()
      .join(),
  );
  if (sortedBefore !== sortedAfter)
    return [
      issue(
        'notch-not-in-all-sizes',
        is,
        path,
        `“${edge}” of ${one.name} has the notches ${names(before)} in size ${was}, and ${names(after)} in size ${is}.`,
      ),
    ];
  if (isTied(before, after)) return [];
  return [
    issue(
      'notches-change-order',
      is,
      path,
      `Along “${edge}” of ${one.name} the notches come as ${names(before)} in size ${was}, and as ${names(after)} in size ${is}.`,
    ),
  ];
}

/** Notches in one place may be named in either order. */
const isTied = (before: Piece['notches'], after: Piece['notches']): boolean =>
  after.every(({ name, at }, i) => {
    const expected = before[i]?.name;
    const same = after.find((notch) => notch.name === expected);
    return name === expected || (same !== undefined && Math.abs(same.at - at) <= COINCIDENCE);
  });

const issue = (code: IssueCode, size: string, path: string, message: string): Issue => ({
  code,
  severity: 'error',
  path: `size ${size}: ${path}`,
  message,
});
