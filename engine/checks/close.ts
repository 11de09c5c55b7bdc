import { flatMapped } from '../flat-mapped.ts';
import { edgeEnd, edgeLength, edgeStart } from '../geometry/edge.ts';
import { crossings } from '../geometry/intersect.ts';
import { nearestOnEdge } from '../geometry/nearest.ts';
import { between, distance, type Point, vectorBetween } from '../geometry/point.ts';
import { COINCIDENCE, WALK } from '../geometry/tolerance.ts';
import { cross, dot, unit } from '../geometry/vector.ts';
import type { Issue } from '../issue.ts';
import type { Garment } from '../pattern/garment.ts';
import type { InsideLine, Piece } from '../pattern/piece.ts';
import type { Girth, GirthPart } from '../pattern/seam.ts';
import { inMm } from '../text/figure.ts';
import type { GirthReport } from './report.ts';
import type { Tape } from './tape.ts';

/**
 * Closes every finished girth: adds up what the pieces measure around the body at a level and compares it with
 * body plus ease. A level line is not believed but measured again, from one side of the piece's stitching line to the
 * other, and the fullness gathered away there is taken off. Good to 1e-5 mm.
 * Girths that name a part which does not exist are left out; `misnamed` reports those.
 */
export function closeGirths(
  garment: Garment,
  tape: Tape,
  bound: number,
): { readonly girths: readonly GirthReport[]; readonly issues: readonly Issue[] } {
  const girths = flatMapped(garment.girths, (girth) => closed(girth, tape) ?? []);
  const off = girths.filter((girth) => !(Math.abs(girth.error) <= bound));
  return { girths, issues: off.map((girth) => complaint(girth, bound)) };
}

function closed(girth: Girth, tape: Tape): GirthReport | undefined {
  let finished = 0;
  for (const part of girth.parts) {
    const width = partWidth(part, tape);
    if (width === undefined) return undefined;
    finished += part.times * width;
  }
  const { level, body, ease } = girth;
  const target = body + ease;
  return { level, body, ease, target, finished, error: finished - target };
}

/** What a part of a girth measures once, mm; undefined where it is not there. */
export function partWidth(part: GirthPart, tape: Tape): number | undefined {
  if (part.kind === 'edge') {
    const edge = tape.edge(part.piece, part.edge);
    return edge && tape.length(edge);
  }
  const piece = tape.piece(part.piece);
  const line = piece?.lines.find((drawn) => drawn.name === part.line);
  return piece && line && levelWidth(piece, line) - (line.fullness ?? 0);
}

/**
 * Width of a piece at a level line, mm. A straight one counts from the stitching line on one side of its middle to the
 * stitching line on the other, and 0 when the middle lies outside the piece; a curved one, such as the level of a
 * flared gore, counts by its own length, and 0 unless it ends on the stitching line at both ends.
 */
export function levelWidth(piece: Piece, level: InsideLine): number {
  const from = edgeStart(level);
  const to = edgeEnd(level);
  if (distance(from, to) === 0) return 0;
  if (level.curves.some(({ kind }) => kind === 'cubic'))
    return onStitchingLine(piece, from) && onStitchingLine(piece, to) ? edgeLength(level) : 0;
  const line = { through: between(from, to, 0.5), heading: unit(vectorBetween(from, to)) };

  let before = Number.NEGATIVE_INFINITY;
  let after = Number.POSITIVE_INFINITY;
  const met = (along: number): void => {
    if (along <= 0) before = Math.max(before, along);
    if (along >= 0) after = Math.min(after, along);
  };
  for (const curve of flatMapped(piece.edges, (edge) => edge.curves)) {
    for (const crossing of crossings(curve, line)) met(crossing.along);
    // A level through a corner may by rounding pass just beside both of the edges that meet there.
    const corner = vectorBetween(line.through, curve.from);
    if (Math.abs(cross(line.heading, corner)) < COINCIDENCE) met(dot(line.heading, corner));
  }
  return Number.isFinite(after - before) ? after - before : 0;
}

const onStitchingLine = (piece: Piece, at: Point): boolean =>
  piece.edges.some((edge) => nearestOnEdge(edge, at).distance <= WALK);

function complaint(girth: GirthReport, bound: number): Issue {
  const amount = inMm(Math.abs(girth.error));
  return {
    code: 'girth-does-not-close',
    severity: 'error',
    path: girth.level,
    message:
      `At the ${girth.level} the pieces measure ${inMm(girth.finished)} around, ${amount} too ` +
      `${girth.error > 0 ? 'wide' : 'narrow'}: the body there is ${inMm(girth.body)}, and with ` +
      `${inMm(girth.ease)} ease it should be ${inMm(girth.target)}.`,
    value: girth.finished,
    limits: { min: girth.target - bound, max: girth.target + bound, unit: 'mm' },
  };
}
