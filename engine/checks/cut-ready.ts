import { insideStrokes, strokes } from '../finishing/label.ts';
import { distanceToStroke, leastDistanceToStroke, type Rectangle } from '../finishing/rectangle.ts';
import type { Edge } from '../geometry/curve.ts';
import { isSimple } from '../geometry/inside.ts';
import { signedArea } from '../geometry/outline.ts';
import type { Issue } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';
import { allowanceFaults } from './allowances.ts';
import { beyondFoldFaults } from './beyond-fold.ts';
import { dartCapFaults } from './darts.ts';
import { flushFaults } from './flush.ts';
import { hemFaults } from './hems.ts';
import { isClosed } from './outlines.ts';
import { tapeFor } from './tape.ts';

/**
 * Checks that a garment can be cut: every piece has a cutting line that closes, runs clockwise, crosses itself
 * nowhere, stays on this side of its folds and keeps every allowance within `bound` (mm), the cloth of darts lies flush when they are folded shut, and
 * the allowances of sewn neighbours end flush.
 * `cutLines` holds the cutting lines by piece name.
 */
export function cutReady(garment: Garment, cutLines: ReadonlyMap<string, Edge>, bound: number): Issue[] {
  return [
    ...garment.pieces.flatMap((piece) => cutLineFaults(piece, cutLines.get(piece.name), bound)),
    ...flushFaults(garment, cutLines, tapeFor(garment), bound),
  ];
}

function cutLineFaults(piece: Piece, cut: Edge | undefined, bound: number): Issue[] {
  const wrong = (code: IssueCode, what: string): Issue[] => [
    { code, severity: 'error', path: piece.name, message: `The cutting line of ${piece.name} ${what}.` },
  ];
  if (!cut || cut.curves.length === 0) return wrong('cutting-line-missing', 'is missing');
  if (!isClosed([cut])) return wrong('cutting-line-open', 'does not close');
  if (!(signedArea([cut]) > 0)) return wrong('cutting-line-anticlockwise', 'runs anticlockwise');
  if (!isSimple([cut])) return wrong('cutting-line-crosses', 'crosses itself');
  return [
    ...allowanceFaults(piece, cut, bound),
    ...dartCapFaults(piece, cut, bound),
    ...hemFaults(piece, cut),
    ...beyondFoldFaults(piece, cut, bound),
  ];
}

/** Lines of a piece that labels would be printed over: its stitching line, inside lines, marks and grainline. One issue a piece. */
export function labelFaults(piece: Piece, labels: readonly Rectangle[]): Issue[] {
  const drawn = [...piece.edges.flatMap((edge) => edge.curves.flatMap(strokes)), ...insideStrokes(piece)];
  const isOver = (label: Rectangle): boolean =>
    drawn.some(
      (stroke) => leastDistanceToStroke(label, stroke) === 0 && distanceToStroke(label, stroke) === 0,
    );
  if (!labels.some(isOver)) return [];
  const message = `The label of ${piece.name} lies over one of its lines.`;
  return [{ code: 'label-over-line', severity: 'error', path: piece.name, message }];
}
