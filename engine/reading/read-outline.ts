import type { Curve } from '../geometry/curve.ts';
import { distance, type Point } from '../geometry/point.ts';
import { scaledFrom, transformedCurve } from '../geometry/transform.ts';
import type { Result } from '../issue.ts';
import type { TracedPiece } from '../shaping/traced.ts';
import { drawingRemarks } from './drawing-remarks.ts';
import { refusedFile } from './file-issues.ts';
import { isCalled, type Meaning, meaningOf } from './marked.ts';
import { outlineEdges } from './outline-edges.ts';
import { outlineFault } from './outline-fault.ts';
import { readMarkup } from './read-markup.ts';
import { type DrawnLine, readShapes } from './read-shapes.ts';
import { tracedNotches } from './traced-notches.ts';
import { tracedScale } from './traced-scale.ts';
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

/** No pattern takes more letters to write down, pictures apart. */
const MOST_TEXT = 8_000_000;

/**
 * Reads the outline of a piece from any SVG drawing: paths and shapes in nested groups, with transforms, relative
 * commands and arcs. The outline is what is called “outline” (or “cut”, where the cutting line is wanted), or edges
 * drawn one by one that carry `data-edge`, or else the largest closed line that is no square of a test square's size.
 * Lines called “notch”, “grain” and “guide” are those, and a square called “test square” of 50 mm gives the scale. Words
 * count in ids, classes and labels, of a line or the group around it.
 *
 * Issues: `not-svg`, `drawing-too-large`, and those of `outlineEdges`, `outlineFault` and `tracedScale`; beside a piece those
 * of `drawingRemarks`, and `notch-far`.
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
  const remarks = drawingRemarks(drawn);
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
  const edges = outlineEdges(outlines, wanted(called(undefined)), options);
  const known = [...scale.issues, ...remarks];
  if (!edges.ok) return { ok: false, issues: [...edges.issues, ...known] };
  const fault = outlineFault(edges.value);
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

const isSomewhere = (curve: Curve): boolean =>
  (curve.kind === 'line'
    ? [curve.from, curve.to]
    : [curve.from, curve.handle1, curve.handle2, curve.to]
  ).every(({ x, y }) => Math.abs(x) < 1e6 && Math.abs(y) < 1e6);

function longest(lines: readonly DrawnLine[]): { readonly from: Point; readonly to: Point } | undefined {
  const ends = lines.flatMap(({ curves }) => {
    const [from, to] = [curves[0]?.from, curves.at(-1)?.to];
    return from && to && distance(from, to) > 1 ? [{ from, to }] : [];
  });
  return ends.toSorted((a, b) => distance(b.from, b.to) - distance(a.from, a.to))[0];
}

const tooLarge = refusedFile(
  'drawing-too-large',
  'There are more lines in this drawing than in any pattern.',
);
