import { flatMapped } from '../flat-mapped.ts';
import { edgeEnd, edgeStart, pointAlong } from '../geometry/edge.ts';
import { distance } from '../geometry/point.ts';
import { COINCIDENCE, WALK } from '../geometry/tolerance.ts';
import type { Issue } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Notch, Piece } from '../pattern/piece.ts';
import type { EdgeRef, Seam } from '../pattern/seam.ts';
import { inMm } from '../text/figure.ts';
import type { Tape } from './tape.ts';

/** A notch with the piece it stands on. */
interface PlacedNotch {
  readonly piece: string;
  readonly notch: Notch;
}

/**
 * Looks at every notch: it lies on its edge; on a sewn edge it has a partner of the same name on the other side,
 * drawn alike; where a seam joins only front pieces it is single, only back pieces double (common practice, no
 * source); and every fold has its notch. Notches that only mark a fold or a dart need no partner: the other side has
 * one of its own, or none.
 */
export function markFaults(garment: Garment, tape: Tape): Issue[] {
  return [
    ...misplacedNotches(garment, tape),
    ...lonelyNotches(garment, tape),
    ...flatMapped(garment.seams, (seam) => [...repeatedNotches(seam, tape), ...unlikePartners(seam, tape)]),
  ];
}

/** Of these, what hangs on where notches lie: those that lie off their edges, and folds that have none at their ends. */
export const misplacedNotches = ({ pieces }: Garment, tape: Tape): Issue[] =>
  flatMapped(pieces, (piece) => [...strayNotches(piece, tape), ...bareFolds(piece)]);

function strayNotches(piece: Piece, tape: Tape): Issue[] {
  return flatMapped(piece.notches, (notch) => {
    const edge = tape.edge(piece.name, notch.edge);
    if (!edge) return [];
    const length = tape.length(edge);
    if (notch.at >= -COINCIDENCE && notch.at <= length + COINCIDENCE) return [];
    const message =
      `The notch "${notch.name}" of ${piece.name} should be ${inMm(notch.at)} along "${notch.edge}", ` +
      `which is only ${inMm(length)} long.`;
    const limits = { min: 0, max: length, unit: 'mm' };
    return [{ ...fault('notch-off-edge', piece.name, notch, message), value: notch.at, limits }];
  });
}

/** Every fold, be it an edge or a line inside, has a notch that marks one of its ends. */
function bareFolds(piece: Piece): Issue[] {
  const folds = [
    ...piece.edges.filter((edge) => edge.turn === 'fold'),
    ...piece.lines.filter((line) => line.kind === 'fold'),
  ].filter((fold) => fold.curves.length > 0);
  if (folds.length === 0) return [];
  const marked = flatMapped(piece.notches, (notch) => {
    const edge = piece.edges.find((candidate) => candidate.name === notch.edge);
    return notch.mark === 'fold' && edge ? [pointAlong(edge, notch.at).point] : [];
  });
  return flatMapped(folds, (fold): Issue[] => {
    const ends = [edgeStart(fold), edgeEnd(fold)];
    if (marked.some((mark) => ends.some((end) => distance(mark, end) <= WALK))) return [];
    const message = `The fold "${fold.name}" of ${piece.name} has no notch at either end.`;
    return [{ code: 'fold-without-notch', severity: 'error', path: `${piece.name}/${fold.name}`, message }];
  });
}

function lonelyNotches(garment: Garment, tape: Tape): Issue[] {
  const opposite = oppositeSides(garment.seams);
  return flatMapped(garment.pieces, (piece) =>
    flatMapped(piece.notches, (notch) => {
      const sides = needsPartner(notch) ? opposite.get(`${piece.name}/${notch.edge}`) : undefined;
      if (!sides) return [];
      if (sides.some((refs) => hasNotch(refs, notch.name, tape))) return [];
      const message = `The notch "${notch.name}" on "${notch.edge}" of ${piece.name} has no partner on the edge it is sewn to.`;
      return [fault('notch-without-partner', piece.name, notch, message)];
    }),
  );
}

/** What each sewn edge is sewn to, by `piece/edge`. */
function oppositeSides(seams: readonly Seam[]): ReadonlyMap<string, readonly (readonly EdgeRef[])[]> {
  const opposite = new Map<string, (readonly EdgeRef[])[]>();
  const note = (side: readonly EdgeRef[], other: readonly EdgeRef[]): void => {
    for (const { piece, edge } of side) {
      const known = opposite.get(`${piece}/${edge}`);
      if (known) known.push(other);
      else opposite.set(`${piece}/${edge}`, [other]);
    }
  };
  for (const { a, b } of seams) {
    note(a, b);
    note(b, a);
  }
  return opposite;
}

function repeatedNotches(seam: Seam, tape: Tape): Issue[] {
  return flatMapped([seam.a, seam.b], (side) => {
    const placed = notchesOn(side, tape).filter(({ notch }) => needsPartner(notch));
    return flatMapped(placed, ({ piece, notch }, i) => {
      if (placed.findIndex((other) => other.notch.name === notch.name) === i) return [];
      const message = `On one side of the seam "${seam.name}" there are two notches "${notch.name}", so it is not clear which is meant.`;
      return [fault('notch-twice', piece, notch, message)];
    });
  });
}

function unlikePartners(seam: Seam, tape: Tape): Issue[] {
  const others = new Map(notchesOn(seam.b, tape).map((placed) => [placed.notch.name, placed]));
  return flatMapped(notchesOn(seam.a, tape), (a): Issue[] => {
    const b = others.get(a.notch.name);
    if (!b) return [];
    if (isDouble(a) !== isDouble(b)) {
      const message = `The notch "${a.notch.name}" is drawn ${drawn(a)} on ${a.piece} but ${drawn(b)} on ${b.piece}.`;
      return [fault('notch-partners-differ', a.piece, a.notch, message)];
    }
    const front = isNamed('front', a) || isNamed('front', b);
    const back = isNamed('back', a) || isNamed('back', b);
    if (front && !back && isDouble(a)) {
      const message = `The notch "${a.notch.name}" on the front of the seam "${seam.name}" is double; double notches are for the back.`;
      return [fault('notch-double-at-front', a.piece, a.notch, message)];
    }
    if (back && !front && a.notch.mark === 'single') {
      const message = `The notch "${a.notch.name}" on the back of the seam "${seam.name}" is single; single notches are for the front.`;
      return [fault('notch-single-at-back', a.piece, a.notch, message)];
    }
    return [];
  });
}

const needsPartner = ({ mark }: Notch): boolean => mark !== 'fold' && mark !== 'dart';

const notchesOn = (refs: readonly EdgeRef[], tape: Tape): PlacedNotch[] =>
  flatMapped(refs, ({ piece, edge }) => tape.notches(piece, edge).map((notch) => ({ piece, notch })));

const hasNotch = (refs: readonly EdgeRef[], name: string, tape: Tape): boolean =>
  refs.some(({ piece, edge }) => tape.notches(piece, edge).some((notch) => notch.name === name));

const isDouble = ({ notch }: PlacedNotch): boolean => notch.mark === 'double';

const drawn = (placed: PlacedNotch): string => (isDouble(placed) ? 'double' : 'single');

const isNamed = (word: string, { piece }: PlacedNotch): boolean => piece.split(/\W+/).includes(word);

const fault = (code: IssueCode, piece: string, notch: Notch, message: string): Issue => ({
  code,
  severity: 'error',
  path: `${piece}/${notch.edge}`,
  message,
});
