import type { Random } from '../numeric/random.ts';
import type { Posture } from './postures.ts';
import { doubledArea, type LayProblem } from './problem.ts';

/** Everything that is to be laid, each copy of a shape by itself, in flat arrays. */
export interface Copies {
  readonly count: number;
  readonly postures: readonly Posture[];
  /** By copy: its shape, the first and the number of its postures, and whether it lies on the fold. */
  readonly shapeOf: Int32Array;
  readonly firstPosture: Int32Array;
  readonly postureCount: Int32Array;
  readonly onFold: Uint8Array;
  readonly area: Float64Array;
  /** How much a unit of depth counts between two copies before any weight. */
  readonly bulk: Float64Array;
  /** By posture: half of its box. */
  readonly halfWidth: Float64Array;
  readonly halfHeight: Float64Array;
}

/** Places of all copies at some moment. */
export interface Remembered {
  readonly length: number;
  readonly posture: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** The copies of a problem's shapes, whose postures are given shape by shape. */
export function copiesOf({ shapes }: LayProblem, byShape: readonly (readonly Posture[])[]): Copies {
  const shapeOf = shapes.flatMap(({ count }, shape) => Array.from({ length: count }, () => shape));
  const starts = byShape.map((_, i) => byShape.slice(0, i).reduce((sum, own) => sum + own.length, 0));
  const areas = shapes.map(({ outline }) => Math.abs(doubledArea(outline)) / 2);
  const area = Float64Array.from(shapeOf, (shape) => areas[shape] ?? 0);
  const postures = byShape.flat();
  return {
    count: shapeOf.length,
    postures,
    shapeOf: Int32Array.from(shapeOf),
    firstPosture: Int32Array.from(shapeOf, (shape) => starts[shape] ?? 0),
    postureCount: Int32Array.from(shapeOf, (shape) => byShape[shape]?.length ?? 0),
    onFold: Uint8Array.from(shapeOf, (shape) => (shapes[shape]?.onFold ? 1 : 0)),
    area,
    bulk: area.map((each) => each ** 0.25),
    halfWidth: Float64Array.from(postures, ({ halfWidth }) => halfWidth),
    halfHeight: Float64Array.from(postures, ({ halfHeight }) => halfHeight),
  };
}

/** One of the postures of a copy, by chance. */
export function somePosture({ firstPosture, postureCount }: Copies, i: number, random: Random): number {
  const count = postureCount[i] as number;
  const first = firstPosture[i] as number;
  return count === 1 ? first : first + Math.floor(random() * count);
}

/** The posture in which a copy takes the least length. */
export function shortestPosture({ firstPosture, postureCount, halfWidth }: Copies, i: number): number {
  const first = firstPosture[i] as number;
  let best = first;
  for (let k = first; k < first + (postureCount[i] as number); k++)
    if ((halfWidth[k] as number) < (halfWidth[best] as number)) best = k;
  return best;
}
