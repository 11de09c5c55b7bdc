import type { EdgeRef } from '../../pattern/seam.ts';
import { listed } from '../../text/listed.ts';
import { ratioWords, wholeLength } from '../../text/on-one-line.ts';
import type { Unit } from '../../text/units.ts';
import type { SeamFacts, TurnFacts } from './step-facts.ts';

/** What a step says of a seam or of a turned edge: a row of its table. */
export interface SeamRow {
  /** The letter in the drawing; none for a turned edge. */
  readonly letter: string;
  readonly what: string;
  readonly length: string;
  /** Which notches meet, or how deep it is turned. */
  readonly how: string;
}

/** What is sewn to what, how long it is, and which notches meet. */
export function seamRow(
  { letter, seam, lengthA, lengthB, matched, between }: SeamFacts,
  units: Unit,
): SeamRow {
  const gathered = seam.gatherRatio !== 1;
  const length = gathered
    ? `gather ${wholeLength(lengthA, units)} to ${wholeLength(lengthB, units)} (${ratioWords(seam.gatherRatio)})`
    : wholeLength(lengthB, units);
  const ends = between.length > 0 ? [`draw up between ${listed(between)}`] : [];
  const how = [...ends, ...(matched.length > 0 ? [`match ${listed(matched)}`] : [])].join('; ');
  return { letter, what: sidesOf(seam.a, seam.b), length, how };
}

/** Which edge is turned, how long it is, and by how much. */
export const turnRow = ({ edge, length, depth }: TurnFacts, units: Unit): SeamRow => ({
  letter: '',
  what: `${edge.piece}, ${edge.edge}`,
  length: wholeLength(length, units),
  how: `turn ${wholeLength(depth, units)}`,
});

/** The pieces of both sides; their edges where a piece is sewn to itself, or that a left is sewn to its right. */
function sidesOf(a: readonly EdgeRef[], b: readonly EdgeRef[]): string {
  const pieces = (side: readonly EdgeRef[]): string => listed(side.map(({ piece }) => piece));
  if (pieces(a) !== pieces(b)) return `${pieces(a)} to ${pieces(b)}`;
  const edges = (side: readonly EdgeRef[]): string => listed(side.map(({ edge }) => edge));
  return edges(a) === edges(b) ? `${pieces(a)}, left to right` : `${pieces(a)}, ${edges(a)} to ${edges(b)}`;
}
