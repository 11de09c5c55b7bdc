import type { EdgeRef } from './garment.ts';
import type { Chain, LengthPart, Measure } from './shape.ts';

/** What becomes of the edges and the pieces that a measure names. */
interface Renaming {
  readonly edge: (ref: EdgeRef) => EdgeRef;
  readonly piece: (name: string) => string;
}

/** The same measure on edges and pieces of other names. */
export function renamed<M extends Measure>(measure: M, by: Renaming): M;
export function renamed(measure: Measure, { edge, piece }: Renaming): Measure {
  const chain = (of: Chain): Chain => ({ ...of, edges: of.edges.map(edge) });
  const part = (of: LengthPart): LengthPart =>
    of.kind === 'chain' ? { ...of, chain: chain(of.chain) } : { ...of, piece: piece(of.piece) };
  switch (measure.kind) {
    case 'drafted':
      return { ...measure, piece: piece(measure.piece) };
    case 'laid on':
      return { ...measure, a: chain(measure.a), b: chain(measure.b) };
    case 'tightest bend':
      return { ...measure, of: chain(measure.of) };
    case 'length':
      return { ...measure, parts: measure.parts.map(part) };
  }
}

/** The pieces that a measure is taken on, the first named first. */
export function piecesOf(measure: Measure): readonly string[] {
  const names = new Set<string>();
  const noted = (name: string): string => {
    names.add(name);
    return name;
  };
  renamed(measure, { edge: (ref) => ({ ...ref, piece: noted(ref.piece) }), piece: noted });
  return [...names];
}
