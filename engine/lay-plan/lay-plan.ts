import type { Edge } from '../geometry/curve.ts';
import { signedArea } from '../geometry/outline.ts';
import { type Transform, transformedEdge } from '../geometry/transform.ts';
import type { Issue, Result } from '../issue.ts';
import { leastLength } from '../lay/least-length.ts';
import { inWay, type Lay, type LayProblem, type Placement } from '../lay/problem.ts';
import { refusedShapes } from '../lay/refused-shapes.ts';
import { hasSeat } from '../lay/room.ts';
import type { Garment } from '../pattern/garment.ts';
import {
  type Cloth,
  type ClothName,
  lengthNeeded,
  stripStart,
  stripWidth,
  washedRepeat,
  washedRepeatAcross,
  washedWidth,
} from './cloth.ts';
import type { Matching } from './hung.ts';
import { type LaidPiece, laidPieces, type OutlineOf } from './laid-piece.ts';
import { matching } from './matching.ts';
import { matchingAlong } from './matching-along.ts';

/** What is to be laid of one cloth. The shapes of the problem are the pieces, in order. */
export interface LayTask {
  readonly clothName: ClothName;
  readonly cloth: Cloth;
  readonly pieces: readonly LaidPiece[];
  readonly problem: LayProblem;
  /** How stripes across the cloth are matched, and stripes along it; none on cloth without. */
  readonly matched?: Matching;
  readonly matchedAlong?: Matching;
}

/** A lay drawn up for the cutting table. mm. */
export interface LayPlan extends LayTask {
  readonly garment: string;
  readonly body: string;
  /** Length of washed cloth that the lay takes. */
  readonly length: number;
  /** No lay of the same pieces is shorter. */
  readonly leastLength: number;
  /** What has to be bought for it, not yet rounded. */
  readonly needed: number;
  /** The share of the washed cloth, selvedges counted, that ends up in pieces. */
  readonly used: number;
  readonly copies: readonly LaidCopy[];
}

/** One copy of a piece where it lies: across the cloth y begins on the fold or the selvedge. */
export interface LaidCopy {
  readonly of: LaidPiece;
  /** From 1, over all ways in which this piece is cut of this cloth. */
  readonly copy: number;
  readonly line: Edge;
  readonly grain: LaidPiece['grain'];
}

/**
 * One task for each cloth that the pieces of a garment name, in the order in which they name them; refused where a piece
 * cannot be laid on it. `outlineOf` as of `laidPieces`.
 */
export function layTasks(
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  cloth: Cloth,
  outlineOf?: OutlineOf,
): Result<readonly LayTask[]> {
  const { tasks, issues } = tasksOf(garment, cutLines, cloth, outlineOf);
  const refused = [...issues, ...tasks.flatMap(({ problem }) => refusedShapes(problem))];
  return refused.some(({ severity }) => severity === 'error')
    ? { ok: false, issues: refused }
    : { ok: true, value: tasks, issues: refused };
}

/** The same without asking whether every piece has room. */
export function tasksOf(
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  cloth: Cloth,
  outlineOf?: OutlineOf,
): { readonly tasks: readonly LayTask[]; readonly issues: readonly Issue[] } {
  const byCloth = new Map<ClothName, LaidPiece[]>();
  const issues: Issue[] = [];
  const repeat = washedRepeat(cloth);
  const repeatAcross = washedRepeatAcross(cloth);
  const matched = repeat > 0 ? matching(garment, repeat) : undefined;
  const matchedAlong = repeatAcross > 0 ? matchingAlong(garment, repeatAcross, cloth.oneOrder) : undefined;
  const strip = {
    width: stripWidth(cloth),
    ...(matched && { repeat }),
    ...(matchedAlong && { repeatAcross }),
  };
  for (const piece of garment.pieces)
    for (const cut of piece.cut) {
      const line = cutLines.get(piece.name);
      if (!line) continue;
      const found = laidPieces(piece, line, cut, cloth, outlineOf);
      // A piece of two cloths is refused once.
      issues.push(...found.issues.filter(({ path }) => !issues.some((known) => known.path === path)));
      const phase = matched?.phases.get(piece.name);
      const phaseAcross = matchedAlong?.phases.get(piece.name);
      const laid = found.laid.map((each) => ({
        ...each,
        ...(phase !== undefined && { phase }),
        // What lies on the fold of the cloth lies on a stripe with it.
        ...(phaseAcross !== undefined && { phaseAcross: each.onFold ? 0 : phaseAcross }),
      }));
      byCloth.set(cut.cloth, [...(byCloth.get(cut.cloth) ?? []), ...laid]);
    }
  const tasks = Array.from(byCloth, ([clothName, laid]): LayTask => {
    const shapes = laid.map(({ piece, outline, count, ways, onFold, phase, phaseAcross }) => {
      const shape = {
        name: piece,
        outline,
        count,
        onFold,
        ...(phase !== undefined && { phase }),
        ...(phaseAcross !== undefined && { phaseAcross }),
      };
      const seated = ways.filter((way) => hasSeat(strip, shape, way));
      return { ...shape, ways: seated.length > 0 ? seated : ways };
    });
    return {
      clothName,
      cloth,
      pieces: laid,
      problem: { ...strip, shapes },
      ...(matched && { matched }),
      ...(matchedAlong && { matchedAlong }),
    };
  });
  return { tasks, issues };
}

/** The plan of a lay that was found for a task. */
export function layPlan(task: LayTask, lay: Lay, { name, body }: Pick<Garment, 'name' | 'body'>): LayPlan {
  const seen = new Map<string, number>();
  const copies = lay.placements.flatMap((placement): LaidCopy[] => {
    const of = task.pieces[placement.shape];
    if (!of) return [];
    const copy = (seen.get(of.piece) ?? 0) + 1;
    seen.set(of.piece, copy);
    const put = onCloth(task.cloth, placement);
    const grain = { from: put(of.grain.from), to: put(of.grain.to) };
    return [{ of, copy, line: transformedEdge(of.line, put), grain }];
  });
  const area = copies.reduce(
    (sum, { of, line }) => sum + Math.abs(signedArea([line])) * of.gives * (of.onFold ? 2 : 1),
    0,
  );
  return {
    ...task,
    garment: name,
    body,
    length: lay.length,
    leastLength: leastLength(task.problem),
    needed: lengthNeeded(task.cloth, lay.length),
    used: area / (washedWidth(task.cloth) * lay.length),
    copies,
  };
}

/** From a laid piece to its place on the cloth. */
const onCloth =
  (cloth: Cloth, { way, x, y }: Placement): Transform =>
  (p) => {
    const put = inWay(p, way);
    return { x: put.x + x, y: put.y + y + stripStart(cloth) };
  };

/** How many pieces each piece is cut of a cloth, by name: what a plan must give. */
export const piecesAsked = ({ pieces }: Garment, cloth: ClothName): ReadonlyMap<string, number> =>
  new Map(
    pieces.flatMap(({ name, cut }): [string, number][] => {
      const count = cut.filter((one) => one.cloth === cloth).reduce((sum, one) => sum + one.count, 0);
      return count > 0 ? [[name, count]] : [];
    }),
  );
