import { tapeFor } from '../checks/tape.ts';
import { type Stretch, walkSeam } from '../checks/walk.ts';
import { edgeLength } from '../geometry/edge.ts';
import { WALK } from '../geometry/tolerance.ts';
import type { Result } from '../issue.ts';
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
  readonly stretches: readonly Stretch[];
}

/**
 * Walks an altered edge along its partner, notch to notch where both carry notches of one name, both from the same
 * end of the seam: right sides together, outlines run against each other, so the partner is walked backwards.
 *
 * Issues: `no-such-edge`.
 */
export function walkPartner(
  before: Piece,
  altered: PieceAndEdge,
  partner: PieceAndEdge,
): Result<PartnerWalk> {
  const [old, own, other] = [before, altered.piece, partner.piece].map((piece, i) =>
    piece.edges.find(({ name }) => name === (i === 2 ? partner.edge : altered.edge)),
  );
  if (!own) return noSuchEdge(altered.edge, altered.piece.edges);
  if (!other) return noSuchEdge(partner.edge, partner.piece.edges);
  const [after, partnerLength] = [edgeLength(own), edgeLength(other)];
  const [ownPiece, otherPiece] = [
    { ...altered.piece, name: 'altered' },
    { ...partner.piece, name: 'partner' },
  ];
  const ratio = after / partnerLength;
  const seam = {
    name: `${altered.edge} to ${partner.edge}`,
    a: [{ piece: 'altered', edge: altered.edge }],
    b: [{ piece: 'partner', edge: partner.edge, reversed: true as const }],
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
      before: old ? edgeLength(old) : after,
      after,
      partnerLength,
      gathers,
      ratio,
      verdict: Math.abs(gathers) <= WALK ? 'plain' : gathers > 0 ? 'gather' : 'partner longer',
      stretches: walkSeam(seam, tape)?.stretches ?? [],
    },
  };
}
