import type { MeasurementName } from '../../body/body.ts';
import type { Form, Surface } from '../../form/form.ts';
import { type SeenSurface, seenSurface, tapesSeen } from './depth.ts';
import { tenths } from './faces.ts';
import { seenTape } from './tape-lines.ts';
import type { Seen, ViewName } from './view.ts';

/** A form as a draughtsman draws it from one side: its contours in sight, and each tape that is; mm, y down. */
export interface LineFigure {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** The contours, as a path's data. */
  readonly contours: string;
  /** Tapes that can be seen from this side, and how long a line of each is in sight, mm. */
  readonly tapes: readonly {
    readonly measurement: MeasurementName;
    readonly d: string;
    readonly seen: number;
  }[];
}

/** A contour lies on the flank of what it is of, where the depth map is coarse: it is taken for so much nearer, mm. */
const lift = 32;

/** A form in lines: contours are where its surface turns away from whoever looks. */
export function lineFigure({ surface, tapes }: Form, view: ViewName): LineFigure {
  const seen = seenSurface(surface, view, tapesSeen);
  const xs = seen.points.map(([x]) => x);
  const ys = seen.points.map(([, y]) => -y);
  const [left, top] = [smallest(xs), smallest(ys)];
  return {
    left,
    top,
    width: -smallest(xs.map((x) => -x)) - left,
    height: -smallest(ys.map((y) => -y)) - top,
    contours: contours(surface, seen),
    tapes: tapes.flatMap((tape) => {
      const found = seenTape(tape, view, seen.isSeen);
      if (!found) return [];
      const d = found.stretches.map((stretch) => `M${stretch.map(at).join('L')}`).join('');
      const long = found.stretches.reduce((sum, stretch) => sum + lengthOf(stretch), 0);
      return [{ measurement: tape.measurement, d, seen: long }];
    }),
  };
}

const smallest = (values: readonly number[]): number =>
  values.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY);

const at = ([right, up]: Seen): string => `${tenths(right)} ${tenths(-up)}`;

const lengthOf = (line: readonly Seen[]): number =>
  line.reduce((sum, [x, y], i) => {
    const [fromX, fromY] = line[i - 1] ?? [x, y];
    return sum + Math.hypot(x - fromX, y - fromY);
  }, 0);

/** The edges between a triangle that is seen and one that is turned away, where nothing hides them. */
function contours({ triangles }: Surface, { points, isSeen }: SeenSurface): string {
  const towards = (t: number): boolean => {
    const [a, b, c] = [0, 1, 2].map((k) => points[triangles[t + k] as number]);
    return !!a && !!b && !!c && (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > 0;
  };
  const open = new Map<number, boolean>();
  const edges: (readonly [number, number])[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const near = towards(t);
    for (let k = 0; k < 3; k++) {
      const [from, to] = [triangles[t + k] as number, triangles[t + ((k + 1) % 3)] as number];
      const key = Math.min(from, to) * points.length + Math.max(from, to);
      const other = open.get(key);
      if (other === undefined) open.set(key, near);
      else if (other !== near) edges.push([from, to]);
    }
  }
  return joined(edges, points, isSeen);
}

/** Edges in sight as lines, each as long as they follow each other. */
function joined(
  edges: readonly (readonly [number, number])[],
  points: readonly Seen[],
  isSeen: SeenSurface['isSeen'],
): string {
  const inSight = edges.filter(([from, to]) => {
    const [a, b] = [points[from], points[to]];
    return a && b && isSeen([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2 + lift]);
  });
  const ways = new Map<number, number[]>();
  for (const [i, ends] of inSight.entries())
    for (const end of ends) ways.set(end, [...(ways.get(end) ?? []), i]);
  const used = new Set<number>();
  const lines: string[] = [];
  for (const [i, [from, to]] of inSight.entries()) {
    if (used.has(i)) continue;
    used.add(i);
    const line = [from, to];
    for (;;) {
      const here = line.at(-1) as number;
      const next = ways.get(here)?.find((each) => !used.has(each));
      const [a, b] = next === undefined ? [] : (inSight[next] ?? []);
      if (next === undefined || a === undefined || b === undefined) break;
      used.add(next);
      line.push(a === here ? b : a);
    }
    lines.push(`M${line.map((id) => at(points[id] as Seen)).join('L')}`);
  }
  return lines.join('');
}
