import type { Curve, Edge } from '../geometry/curve.ts';
import { edgeLength } from '../geometry/edge.ts';
import type { Transform } from '../geometry/transform.ts';
import type { CutCount, Notch, Piece, PieceEdge } from '../pattern/piece.ts';
import { apart, farthest } from './apart.ts';
import { type InsideMove, insideMoves } from './inside-moves.ts';
import type { KnownSheet } from './known-draft.ts';
import { grainAngle, type PieceOnOld, paired } from './laid-piece.ts';
import { namesakes } from './namesakes.ts';

/** What became of a piece from one draft of a garment to the next; lengths and distances in mm. */
export type PieceMove = Redrawn | { readonly kind: 'new' | 'gone'; readonly piece: string };

/** Something before and after. */
export interface Change<T> {
  readonly before: T;
  readonly after: T;
}

/** A piece that is there before and after, the old one laid on the new one (`PieceOnOld`). */
export interface Redrawn {
  readonly kind: 'redrawn';
  readonly piece: string;
  readonly laidBy: PieceOnOld['by'];
  readonly number: Change<number>;
  readonly cut: Change<readonly CutCount[]>;
  /** The farthest that either stitching line lies from the other, and either cutting line, where both drafts have one. */
  readonly stitchingLine: number;
  readonly cuttingLine?: number;
  /** How far the grain was turned against the outline, degrees, clockwise as drawn, from -90 to 90. */
  readonly grain: number;
  readonly edges: readonly EdgeMove[];
  readonly notches: readonly NotchMove[];
  /** Lines drawn inside, the grainline among them, and marks. */
  readonly inside: readonly InsideMove[];
}

/** What became of one stitching edge. */
export type EdgeMove =
  | {
      readonly kind: 'redrawn';
      readonly edge: string;
      /** Its name before, where it lies between the same neighbours under another one now. */
      readonly was?: string;
      /** Its length. */
      readonly before: number;
      readonly after: number;
      /** The farthest that any place of the edge moved: the same share of its length before and after. */
      readonly moved: number;
      readonly allowance: Change<number>;
      readonly turn: Change<PieceEdge['turn']>;
    }
  | { readonly kind: 'new' | 'gone'; readonly edge: string; readonly length: number };

/** What became of a notch: where it stands on its edge, from the edge's start. */
export type NotchMove =
  | {
      readonly kind: 'redrawn';
      readonly notch: string;
      readonly edge: string;
      readonly before: number;
      readonly after: number;
      readonly mark: Change<Notch['mark']>;
    }
  | { readonly kind: 'new' | 'gone'; readonly notch: string; readonly edge: string; readonly at: number };

/**
 * What moved between two drafts of one garment, piece by piece in the new order. Edges are looked at in 25 places,
 * outlines in eight of every curve, so that a distance may be told too small by what a line bends between two of these.
 */
export function movesBetween(
  before: Omit<KnownSheet, 'notions'>,
  after: Omit<KnownSheet, 'notions'>,
): readonly PieceMove[] {
  const { laid, fresh, gone } = paired(before, after.pieces);
  const cutOf = ({ name }: Piece): readonly Curve[] => after.cutLines.get(name)?.curves ?? [];
  return [
    ...after.pieces.flatMap((piece): readonly PieceMove[] =>
      fresh.includes(piece)
        ? [{ kind: 'new', piece: piece.name }]
        : laid.filter(({ now }) => now === piece).map((each) => redrawn(each, cutOf(piece))),
    ),
    ...gone.map(({ name }): PieceMove => ({ kind: 'gone', piece: name })),
  ];
}

function redrawn(laid: PieceOnOld, cutNow: readonly Curve[]): Redrawn {
  const { named, now, was, cut, lay, by } = laid;
  const names = namesakes(was.edges, now.edges);
  const cutting = apart(cut, cutNow, lay);
  return {
    kind: 'redrawn',
    piece: named,
    laidBy: by,
    number: { before: was.number, after: now.number },
    cut: { before: was.cut, after: now.cut },
    stitchingLine: apart(curvesOf(was.edges), curvesOf(now.edges), lay) ?? 0,
    ...(cutting === undefined ? {} : { cuttingLine: cutting }),
    grain: turnedBetween(was, now, lay),
    edges: edgeMoves(laid, names),
    notches: notchMoves(laid, names),
    inside: insideMoves(laid),
  };
}

/** `names` holds the old name of every edge that is there before and after, by its new one. */
function edgeMoves({ was, now, lay }: PieceOnOld, names: ReadonlyMap<string, string>): readonly EdgeMove[] {
  const kept = new Set(names.values());
  return [
    ...now.edges.map((edge): EdgeMove => {
      const old = was.edges.find(({ name }) => name === names.get(edge.name));
      if (!old) return { kind: 'new', edge: edge.name, length: edgeLength(edge) };
      return {
        kind: 'redrawn',
        edge: edge.name,
        ...(old.name === edge.name ? {} : { was: old.name }),
        before: edgeLength(old),
        after: edgeLength(edge),
        moved: farthest(old, edge, lay),
        allowance: { before: old.allowance, after: edge.allowance },
        turn: { before: old.turn, after: edge.turn },
      };
    }),
    ...was.edges
      .filter(({ name }) => !kept.has(name))
      .map((edge): EdgeMove => ({ kind: 'gone', edge: edge.name, length: edgeLength(edge) })),
  ];
}

function notchMoves({ was, now }: PieceOnOld, names: ReadonlyMap<string, string>): readonly NotchMove[] {
  const isKept = (old: Notch, fresh: Notch): boolean =>
    old.name === fresh.name && old.edge === names.get(fresh.edge);
  return [
    ...now.notches.map((notch): NotchMove => {
      const { name, edge, at, mark } = notch;
      const old = was.notches.find((each) => isKept(each, notch));
      return old
        ? {
            kind: 'redrawn',
            notch: name,
            edge,
            before: old.at,
            after: at,
            mark: { before: old.mark, after: mark },
          }
        : { kind: 'new', notch: name, edge, at };
    }),
    ...was.notches
      .filter((old) => !now.notches.some((notch) => isKept(old, notch)))
      .map(({ name, edge, at }): NotchMove => ({ kind: 'gone', notch: name, edge, at })),
  ];
}

const curvesOf = (edges: readonly Edge[]): readonly Curve[] => edges.flatMap(({ curves }) => curves);

/** The turn of the grain, the old piece laid on the new one, degrees. */
function turnedBetween(was: Piece, now: Piece, lay: Transform): number {
  const old = grainAngle({ ...was, grain: { from: lay(was.grain.from), to: lay(was.grain.to) } });
  const turn = grainAngle(now) - old;
  return ((turn - Math.PI * Math.round(turn / Math.PI)) * 180) / Math.PI;
}
