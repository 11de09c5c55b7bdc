import { amidStrokes, whereItPoints } from '../finishing/notch-place.ts';
import { lengthUpTo } from '../geometry/edge.ts';
import { nearestOnEdge } from '../geometry/nearest.ts';
import type { Point } from '../geometry/point.ts';
import { THREE_DIGITS } from '../geometry/tolerance.ts';
import type { Issue } from '../issue.ts';
import type { Notch } from '../pattern/piece.ts';
import type { TracedEdge } from '../shaping/traced.ts';
import { marksOf, ownName } from './marked.ts';
import type { DrawnLine } from './read-shapes.ts';

/** A notch farther than this from every edge belongs to something else, mm: the width of a deep hem. */
const FARTHEST = 55;

/** The words that say of which kind a notch is; otherwise it is single. */
export const notchWords = ['single', 'double', 'fold', 'level', 'gather'] as const;

/**
 * Notches from the strokes marked as such: each stands where the outline is nearest to it. Strokes of one name on
 * one edge are one notch, in their middle. `notch-far` tells of those that stand nowhere near the outline.
 */
export function tracedNotches(
  strokes: readonly DrawnLine[],
  edges: readonly TracedEdge[],
): { readonly notches: readonly Notch[]; readonly issues: readonly Issue[] } {
  const issues: Issue[] = [];
  const found = new Map<
    string,
    { readonly notch: Notch; readonly edge: TracedEdge; readonly places: number[] }
  >();
  for (const [i, stroke] of strokes.entries()) {
    const name = ownName(stroke.element, 'notch') ?? `notch ${i + 1}`;
    const place = placeOf(stroke, edges);
    if (!place || place.away > FARTHEST) {
      const message = `The notch “${name}” stands nowhere near the outline and was left out.`;
      issues.push({ code: 'notch-far', severity: 'warning', path: name, message });
      continue;
    }
    // Not by its name: a notch that someone calls a dart's may be any balance mark.
    const atDart = stroke.element.attributes['data-kind'] === 'dart';
    const at = atDart ? lengthUpTo(place.edge, whereItPoints(place.edge, stroke.curves)) : place.at;
    const edge = place.edge.name;
    const key = JSON.stringify([edge, name]);
    const known = found.get(key);
    if (known) known.places.push(at);
    else {
      const marks = marksOf(stroke.element);
      const mark = atDart ? 'dart' : (notchWords.find((kind) => marks.includes(kind)) ?? 'single');
      found.set(key, { notch: { name, edge, at, mark }, edge: place.edge, places: [at] });
    }
  }
  const notches = [...found.values()].map(({ notch, edge, places }) => ({
    ...notch,
    at: amidStrokes(edge, places, notch.mark),
  }));
  return { notches, issues };
}

/** Where the outline is nearest to either end of a stroke, on the edge it names where it names one. */
function placeOf({ curves, element }: DrawnLine, edges: readonly TracedEdge[]) {
  const own = edges.filter(({ name }) => name === element.attributes['data-edge']);
  const ends: readonly Point[] = curves.flatMap(({ from, to }) => [from, to]);
  let best: { edge: TracedEdge; at: number; away: number } | undefined;
  for (const edge of own.length > 0 ? own : edges)
    for (const end of ends) {
      const foot = nearestOnEdge(edge, end);
      // Both ends of a stroke square across an edge have the same foot; the first found may stay.
      if (foot.distance < (best?.away ?? Infinity) - THREE_DIGITS)
        best = { edge, at: lengthUpTo(edge, foot), away: foot.distance };
    }
  return best;
}
