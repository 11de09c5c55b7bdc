import {
  type Garment,
  type Issue,
  type Report,
  type ShapeReport,
  type Unit,
  unitLabel,
  withLengthsIn,
} from '../../../drafts/index.ts';
import { bandWords, shapeFigure } from '../../shape-table.ts';
import type { WrongPiece } from '../messages.ts';

/**
 * What is wrong with each piece, in the reader's unit: what the checks found at one of its edges, seams, corners or girths, and
 * its shapes outside their bands. Pieces with which nothing is wrong are left out.
 */
export function wrongPieces(report: Report, garment: Garment, units: Unit): readonly WrongPiece[] {
  const places = placesOf(report, garment);
  const told = (of: string, { path, severity, message }: Issue): readonly string[] => {
    if (severity === 'note') return [];
    const own = path === of || path.startsWith(`${of}/`);
    return own || places.get(path)?.has(of) ? [withLengthsIn(message, units)] : [];
  };
  return garment.pieces.flatMap(({ name }) => {
    const says = [
      ...report.issues.flatMap((issue) => told(name, issue)),
      // Of a shape that the draft fails by there is an issue already.
      ...report.shapes
        .filter(({ piece, ok, bound }) => piece === name && !ok && !bound)
        .map((shape) => outside(shape, units)),
    ];
    return says.length > 0 ? [{ piece: name, says: [...new Set(says)] }] : [];
  });
}

/** The pieces that meet in each seam, corner, girth and shape, by its name. */
function placesOf(
  { seams, joins, shapes }: Report,
  { girths }: Garment,
): ReadonlyMap<string, ReadonlySet<string>> {
  const all: readonly (readonly [string, readonly string[]])[] = [
    ...seams.map(({ name, a, b }) => [name, [...a, ...b].map(({ piece }) => piece)] as const),
    ...joins.map(({ name, pieces }) => [name, pieces] as const),
    ...girths.map(({ level, parts }) => [level, parts.map(({ piece }) => piece)] as const),
    ...shapes.map(({ name, piece }) => [name, [piece]] as const),
  ];
  return new Map(all.map(([name, pieces]) => [name, new Set(pieces)]));
}

function outside(shape: ShapeReport, units: Unit): string {
  const unit = shape.unit === 'mm' ? ` ${unitLabel[units]}` : '';
  const figure = shapeFigure(shape.value, shape, units);
  return `${shape.name} comes to ${figure}${unit}, outside its band of ${bandWords(shape, units)}${unit}: ${withLengthsIn(shape.outside, units)}.`;
}
