import { edgeLength } from '../geometry/edge.ts';
import { WALK } from '../geometry/tolerance.ts';
import type { Result } from '../issue.ts';
import type { Piece } from '../pattern/piece.ts';
import { fixedMm } from '../text/figure.ts';
import type { Altered } from './reassemble.ts';
import { refused } from './refusal.ts';
import { type Spreading, slashAndSpread } from './slash-and-spread.ts';

/** How much fullness an edge is to take: it becomes `length` mm long, to be gathered back to its seam. */
export interface Fullness extends Omit<Spreading, 'amount'> {
  /** The edge that is to be gathered: one of the two that are slashed. */
  readonly edge: string;
  /** mm */
  readonly length: number;
}

/**
 * Spreads a piece so far that one edge comes out at the length asked for, to 0.05 mm: its seam's length times the
 * gather ratio. A straight edge spread in parallel needs just the difference; for others the amount is searched for,
 * and the blend takes up what is left.
 *
 * Issues: `edge-not-slashed`, `no-fullness`, `fullness-impossible`, and those of `slashAndSpread`.
 */
export function addFullness(piece: Piece, fullness: Fullness): Result<Altered & { readonly amount: number }> {
  const { edge: name, length, ...slashed } = fullness;
  const edge = piece.edges.find((candidate) => candidate.name === name);
  if (!edge || (name !== slashed.from && name !== slashed.to) || name === slashed.hinge)
    return refused(
      'edge-not-slashed',
      name,
      `Fullness is added to an edge that is slashed and opened; “${name}” is not.`,
    );
  const before = edgeLength(edge);
  if (length - before <= WALK)
    return refused('no-fullness', name, `“${name}” is ${fixedMm(before, 1)} long already.`, {
      value: length,
      limits: { min: before, unit: 'mm' },
    });
  const excessAt = (amount: number): Result<number> => {
    const spread = slashAndSpread(piece, { ...slashed, amount });
    return spread.ok ? { ...spread, value: lengthOf(spread.value.piece, name) - length } : spread;
  };
  const amount = amountFor(excessAt, length - before);
  if (!amount.ok) return amount;
  const lengths = new Map([[name, length]]);
  for (const share of NEARBY) {
    const tried = amount.value * share;
    const full = slashAndSpread(piece, { ...slashed, amount: tried, lengths });
    if (!full.ok) return full;
    if (Math.abs(lengthOf(full.value.piece, name) - length) <= WALK)
      return { ...full, value: { ...full.value, amount: tried } };
  }
  return refused('fullness-impossible', name, `“${name}” cannot be opened to ${fixedMm(length, 1)}.`, {
    value: length,
  });
}

function lengthOf(piece: Piece, name: string): number {
  const edge = piece.edges.find((candidate) => candidate.name === name);
  return edge ? edgeLength(edge) : 0;
}

/** The amount that comes nearest, by a few secant steps from the plain difference. */
function amountFor(excessAt: (amount: number) => Result<number>, first: number): Result<number> {
  let [before, tried] = [{ amount: 0, excess: -first }, first];
  let best = { amount: first, excess: Infinity };
  for (let step = 0; step < STEPS; step++) {
    const excess = excessAt(tried);
    if (!excess.ok) return excess;
    const now = { amount: tried, excess: excess.value };
    if (Math.abs(now.excess) < Math.abs(best.excess)) best = now;
    if (Math.abs(now.excess) <= NEAR) break;
    const slope = (now.excess - before.excess) / (now.amount - before.amount);
    // An edge grows by something like the amount; a slope far from 1 comes of a blend that changed its kind.
    tried = now.amount - now.excess / Math.min(2, Math.max(0.5, slope || 1));
    before = now;
  }
  return { ok: true, value: best.amount, issues: [] };
}

const STEPS = 10;

/** Where a hollow edge becomes a round one, its length jumps: an amount so near by, in shares, may do better. */
const NEARBY = [1, 0.99, 1.01, 0.97, 1.03, 0.94, 1.06];

/** Near enough for the blend to take up the rest, mm. */
const NEAR = 0.01;
