import { sides } from '../../engine/body/side.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import { sided } from './as-worn.ts';
import { piecesOfBoth } from './pieces-of-both.ts';
import { issuesOfBoth, notionsOfBoth, stepsOfBoth } from './said-of-both.ts';
import { girthsOfBoth, joinsOfBoth, seamsOfBoth } from './seams-of-both.ts';
import { stepOfBoth } from './sewing-of-both.ts';
import { shapesOfBoth } from './shapes-of-both.ts';

/**
 * Puts a garment together from one drawn for the right side of a body and one drawn for the left, both symmetrical.
 * Pairs that are alike stay pairs. Those that differ are a right and a left piece, each drawn as it is worn and seen
 * from outside, with seams, joins and girths of their own. Throws where a piece cut whole differs, for then neither
 * side fits the other.
 */
export function bothSides(right: Garment, left: Garment): Garment {
  const both = piecesOfBoth(right.pieces, left.pieces);
  const seams = seamsOfBoth(right, left, both);
  const notions = notionsOfBoth(right.notions, left.notions);
  return {
    ...right,
    pieces: both.pieces,
    seams,
    joins: joinsOfBoth(right, left, both),
    girths: girthsOfBoth(right, left, both),
    notions,
    steps: stepsOfBoth(right.steps, left.steps),
    shapes: shapesOfBoth(right.shapes, left.shapes, both),
    sewing: (right.sewing ?? []).map((step) =>
      stepOfBoth(step, both, { seams: nowCalled(seams), notions: nowCalled(notions) }),
    ),
    issues: issuesOfBoth(right.issues, left.issues),
  };
}

/** The names under which something is there now: its own, or its right and its left. */
function nowCalled(things: readonly { readonly name: string }[]): (name: string) => readonly string[] {
  const there = new Set(things.map(({ name }) => name));
  return (name) => (there.has(name) ? [name] : sides.map((side) => sided(side, name)));
}
