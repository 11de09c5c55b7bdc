import { flatMapped } from '../flat-mapped.ts';
import { edgeEnd, edgeStart, endDirection, startDirection } from '../geometry/edge.ts';
import type { StraightLine } from '../geometry/intersect.ts';
import { outlineBounds } from '../geometry/outline.ts';
import { between, type Point, vectorBetween } from '../geometry/point.ts';
import type { Transform } from '../geometry/transform.ts';
import { cross, dot, scaled, type Vector } from '../geometry/vector.ts';
import type { Piece, PieceEdge } from './piece.ts';

/** A dart that is stitched and pressed to one side, its cloth left inside: two legs of turn `dart`, and what it parts. */
export interface SewnDart {
  /** The place of its first leg among the edges; the second follows. */
  readonly place: number;
  readonly legs: readonly [PieceEdge, PieceEdge];
  /** The edges that end and begin at its mouth. */
  readonly before: PieceEdge;
  readonly after: PieceEdge;
  readonly apex: Point;
  /** Its seams, prolonged beyond the mouth: through the mouth's corners, headed out of the piece. */
  readonly first: StraightLine;
  readonly second: StraightLine;
  /** Where its cloth is folded: from the apex out through the middle of the mouth. */
  readonly middle: StraightLine;
}

/** The sewn darts of an outline, clockwise. A lone leg, or one beside another dart's at the mouth, is left out. */
export const sewnDarts = (edges: readonly PieceEdge[]): readonly SewnDart[] =>
  flatMapped(edges, (one, place): readonly SewnDart[] => {
    const other = edges[(place + 1) % edges.length];
    const [before, after] = [edges.at(place - 1), edges[(place + 2) % edges.length]];
    if (!other || !before || !after || one.turn !== 'dart' || other.turn !== 'dart') return [];
    if (before.turn === 'dart' || after.turn === 'dart') return [];
    const [from, apex, to] = [edgeStart(one), edgeEnd(one), edgeEnd(other)];
    return [
      {
        place,
        legs: [one, other],
        before,
        after,
        apex,
        first: { through: from, heading: scaled(startDirection(one), -1) },
        second: { through: to, heading: endDirection(other) },
        middle: { through: apex, heading: vectorBetween(apex, between(from, to, 0.5)) },
      },
    ];
  });

/** Lays what follows a dart on what goes before it, as they lie when the dart is sewn: second leg on first. */
export const shut = ({ first, second }: SewnDart): Transform => laid(second, first);

/** The other way: lays what goes before a dart on what follows it. */
export const shutBack = ({ first, second }: SewnDart): Transform => laid(first, second);

/** The rigid move that lays one line with its point and heading on another. */
function laid(line: StraightLine, on: StraightLine): Transform {
  const turn = turnOf(dot(line.heading, on.heading), cross(line.heading, on.heading));
  return (p) => {
    const away = turn(vectorBetween(line.through, p));
    return { x: on.through.x + away.x, y: on.through.y + away.y };
  };
}

const turnOf =
  (cosine: number, sine: number) =>
  ({ x, y }: Vector): Vector => ({ x: x * cosine - y * sine, y: x * sine + y * cosine });

/** How a heading turns when a dart is shut. */
export const headingShut = ({ first, second }: SewnDart, heading: Vector): Vector =>
  turnOf(dot(second.heading, first.heading), cross(second.heading, first.heading))(heading);

/**
 * To which side the cloth of a dart is pressed: over the edge before its mouth, or over the one after. Darts that run
 * more up and down than across, as at waist and shoulder, are pressed to the centre, the others down (common
 * practice, no source). The centre is where the fold is; the middle of a piece that is cut once; otherwise away from
 * the wearer's side.
 */
export function pressedOver(dart: SewnDart, piece: Pick<Piece, 'edges' | 'cut'>): 'before' | 'after' {
  const { x, y } = dart.middle.heading;
  const towardsBefore = vectorBetween(dart.second.through, dart.first.through);
  const over = Math.abs(y) >= Math.abs(x) ? towardsBefore.x * centreward(dart, piece) : towardsBefore.y;
  return over > 0 ? 'before' : 'after';
}

/** Whether the centre of the piece lies to the right of a dart's mouth as drawn, 1, or to its left, -1. */
function centreward({ first, second }: SewnDart, { edges, cut }: Pick<Piece, 'edges' | 'cut'>): 1 | -1 {
  const mouth = (first.through.x + second.through.x) / 2;
  const fold = edges.find((edge) => edge.turn === 'fold' && isUpright(edge));
  const { left, right } = outlineBounds(edges);
  const whole = cut.length > 0 && cut.every(({ onFold, pair }) => !onFold && !pair);
  const centre = fold ? edgeStart(fold).x : whole ? (left + right) / 2 : left;
  return centre > mouth ? 1 : -1;
}

function isUpright(edge: PieceEdge): boolean {
  const { x, y } = vectorBetween(edgeStart(edge), edgeEnd(edge));
  return Math.abs(y) > Math.abs(x);
}

/**
 * The edges that are one seam once the darts in it are sewn, clockwise: the edge of a name, and what goes straight on
 * from it beyond the mouths of darts. An edge that a dart has parted in two still goes by its own name too. None where
 * there is no such edge.
 */
export function dartedEdge(edges: readonly PieceEdge[], name: string): readonly PieceEdge[] {
  const named = edges.find((edge) => edge.name === name) ?? edges.find((edge) => edge.name === `${name} 1`);
  if (!named) return [];
  const darts = sewnDarts(edges).filter(runsOn);
  const run = [named];
  const grow = (next: PieceEdge | undefined, add: (edge: PieceEdge) => void): boolean => {
    if (!next || run.includes(next)) return false;
    add(next);
    return true;
  };
  while (grow(darts.find(({ before }) => before === run.at(-1))?.after, (edge) => run.push(edge)));
  while (grow(darts.find(({ after }) => after === run[0])?.before, (edge) => run.unshift(edge)));
  return run;
}

/** A sewn dart leaves a peak of no more than this in an edge that goes on beyond it; a corner is more. */
export const SAME_LINE = Math.PI / 4;

function runsOn(dart: SewnDart): boolean {
  const [into, outOf] = [endDirection(dart.before), headingShut(dart, startDirection(dart.after))];
  return Math.abs(Math.atan2(cross(into, outOf), dot(into, outOf))) < SAME_LINE;
}
