import type { Edge } from '../geometry/curve.ts';
import { moved } from '../geometry/point.ts';
import { heading, scaled } from '../geometry/vector.ts';
import type { Mark, Piece } from '../pattern/piece.ts';
import { farthest } from './apart.ts';
import type { PieceOnOld } from './laid-piece.ts';

/** What became of a line inside or of a mark, and the farthest that any place of it moved. */
export type InsideMove =
  | { readonly kind: 'redrawn'; readonly what: string; readonly name: string; readonly moved: number }
  | { readonly kind: 'new' | 'gone'; readonly what: string; readonly name: string };

/** A line inside, or a mark as the line that is drawn for it. */
interface NamedInside {
  readonly what: string;
  readonly line: Edge;
}

/** What became of the lines inside a piece and of its marks, by kind and name, in the new order. */
export function insideMoves({ was, now, lay }: PieceOnOld): readonly InsideMove[] {
  const [old, fresh] = [insideOf(was), insideOf(now)];
  const same =
    (one: NamedInside) =>
    (other: NamedInside): boolean =>
      one.what === other.what && one.line.name === other.line.name;
  return [
    ...fresh.map((each): InsideMove => {
      const { what, line } = each;
      const before = old.find(same(each));
      return before
        ? { kind: 'redrawn', what, name: line.name, moved: farthest(before.line, line, lay) }
        : { kind: 'new', what, name: line.name };
    }),
    ...old
      .filter((each) => !fresh.some(same(each)))
      .map(({ what, line }): InsideMove => ({ kind: 'gone', what, name: line.name })),
  ];
}

const insideOf = ({ grain, lines, marks }: Piece): readonly NamedInside[] => [
  { what: 'line', line: { name: 'grainline', curves: [{ kind: 'line', ...grain }] } },
  ...lines.map((line) => ({ what: `${line.kind} line`, line })),
  ...marks.map((mark) => ({ what: markWords[mark.kind], line: lineOf(mark) })),
];

const markWords = { drill: 'drill hole', buttonhole: 'buttonhole', cross: 'cross' } as const;

function lineOf({ name, at, angle, length }: Mark): Edge {
  const half = scaled(heading(angle), length / 2);
  return { name, curves: [{ kind: 'line', from: moved(at, scaled(half, -1)), to: moved(at, half) }] };
}
