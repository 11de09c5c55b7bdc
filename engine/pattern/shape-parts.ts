import type { Corner, EdgeRef } from './garment.ts';
import type { Chain, CornerFromLevel, LengthPart, Measure } from './shape.ts';

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
  const corner = (of: Corner): Corner => ({ ...of, piece: piece(of.piece) });
  const fromLevel = (of: CornerFromLevel): CornerFromLevel => ({ ...of, corner: corner(of.corner) });
  switch (measure.kind) {
    case 'drafted':
      return { ...measure, piece: piece(measure.piece) };
    case 'laid on':
    case 'sewn-in angle':
      return { ...measure, a: chain(measure.a), b: chain(measure.b) };
    case 'tightest bend':
    case 'notch height':
    case 'cap top':
    case 'fullest':
      return { ...measure, of: chain(measure.of) };
    case 'length':
      return { ...measure, parts: measure.parts.map(part) };
    case 'dip':
      return { ...measure, at: fromLevel(measure.at), than: fromLevel(measure.than) };
    case 'lean':
      return { ...measure, at: corner(measure.at) };
    case 'grain':
      return { ...measure, piece: piece(measure.piece) };
    case 'taper':
      return {
        ...measure,
        upper: measure.upper.map(part),
        middle: measure.middle.map(part),
        lower: measure.lower.map(part),
        down: edge(measure.down),
      };
    case 'across':
      return {
        ...measure,
        armhole: chain(measure.armhole),
        side: chain(measure.side),
        centre: chain(measure.centre),
        middle: edge(measure.middle),
      };
    case 'notch depth':
      return measure;
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
