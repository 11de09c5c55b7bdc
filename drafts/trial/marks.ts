import { edgeOf } from '../../engine/geometry/edge.ts';
import { edgeCrossings, type StraightLine } from '../../engine/geometry/intersect.ts';
import { distance, type Point, point } from '../../engine/geometry/point.ts';
import { heading } from '../../engine/geometry/vector.ts';
import type { InsideLine, Piece } from '../../engine/pattern/piece.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import { PLUMB } from '../cutting-steps.ts';
import { straight } from '../piece-edges.ts';

/** Room to write beside a line what was pinned there. */
const PINNED = 'pinned: ________';

/**
 * Draws on the panels what one looks at when they are tried on: the arm folds across back and front, and a plumb line
 * down the middle of each panel, beside which there is room to write what was pinned.
 */
export const markedForFitting = (pieces: readonly Piece[], { plan }: PanelCut): readonly Piece[] =>
  pieces.map((piece) => {
    const part = piece.name.endsWith('front') ? 'front' : 'back';
    const { across: place } = plan.foundation[part];
    const atSide = piece.name.startsWith('side');
    // Beside the princess line the panel has turned with the dart, and its level with it.
    const turned = atSide ? plan.lines[part].turned : 0;
    const through = atSide && part === 'front' ? plan.foundation.front.closed(place) : place;
    const across = crossLine(piece, { through, heading: heading(turned) }, `across ${part}`);
    const { from, to } = piece.grain;
    return {
      ...piece,
      lines: [
        ...piece.lines.map((line) => (line.text ? { ...line, text: `${line.text}; ${PINNED}` } : line)),
        ...across,
        levelText(PLUMB, beside(from, to), `${PLUMB}; ${PINNED}`),
      ],
    };
  });

/** A line right across a piece, where it reaches so far. */
function crossLine(piece: Piece, line: StraightLine, name: string): readonly InsideLine[] {
  const outline = edgeOf(
    piece.name,
    piece.edges.flatMap(({ curves }) => curves),
  );
  const [first, second] = edgeCrossings(outline, line)
    .toSorted((a, b) => a.along - b.along)
    .map((crossing) => crossing.point);
  if (!first || !second || distance(first, second) < SHORTEST) return [];
  return [levelText(name, [first, second], `${name}; ${PINNED}`)];
}

/** A shorter line across a panel has no room for words, mm. */
const SHORTEST = 30;

const levelText = (name: string, [from, to]: readonly [Point, Point], text: string): InsideLine => ({
  name,
  kind: 'level',
  curves: straight(from, to),
  text,
});

/** A line beside the grainline, a little to its right. */
const BESIDE = 12;

const beside = (from: Point, to: Point): readonly [Point, Point] => [
  point(from.x + BESIDE, from.y),
  point(to.x + BESIDE, to.y),
];
