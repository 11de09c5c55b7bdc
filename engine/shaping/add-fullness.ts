import { edgeLength } from '../geometry/edge.ts';
import { RELATION, WALK } from '../geometry/tolerance.ts';
import type { Result } from '../issue.ts';
import type { Piece } from '../pattern/piece.ts';
import type { Altered } from './reassemble.ts';
import { refused } from './refusal.ts';
import { type Spread, slashAndSpread } from './slash-and-spread.ts';

/** How much fullness an edge is to take: it becomes `length` mm long, to be gathered back to its seam. */
export interface Fullness extends Omit<Spread, 'amount'> {
  /** The edge that is to be gathered: one of the two that are slashed. */
  readonly edge: string;
  /** mm */
  readonly length: number;
}

/**
 * Spreads a piece so far that one edge comes out at the length asked for, to 0.05 mm: its seam's length times the
 * gather ratio. A straight edge spread in parallel needs just the difference; for others the amount is found by
 * regula falsi (Illinois variant), since the edge grows steadily with it.
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
    return refused('no-fullness', name, `“${name}” is ${before.toFixed(1)} mm long already.`, {
      value: length,
      limits: { min: before, unit: 'mm' },
    });
  let [low, high] = [0, length - before];
  let [under, over] = [before - length, Number.NaN];
  let tried = high;
  for (let step = 0; step < MOST_STEPS; step++) {
    const spread = slashAndSpread(piece, { ...slashed, amount: tried });
    if (!spread.ok) return spread;
    const opened = spread.value.piece.edges.find((candidate) => candidate.name === name);
    const excess = (opened ? edgeLength(opened) : 0) - length;
    if (Math.abs(excess) <= CLOSE) return { ...spread, value: { ...spread.value, amount: tried } };
    if (excess < 0) {
      [low, under] = [tried, excess];
      if (Number.isNaN(over)) high = tried * 1.5;
      else over /= 2;
    } else {
      [high, over] = [tried, excess];
      if (step > 0) under /= 2;
    }
    tried = Number.isNaN(over) ? high : low + ((high - low) * under) / (under - over);
    if (high - low <= RELATION) break;
  }
  return refused('fullness-impossible', name, `“${name}” cannot be opened to ${length.toFixed(1)} mm.`, {
    value: length,
  });
}

const MOST_STEPS = 60;

/** Well within what a seam is walked to. */
const CLOSE = WALK / 10;
