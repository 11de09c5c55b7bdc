import { levelWidth } from '../../../engine/checks/close.ts';
import type { Evaluation } from '../../../engine/evaluate.ts';
import type { Edge } from '../../../engine/geometry/curve.ts';
import { edgeLength, joinedEdges, pointAlong } from '../../../engine/geometry/edge.ts';
import { edgeCrossings, levelAt } from '../../../engine/geometry/intersect.ts';
import type { PieceEdge } from '../../../engine/pattern/piece.ts';
import { writtenValue } from '../../../engine/pattern/quantity.ts';
import { drafted, edgeOf, pieceOf, shippedBodies, shippedBody } from '../drafted.ts';

/** mm. The textbooks measure in inches. */
export const inches = (count: number): number => count * 25.4;

/** How far one of our numbers lies from a book’s. */
export const apart = (ours: number, theirs: number): number => Math.abs(ours - theirs);

/** Lengths of edges of one piece together, mm. */
export const lengthOf = (evaluation: Evaluation, piece: string, ...edges: readonly string[]): number =>
  edges.reduce((sum, edge) => sum + edgeLength(edgeOf(evaluation, piece, edge)), 0);

/** The armhole a sleeve is sewn into, over panels and straps, mm. */
export const armholeOf = ({ garment }: Evaluation): number =>
  garment.pieces
    .filter(({ name }) => !name.includes('lining') && !name.includes('facing'))
    .flatMap(({ edges }) => edges.filter(({ name }) => /^(armhole|outer)/.test(name)))
    .reduce((sum, edge) => sum + edgeLength(edge), 0);

/** The back armhole of a panel that reaches the whole shoulder, from there to the underarm. */
export const backArmhole = (evaluation: Evaluation): Edge =>
  joinedEdges('back armhole', [
    edgeOf(evaluation, 'side back', 'armhole upper'),
    edgeOf(evaluation, 'side back', 'armhole underarm'),
  ]);

/** How far from the centre back that armhole lies half-way along it, mm. */
export function acrossAtMidArmhole(evaluation: Evaluation): number {
  const armhole = backArmhole(evaluation);
  return pointAlong(armhole, edgeLength(armhole) / 2).point.x;
}

/** How far from the centre back it lies at a level, mm below the back neck point. */
export function acrossBackAt(evaluation: Evaluation, y: number): number {
  const [crossing] = edgeCrossings(backArmhole(evaluation), levelAt(y));
  if (!crossing) throw new Error(`the armhole does not come to ${y}`);
  return crossing.point.x;
}

/** How high a sleeve's cap stands above its underarm, mm. */
export const capHeight = (evaluation: Evaluation): number =>
  -(edgeOf(evaluation, 'sleeve', 'crown').curves[0]?.to.y ?? Number.NaN);

/** The panels of half a body with a plain front. */
const panels = { front: ['centre front', 'side front'], back: ['centre back', 'side back'] } as const;

/** Half a body's front or back at a level line, or along its waist, mm. */
export const halfOf = (evaluation: Evaluation, half: 'front' | 'back', at: 'bust level' | 'waist'): number =>
  panels[half].reduce(
    (sum, piece) => sum + (at === 'waist' ? lengthOf(evaluation, piece, at) : widthOf(evaluation, piece, at)),
    0,
  );

const plainDress = { shoulder: 'whole', front: 'plain', sleeve: 'plain' } as const;

/**
 * The plain family, which is what books draft: the block itself with its plain sleeve, and the dress drawn on it with
 * whole shoulder, plain front and plain sleeve.
 */
export const plainFamily = (body: unknown, styling: object = {}): readonly [Evaluation, Evaluation] => [
  drafted('trial', body, { sleeve: 'plain', ...styling }),
  drafted('dress', body, { ...plainDress, ...styling }),
];

/** The block of each body that ships. */
export const blocks = shippedBodies.map(
  (name) => [name, drafted('trial', shippedBody(name), { sleeve: 'plain' })] as const,
);

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
