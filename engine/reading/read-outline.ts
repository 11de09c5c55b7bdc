import { type Bounds, boundingBox } from '../geometry/bounds.ts';
import type { Curve } from '../geometry/curve.ts';
import { isSimple } from '../geometry/inside.ts';
import { outlineBounds, reversedOutline, signedArea } from '../geometry/outline.ts';
import { distance, type Point } from '../geometry/point.ts';
import { scaledFrom, transformedCurve } from '../geometry/transform.ts';
import type { Issue, Result } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import type { TracedEdge, TracedPiece } from '../shaping/traced.ts';
import { fixed, fixedMm } from '../text/figure.ts';
import { linked } from './link-lines.ts';
import { isCalled, type Meaning, marksOf, meaningOf, ownName } from './marked.ts';
import { readMarkup } from './read-markup.ts';
import { type DrawnLine, type DrawnLines, readShapes } from './read-shapes.ts';
import { clockwise, edgesAtCorners } from './traced-edges.ts';
import { tracedNotches } from './traced-notches.ts';
import { isTestSquare, tracedScale } from './traced-scale.ts';
import { withoutPictures } from './without-pictures.ts';

/** What the drawing itself may leave open. */
export interface TracingOptions {
  /** Millimetres in one unit of the drawing; otherwise the marked test square tells. */
  readonly mmPerUnit?: number;
  /** The id or label of the outline, or of the group or piece it belongs to, where there are several. */
  readonly piece?: string;
  /** Which line is wanted where a drawing holds both; the stitching line when nothing is said. */
  readonly line?: 'stitching' | 'cutting';
  /** A joint that turns by more than this is a corner between two edges, radians. */
  readonly corner: number;
}

/** Ends of lines nearer than this are meant to meet, mm. */
const MEANT_TO_MEET = 1.5;

/** No piece of pattern is smaller (mm^2) or larger (mm), and none takes so many curves to draw. */
const LEAST_AREA = 400;
const LARGEST = 5_000;
const MOST_CURVES = 3_000;

/** No pattern takes more letters to write down, pictures apart. */
const MOST_TEXT = 8_000_000;

/**
 * Reads the outline of a piece from any SVG drawing: paths and shapes in nested groups, with transforms, relative
 * commands and arcs. The outline is what is called “outline” (or “cut”, where the cutting line is wanted), or edges
 * drawn one by one that carry `data-edge`, or else the largest closed line that is no square of a test square's size. Lines called “notch”, “grain” and “guide”
 * are those, and a square called “test square” of 50 mm gives the scale. Words count in ids, classes and labels, of
 * a line or the group around it.
 *
 * Issues: `not-svg`, `drawing-too-large`, `no-such-piece`, `which-piece`, `outline-missing`, `outline-open`,
 * `outline-crosses`, `outline-too-small`, `outline-too-large`, `outline-too-detailed`, and those of
 * `tracedScale`; beside a piece `path-unreadable`, `left-out`, `outline-closed`, `other-outlines`, `notch-far`.
 */
export function readOutline(svg: string, options: TracingOptions): Result<TracedPiece> {
  const text = withoutPictures(svg);
  if (text.length > MOST_TEXT) return tooLarge;
  const markup = readMarkup(text);
  if (!markup.ok) return markup;
  const drawn = readShapes(markup.value.elements);
  if (drawn.tooMany) return tooLarge;
  const meant = new Map(drawn.lines.map((line) => [line, meaningOf(line.element)]));
  const called = (meaning: Meaning): readonly DrawnLine[] =>
    drawn.lines.filter((line) => meant.get(line) === meaning);
  const remarks = remarksOn(drawn);
  const scale = tracedScale(markup.value.elements[0], called('square'), options.mmPerUnit);
  if (!scale.ok) return { ok: false, issues: [...scale.issues, ...remarks] };
  const inMm = (line: DrawnLine): DrawnLine => ({
    ...line,
    curves: line.curves.map((curve) =>
      transformedCurve(curve, scaledFrom({ x: 0, y: 0 }, scale.value.mmPerUnit)),
    ),
  });
  const wanted = (lines: readonly DrawnLine[]): readonly DrawnLine[] =>
    lines
      .filter(({ element }) => options.piece === undefined || isCalled(element, options.piece))
      .map(inMm)
      .filter(({ curves }) => curves.every(isSomewhere));
  const cut = options.line === 'cutting' ? wanted(called('cut')) : [];
  const outlines = cut.length > 0 ? cut : wanted(called('outline'));
  const edges = findEdges(outlines, wanted(called(undefined)), options);
  const known = [...scale.issues, ...remarks];
  if (!edges.ok) return { ok: false, issues: [...edges.issues, ...known] };
  const fault = faultOf(edges.value);
  if (fault) return { ok: false, issues: [...fault.issues, ...known] };
  const { notches, issues } = tracedNotches(wanted(called('notch')), edges.value);
  const grain = longest(wanted(called('grain')));
  const guide = longest(wanted(called('guide')));
  return {
    ok: true,
    value: {
      ...scale.value,
      edges: edges.value,
      notches,
      ...(grain ? { grain } : {}),
      ...(guide ? { guide: (guide.from.y + guide.to.y) / 2 } : {}),
    },
    issues: [...known, ...edges.issues, ...issues],
  };
}

function findEdges(
  outlines: readonly DrawnLine[],
  unmarked: readonly DrawnLine[],
  { piece, corner }: TracingOptions,
): Result<readonly TracedEdge[]> {
  const named = outlines.filter(({ element }) => element.attributes['data-edge'] !== undefined);
  const pieces = new Set(named.map(({ element }) => element.attributes['data-piece']));
  if (pieces.size > 1)
    return refuse(
      'which-piece',
      `There are several pieces; say which with --piece: ${[...pieces].join(', ')}.`,
    );
  if (named.length > 1) return namedEdges(named);
  const unnamed = piece === undefined ? unmarked.filter((line) => !isTestSquare(line)) : unmarked;
  const candidates = outlines.length > 0 ? outlines : unnamed;
  const [largest, next] = candidates.toSorted((a, b) => spanOf(b.curves) - spanOf(a.curves));
  if (!largest) {
    if (piece !== undefined)
      return refuse('no-such-piece', `No line in this drawing is called “${piece.slice(0, 60)}”.`);
    return refuse('outline-missing', unmarked.length > 0 ? onlySquares : nothingThere);
  }
  const open = candidates.filter(({ closed }) => !closed);
  if (!largest.closed && open.length > MOST_CURVES) return tooDetailed;
  const loop = linked(
    largest.closed ? [largest] : [largest, ...open.filter((line) => line !== largest)],
    MEANT_TO_MEET,
  );
  if (!loop.closed) return openOutline(loop.gap, loop.at);
  const chain = clockwise(loop.lines.flatMap(({ curves }) => curves));
  if (chain.length === 0) return refuse('outline-missing', nothingThere);
  const others = largest.closed && next?.closed && spanOf(next.curves) > spanOf(largest.curves) / 4;
  const issues = [
    ...closingNote(loop.gap),
    ...(others
      ? [note('other-outlines', 'There is more than one outline; the largest was taken (see --piece).')]
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
  if (twice !== undefined) return refuse('edge-twice', `Two edges are called “${twice}”.`);
  if (signedArea(edges) > 0) return { ok: true, value: edges, issues: closingNote(loop.gap) };
  return { ok: true, value: reversedOutline(edges), issues: closingNote(loop.gap) };
}

/** What makes an outline no piece of pattern. */
function faultOf(edges: readonly TracedEdge[]): Extract<Result<never>, { ok: false }> | undefined {
  const { left, right, top, bottom } = outlineBounds(edges);
  const size = `${fixed(right - left, 0)} by ${fixedMm(bottom - top, 0)}`;
  if (Math.max(right - left, bottom - top) > LARGEST)
    return refuse('outline-too-large', `At this scale the piece measures ${size}. Look at the scale again.`);
  if (edges.reduce((sum, { curves }) => sum + curves.length, 0) > MOST_CURVES) return tooDetailed;
  if (!isSimple(edges)) return refuse('outline-crosses', 'The outline crosses or touches itself.');
  return signedArea(edges) >= LEAST_AREA
    ? undefined
    : refuse('outline-too-small', `At this scale the outline encloses next to nothing (${size}).`);
}

function remarksOn({ unreadable, leftOut }: DrawnLines): readonly Issue[] {
  const [first] = unreadable;
  const more = unreadable.length > 1 ? ` (and ${unreadable.length - 1} more)` : '';
  const read = first ? [`A ${first.element.name} cannot be read: ${first.reason}${more}.`] : [];
  const left =
    leftOut.size > 0
      ? `Left alone: ${[...leftOut].map((name) => leftOutWords[name] ?? name).join(', ')}.`
      : '';
  return [
    ...read.map(
      (message): Issue => ({ code: 'path-unreadable', severity: 'warning', path: 'file', message }),
    ),
    ...(left ? [note('left-out', left)] : []),
  ];
}

const leftOutWords: Readonly<Record<string, string>> = {
  use: 'copies of other lines (use)',
  image: 'pictures',
  foreignObject: 'things that are no drawing',
  script: 'a script, which is never run',
  style: 'rules of style that would move or hide lines',
  svg: 'a drawing within the drawing',
};

const isSomewhere = (curve: Curve): boolean =>
  (curve.kind === 'line'
    ? [curve.from, curve.to]
    : [curve.from, curve.handle1, curve.handle2, curve.to]
  ).every(({ x, y }) => Math.abs(x) < 1e6 && Math.abs(y) < 1e6);

const spanOf = (curves: readonly Curve[]): number => areaOf(boundingBox(curves));

const areaOf = ({ left, right, top, bottom }: Bounds): number => (right - left) * (bottom - top);

function longest(lines: readonly DrawnLine[]): { readonly from: Point; readonly to: Point } | undefined {
  const ends = lines.flatMap(({ curves }) => {
    const [from, to] = [curves[0]?.from, curves.at(-1)?.to];
    return from && to && distance(from, to) > 1 ? [{ from, to }] : [];
  });
  return ends.toSorted((a, b) => distance(b.from, b.to) - distance(a.from, a.to))[0];
}

const tooLarge = refuse('drawing-too-large', 'There are more lines in this drawing than in any pattern.');

const nothingThere = 'There is no line in this drawing that could be a piece.';

const onlySquares =
  'There is only a test square in this drawing, which is no piece. If it is the piece, call it “outline”.';

const tooDetailed = refuse(
  'outline-too-detailed',
  `The outline is drawn with more than ${MOST_CURVES} lines and curves; simplify it first.`,
);

const openOutline = (gap: number, at: Point) =>
  refuse(
    'outline-open',
    `The outline is open: ${fixedMm(gap, 1)} are missing at ${fixedMm(at.x, 0)}, ${fixedMm(at.y, 0)}. Close it first.`,
  );

const closingNote = (gap: number): readonly Issue[] =>
  gap > 0.01
    ? [note('outline-closed', `Ends that were ${fixedMm(gap, 2)} apart were brought together.`)]
    : [];

const note = (code: IssueCode, message: string): Issue => ({ code, severity: 'note', path: 'file', message });

function refuse(code: IssueCode, message: string): Extract<Result<never>, { ok: false }> {
  return { ok: false, issues: [{ code, severity: 'error', path: 'file', message }] };
}
