import type { Obstacle } from '../cloth/obstacle.ts';

/** Moves what lies in the body, or nearer to it than `clear` (mm), straight out of it. */
export function pushOut(x: Float64Array, obstacles: readonly Obstacle[], clear: number): void {
  const out = new Float64Array(4);
  for (let i = 0; i < x.length; i += 3)
    for (let round = 0; round < 4; round++) {
      (obstacles[i / 3] as Obstacle)(x[i] as number, x[i + 1] as number, x[i + 2] as number, out);
      const short = clear - (out[0] as number);
      if (short <= 0) break;
      for (let k = 0; k < 3; k++) x[i + k] = (x[i + k] as number) + short * (out[k + 1] as number);
    }
}
