import type { Curve, Outline } from '../geometry/curve.ts';
import { edgeLength, pointAlong, splitEdgeAt } from '../geometry/edge.ts';
import { contains } from '../geometry/inside.ts';
import { crossings, throughPoints } from '../geometry/intersect.ts';
import { outlineCurves } from '../geometry/outline.ts';
import { between, distance, type Point } from '../geometry/point.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import type { Result } from '../issue.ts';
import { refused } from './refusal.ts';
import { inTurn, type RigidMove, stays, undone } from './rigid-move.ts';

/** A place on an outline: so many mm along an edge from its start. */
export interface OutlinePlace {
  readonly edge: string;
  readonly at: number;
}

/** A straight cut right across a piece, from one place on its outline to another. */
export interface Slash {
  readonly from: OutlinePlace;
  readonly to: OutlinePlace;
}

/** A run of one edge between cuts, and the part of the piece it belongs to. */
export interface CutStretch {
  /** The edge's place in the outline. */
  readonly edge: number;
  /** Where it starts and ends along that edge, mm. */
  readonly from: number;
  readonly to: number;
  readonly curves: readonly Curve[];
  readonly part: number;
}

/** A cut made: `child` is the part on the left of the heading from `p` to `q` as drawn, `parent` the other. */
export interface SlashCut {
  readonly slash: Slash;
  /** The end of the slash that is met first going clockwise round the outline: `p`. */
  readonly first: OutlinePlace;
  readonly p: Point;
  readonly q: Point;
  readonly parent: number;
  readonly child: number;
}

/** A piece cut up: its outline in stretches, clockwise, and the cuts between its parts, numbered from 0. */
export interface CutPiece {
  readonly stretches: readonly CutStretch[];
  readonly cuts: readonly SlashCut[];
}

interface SlashStop extends OutlinePlace {
  readonly end: OutlinePlace;
  readonly place: number;
  readonly slash: Slash;
}

/**
 * Cuts an outline along straight lines. A slash may end on a corner; elsewhere it ends where it is told. Refuses
 * slashes that leave the piece (`slash-leaves-piece`), cross each other (`slashes-cross`), or name an edge that
 * is not there (`no-such-edge`).
 */
export function cutUp(outline: Outline, slashes: readonly Slash[]): Result<CutPiece> {
  const lengths = outline.map((edge) => edgeLength(edge));
  const stops: SlashStop[] = [];
  for (const slash of slashes)
    for (const end of [slash.from, slash.to]) {
      const place = outline.findIndex(({ name }) => name === end.edge);
      const length = lengths[place];
      if (length === undefined) return noSuchEdge(end.edge, outline);
      const atEnd = end.at > length - COINCIDENCE;
      stops.push({
        ...end,
        end,
        at: atEnd ? 0 : end.at,
        place: atEnd ? (place + 1) % outline.length : place,
        slash,
      });
    }
  const order = stops.toSorted((a, b) => a.place - b.place || a.at - b.at);
  const stretches: CutStretch[] = [];
  const made = new Map<Slash, SlashCut>();
  const open: Slash[] = [];
  let part = 0;
  for (const [place, edge] of outline.entries()) {
    let rest = edge;
    let from = 0;
    for (const stop of order.filter((candidate) => candidate.place === place)) {
      if (stop.at > from + COINCIDENCE) {
        const [before, after] = splitEdgeAt(rest, stop.at - from, [edge.name, edge.name]);
        stretches.push({ edge: place, from, to: stop.at, curves: before.curves, part });
        rest = after;
        from = stop.at;
      }
      const at = rest.curves[0]?.from ?? pointAlong(edge, stop.at).point;
      const before = made.get(stop.slash);
      if (!before) {
        const child = made.size + 1;
        made.set(stop.slash, { slash: stop.slash, first: stop.end, p: at, q: at, parent: part, child });
        open.push(stop.slash);
        part = child;
      } else {
        if (open.pop() !== stop.slash)
          return refused('slashes-cross', edge.name, 'The slash lines cross each other.');
        made.set(stop.slash, { ...before, q: at });
        part = before.parent;
      }
    }
    stretches.push({ edge: place, from, to: lengths[place] ?? from, curves: rest.curves, part });
  }
  const cuts = [...made.values()];
  const leaving = cuts.find((cut) => !staysInside(outline, cut));
  if (leaving)
    return refused(
      'slash-leaves-piece',
      leaving.slash.from.edge,
      `A straight line from “${leaving.slash.from.edge}” to “${leaving.slash.to.edge}” leaves the piece there.`,
    );
  return { ok: true, value: { stretches, cuts }, issues: [] };
}

/** A refusal that lists the edges there are. */
export const noSuchEdge = (name: string, outline: Outline) =>
  refused(
    'no-such-edge',
    name,
    `The piece has no edge called “${name.slice(0, 60)}”. Its edges are: ${outline.map((edge) => edge.name).join(', ')}.`,
  );

/** A crossing nearer to a slash's end than this is that end, mm; a traced line is not good to more. */
const END = 0.01;

function staysInside(outline: Outline, { p, q }: SlashCut): boolean {
  const length = distance(p, q);
  if (length <= 2 * END || !contains(outline, between(p, q, 0.5))) return false;
  return outlineCurves(outline).every((curve) =>
    crossings(curve, throughPoints(p, q)).every(({ along }) => along < END || along > length - END),
  );
}

/** The part of a cut-up piece in which a point lies; the first one when it lies in none. */
export function partAt({ stretches, cuts }: CutPiece, p: Point): number {
  for (const cut of cuts.toReversed()) {
    const chain = stretches.filter(({ part }) => part === cut.child);
    if (contains([{ name: '', curves: chain.flatMap((stretch, i) => joined(chain, stretch, i)) }], p))
      return cut.child;
  }
  return 0;
}

/** A stretch with the cut that leads from it to the next stretch of its part. */
function joined(chain: readonly CutStretch[], { curves }: CutStretch, i: number): readonly Curve[] {
  const from = curves.at(-1)?.to;
  const to = chain[(i + 1) % chain.length]?.curves[0]?.from;
  return from && to && distance(from, to) > COINCIDENCE ? [...curves, { kind: 'line', from, to }] : curves;
}

/**
 * Where every part goes, when each cut moves its child against its parent and the part `keep` stays. A part
 * carries along all that hangs on it.
 */
export function movesOf(
  { cuts }: CutPiece,
  across: (cut: SlashCut) => RigidMove,
  keep: number,
): readonly RigidMove[] {
  const moves: RigidMove[] = [stays];
  for (const cut of cuts) moves[cut.child] = inTurn(across(cut), moves[cut.parent] ?? stays);
  const back = undone(moves[keep] ?? stays);
  return moves.map((move) => inTurn(move, back));
}
