import { edgeLength } from '../geometry/edge.ts';
import { inflectionCount } from '../geometry/inflections.ts';
import { levelAt, outlineCrossings } from '../geometry/intersect.ts';
import { outlineBounds } from '../geometry/outline.ts';
import type { Issue, Result } from '../issue.ts';
import type { Notch, Piece, PieceEdge } from '../pattern/piece.ts';
import { fixedMm } from '../text/figure.ts';
import { noSuchEdge } from './cut-up.ts';
import { type Faired, faired } from './fair-edge.ts';
import { grainAlong } from './grain.ts';
import { levelLine } from './reassemble.ts';
import type { TracedPiece } from './traced.ts';

/** What the tracing does not say of a piece. */
export interface OwnPiece {
  readonly name: string;
  /** Width of cloth to add beyond the stitching line, mm. */
  readonly allowance: number;
  /** Width to add at hems, mm. */
  readonly hem: number;
  readonly folds: readonly string[];
  readonly hems: readonly string[];
}

/** The trade's name of the line that is kept level while a piece is altered. */
export const GUIDE = 'guide line';

/**
 * A piece of pattern from a tracing: kinks of tracing are faired out of its edges, allowances and folds are as
 * told, all corners are mitred (nobody knows what is sewn first), and a level guide line runs across. Where no
 * grainline was drawn it runs down the middle.
 *
 * Issues: `no-such-edge`; `edge-faired` as a note.
 */
export function ownPiece(traced: TracedPiece, told: OwnPiece): Result<Piece> {
  const unknown = [...told.folds, ...told.hems].find((name) =>
    traced.edges.every((edge) => edge.name !== name),
  );
  if (unknown !== undefined) return noSuchEdge(unknown, traced.edges);
  const issues: Issue[] = [];
  const edges = traced.edges.map((edge): PieceEdge => {
    const fair = faired(edge);
    if (fair.deviation > 0) issues.push(fairedNote(edge.name, fair));
    const { curves } = fair;
    const known = edge.turn ?? 'seam';
    const turn = told.folds.includes(edge.name) ? 'fold' : told.hems.includes(edge.name) ? 'hem' : known;
    const allowance = turn === 'fold' || turn === 'dart' ? 0 : turn === 'hem' ? told.hem : told.allowance;
    return {
      name: edge.name,
      curves,
      turn,
      allowance,
      rank: 1,
      inflections: inflectionCount({ name: '', curves }),
      ...(turn === 'seam' && { open: true }),
    };
  });
  const { top, bottom } = outlineBounds(edges);
  const onFold = edges.some(({ turn }) => turn === 'fold');
  const guide = { name: GUIDE, kind: 'level' as const, curves: [], text: GUIDE };
  const piece: Piece = {
    name: told.name,
    number: 1,
    edges,
    grain: traced.grain ?? grainAlong(edges, { x: 0, y: 1 }),
    notches: [...traced.notches, ...foldNotches(edges, traced.notches)],
    lines: levelLine(guide, edges, traced.guide ?? (top + bottom) / 2),
    marks: [],
    cut: [{ cloth: 'self', count: onFold ? 1 : 2, onFold, pair: !onFold }],
  };
  return { ok: true, value: piece, issues };
}

/** A notch at either end of every fold, on the edges that run into it, where none was traced. */
function foldNotches(edges: readonly PieceEdge[], traced: readonly Notch[]): readonly Notch[] {
  if (traced.some(({ mark }) => mark === 'fold')) return [];
  return edges.flatMap((fold, i): readonly Notch[] => {
    const [before, after] = [edges.at(i - 1), edges[(i + 1) % edges.length]];
    if (fold.turn !== 'fold' || !before || !after || before === after) return [];
    return [
      { name: `${fold.name} fold`, edge: before.name, at: edgeLength(before), mark: 'fold' },
      { name: `${fold.name} fold`, edge: after.name, at: 0, mark: 'fold' },
    ];
  });
}

/** A kink sharper than this in the middle of an edge may have been meant as a corner, radians. */
const MEANT = (8 * Math.PI) / 180;

function fairedNote(edge: string, { deviation, kink }: Faired): Issue {
  const degrees = Math.floor((kink * 180) / Math.PI);
  const meant =
    kink > MEANT
      ? ` One turned by ${degrees} degrees: if that is a corner, say --corner ${degrees - 1}.`
      : '';
  const message = `The traced kinks of “${edge}” were smoothed out; it moved by ${fixedMm(deviation, 2)} at most.${meant}`;
  return { code: 'edge-faired', severity: 'note', path: edge, message, value: deviation };
}

/** Where a piece is widest across at a level, mm; nothing where it does not reach. */
export function widthAt(piece: Piece, y: number): number {
  const found = outlineCrossings(piece.edges, levelAt(y));
  const [left, right] = [found[0]?.point, found.at(-1)?.point];
  return left && right ? right.x - left.x : 0;
}
