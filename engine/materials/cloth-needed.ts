import type { Edge } from '../geometry/curve.ts';
import { polygonOf } from '../geometry/polygon.ts';
import { leastLength } from '../lay/least-length.ts';
import { planLay } from '../lay/plan-lay.ts';
import type { LayProblem } from '../lay/problem.ts';
import { type Readied, readied } from '../lay/readied.ts';
import { broadest } from '../lay/refused-shapes.ts';
import { type Cloth, type ClothName, lengthNeeded, stripWidth } from '../lay-plan/cloth.ts';
import type { OutlineOf } from '../lay-plan/laid-piece.ts';
import { tasksOf } from '../lay-plan/lay-plan.ts';
import { coarseFlatness, outwardPolygon } from '../lay-plan/outward.ts';
import type { Garment } from '../pattern/garment.ts';
import type { ClothWidth } from './widths.ts';

/** What is needed of one cloth, width by width. */
export interface ClothNeed {
  readonly cloth: ClothName;
  readonly widths: readonly WidthNeed[];
}

/** What is needed of a cloth of one width; mm. */
export interface WidthNeed extends ClothWidth {
  /** How it lies: open where a piece is too broad for half of it; none where one is too broad for all of it. */
  readonly laid?: 'folded' | 'open';
  /** No lay is shorter. */
  readonly least?: number;
  /** What a quick plan takes; none where none was made. */
  readonly needed?: number;
}

/** A cloth without nap or stripes as `bodkin lay` takes it unless told otherwise. */
const usualCloth = (width: number, folded: boolean): Cloth => ({
  width,
  folded,
  nap: false,
  selvedge: 10,
  gap: 0,
  shrink: 0,
  stripe: 0,
});

/** Rounds of a quick plan: most of what is gained at all is gained in so many. */
const quickRounds = 60;

/** Chords that stand for cutting lines where a bound is wanted stray so little from them, mm. */
const chords = 0.2;

type Lines = ReadonlyMap<string, Edge>;

/** A length of each cloth that no lay is shorter than, for some widths. Costs some milliseconds. */
export function leastCloth(garment: Garment, cutLines: Lines, widths: readonly ClothWidth[]): ClothNeed[] {
  const lying = byLying(garment, cutLines, (line) => polygonOf([line], chords));
  return onWidths(lying, widths).map((need) => bounded(need, lying));
}

/** With the length that no lay is shorter than which lies as it does, open or folded; of pieces whose lines are chords. */
const bounded = (need: ClothNeed, lying: Lying): ClothNeed => ({
  ...need,
  widths: need.widths.map((width) => {
    if (!width.laid) return width;
    const problem = problemOn(need.cloth, width.width, width.laid, lying);
    return { ...width, least: Math.max(0, leastLength(problem) - strayed(problem)) };
  }),
});

/** By how much a length may be too great that was found of chords. */
const strayed = ({ shapes, width }: LayProblem): number =>
  shapes.reduce((sum, { outline, count }) => sum + count * aroundIt(outline), 0) * (chords / width);

const aroundIt = (outline: LayProblem['shapes'][number]['outline']): number =>
  outline.reduce((sum, p, i) => {
    const q = outline[(i + 1) % outline.length] ?? p;
    return sum + Math.hypot(q.x - p.x, q.y - p.y);
  }, 0);

/**
 * What a quick plan of a fixed number of rounds takes of each cloth, for some widths, beside what no plan goes below. The same
 * garment gives the same lengths; a longer search (`planLay`) gives shorter ones.
 */
export function clothNeeded(garment: Garment, cutLines: Lines, widths: readonly ClothWidth[]): ClothNeed[] {
  const lying = byLying(garment, cutLines, (line) => outwardPolygon(line, 0, coarseFlatness));
  const drawn = byLying(garment, cutLines, (line) => polygonOf([line], chords));
  return onWidths(lying, widths).map((need) =>
    bounded({ ...need, widths: noneMoreThanNarrower(planned(need, lying)) }, drawn),
  );
}

/** With what a quick plan takes of each width. */
function planned({ cloth, widths }: ClothNeed, lying: Lying): readonly WidthNeed[] {
  const tables = new Map<Shapes, Readied>();
  return widths.map((width) => {
    if (!width.laid) return width;
    const problem = problemOn(cloth, width.width, width.laid, lying);
    const ready = tables.get(problem.shapes) ?? readied(problem.shapes);
    tables.set(problem.shapes, ready);
    const needed = lengthNeeded(usualCloth(width.width, width.laid === 'folded'), quickLay(problem, ready));
    return { ...width, needed };
  });
}

/** What lies on a cloth lies on a wider one as well: where that is the shorter lay, it is taken there too. */
const noneMoreThanNarrower = (widths: readonly WidthNeed[]): readonly WidthNeed[] =>
  widths.map((width) => {
    const best = widths
      .filter((other) => other.width <= width.width && other.needed !== undefined)
      .reduce((best, other) => ((other.needed ?? 0) < (best.needed ?? 0) ? other : best), width);
    return { ...best, width: width.width, called: width.called };
  });

/** The length of a lay found in a fixed number of rounds; more only where there is none by then. */
function quickLay(problem: LayProblem, ready: Readied): number {
  let length = 0;
  for (const { best } of planLay(problem, 1, (done) => done / quickRounds, ready))
    length = best?.length ?? length;
  return length;
}

type Shapes = LayProblem['shapes'];

/** What is to be laid of each cloth, folded or open: it depends on no width, and is worked out when it is first asked for. */
type Lying = (folded: boolean) => ReadonlyMap<ClothName, Shapes>;

function byLying(garment: Garment, cutLines: Lines, outlineOf: OutlineOf): Lying {
  const known = new Map<boolean, ReadonlyMap<ClothName, Shapes>>();
  return (folded) => {
    const before = known.get(folded);
    if (before) return before;
    const { tasks } = tasksOf(garment, cutLines, usualCloth(0, folded), outlineOf);
    const found = new Map(tasks.map(({ clothName, problem }) => [clothName, problem.shapes]));
    known.set(folded, found);
    return found;
  };
}

const problemOn = (
  clothName: ClothName,
  width: number,
  laid: NonNullable<WidthNeed['laid']>,
  lying: Lying,
): LayProblem => ({
  width: stripWidth(usualCloth(width, laid === 'folded')),
  shapes: lying(laid === 'folded').get(clothName) ?? [],
});

/** How each cloth lies on each width: folded where all has room, else open. */
const onWidths = (lying: Lying, widths: readonly ClothWidth[]): ClothNeed[] =>
  [...lying(true).keys()].map((cloth) => ({
    cloth,
    widths: widths.map((width): WidthNeed => {
      const laid = (['folded', 'open'] as const).find((laid) => {
        const problem = problemOn(cloth, width.width, laid, lying);
        return broadest(problem) <= problem.width;
      });
      return laid ? { ...width, laid } : width;
    }),
  }));
