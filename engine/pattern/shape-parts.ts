import type { EdgeRef, SeamCorner } from './seam.ts';
import type { CornerFromLevel, EdgeChain, LengthPart, ShapeMeasure } from './shape.ts';

/** What becomes of the edges and the pieces that a measure names. */
interface Renaming {
  readonly edge: (ref: EdgeRef) => EdgeRef;
  readonly piece: (name: string) => string;
}

/** The same measure on edges and pieces of other names. */
export function renamed<M extends ShapeMeasure>(measure: M, by: Renaming): M;
export function renamed(measure: ShapeMeasure, by: Renaming): ShapeMeasure {
  switch (measure.kind) {
    case 'drafted':
      return { ...measure, piece: by.piece(measure.piece) };
    case 'laid on':
    case 'sewn-in angle':
      return { ...measure, a: chainBy(measure.a, by), b: chainBy(measure.b, by) };
    case 'tightest bend':
    case 'notch height':
    case 'cap top':
    case 'fullest':
      return { ...measure, of: chainBy(measure.of, by) };
    case 'length':
      return { ...measure, parts: measure.parts.map((part) => partBy(part, by)) };
    case 'dip':
      return { ...measure, at: fromLevelBy(measure.at, by), than: fromLevelBy(measure.than, by) };
    case 'lean':
      return { ...measure, at: cornerBy(measure.at, by) };
    case 'grain':
      return { ...measure, piece: by.piece(measure.piece) };
    case 'taper':
      return {
        ...measure,
        upper: measure.upper.map((part) => partBy(part, by)),
        middle: measure.middle.map((part) => partBy(part, by)),
        lower: measure.lower.map((part) => partBy(part, by)),
        down: by.edge(measure.down),
      };
    case 'across':
      return {
        ...measure,
        armhole: chainBy(measure.armhole, by),
        side: chainBy(measure.side, by),
        centre: chainBy(measure.centre, by),
        middle: by.edge(measure.middle),
      };
    case 'notch depth':
      return measure;
  }
}

const chainBy = (of: EdgeChain, { edge }: Renaming): EdgeChain => ({ ...of, edges: of.edges.map(edge) });

const partBy = (of: LengthPart, by: Renaming): LengthPart =>
  of.kind === 'chain' ? { ...of, chain: chainBy(of.chain, by) } : { ...of, piece: by.piece(of.piece) };

const cornerBy = (of: SeamCorner, { piece }: Renaming): SeamCorner => ({ ...of, piece: piece(of.piece) });

const fromLevelBy = (of: CornerFromLevel, by: Renaming): CornerFromLevel => ({
  ...of,
  corner: cornerBy(of.corner, by),
});

/** The pieces that a measure is taken on, the first named first. */
export function piecesOf(measure: ShapeMeasure): readonly string[] {
  const names = new Set<string>();
  const noted = (name: string): string => {
    names.add(name);
    return name;
  };
  const edge = (ref: EdgeRef): EdgeRef => {
    noted(ref.piece);
    return ref;
  };
  renamed(measure, { edge, piece: noted });
  return [...names];
}

/** The first of them, found without looking for the others. */
export const firstPieceOf = (measure: ShapeMeasure): string | undefined =>
  firstNamed(measure) ?? piecesOf(measure)[0];

function firstNamed(measure: ShapeMeasure): string | undefined {
  switch (measure.kind) {
    case 'drafted':
    case 'grain':
      return measure.piece;
    case 'laid on':
    case 'sewn-in angle':
      return measure.a.edges[0]?.piece;
    case 'tightest bend':
    case 'notch height':
    case 'cap top':
    case 'fullest':
      return measure.of.edges[0]?.piece;
    case 'length':
      return firstOfPart(measure.parts[0]);
    case 'taper':
      return firstOfPart(measure.upper[0]);
    case 'dip':
      return measure.at.corner.piece;
    case 'lean':
      return measure.at.piece;
    case 'across':
      return measure.armhole.edges[0]?.piece;
    case 'notch depth':
      return undefined;
  }
}

const firstOfPart = (part: LengthPart | undefined): string | undefined =>
  part?.kind === 'chain' ? part.chain.edges[0]?.piece : part?.piece;
