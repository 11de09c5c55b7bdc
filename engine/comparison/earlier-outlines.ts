import type { Curve } from '../geometry/curve.ts';
import { transformedCurve } from '../geometry/transform.ts';
import type { Piece } from '../pattern/piece.ts';
import type { KnownSheet } from './known-draft.ts';
import { paired } from './laid-piece.ts';

/** The stitching lines of an earlier draft laid on the pieces of another, and what could not be laid on any. */
export interface EarlierOutlines {
  /** Closed chains by the name of the piece they lie on, in the coordinates of that piece. */
  readonly on: ReadonlyMap<string, readonly (readonly Curve[])[]>;
  /** Pieces without an earlier one, and earlier ones without a piece. */
  readonly fresh: readonly string[];
  readonly gone: readonly string[];
}

/** What to draw of an earlier draft under the pieces of the new one, laid on them as `paired` does. */
export function earlierOutlines(before: KnownSheet, after: readonly Piece[]): EarlierOutlines {
  const { laid, fresh, gone } = paired(before, after);
  const on = new Map<string, readonly (readonly Curve[])[]>();
  for (const { now, was, lay } of laid) {
    const outline = was.edges.flatMap(({ curves }) => curves.map((curve) => transformedCurve(curve, lay)));
    on.set(now.name, [...(on.get(now.name) ?? []), outline]);
  }
  return { on, fresh: fresh.map(({ name }) => name), gone: gone.map(({ name }) => name) };
}
