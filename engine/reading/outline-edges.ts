import { type Bounds, boundingBox } from '../geometry/bounds.ts';
import type { Curve } from '../geometry/curve.ts';
import { reversedOutline, signedArea } from '../geometry/outline.ts';
import type { Point } from '../geometry/point.ts';
import type { Issue, Result } from '../issue.ts';
import type { TracedEdge } from '../shaping/traced.ts';
import { fixedMm } from '../text/figure.ts';
import { fileNote, refusedFile } from './file-issues.ts';
import { linked } from './link-lines.ts';
import { marksOf, ownName } from './marked.ts';
import { MOST_CURVES, tooDetailed } from './outline-fault.ts';
import type { DrawnLine } from './read-shapes.ts';
import { clockwise, edgesAtCorners } from './traced-edges.ts';
import { isTestSquare } from './traced-scale.ts';

/** Ends of lines nearer than this are meant to meet, mm. */
const MEANT_TO_MEET = 1.5;

/**
 * The edges of a piece among the lines that are called its outline, or among those without a name: drawn one by one under
 * their own names, or one chain parted at its corners; clockwise as drawn, in mm.
 *
 * Issues: `which-piece`, `no-such-piece`, `outline-missing`, `outline-open`, `outline-too-detailed`, `edge-twice`; as notes
 * `outline-closed`, `other-outlines`.
 */
export function outlineEdges(
  outlines: readonly DrawnLine[],
  unmarked: readonly DrawnLine[],
  { piece, corner }: { readonly piece?: string; readonly corner: number },
): Result<readonly TracedEdge[]> {
  const named = outlines.filter(({ element }) => element.attributes['data-edge'] !== undefined);
  const pieces = new Set(named.map(({ element }) => element.attributes['data-piece']));
  if (pieces.size > 1)
    return refusedFile(
      'which-piece',
      `There are several pieces; say which with --piece: ${[...pieces].join(', ')}.`,
    );
  if (named.length > 1) return namedEdges(named);
  const unnamed = piece === undefined ? unmarked.filter((line) => !isTestSquare(line)) : unmarked;
  const candidates = outlines.length > 0 ? outlines : unnamed;
  const [largest, next] = candidates.toSorted((a, b) => spanOf(b.curves) - spanOf(a.curves));
  if (!largest) {
    if (piece !== undefined)
      return refusedFile('no-such-piece', `No line in this drawing is called “${piece.slice(0, 60)}”.`);
    return refusedFile('outline-missing', unmarked.length > 0 ? onlySquares : nothingThere);
  }
  const open = candidates.filter(({ closed }) => !closed);
  if (!largest.closed && open.length > MOST_CURVES) return tooDetailed;
  const loop = linked(
    largest.closed ? [largest] : [largest, ...open.filter((line) => line !== largest)],
    MEANT_TO_MEET,
  );
  if (!loop.closed) return openOutline(loop.gap, loop.at);
  const chain = clockwise(loop.lines.flatMap(({ curves }) => curves));
  if (chain.length === 0) return refusedFile('outline-missing', nothingThere);
  const others = largest.closed && next?.closed && spanOf(next.curves) > spanOf(largest.curves) / 4;
  const issues = [
    ...closingNote(loop.gap),
    ...(others
      ? [fileNote('other-outlines', 'There is more than one outline; the largest was taken (see --piece).')]
      : []),
  ];
  return { ok: true, value: edgesAtCorners(chain, corner), issues };
}

/** The words that say what becomes of an edge drawn under its own name; otherwise it is sewn. */
export const turnWords = ['fold', 'hem', 'finished'] as const;

/** Edges that were drawn one by one under their own names. */
function namedEdges(lines: readonly DrawnLine[]): Result<readonly TracedEdge[]> {
  const loop = linked(lines, MEANT_TO_MEET);
  if (!loop.closed) return openOutline(loop.gap, loop.at);
  const edges = loop.lines.map(({ curves, element }, i): TracedEdge => {
    const turn = turnWords.find((word) => marksOf(element).includes(word));
    return { name: ownName(element, 'edge') ?? `edge ${i + 1}`, curves, ...(turn ? { turn } : {}) };
  });
  const names = edges.map(({ name }) => name);
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined) return refusedFile('edge-twice', `Two edges are called “${twice}”.`);
  if (signedArea(edges) > 0) return { ok: true, value: edges, issues: closingNote(loop.gap) };
  return { ok: true, value: reversedOutline(edges), issues: closingNote(loop.gap) };
}

const spanOf = (curves: readonly Curve[]): number => areaOf(boundingBox(curves));

const areaOf = ({ left, right, top, bottom }: Bounds): number => (right - left) * (bottom - top);

const nothingThere = 'There is no line in this drawing that could be a piece.';

const onlySquares =
  'There is only a test square in this drawing, which is no piece. If it is the piece, call it “outline”.';

const openOutline = (gap: number, at: Point) =>
  refusedFile(
    'outline-open',
    `The outline is open: ${fixedMm(gap, 1)} are missing at ${fixedMm(at.x, 0)}, ${fixedMm(at.y, 0)}. Close it first.`,
  );

const closingNote = (gap: number): readonly Issue[] =>
  gap > 0.01
    ? [fileNote('outline-closed', `Ends that were ${fixedMm(gap, 2)} apart were brought together.`)]
    : [];
