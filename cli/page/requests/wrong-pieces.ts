import {
  type Garment,
  type Issue,
  type Report,
  type ShapeReport,
  type Unit,
  unitLabel,
  withLengthsIn,
} from '../../../drafts/index.ts';
import { bandWords, shapeFigure } from '../../garment/shape-table.ts';
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
    const fails = [...new Set(report.issues.flatMap((issue) => told(name, issue)))];
    // Of a shape that the draft fails by there is an issue already.
    const outside = report.shapes
      .filter(({ piece, ok, bound }) => piece === name && !ok && !bound)
      .map((shape) => ({ shape: shape.name, figure: outsideWords(shape, units) }));
    return fails.length + outside.length > 0 ? [{ piece: name, fails, outside }] : [];
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
  // A seam and a corner across it may have one name.
  const places = new Map<string, ReadonlySet<string>>();
  for (const [name, pieces] of all) places.set(name, new Set([...(places.get(name) ?? []), ...pieces]));
  return places;
}

function outsideWords(shape: ShapeReport, units: Unit): string {
  const unit = shape.unit === 'mm' ? ` ${unitLabel[units]}` : '';
  return `${shapeFigure(shape.value, shape, units)}${unit}, where ${bandWords(shape, units)}${unit} is usual`;
}
