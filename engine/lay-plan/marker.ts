import type { Edge } from '../geometry/curve.ts';
import type { Garment } from '../pattern/garment.ts';
import type { EdgeRef, Seam } from '../pattern/seam.ts';
import type { SewingStep, State } from '../pattern/sewing.ts';

/** A garment in one size of several that are cut together. */
export interface MarkedSize {
  /** What its pieces are marked with. */
  readonly size: string;
  readonly garment: Garment;
  readonly cutLines: ReadonlyMap<string, Edge>;
  /** How many of it are cut. */
  readonly count: number;
}

/** Everything that is cut together, as one garment, with its cutting lines. */
export interface Marker {
  readonly garment: Garment;
  readonly cutLines: ReadonlyMap<string, Edge>;
}

/**
 * Several sizes as one garment for the cutting table: every piece bears its size and is cut as often as there are garments of
 * it; seams and sewing are each size's own, notions are bought for all. What is drafted, joined and measured stays with the sizes.
 */
export function markerOf(sizes: readonly MarkedSize[]): Marker {
  const [first] = sizes;
  if (!first) throw new Error('A marker needs a size.');
  const named = sizes.map(({ size, count }) => (count > 1 ? `${size} (${count} times)` : size));
  const garment: Garment = {
    name: first.garment.name,
    body: `${sizes.length > 1 ? 'sizes' : 'size'} ${named.join(', ')}`,
    pieces: sizes.flatMap(({ size, garment: { pieces }, count }) =>
      pieces.map((piece) => ({
        ...piece,
        name: inSize(piece.name, size),
        cut: piece.cut.map((cut) => ({ ...cut, count: cut.count * count })),
      })),
    ),
    seams: sizes.flatMap(({ size, garment: { seams } }) => seams.map((seam) => seamIn(seam, size))),
    notions: sizes.flatMap(({ size, garment: { notions }, count }) =>
      notions.map((notion) => ({
        ...notion,
        name: inSize(notion.name, size),
        count: notion.count * count,
      })),
    ),
    sewing: sizes.flatMap(({ size, garment: { sewing = [] } }) => sewing.map((step) => stepIn(step, size))),
    joins: [],
    girths: [],
    steps: [],
    shapes: [],
    issues: [],
  };
  const cutLines = new Map(
    sizes.flatMap(({ size, cutLines: lines }) =>
      Array.from(lines, ([piece, line]) => [inSize(piece, size), line] as const),
    ),
  );
  return { garment, cutLines };
}

/** What a piece, seam or notion of a size is called among those of others. */
const inSize = (name: string, size: string): string => `${name}, ${size}`;

const refsIn = (refs: readonly EdgeRef[], size: string): readonly EdgeRef[] =>
  refs.map((ref) => ({ ...ref, piece: inSize(ref.piece, size) }));

const seamIn = (seam: Seam, size: string): Seam => ({
  ...seam,
  name: inSize(seam.name, size),
  a: refsIn(seam.a, size),
  b: refsIn(seam.b, size),
});

function stepIn(step: SewingStep, size: string): SewingStep {
  const { sews, presses, turns, catches, needs, brings, closes, uses } = step;
  const names = (list: readonly string[]): readonly string[] => list.map((name) => inSize(name, size));
  const states = (list: readonly State[]): readonly State[] =>
    list.map((state) => ({ ...state, piece: inSize(state.piece, size) }));
  return {
    ...step,
    ...(sews && { sews: names(sews) }),
    ...(presses && { presses: names(presses) }),
    ...(turns && { turns: refsIn(turns, size) }),
    ...(catches && { catches: refsIn(catches, size) }),
    ...(needs && { needs: states(needs) }),
    ...(brings && { brings: states(brings) }),
    ...(closes && { closes: states(closes) }),
    ...(uses && { uses: names(uses) }),
  };
}
