import { edgeEnd, edgeStart, endDirection, startDirection } from '../../engine/geometry/edge.ts';
import { moved, type Point, turnedAbout, vectorBetween } from '../../engine/geometry/point.ts';
import { type Transform, transformedEdge } from '../../engine/geometry/transform.ts';
import { angleOf, type Vector } from '../../engine/geometry/vector.ts';
import type { Notch, Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { type BodiceHalf, isArmhole, isNeckline, panelsIn } from './panels.ts';

export type Finished = 'neck' | 'armhole';

/** A run of finished edges from one seam, fold or strap to another: half a neckline, or half an armhole. */
export interface Run {
  readonly part: BodiceHalf;
  readonly finished: Finished;
  /** The edge of the panel that ends where the run starts. */
  readonly before: PieceEdge;
  readonly edges: readonly PieceEdge[];
  /** The edge of the panel that starts where the run ends. */
  readonly after: PieceEdge;
  readonly notches: readonly Notch[];
  /** Along the grain of the panel on which the run starts. */
  readonly grain: Vector;
}

/**
 * The half neckline, or half armhole, of one part of the bodice; none where insert or sleeves leave none to finish. One
 * that runs over a princess seam is laid flat: the panel at the side on the one at the centre, seam on seam.
 */
export function finishedRun(part: BodiceHalf, finished: Finished, panels: readonly Piece[]): Run | undefined {
  const runs = panelsIn(part, panels).flatMap((panel) => runOn(panel, part, finished));
  const [first, ...others] = runs;
  return first && others.reduce(goingOn, first);
}

function runOn(panel: Piece, part: BodiceHalf, finished: Finished): readonly Run[] {
  const isOne = finished === 'neck' ? isNeckline : isArmhole;
  const edges = panel.edges.filter(isOne);
  const from = panel.edges.findIndex(isOne);
  const before = panel.edges.at(from - 1);
  const after = panel.edges[(from + edges.length) % panel.edges.length];
  if (edges.length === 0 || !before || !after) return [];
  const { grain } = panel;
  const notches = panel.notches.filter(({ edge }) => edges.some(({ name }) => name === edge));
  return [{ part, finished, before, edges, after, notches, grain: vectorBetween(grain.from, grain.to) }];
}

/** One run over the princess seam between two panels. */
function goingOn(run: Run, next: Run): Run {
  const laid = laidAgainst(run.after, next.before);
  const [last] = run.edges.slice(-1);
  const [first, ...rest] = next.edges.map((edge) => transformedEdge(edge, laid));
  if (!last || !first) return run;
  const joint =
    last.name === first.name ? [{ ...last, curves: [...last.curves, ...first.curves] }] : [last, first];
  return {
    ...run,
    edges: [...run.edges.slice(0, -1), ...joint, ...rest],
    after: transformedEdge(next.after, laid),
    notches: [...run.notches, ...next.notches],
  };
}

/** Lays a seam edge that ends at a corner against the one that starts there, on the other panel. */
function laidAgainst(starts: PieceEdge, ends: PieceEdge): Transform {
  const to = edgeStart(starts);
  const by = vectorBetween(edgeEnd(ends), to);
  const angle = angleOf(startDirection(starts)) + Math.PI - angleOf(endDirection(ends));
  return (p: Point) => turnedAbout(moved(p, by), to, angle);
}
