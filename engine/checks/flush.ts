import { hemSide } from '../finishing/hem-side.ts';
import { flatMapped } from '../flat-mapped.ts';
import type { Curve, Edge } from '../geometry/curve.ts';
import { edgeEnd, edgeStart, endDirection, startDirection } from '../geometry/edge.ts';
import { crossings, type StraightLine } from '../geometry/intersect.ts';
import { moved, type Point } from '../geometry/point.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { outward, scaled, type Vector } from '../geometry/vector.ts';
import type { Issue } from '../issue.ts';
import type { Garment } from '../pattern/garment.ts';
import type { EdgeRef, Seam } from '../pattern/seam.ts';
import { inMm } from '../text/figure.ts';
import { endsSquare, turnInto } from './corner.ts';
import type { Tape } from './tape.ts';

/** One side of a seam at its end: where it ends, which way it would go on, and its allowance there. */
interface SeamEnd {
  readonly piece: string;
  readonly at: Point;
  readonly onward: Vector;
  readonly outward: Vector;
  readonly allowance: number;
  /** It ends in a hem. */
  readonly atHem: boolean;
}

/**
 * Allowances may end so unevenly in a hem, mm, where nothing is sewn across them: gores of one flare but different widths
 * have hems of different radius, and so some tenths more or less to the edge of the cloth.
 */
const AT_HEM = 0.5;

/** Where across the allowance its end is measured, as shares of its width. */
const ACROSS = [0.1, 0.5, 0.9] as const;

/**
 * Lays the allowances of both sides of every seam on one another and compares how far they reach beyond the
 * seam's ends, measured along the seam prolonged, near the seam, in the middle and near the cut edge. Only where
 * the seam runs through on both sides: where another seam crosses it, where one side lies on a fold or is turned
 * under, or where the line goes straight on, there is nothing to match.
 */
export function flushFaults(
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  tape: Tape,
  bound: number,
): Issue[] {
  const machined = garment.seams.filter(({ felled }) => !felled);
  return flatMapped(machined, (seam) =>
    flatMapped(['start', 'end'] as const, (which) => {
      const a = endOf(seam.a, which, tape);
      const b = endOf(seam.b, which, tape);
      const cutA = a && cutLines.get(a.piece);
      const cutB = b && cutLines.get(b.piece);
      if (!cutA || !cutB) return [];
      const width = Math.min(a.allowance, b.allowance);
      const gaps = ACROSS.map((share) => reach(a, cutA, share * width) - reach(b, cutB, share * width));
      const worst = gaps.reduce((x, y) => (Math.abs(y) > Math.abs(x) ? y : x));
      const most = a.atHem || b.atHem ? Math.max(bound, AT_HEM) : bound;
      return Math.abs(worst) <= most ? [] : [fault(seam, which, a, b, worst, most)];
    }),
  );
}

/** How far the cutting line lies beyond a seam's end, along the seam prolonged, `out` mm outside it. */
function reach(end: SeamEnd, cut: Edge, out: number): number {
  const line = { through: moved(end.at, scaled(end.outward, out)), heading: end.onward };
  let least = Number.POSITIVE_INFINITY;
  for (const curve of cut.curves) {
    if (!liesAhead(curve, line, least)) continue;
    for (const { along } of crossings(curve, line)) if (along >= -COINCIDENCE && along < least) least = along;
  }
  return least;
}

/** Whether any of a curve may lie between where a line goes through and `far` (mm) along its unit heading, by its control points. */
function liesAhead(curve: Curve, line: StraightLine, far: number): boolean {
  const start = alongLine(curve.from, line);
  const end = alongLine(curve.to, line);
  const handle1 = curve.kind === 'line' ? start : alongLine(curve.handle1, line);
  const handle2 = curve.kind === 'line' ? end : alongLine(curve.handle2, line);
  return (
    Math.max(start, handle1, handle2, end) >= -COINCIDENCE && Math.min(start, handle1, handle2, end) <= far
  );
}

const alongLine = ({ x, y }: Point, { through, heading }: StraightLine): number =>
  (x - through.x) * heading.x + (y - through.y) * heading.y;

function endOf(refs: readonly EdgeRef[], which: 'start' | 'end', tape: Tape): SeamEnd | undefined {
  const ref = which === 'start' ? refs[0] : refs.at(-1);
  const piece = ref && tape.piece(ref.piece);
  const place = piece?.edges.findIndex((candidate) => candidate.name === ref?.edge) ?? -1;
  const edge = piece?.edges[place];
  if (!piece || !edge) return undefined;
  const atEnd = (which === 'end') !== (ref?.reversed ?? false);
  const neighbour = piece.edges[(place + (atEnd ? 1 : -1) + piece.edges.length) % piece.edges.length];
  const turn = neighbour && (atEnd ? turnInto(edge, neighbour) : turnInto(neighbour, edge));
  if (!neighbour || turn === undefined || neighbour.turn === 'fold') return undefined;
  if (edge.allowance === 0 || !endsSquare(edge, neighbour, turn)) return undefined;
  const heading = atEnd ? endDirection(edge) : startDirection(edge);
  const corner = atEnd ? place : (place - 1 + piece.edges.length) % piece.edges.length;
  const onward = hemSide(piece, corner) ?? (atEnd ? heading : scaled(heading, -1));
  return {
    piece: piece.name,
    at: atEnd ? edgeEnd(edge) : edgeStart(edge),
    onward,
    outward: scaled(outward(onward), atEnd ? 1 : -1),
    allowance: edge.allowance,
    atHem: neighbour.turn === 'hem',
  };
}

function fault(seam: Seam, which: string, a: SeamEnd, b: SeamEnd, gap: number, bound: number): Issue {
  const [longer, shorter] = gap > 0 ? [a, b] : [b, a];
  return {
    code: 'allowances-not-flush',
    severity: 'error',
    path: seam.name,
    message:
      `At the ${which} of the seam "${seam.name}" the allowances do not end flush: that of ${longer.piece} ` +
      `reaches ${inMm(Math.abs(gap))} farther than that of ${shorter.piece}.`,
    value: Math.abs(gap),
    limits: { max: bound, unit: 'mm' },
  };
}
