import { levelWidth } from '../../../engine/checks/close.ts';
import type { Evaluation } from '../../../engine/evaluate.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import type { PieceEdge } from '../../../engine/pattern/piece.ts';
import { writtenValue } from '../../../engine/pattern/quantity.ts';
import { edgeOf, pieceOf } from '../drafted.ts';

/** mm. The textbooks measure in inches. */
export const inches = (count: number): number => count * 25.4;

/** How far one of our numbers lies from a book’s. */
export const apart = (ours: number, theirs: number): number => Math.abs(ours - theirs);

/** Lengths of edges of one piece together, mm. */
export const lengthOf = (evaluation: Evaluation, piece: string, ...edges: readonly string[]): number =>
  edges.reduce((sum, edge) => sum + edgeLength(edgeOf(evaluation, piece, edge)), 0);

/** The armhole a sleeve is sewn into, round both panels and along the strap, mm. */
export const armholeOf = (evaluation: Evaluation): number =>
  lengthOf(evaluation, 'side front', 'armhole upper', 'armhole underarm') +
  lengthOf(evaluation, 'side back', 'armhole upper', 'armhole underarm') +
  lengthOf(evaluation, 'strap', 'outer');

/** Width of a level line on a piece as it is cut, fullness and all, mm. */
export function widthOf(evaluation: Evaluation, piece: string, level: string): number {
  const drawn = pieceOf(evaluation, piece);
  const line = drawn.lines.find(({ name }) => name === level);
  if (!line) throw new Error(`no line ${level} on ${piece}`);
  return levelWidth(drawn, line);
}

/** What a step of the construction came to, in mm or degrees, to a tenth as it is written. */
export function logged({ garment }: Evaluation, title: string): number {
  const step = garment.steps.find((candidate) => candidate.title === title);
  if (step?.value === undefined || !step.unit) throw new Error(`no number in step ${title}`);
  return Math.round(writtenValue({ value: step.value, unit: step.unit }) * 10) / 10;
}

/** The gores of the skirt: each stands twice in the whole, the centres as halves. */
export const gores = [
  'skirt centre front',
  'skirt side front',
  'skirt side back',
  'skirt centre back',
] as const;

/** A gore's half below the hip: a sector of a cone that is `out` wide at the hip and leans out by `lean` radians. */
export interface Sector {
  readonly out: number;
  readonly lean: number;
  /** Along the seam from hip to hem, mm. */
  readonly below: number;
  /** Half gores in the whole skirt. */
  readonly times: number;
}

/** The sectors of a skirt, taken from its right seams as drawn. */
export const sectorsOf = (evaluation: Evaluation): readonly Sector[] =>
  gores.map((gore) => {
    const [, right, , left] = pieceOf(evaluation, gore).edges;
    const seam = right?.curves.at(-1);
    if (!seam || !left) throw new Error(`no seam on ${gore}`);
    const [across, down] = [seam.to.x - seam.from.x, seam.to.y - seam.from.y];
    return {
      out: seam.from.x,
      lean: Math.atan2(across, down),
      below: Math.hypot(across, down),
      times: isCentre(left) ? 2 : 4,
    };
  });

const isCentre = ({ name }: PieceEdge): boolean => name.startsWith('centre');
