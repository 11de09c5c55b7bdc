import type { Edge } from '../geometry/curve.ts';
import { edgeEnd, edgeLength, edgeStart, pointAlong } from '../geometry/edge.ts';
import { between, distance, type Point } from '../geometry/point.ts';
import { COINCIDENCE, RELATION } from '../geometry/tolerance.ts';

/** On either side of a cut the old line is left to the blend for so far at least, mm: common practice, no source. */
export const LET_GO = 30;

/** Places that lead the blend along what is left of a long stretch lie so far apart, mm. */
const SPACING = 15;

/**
 * The places that lead a blend of the moved stretches of a cut edge, as a pencil is led on paper: through the
 * middle of every short stretch and of every narrow gap, and along long ones until near the cut.
 */
export const leadingPlaces = (stretches: readonly Edge[]): readonly Point[] =>
  hangTogether(stretches) && stretches.every((stretch) => edgeLength(stretch, RELATION) <= 2 * LET_GO)
    ? placesInKinkedLine(stretches)
    : placesAcrossGaps(stretches);

/** Whether stretches still meet end to end, as at hinges. */
export const hangTogether = (stretches: readonly Edge[]): boolean =>
  stretches.every((stretch, i) => {
    const before = stretches[i - 1];
    return !before || distance(edgeEnd(before), edgeStart(stretch)) <= COINCIDENCE;
  });

function placesAcrossGaps(stretches: readonly Edge[]): readonly Point[] {
  const [first, last] = [stretches[0], stretches.at(-1)];
  if (!first || !last) return [];
  const lengths = stretches.map((stretch) => edgeLength(stretch, RELATION));
  const gaps = stretches
    .slice(1)
    .map((stretch, i) => distance(edgeEnd(stretches[i] ?? stretch), edgeStart(stretch)));
  const places = stretches.flatMap((stretch, i) => {
    const [before, length = 0] = [stretches[i - 1], lengths[i]];
    const [free, freeAfter] = [letGo(gaps[i - 1], length), letGo(gaps[i], length)];
    const freeBefore = letGo(gaps[i - 1], lengths[i - 1] ?? 0);
    const gap = before ? placesInGap(edgeEnd(before), edgeStart(stretch), freeBefore, free) : [];
    return [...gap, ...placesOn(stretch, length, free, freeAfter)];
  });
  return [edgeStart(first), ...places, edgeEnd(last)];
}

/** How much of a stretch is let go beside a gap, mm: more beside a wide one, but no more than half a long stretch. */
const letGo = (gap: number | undefined, length: number): number =>
  gap === undefined ? 0 : Math.max(LET_GO, Math.min(1.5 * gap, length / 2));

/** The places on a stretch, but for what is let go at its start and end; its own ends left out. */
function placesOn(stretch: Edge, length: number, start: number, atEnd: number): readonly Point[] {
  const end = length - atEnd;
  const places = end - start <= SPACING ? [length / 2] : spaced(start, end);
  return places.filter((s) => s > 0 && s < length).map((s) => pointAlong(stretch, s).point);
}

function placesInGap(from: Point, to: Point, start: number, atEnd: number): readonly Point[] {
  const width = distance(from, to);
  const places = width - start - atEnd <= SPACING ? [width / 2] : spaced(start, width - atEnd);
  return places.map((s) => between(from, to, width > 0 ? s / width : 0));
}

function spaced(start: number, end: number): readonly number[] {
  const steps = Math.ceil((end - start) / SPACING);
  return Array.from({ length: steps + 1 }, (_, step) => start + ((end - start) * step) / steps);
}

/**
 * A circle as long as a line of equal chords crosses every chord at this share of it on either side of its middle,
 * for small angles: 1 / sqrt 6, since it lies as far inside the corners as to make up for what it saves.
 */
const ON_CIRCLE = 1 / Math.sqrt(6);

function placesInKinkedLine(stretches: readonly Edge[]): readonly Point[] {
  return stretches.flatMap((stretch, i) => {
    const length = edgeLength(stretch, RELATION);
    const at = (part: number): Point => pointAlong(stretch, part * length).point;
    return [
      i === 0 ? edgeStart(stretch) : at(0.5 - ON_CIRCLE),
      i === stretches.length - 1 ? edgeEnd(stretch) : at(0.5 + ON_CIRCLE),
    ];
  });
}
