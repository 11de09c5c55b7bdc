import { placeAt } from '../../geometry/space.ts';
import { type Seen, seenFrom } from '../../render/form/view.ts';
import { alongChain } from '../sewn.ts';
import { grainLines } from './grain-lines.ts';
import { bordersOf, inSight, LIFT, outlinesOf, STEEP } from './seen-lines.ts';
import { BEYOND, type SeenWorn } from './seen-worn.ts';
import type { ShownWorn } from './shown-worn.ts';

export type DrawnKind = 'form' | 'fold' | 'border' | 'seam' | 'grain';

/** A stretch of a line that is in sight. */
export interface LineInSight {
  readonly kind: DrawnKind;
  readonly points: readonly Seen[];
}

/** A fold shorter than this is not drawn, mm: cloth has many. */
const SHORTEST_FOLD = 22;

/** A mark shorter than this is a speck, mm. */
const SPECK = 3;

/** Length of either stroke of an arrow head, mm. */
const HEAD = 7;

/** All lines of a worn garment that are seen from one side: the form's outline, folds, edges, seams and grain. */
export function drawnLines({ worn }: ShownWorn, seen: SeenWorn): readonly LineInSight[] {
  const { view, cloth, form, isSeen } = seen;
  const drawn = (
    kind: DrawnKind,
    lines: readonly (readonly Seen[])[],
    least: number,
    lift: number = LIFT,
  ): readonly LineInSight[] =>
    lines.flatMap((line) => inSight(line, isSeen, lift, least).map((points) => ({ kind, points })));
  const seams = worn.sewn.seams.map(({ a }) =>
    alongChain(worn.sewn, a).map((p) => seenFrom(view, placeAt(worn.x, p))),
  );
  const grains = grainLines(worn).map(({ points }) => points.map((at) => seenFrom(view, at)));
  return [
    ...drawn('form', outlinesOf(form), SPECK, STEEP).flatMap(({ points }) => between(points, seen)),
    ...drawn('fold', outlinesOf(cloth), SHORTEST_FOLD, STEEP),
    ...drawn('border', bordersOf(cloth), SPECK, STEEP / 2),
    ...drawn('seam', seams, SPECK),
    ...drawn('grain', grains, 4 * HEAD).flatMap(({ points }) => [
      { kind: 'grain' as const, points },
      { kind: 'grain' as const, points: headAt(points) },
      { kind: 'grain' as const, points: headAt(points.toReversed()) },
    ]),
  ];
}

/** The stretches of the form's outline that lie in the picture. */
function between(points: readonly Seen[], { low, high }: SeenWorn): readonly LineInSight[] {
  const runs: Seen[][] = [[]];
  for (const at of points)
    if (at[1] > low - BEYOND && at[1] < high + BEYOND) runs.at(-1)?.push(at);
    else runs.push([]);
  return runs.filter((run) => run.length > 1).map((run) => ({ kind: 'form', points: run }));
}

/** The head of an arrow at the end of a line. */
function headAt(points: readonly Seen[]): readonly Seen[] {
  const [to, from] = [points.at(-1) as Seen, points.at(-2) as Seen];
  const way = Math.atan2(to[1] - from[1], to[0] - from[0]);
  const barb = (turn: number): Seen => [
    to[0] - HEAD * Math.cos(way + turn),
    to[1] - HEAD * Math.sin(way + turn),
    to[2],
  ];
  return [barb(0.4), to, barb(-0.4)];
}
