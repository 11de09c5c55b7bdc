import { flatMapped } from '../flat-mapped.ts';
import type { Garment } from '../pattern/garment.ts';
import { girthFaults, unaccounted } from './accounted.ts';
import { type CheckBounds, draftBounds } from './bounds.ts';
import { closeGirths } from './close.ts';
import { curveFaults } from './curves.ts';
import { dartLegFaults } from './darts.ts';
import { isKnownSound, noteSound } from './known-structures.ts';
import { markFaults, misplacedNotches } from './marks.ts';
import { misnamed } from './misnamed.ts';
import { outlineFaults } from './outlines.ts';
import type { Report } from './report.ts';
import { sewingFaults } from './sewing.ts';
import { shapeFigures } from './shape.ts';
import { structureOf } from './structure.ts';
import { tapeFor } from './tape.ts';
import { trueJoins } from './true.ts';
import { walk } from './walk.ts';

/**
 * Checks a garment as drawn: walks its seams and darts, trues its joins, closes its girths, measures its shapes, and looks over its
 * curves, outlines, marks and sewing order. `ok` when nothing was found. The draft's own issues are not repeated here. What
 * is cut is checked apart, by `cutReady`, since its lines take longer to make than all of this.
 */
export function checkGarment(garment: Garment, bounds: CheckBounds = draftBounds): Report {
  const tape = tapeFor(garment);
  const { walks, issues: mismatches } = walk(garment, tape, bounds.seam);
  const { joins, issues: corners } = trueJoins(garment, tape, bounds.join);
  const { girths, issues: gaps } = closeGirths(garment, tape, bounds.girth);
  const { shapes, issues: misshapen } = shapeFigures(garment, tape, bounds);
  const structure = structureOf(garment);
  const isKnown = isKnownSound(structure);
  const issues = [
    ...(isKnown ? girthFaults(garment, tape) : [...misnamed(garment, tape), ...unaccounted(garment, tape)]),
    ...flatMapped(garment.pieces, (piece) => outlineFaults(piece)),
    ...flatMapped(garment.pieces, (piece) => curveFaults(piece, bounds.kink)),
    ...flatMapped(garment.pieces, (piece) => dartLegFaults(piece, bounds.seam)),
    ...mismatches,
    ...corners,
    ...gaps,
    ...misshapen,
    ...(isKnown
      ? misplacedNotches(garment, tape)
      : [...markFaults(garment, tape), ...sewingFaults(garment, tape)]),
  ];
  if (!isKnown && issues.length === 0) noteSound(structure);
  return {
    ok: issues.length === 0,
    garment: garment.name,
    body: garment.body,
    seams: walks.map((walked) => walked.seam),
    joins,
    girths,
    shapes,
    notches: garment.pieces.reduce((sum, piece) => sum + piece.notches.length, 0),
    issues,
  };
}
