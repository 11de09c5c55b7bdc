import { edgeLength } from '../geometry/edge.ts';
import type { Result } from '../issue.ts';
import type { Piece } from '../pattern/piece.ts';
import { fixedMm } from '../text/figure.ts';
import { noSuchEdge, type OutlinePlace } from './cut-up.ts';
import { refused } from './refusal.ts';

/**
 * Moves a notch to a place on an edge (mm from its start). Nothing else changes.
 *
 * Issues: `no-such-notch`, `no-such-edge`, `notch-off-edge`.
 */
export function moveNotch(piece: Piece, name: string, to: OutlinePlace): Result<Piece> {
  if (!piece.notches.some((notch) => notch.name === name)) {
    const known = piece.notches.map((notch) => notch.name).join(', ') || 'none at all';
    return refused(
      'no-such-notch',
      name,
      `The piece has no notch called “${name.slice(0, 60)}”. Its notches are: ${known}.`,
    );
  }
  const edge = piece.edges.find((candidate) => candidate.name === to.edge);
  if (!edge) return noSuchEdge(to.edge, piece.edges);
  const length = edgeLength(edge);
  if (!(to.at >= 0 && to.at <= length))
    return refused(
      'notch-off-edge',
      to.edge,
      `“${to.edge}” is only ${fixedMm(length, 1)} long; the notch cannot stand ${fixedMm(to.at, 1)} along it.`,
      { value: to.at, limits: { min: 0, max: length, unit: 'mm' } },
    );
  const notches = piece.notches.map((notch) => (notch.name === name ? { ...notch, ...to } : notch));
  return { ok: true, value: { ...piece, notches }, issues: [] };
}
