import * as z from 'zod';
import { leastLength } from '../../engine/lay/least-length.ts';
import { densityOf, type Lay, type LayProblem } from '../../engine/lay/problem.ts';
import { refusedShapes } from '../../engine/lay/refused-shapes.ts';
import { withoutMark } from '../input/data-in.ts';
import { largestDocument, readTextFile } from '../input/read-data.ts';
import { reason } from '../input/reason.ts';
import { Unusable, unusable } from '../input/unusable.ts';
import type { LaidShapesResult } from '../results/lay.ts';

const finite = z.number().min(-1e6).max(1e6);

/** A strip-packing instance as such collections write them: demands, orientations in degrees, corners as pairs. */
const instance = z.object({
  strip_height: z.number().positive().max(1e6),
  items: z
    .array(
      z.object({
        id: z.union([z.number(), z.string()]),
        demand: z.number().int().min(0).max(1000),
        allowed_orientations: z.array(finite).max(8).optional(),
        shape: z.object({
          data: z
            .array(z.tuple([finite, finite]))
            .min(3)
            .max(2000),
        }),
      }),
    )
    .min(1)
    .max(500),
});

/** The shapes of a file and the strip they are to lie on. Throws `Unusable` where they cannot be laid. */
export async function readShapes(file: string): Promise<LayProblem> {
  const text = withoutMark(await readTextFile(file, largestDocument));
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    throw unusable('not-json', file, `${file} is no JSON: ${reason(error)}`);
  }
  const read = instance.safeParse(data);
  if (!read.success) {
    const [first] = read.error.issues;
    const where = first?.path.join('.') ?? '';
    throw unusable(
      'not-shapes',
      file,
      `${file} is no list of shapes with a strip (strip_height, items with id, demand and shape): ${where}: ${first?.message ?? ''}`,
    );
  }
  const problem: LayProblem = {
    width: read.data.strip_height,
    shapes: read.data.items.map(({ id, demand, allowed_orientations: turns, shape }) => ({
      name: String(id),
      count: demand,
      ways: (turns?.length ? turns : [0]).map((turn) => ({ turn, mirrored: false })),
      onFold: false,
      outline: withoutRepeats(shape.data.map(([x, y]) => ({ x, y }))),
    })),
  };
  const refused = refusedShapes(problem);
  if (refused.length > 0) throw new Unusable(refused);
  return problem;
}

/** Corners that repeat the one before, or the last that repeats the first, are left out. */
const withoutRepeats = (corners: readonly { readonly x: number; readonly y: number }[]) =>
  corners.filter(({ x, y }, i) => {
    const before = corners[(i + corners.length - 1) % corners.length];
    return before?.x !== x || before.y !== y;
  });

/** What `lay --shapes --json` prints: degrees, and lengths in the unit of the file. */
export const layResult = (problem: LayProblem, lay: Lay): LaidShapesResult => ({
  density: densityOf(problem, lay.length),
  length: lay.length,
  leastLength: leastLength(problem),
  width: problem.width,
  placements: lay.placements.map(({ shape, copy, way, x, y }) => ({
    shape: problem.shapes[shape]?.name ?? '',
    copy: copy + 1,
    turn: way.turn,
    mirrored: way.mirrored,
    x,
    y,
  })),
});
