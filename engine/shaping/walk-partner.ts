import { tapeFor } from '../checks/tape.ts';
import { type WalkedStretch, walkSeam } from '../checks/walk.ts';
import type { Edge } from '../geometry/curve.ts';
import { edgeLength } from '../geometry/edge.ts';
import { WALK } from '../geometry/tolerance.ts';
import type { Result } from '../issue.ts';
import { dartedEdge } from '../pattern/dart.ts';
import type { Piece } from '../pattern/piece.ts';
import { noSuchEdge } from './cut-up.ts';

/** An edge of a piece. */
export interface PieceAndEdge {
  readonly piece: Piece;
  readonly edge: string;
}

/** The altered edge walked along the one it is sewn to. Lengths in mm. */
export interface PartnerWalk {
  readonly edge: string;
  readonly partner: string;
  readonly before: number;
  readonly after: number;
  readonly partnerLength: number;
  /** What is gathered away in the seam; less than nothing when the partner is the longer one. */
  readonly gathers: number;
  /** Altered edge over partner. */
  readonly ratio: number;
  /** `plain`: equal within 0.05 mm. `gather`: the altered edge is longer. `partner longer`: it cannot be sewn as it is. */
  readonly verdict: 'plain' | 'gather' | 'partner longer';
  /** Between notches of one name on both edges. */
  readonly stretches: readonly WalkedStretch[];
}

/**
 * Walks an altered edge along its partner, notch to notch where both carry notches of one name, both from the same
 * end of the seam: right sides together, outlines run against each other, so the partner is walked backwards. Darts in
 * either are closed: an edge is walked with what goes on beyond their mouths.
 *
 * Issues: `no-such-edge`.
 */
export function walkPartner(
  before: Piece,
  altered: PieceAndEdge,
  partner: PieceAndEdge,
): Result<PartnerWalk> {
  const [old, own, other] = [
    dartedEdge(before.edges, altered.edge),
    dartedEdge(altered.piece.edges, altered.edge),
    dartedEdge(partner.piece.edges, partner.edge),
  ];
  if (own.length === 0) return noSuchEdge(altered.edge, altered.piece.edges);
  if (other.length === 0) return noSuchEdge(partner.edge, partner.piece.edges);
  const [after, partnerLength] = [lengthOf(own), lengthOf(other)];
  const [ownPiece, otherPiece] = [
    { ...altered.piece, name: 'altered' },
    { ...partner.piece, name: 'partner' },
  ];
  const ratio = after / partnerLength;
  const seam = {
    name: `${altered.edge} to ${partner.edge}`,
    a: own.map(({ name }) => ({ piece: 'altered', edge: name })),
    b: other.toReversed().map(({ name }) => ({ piece: 'partner', edge: name, reversed: true as const })),
    ease: 0,
    gatherRatio: ratio,
  };
  const tape = tapeFor({
    name: '',
    body: '',
    pieces: [ownPiece, otherPiece],
    seams: [seam],
    joins: [],
    girths: [],
    shapes: [],
    notions: [],
    steps: [],
    issues: [],
  });
  const gathers = after - partnerLength;
  return {
    ok: true,
    issues: [],
    value: {
      edge: altered.edge,
      partner: partner.edge,
      before: old.length > 0 ? lengthOf(old) : after,
      after,
      partnerLength,
      gathers,
      ratio,
      verdict: Math.abs(gathers) <= WALK ? 'plain' : gathers > 0 ? 'gather' : 'partner longer',
      stretches: walkSeam(seam, tape)?.stretches ?? [],
    },
  };
}

const lengthOf = (edges: readonly Edge[]): number => edges.reduce((sum, edge) => sum + edgeLength(edge), 0);
