import { edgeLength } from '../geometry/edge.ts';
import type { Result } from '../issue.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';
import { noSuchEdge, type Slash } from './cut-up.ts';
import { refused } from './refusal.ts';

/** Where a piece is slashed. */
export interface Slashing {
  /** The two edges the slash lines run between; they share out both edges evenly. */
  readonly from: string;
  readonly to: string;
  readonly lines: number;
  /** The edge where the strips stay joined, one of the two; without it they part in parallel. */
  readonly hinge?: string;
  /** Two notches on one of the two edges: lines start, or end, only between them. */
  readonly between?: readonly [string, string];
}

/** More slash lines than anyone would cut. */
const MOST_LINES = 60;

/** Strips narrower than this fall apart in the hand, mm. */
const NARROWEST = 2;

/** A part of an edge, from and to so many mm from its start. */
interface EdgeRun {
  readonly from: number;
  readonly to: number;
}

/**
 * Slash lines that share out two edges evenly, or the parts of them between two notches. Notches of those names on
 * the other edge bound the lines there; where there are none, the lines end at the same shares of it.
 *
 * Issues: `no-such-edge`, `slash-edges-same`, `hinge-not-slashed`, `too-many-slashes`, `no-such-notch`,
 * `notches-apart`.
 */
export function slashLines(piece: Piece, slashing: Slashing): Result<readonly Slash[]> {
  const { from, to, lines, hinge, between } = slashing;
  const [first, second] = [from, to].map((wanted) => piece.edges.find(({ name }) => name === wanted));
  if (!first) return noSuchEdge(from, piece.edges);
  if (!second) return noSuchEdge(to, piece.edges);
  if (first === second)
    return refused('slash-edges-same', from, 'Slash lines run between two different edges.');
  if (hinge !== undefined && hinge !== from && hinge !== to)
    return refused(
      'hinge-not-slashed',
      hinge,
      `The hinge should be one of the slashed edges, ${from} or ${to}.`,
    );
  const runs = between ? runsBetween(piece, first, second, between) : wholeRuns(first, second);
  if (!runs.ok) return runs;
  const [a, b] = runs.value;
  const most = Math.min(MOST_LINES, Math.floor(Math.min(a.to - a.from, b.to - b.from) / NARROWEST) - 1);
  if (!Number.isInteger(lines) || lines < 1 || lines > most)
    return refused(
      'too-many-slashes',
      from,
      most < 1
        ? 'There is no room for a slash line there.'
        : `This piece can take 1 to ${most} slash lines there, not ${lines}.`,
      { value: lines, limits: { min: 1, max: Math.max(1, most), unit: 'count' } },
    );
  const value = Array.from({ length: lines }, (_, i): Slash => {
    const share = (i + 1) / (lines + 1);
    return {
      from: { edge: from, at: a.from + (a.to - a.from) * share },
      to: { edge: to, at: b.to - (b.to - b.from) * share },
    };
  });
  return { ok: true, value, issues: [] };
}

type Runs = readonly [EdgeRun, EdgeRun];

const wholeRuns = (first: PieceEdge, second: PieceEdge): Result<Runs> => ({
  ok: true,
  value: [wholeOf(first), wholeOf(second)],
  issues: [],
});

const wholeOf = (edge: PieceEdge): EdgeRun => ({ from: 0, to: edgeLength(edge) });

function runsBetween(
  piece: Piece,
  first: PieceEdge,
  second: PieceEdge,
  names: readonly [string, string],
): Result<Runs> {
  const on = (edge: PieceEdge) =>
    names.map((name) => piece.notches.find((notch) => notch.edge === edge.name && notch.name === name)?.at);
  const missing = names.find((_, i) => [first, second].every((edge) => on(edge)[i] === undefined));
  if (missing !== undefined) {
    const slashed = piece.notches.filter(({ edge }) => edge === first.name || edge === second.name);
    const known = [...new Set(slashed.map(({ name }) => name))].join(', ') || 'none at all';
    return refused(
      'no-such-notch',
      missing,
      `No notch called “${missing.slice(0, 60)}” is on “${first.name}” or “${second.name}”. Notches there are: ${known}.`,
    );
  }
  const [a, b] = [first, second].map((edge): EdgeRun | undefined => {
    const [one, other] = on(edge);
    if (one === undefined || other === undefined || one === other) return undefined;
    return { from: Math.min(one, other), to: Math.max(one, other) };
  });
  const value: Runs | undefined =
    a && b
      ? [a, b]
      : a
        ? [a, acrossFrom(a, first, second)]
        : b
          ? [acrossFrom(b, second, first), b]
          : undefined;
  if (value) return { ok: true, value, issues: [] };
  const message = `The notches “${names[0]}” and “${names[1]}” should be two places on one edge.`;
  return refused('notches-apart', names[0], message);
}

/** The part of the other edge at the same shares: outlines run against each other across a piece. */
function acrossFrom(run: EdgeRun, own: PieceEdge, other: PieceEdge): EdgeRun {
  const [whole, length] = [edgeLength(own), edgeLength(other)];
  return { from: length * (1 - run.to / whole), to: length * (1 - run.from / whole) };
}
