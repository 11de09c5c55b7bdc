import { edgeLength } from '../../engine/geometry/edge.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import type { LiningTable } from './choices.ts';
import { type FacingCut, facingPiece } from './facing-pieces.ts';
import { facingJoins, facingSeams } from './facing-seams.ts';
import { type Finished, finishedRun } from './finished-runs.ts';
import type { Inside, Unfinished } from './inside.ts';
import { panelsIn, panelsOf, parts } from './panels.ts';
import { liningRules as rules } from './rules.ts';

/** Draws facings for the necklines of a bodice, and without sleeves for its armholes, and says how they are sewn in. */
export function drawFacings(table: LiningTable, unfinished: Unfinished): Inside {
  const { bodice, setting } = unfinished;
  const panels = panelsOf(bodice.pieces);
  table.heading('Facings');
  const finishes: readonly Finished[] = setting.sleeve === 'none' ? ['neck', 'armhole'] : ['neck'];
  const pieces = finishes.flatMap((finished) => {
    const cut = facingCut(table, unfinished, finished, panels);
    return parts.flatMap((part) => {
      const run = finishedRun(part, finished, panels);
      if (!run) return [];
      const piece = { ...facingPiece(run, cut), number: 0 };
      for (const edge of piece.edges) table.line(part, `${piece.name}, ${edge.name}`, edge.curves);
      return [piece];
    });
  });
  return {
    pieces,
    seams: facingSeams([...bodice.pieces, ...pieces], unfinished),
    joins: facingJoins(pieces, bodice.joins),
    girths: [],
  };
}

/** How far the facings of necklines, or of armholes, reach. */
function facingCut(
  table: LiningTable,
  { cut, setting }: Unfinished,
  finished: Finished,
  panels: readonly Piece[],
): FacingCut {
  const { turnOfCloth, facingAllowance } = table.styling;
  const depth = finished === 'neck' ? rules.neckFacing : rules.armholeFacing;
  const reach = table.mm`Inner edge of the ${finished} facings, from the edge that they face: turn ${table.choice.turnOfCloth} + ${depth}`;
  const onShoulder =
    cut.plan.lines.style.shoulder === 'whole'
      ? table.mm`Width of the ${finished} facings along the shoulder: ${reach}, at most ${rules.facingsMeet} of ${table.measured('Shoulder seam', 'on the panels', shoulderLength(panels), cut.plan.foundation.front.shoulder.length)}`
      : reach;
  return {
    turnOfCloth,
    reach: reach.value,
    onShoulder: onShoulder.value,
    facingEdge: facingAllowance,
    allowance: cut.allowance.seam,
    opening: setting.opening,
  };
}

/** Of the front, over all panels that it crosses, mm. */
const shoulderLength = (panels: readonly Piece[]): number =>
  panelsIn('front', panels)
    .flatMap(({ edges }) => edges.filter(({ name }) => name === 'shoulder'))
    .reduce((sum, edge) => sum + edgeLength(edge), 0);
