import type { Outline } from '../geometry/curve.ts';
import { edgeLength, lengthUpTo } from '../geometry/edge.ts';
import { levelAt, type OutlineCrossing, outlineCrossings } from '../geometry/intersect.ts';
import { outlineBounds } from '../geometry/outline.ts';
import type { Result } from '../issue.ts';
import type { Piece } from '../pattern/piece.ts';
import { fixedMm } from '../text/figure.ts';
import { cutUp, movesOf, type OutlinePlace, type Slash } from './cut-up.ts';
import { type Altered, reassembled } from './reassemble.ts';
import { refused } from './refusal.ts';
import { shifted } from './rigid-move.ts';

/** How a piece is lengthened: by so many mm (less than nothing shortens) at the level line y (mm). */
export interface Lengthening {
  readonly amount: number;
  readonly at: number;
}

/** A cut this near to a corner would leave a sliver of an edge, mm. */
const SLIVER = 1;

/**
 * Cuts a piece across at a level and moves everything below down, or up over the rest. Every height across the
 * level changes by exactly the amount, no width above or below it changes, and the side edges are blended.
 *
 * Issues: `level-misses-piece`, `level-at-corner`, `shortened-away`, and those of `cutUp`.
 */
export function lengthen(piece: Piece, { amount, at }: Lengthening): Result<Altered> {
  const { top, bottom } = outlineBounds(piece.edges);
  const limits = { min: 0, max: bottom - top, unit: 'mm' };
  const found = outlineCrossings(piece.edges, levelAt(at));
  if (found.length < 2 || found.length % 2 === 1)
    return refused(
      'level-misses-piece',
      'level',
      `The level ${fixedMm(at - top, 1)} below the top does not run across the piece.`,
      { value: at - top, limits },
    );
  if (amount <= at - bottom || amount <= top - at)
    return refused('shortened-away', 'level', 'There is not so much length to take out at this level.', {
      value: amount,
      limits: { min: Math.max(at - bottom, top - at), unit: 'mm' },
    });
  const places = found.map((crossing) => placeOf(piece.edges, crossing));
  const atCorner = places.find((place) => nearCorner(piece.edges, place));
  if (atCorner)
    return refused(
      'level-at-corner',
      atCorner.edge,
      `At this level lies a corner of “${atCorner.edge}”; choose a level a little above or below it.`,
    );
  const slashes = Array.from({ length: places.length / 2 }, (_, i): Slash[] => {
    const [from, to] = [places[2 * i], places[2 * i + 1]];
    return from && to ? [{ from, to }] : [];
  }).flat();
  const cut = cutUp(piece.edges, slashes);
  if (!cut.ok) return cut;
  // The part beyond a cut lies on the left of p to q: below, when that heading runs to the left.
  const across = ({ p, q }: { readonly p: { readonly x: number }; readonly q: { readonly x: number } }) =>
    shifted({ x: 0, y: q.x < p.x ? amount : -amount });
  const highest = cut.value.stretches.find(({ curves }) => curves.some(({ from }) => from.y < at));
  const moves = movesOf(cut.value, across, highest?.part ?? 0);
  return { ok: true, value: reassembled(piece, cut.value, moves), issues: [] };
}

function placeOf(outline: Outline, crossing: OutlineCrossing): OutlinePlace {
  const edge = outline.find(({ name }) => name === crossing.edge);
  return { edge: crossing.edge, at: edge ? lengthUpTo(edge, crossing) : 0 };
}

function nearCorner(outline: Outline, { edge: name, at }: OutlinePlace): boolean {
  const edge = outline.find((candidate) => candidate.name === name);
  return !edge || at < SLIVER || at > edgeLength(edge) - SLIVER;
}
