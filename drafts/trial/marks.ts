import { edgeOf } from '../../engine/geometry/edge.ts';
import { edgeCrossings, level as levelAt } from '../../engine/geometry/intersect.ts';
import { type Point, point } from '../../engine/geometry/point.ts';
import type { InsideLine, Piece } from '../../engine/pattern/piece.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import { straight } from '../piece-edges.ts';

/** Room to write beside a line what was pinned there. */
const PINNED = 'pinned: ________';

/**
 * Draws on the panels what one looks at when they are tried on: the arm folds across back and front, and a plumb line
 * down the middle of each panel, beside which there is room to write what was pinned.
 */
export const markedForFitting = (pieces: readonly Piece[], { plan }: PanelCut): readonly Piece[] =>
  pieces.map((piece) => {
    const { levels, front } = plan.foundation;
    const part = piece.name.endsWith('front') ? 'front' : 'back';
    const centre = piece.name.startsWith('centre');
    const y = part === 'back' ? levels.across.value : front.across.y;
    const across = centre ? crossLine(piece, y, `across ${part}`) : [];
    const { from, to } = piece.grain;
    return {
      ...piece,
      lines: [
        ...piece.lines.map((line) => (line.text ? { ...line, text: `${line.text}; ${PINNED}` } : line)),
        ...across,
        levelText('plumb line', beside(from, to), `plumb line; ${PINNED}`),
      ],
    };
  });

/** A level line right across a piece at y. */
function crossLine(piece: Piece, y: number, name: string): readonly InsideLine[] {
  const outline = edgeOf(
    piece.name,
    piece.edges.flatMap(({ curves }) => curves),
  );
  const xs = edgeCrossings(outline, levelAt(y)).map((crossing) => crossing.point.x);
  if (xs.length < 2) return [];
  const ends = [point(Math.min(...xs), y), point(Math.max(...xs), y)] as const;
  return [levelText(name, ends, `${name}; ${PINNED}`)];
}

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
