import { edgeLength } from '../../engine/geometry/edge.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import type { LiningTable } from './choices.ts';
import { facingPiece } from './facing-pieces.ts';
import { facingJoins, facingSeams } from './facing-seams.ts';
import { type Finished, finishedRun, type Run } from './finished-runs.ts';
import type { InsideParts, Unfinished } from './inside.ts';
import { panelsIn, panelsOf, parts } from './panels.ts';
import { liningRules as rules } from './rules.ts';
import { stretch } from './set-back.ts';

/** Draws facings for the necklines of a bodice, and without sleeves for its armholes, and says how they are sewn in. */
export function drawFacings(table: LiningTable, unfinished: Unfinished): InsideParts {
  const { bodice, cut, setting } = unfinished;
  const panels = panelsOf(bodice.pieces);
  table.heading('The facings');
  const shoulder =
    cut.plan.lines.style.shoulder === 'whole'
      ? table.measured('Shoulder seam', 'on the front panels', shoulderLength(panels))
      : undefined;
  const finishes: readonly Finished[] = setting.sleeve === 'none' ? ['neck', 'armhole'] : ['neck'];
  const pieces = finishes.flatMap((finished) => {
    const reaching = facingReach(table, finished, shoulder);
    const { turnOfCloth, facingAllowance } = table.styling;
    const facingCut = {
      turnOfCloth,
      reach: reaching.reach.value,
      onShoulder: reaching.onShoulder.value,
      facingEdge: facingAllowance,
      allowance: cut.allowance.seam,
      opening: setting.opening,
    };
    return parts.flatMap((part) => {
      const run = finishedRun(part, finished, panels);
      if (!run) return [];
      markReach(table, run, reaching);
      const piece = { ...facingPiece(run, facingCut), number: 0 };
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

interface FacingReach {
  readonly reach: Mm;
  readonly onShoulder: Mm;
}

/** How far the facings of necklines, or of armholes, reach: from their edges, and along a shoulder, mm. */
function facingReach(table: LiningTable, finished: Finished, shoulder: Mm | undefined): FacingReach {
  const depth = finished === 'neck' ? rules.neckFacing : rules.armholeFacing;
  const reach = table.mm`Reach of the ${finished} facings: turn ${table.choice.turnOfCloth} + ${depth}`;
  const onShoulder = shoulder
    ? table.mm`Width of the ${finished} facings along the shoulder: ${reach}, at most ${rules.facingsMeet} of ${shoulder}`
    : reach;
  return { reach, onShoulder };
}

/** Marks how far they reach along the edges of the panels that end where they begin, or begin where they end. */
function markReach(
  { laidOut }: LiningTable,
  { part, before, after }: Run,
  { reach, onShoulder }: FacingReach,
): void {
  for (const [edge, isAfter] of [
    [before, false],
    [after, true],
  ] as const) {
    if (!['shoulder', 'side', 'centre back', 'centre front'].includes(edge.name)) continue;
    const far = edge.name === 'shoulder' ? onShoulder : reach;
    const length = edgeLength(edge);
    if (length < far.value) continue;
    const [from, to] = isAfter ? [0, far.value] : [length - far.value, length];
    laidOut(far, 1, () => [{ on: part, curves: stretch(edge, from, to).curves }]);
  }
}

/** Of the front, over all panels that it crosses, mm. */
const shoulderLength = (panels: readonly Piece[]): number =>
  panelsIn('front', panels)
    .flatMap(({ edges }) => edges.filter(({ name }) => name === 'shoulder'))
    .reduce((sum, edge) => sum + edgeLength(edge), 0);
