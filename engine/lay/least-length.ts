import { areaOf, doubledArea, inWay, type LayProblem, type LayShape, type Way } from './problem.ts';

/** What rounding may add to a bound, as a share. */
const rounding = 1e-9;

/** The bands in which areas are looked at: their shares of the width. More would cost more than they find. */
const bands = [1 / 16, 1 / 4, 1 / 2, 3 / 4];

/** So many bands are looked at between what lies on the fold and the broadest shapes. */
const mostMeeting = 3;

/**
 * A length that no lay goes below, the greatest of four:
 *
 * - the area spread over the whole width;
 * - the longest shape in its shortest way;
 * - all that lies on the fold, where no two share a place;
 * - of any band along the strip, the area that must lie in it, spread over its width. A shape broader than what remains on
 *   either side of a band reaches into it wherever it lies, so two that cannot stand beside each other both fill the middle.
 *
 * Exact but for rounding, which is taken off.
 */
export function leastLength(problem: LayProblem): number {
  const laid = problem.shapes.filter(({ count }) => count > 0);
  const longest = laid.map(({ outline, ways }) =>
    Math.min(
      ...ways.map((way) => {
        const xs = outline.map((corner) => inWay(corner, way).x);
        return Math.max(...xs) - Math.min(...xs);
      }),
    ),
  );
  const folds = laid.map(({ onFold, outline, ways, count }) =>
    onFold
      ? count * Math.min(...ways.map((way) => lowestEdge(outline.map((corner) => inWay(corner, way)))))
      : 0,
  );
  return Math.max(
    areaOf(problem) / problem.width,
    ...longest,
    folds.reduce((sum, length) => sum + length, 0),
    bandLength(laid, problem.width),
  );
}

/** How long a polygon is where its y is least. */
function lowestEdge(outline: LayShape['outline']): number {
  const least = Math.min(...outline.map(({ y }) => y));
  const xs = outline.filter(({ y }) => y === least).map(({ x }) => x);
  return Math.max(...xs) - Math.min(...xs);
}

/**
 * The greatest length that any band asks for: those about the middle, and where there is a fold those beside it, and those in
 * which something broad meets what lies on the fold, wherever it lies.
 */
function bandLength(shapes: readonly LayShape[], width: number): number {
  const profiled = shapes.map((shape) => ({ ...shape, profiles: profilesOf(shape, width) }));
  const lengthOf = (from: number, to: number): number =>
    profiled.reduce(
      (sum, { count, onFold, profiles }) =>
        sum + count * Math.min(...profiles.map((profile) => leastWithin(profile, width, onFold, from, to))),
      0,
    ) /
    (to - from);
  const middle = bands.map((share) => lengthOf((width * (1 - share)) / 2, (width * (1 + share)) / 2));
  const folded = profiled.filter(({ onFold }) => onFold);
  const beside = folded.length > 0 ? bands.map((share) => lengthOf(0, width * share)) : [];
  const breadth = ({ profiles }: (typeof profiled)[number]): number =>
    Math.min(...profiles.map(({ levels }) => levels.at(-1) ?? 0));
  const reach = Math.max(0, ...folded.map(breadth));
  const meeting = profiled
    .filter(({ onFold }) => !onFold)
    .map((shape) => Math.max(0, width - breadth(shape)))
    .filter((from) => from < reach)
    .toSorted((a, b) => a - b)
    .slice(0, mostMeeting)
    .map((from) => lengthOf(from, reach));
  return Math.max(...middle, ...beside, ...meeting) * (1 - rounding);
}

/** How much of a shape lies below each level, across the strip: exact at `levels`, between them by a quadratic. */
interface Profile {
  readonly levels: readonly number[];
  readonly below: readonly number[];
  /** The chord, and its slope, just above each level. */
  readonly chords: readonly number[];
  readonly slopes: readonly number[];
}

/** The profiles of a shape in the ways in which it fits; mirrored along the strip they are the same. */
function profilesOf({ outline, ways }: LayShape, width: number): Profile[] {
  const found = new Map<string, Profile>();
  for (const way of ways) {
    const key = sideways(way);
    if (!found.has(key)) found.set(key, profileOf(outline.map((corner) => inWay(corner, way))));
  }
  const all = [...found.values()];
  const fitting = all.filter(({ levels }) => (levels.at(-1) ?? 0) <= width);
  return fitting.length > 0 ? fitting : all;
}

/** Ways that put the same places at the same levels have the same words. */
const sideways = ({ turn, mirrored }: Way): string =>
  turn % 180 === 0 ? String((turn % 360 === 0) !== mirrored) : `${turn} ${mirrored}`;

/** Goes up through the corners: between two levels the chord is a sum of straight edges, which begin and end at corners. */
function profileOf(outline: LayShape['outline']): Profile {
  const least = Math.min(...outline.map(({ y }) => y));
  const changes = outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    if (a.y === b.y) return [];
    // An edge as x = at + slope * level, counted up on one side of the polygon and down on the other.
    const slope = Math.sign(b.y - a.y) * ((b.x - a.x) / (b.y - a.y));
    const at = Math.sign(b.y - a.y) * a.x - slope * (a.y - least);
    return [
      { level: Math.min(a.y, b.y) - least, at, slope },
      { level: Math.max(a.y, b.y) - least, at: -at, slope: -slope },
    ];
  });
  changes.sort((a, b) => a.level - b.level);
  const turned = doubledArea(outline) < 0 ? -1 : 1;
  const profile = { levels: [0], below: [0], chords: [] as number[], slopes: [] as number[] };
  let [low, area, at, slope] = [0, 0, 0, 0];
  for (const change of changes) {
    const { level } = change;
    if (level > low) {
      const chord = turned * (at + slope * low);
      profile.chords.push(chord);
      profile.slopes.push(turned * slope);
      area += (level - low) * (chord + (turned * slope * (level - low)) / 2);
      profile.levels.push(level);
      profile.below.push(area);
      low = level;
    }
    at += change.at;
    slope += change.slope;
  }
  return profile;
}

/** The area of a shape below a level; asked of levels near each other in turn, it need not look for the place. */
function areasBelow({ levels, below, chords, slopes }: Profile): (level: number) => number {
  const last = levels.length - 1;
  let low = 0;
  return (level) => {
    if (level <= 0) return 0;
    if (level >= (levels[last] ?? 0)) return below[last] ?? 0;
    while ((levels[low] ?? 0) > level) low -= 1;
    while ((levels[low + 1] ?? 0) <= level) low += 1;
    const up = level - (levels[low] ?? 0);
    return (below[low] ?? 0) + up * ((chords[low] ?? 0) + (up * (slopes[low] ?? 0)) / 2);
  };
}

/**
 * The least area of a shape within a band, wherever it lies across the strip. Between the places where a corner passes an edge
 * of the band the area is a quadratic of the place, so three of its values tell its least.
 */
function leastWithin(profile: Profile, width: number, onFold: boolean, from: number, to: number): number {
  const [belowUpper, belowLower] = [areasBelow(profile), areasBelow(profile)];
  const within = (place: number): number => belowUpper(to - place) - belowLower(from - place);
  const most = onFold ? 0 : Math.max(0, width - (profile.levels.at(-1) ?? 0));
  if (most === 0) return within(0);
  // A shape that has room on one side of the band need not enter it.
  if (Math.min(within(0), within(most)) === 0) return 0;
  const turns = profile.levels
    .flatMap((level) => [from - level, to - level])
    .filter((place) => place > 0 && place < most);
  const places = [...turns.toSorted((a, b) => a - b), most];
  let [start, first] = [0, within(0)];
  let least = first;
  for (const end of places) {
    const [middle, last] = [within((start + end) / 2), within(end)];
    least = Math.min(least, last);
    const bend = first - 2 * middle + last;
    const at = (3 * first - 4 * middle + last) / (4 * bend);
    if (bend > 0 && at > 0 && at < 1) least = Math.min(least, within(start + at * (end - start)));
    [start, first] = [end, last];
  }
  return Math.max(0, least);
}
