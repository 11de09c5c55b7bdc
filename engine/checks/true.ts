import { flatMapped } from '../flat-mapped.ts';
import type { Issue } from '../issue.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Join, SeamCorner } from '../pattern/seam.ts';
import { inDegrees } from '../text/figure.ts';
import { listed } from '../text/listed.ts';
import { insideAngle, turnInto } from './corner.ts';
import type { JoinReport } from './report.ts';
import type { Tape } from './tape.ts';

/**
 * Trues every join of a garment: lays sewn neighbours together and measures the corner left in the line that
 * runs across, in degrees: positive where the cloth has a dent, negative where it has a point. Directions are
 * those of the curves at the very corner, exact to rounding. What turns by design is only looked for.
 */
export function trueJoins(
  garment: Garment,
  tape: Tape,
  bound: number,
): { readonly joins: readonly JoinReport[]; readonly issues: readonly Issue[] } {
  const joins: JoinReport[] = [];
  const issues: Issue[] = [];
  for (const join of garment.joins) {
    const corner = cornerLeft(join, tape);
    if (corner === undefined) {
      issues.push(...apart(join, tape));
      continue;
    }
    if (join.turns) continue;
    const report = { name: join.name, pieces: piecesOf(join), angle: (corner * 180) / Math.PI };
    joins.push(report);
    if (!(Math.abs(report.angle) <= bound)) issues.push(complaint(report, bound));
  }
  return { joins, issues };
}

/** The corner left at a join when sewn, radians; undefined when its edges do not meet or do not exist. */
export function cornerLeft(join: Join, tape: Tape): number | undefined {
  if (join.kind === 'along') {
    const piece = tape.piece(join.piece);
    const from = tape.edge(join.piece, join.from);
    const to = tape.edge(join.piece, join.to);
    if (!piece || !from || !to) return undefined;
    const next = piece.edges[(piece.edges.indexOf(from) + 1) % piece.edges.length];
    return next === to ? -turnInto(from, to) : undefined;
  }
  const a = angleAt(join.a, tape);
  const b = join.kind === 'across' ? angleAt(join.b, tape) : a;
  return a === undefined || b === undefined ? undefined : a + b - Math.PI;
}

function angleAt(corner: SeamCorner, tape: Tape): number | undefined {
  const piece = tape.piece(corner.piece);
  return piece && insideAngle(piece, corner.edge, corner.seam);
}

const cornersOf = (join: Join): SeamCorner[] =>
  join.kind === 'along'
    ? [{ piece: join.piece, edge: join.from, seam: join.to }]
    : join.kind === 'across'
      ? [join.a, join.b]
      : [join.a];

const piecesOf = (join: Join): string[] => cornersOf(join).map((corner) => corner.piece);

/** Corners whose two edges exist but are no neighbours. */
function apart(join: Join, tape: Tape): Issue[] {
  return flatMapped(cornersOf(join), (corner): Issue[] => {
    if (!tape.edge(corner.piece, corner.edge) || !tape.edge(corner.piece, corner.seam)) return [];
    if (join.kind !== 'along' && angleAt(corner, tape) !== undefined) return [];
    return [
      {
        code: 'edges-do-not-meet',
        severity: 'error',
        path: join.name,
        message: `"${join.name}" asks for the corner of "${corner.edge}" and "${corner.seam}" on ${corner.piece}, but these edges do not follow one another.`,
      },
    ];
  });
}

function complaint(join: JoinReport, bound: number): Issue {
  const shape = join.angle > 0 ? 'a dent' : 'a point';
  return {
    code: 'join-not-true',
    severity: 'error',
    path: join.name,
    message:
      `The line "${join.name}" does not run on smoothly over ${listed(join.pieces)}: sewn together it has ` +
      `${shape} of ${inDegrees(Math.abs(join.angle))}.`,
    value: join.angle,
    limits: { min: -bound, max: bound, unit: 'degrees' },
  };
}
