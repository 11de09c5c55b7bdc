import type { IsSeen } from '../../render/form/depth.ts';
import type { Seen } from '../../render/form/view.ts';
import type { SeenPart } from './seen-worn.ts';

/** A line lies so much nearer to the eye than the cloth it is drawn on, mm; where cloth turns away it is steep, and hides its own edge. */
export const [LIFT, STEEP] = [2, 16] as const;

/** No stretch of a line is longer, mm, so that it can go out of sight. */
const STRETCH = 3;

/** A corner that lies nearer to the chord past it than this is left out, mm. */
const FLAT = 0.3;

/** The stretches of a line, lifted so much from what it lies on, that are in sight and at least so long; mm. */
export function inSight(
  line: readonly Seen[],
  isSeen: IsSeen,
  lift: number,
  least: number,
): readonly (readonly Seen[])[] {
  const stretches: Seen[][] = [];
  let now: Seen[] = [];
  const end = (): void => {
    if (now.length > 1 && lengthOf(now) >= least) stretches.push(now);
    now = [];
  };
  for (const [right, up, near] of closely(line))
    if (isSeen([right, up, near + lift])) now.push([right, up, near + lift]);
    else end();
  end();
  return stretches.map(fewer);
}

/**
 * Where a surface turns away from the eye: the outline of what is drawn, and of every fold on it. Found between points where
 * the smooth normals turn (A. Hertzmann, D. Zorin, Illustrating smooth surfaces, 2000), so that it does not jump from edge to edge.
 */
export function outlinesOf({ points, triangles, normals }: SeenPart): readonly (readonly Seen[])[] {
  const places = new Map<number, Seen>();
  const steps: (readonly [number, number])[] = [];
  const key = (a: number, b: number): number => Math.min(a, b) * points.length + Math.max(a, b);
  for (let t = 0; t < triangles.length; t += 3) {
    const crossed: number[] = [];
    for (let k = 0; k < 3; k++) {
      const [a, b] = [triangles[t + k] as number, triangles[t + ((k + 1) % 3)] as number];
      const [from, to] = [turnedTo(normals, a), turnedTo(normals, b)];
      if (from < 0 === to < 0) continue;
      const share = from / (from - to);
      const [p, q] = [points[a] as Seen, points[b] as Seen];
      places.set(key(a, b), [
        p[0] + share * (q[0] - p[0]),
        p[1] + share * (q[1] - p[1]),
        p[2] + share * (q[2] - p[2]),
      ]);
      crossed.push(key(a, b));
    }
    const [one, other] = crossed;
    if (one !== undefined && other !== undefined) steps.push([one, other]);
  }
  return chained(steps).map((chain) => chain.map((at) => places.get(at) as Seen));
}

/** How far a surface is turned to the eye at a point: 1 straight, less than nothing away. */
const turnedTo = (normals: readonly Seen[], p: number): number => (normals[p] as Seen)[2];

/** Where the cloth ends, sewn edges left out. */
export function bordersOf({ points, triangles }: SeenPart): readonly (readonly Seen[])[] {
  const times = new Map<number, readonly [number, number]>();
  for (let t = 0; t < triangles.length; t += 3)
    for (let k = 0; k < 3; k++) {
      const [a, b] = [triangles[t + k] as number, triangles[t + ((k + 1) % 3)] as number];
      const key = Math.min(a, b) * points.length + Math.max(a, b);
      if (times.has(key)) times.delete(key);
      else times.set(key, [a, b]);
    }
  return chained([...times.values()]).map((chain) => chain.map((p) => points[p] as Seen));
}

/** Steps from place to place as runs as long as they go; where more than two meet, runs end. */
function chained(steps: readonly (readonly [number, number])[]): readonly (readonly number[])[] {
  const about = new Map<number, number[]>();
  for (const [i, step] of steps.entries())
    for (const at of step) about.set(at, [...(about.get(at) ?? []), i]);
  const used = new Set<number>();
  const runs: number[][] = [];
  const follow = (from: number): number[] => {
    const run = [from];
    for (let at = from; ; ) {
      const here = about.get(at) ?? [];
      const next = here.length > 2 && run.length > 1 ? undefined : here.find((i) => !used.has(i));
      if (next === undefined) return run;
      used.add(next);
      const [a, b] = steps[next] as readonly [number, number];
      at = a === at ? b : a;
      run.push(at);
    }
  };
  for (const [at, here] of about)
    if (here.length !== 2) while (here.some((i) => !used.has(i))) runs.push(follow(at));
  for (const at of about.keys()) {
    const run = follow(at);
    if (run.length > 1) runs.push(run);
  }
  return runs;
}

const apart = (a: Seen, b: Seen): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

const lengthOf = (line: readonly Seen[]): number =>
  line.reduce((sum, to, i) => sum + (i === 0 ? 0 : apart(line[i - 1] as Seen, to)), 0);

function closely(line: readonly Seen[]): readonly Seen[] {
  return line.flatMap((to, i): readonly Seen[] => {
    const from = line[i - 1];
    if (!from) return [to];
    const parts = Math.max(1, Math.ceil(apart(from, to) / STRETCH));
    return Array.from({ length: parts }, (_, k): Seen => {
      const t = (k + 1) / parts;
      return [
        from[0] + t * (to[0] - from[0]),
        from[1] + t * (to[1] - from[1]),
        from[2] + t * (to[2] - from[2]),
      ];
    });
  });
}

/** The same line without the corners that nobody sees (D. H. Douglas, T. K. Peucker, 1973). */
function fewer(line: readonly Seen[]): readonly Seen[] {
  const [first, last] = [line[0] as Seen, line.at(-1) as Seen];
  let [farthest, off] = [0, FLAT];
  for (const [i, at] of line.entries()) {
    const away = fromChord(at, first, last);
    if (away > off) [farthest, off] = [i, away];
  }
  if (farthest === 0) return [first, last];
  return [...fewer(line.slice(0, farthest + 1)).slice(0, -1), ...fewer(line.slice(farthest))];
}

function fromChord(at: Seen, from: Seen, to: Seen): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((at[0] - from[0]) * dx + (at[1] - from[1]) * dy) / square;
  const t = Math.max(0, Math.min(1, along));
  return Math.hypot(at[0] - from[0] - t * dx, at[1] - from[1] - t * dy);
}
