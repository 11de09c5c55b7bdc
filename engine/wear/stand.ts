import type { Obstacle } from '../cloth/obstacle.ts';

/** The left arm that a sleeve is laid round: where it begins, the way it goes, and how long it is. */
export interface StandArm {
  readonly from: readonly [number, number, number];
  readonly way: readonly [number, number, number];
}

/** A body that a garment is put on: x to the wearer's left, y up from the floor, z forward, mm; left and right alike. */
export interface Stand {
  /** Torso and, under sleeves, arms. */
  readonly obstacle: Obstacle;
  /** Torso and, under a skirt, legs, for what is no sleeve: arms hang free of it. */
  readonly trunk: Obstacle;
  /** The torso alone: what girths are taken of, and cloth is laid round. */
  readonly torso: Obstacle;
  /** Heights of the levels. */
  readonly levels: Readonly<Record<'hip' | 'waist' | 'under-bust' | 'bust', number>>;
  /** Height at which the arms begin: above, there is no girth to be had. */
  readonly underarm: number;
  /** The left bust point. */
  readonly bustPoint: readonly [number, number, number];
  readonly arm: StandArm;
  /** Height above all that is dressed. */
  readonly top: number;
}

/** Half a level section of a stand, from the centre back over the wearer's left to the centre front: x, z ..., and lengths along. */
export interface HalfSection {
  readonly points: Float64Array;
  readonly along: Float64Array;
}

/** How many steps a half section is walked in. */
const STEPS = 72;

/** Rays begin so far from the middle of the body, mm. */
const OUTSIDE = 420;

/** A ray has arrived when it is nearer than this, mm. */
const ARRIVED = 0.02;

/** The half section of a stand at a height, met by rays from all around towards its middle. */
export function sectionAt(stand: Stand, height: number): HalfSection {
  const front = met(stand.torso, [0, height, OUTSIDE], [0, 0, -1]);
  const back = met(stand.torso, [0, height, -OUTSIDE], [0, 0, 1]);
  const middle = (-OUTSIDE + back + OUTSIDE - front) / 2;
  const points = new Float64Array(2 * (STEPS + 1));
  const along = new Float64Array(STEPS + 1);
  for (let i = 0; i <= STEPS; i++) {
    const turn = (Math.PI * i) / STEPS;
    const [sx, sz] = [Math.sin(turn), -Math.cos(turn)];
    const way = met(stand.torso, [OUTSIDE * sx, height, middle + OUTSIDE * sz], [-sx, 0, -sz]);
    points[2 * i] = Math.max(0, (OUTSIDE - way) * sx);
    points[2 * i + 1] = middle + (OUTSIDE - way) * sz;
    if (i > 0)
      along[i] =
        (along[i - 1] as number) +
        Math.hypot(
          (points[2 * i] as number) - (points[2 * i - 2] as number),
          (points[2 * i + 1] as number) - (points[2 * i - 1] as number),
        );
  }
  return { points, along };
}

/** The place a share of the way along a half section, x and z. */
export function placeOn({ points, along }: HalfSection, share: number): readonly [number, number] {
  const at = share * (along.at(-1) as number);
  let i = 1;
  while (i < along.length - 1 && (along[i] as number) < at) i++;
  const from = along[i - 1] as number;
  const t = Math.max(0, Math.min(1, (at - from) / ((along[i] as number) - from)));
  return [
    (points[2 * i - 2] as number) * (1 - t) + (points[2 * i] as number) * t,
    (points[2 * i - 1] as number) * (1 - t) + (points[2 * i + 1] as number) * t,
  ];
}

/** The highest place of the shoulder at x: its height and z. */
export function shoulderAt(stand: Stand, x: number): readonly [height: number, z: number] {
  let best: readonly [number, number] = [-Infinity, 0];
  for (let z = -110; z <= 70; z += 6) {
    const way = met(stand.torso, [x, stand.top, z], [0, -1, 0]);
    if (stand.top - way > best[0]) best = [stand.top - way, z];
  }
  return best;
}

/** The share of a distance that is gone at once along a ray. */
const CAREFUL = 0.9;

/** How far along a ray the obstacle is met, mm; the whole way to the middle where it never is. */
function met(
  obstacle: Obstacle,
  from: readonly [number, number, number],
  way: readonly [number, number, number],
): number {
  const out = new Float64Array(4);
  let along = 0;
  // Far off, distances are some per cent out: a step never goes the whole way, and one too many is taken back.
  for (let step = 0; step < 200 && along < OUTSIDE; step++) {
    obstacle(from[0] + along * way[0], from[1] + along * way[1], from[2] + along * way[2], out);
    const clear = out[0] as number;
    if (Math.abs(clear) < ARRIVED) break;
    along += CAREFUL * clear;
  }
  return Math.min(along, OUTSIDE);
}
