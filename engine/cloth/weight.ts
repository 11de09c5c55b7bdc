import { weightPerArea } from './cloth.ts';
import type { Force } from './force.ts';
import { type ClothSheet, pointAreas } from './sheet.ts';

/** The cloth's own weight, or so many times of it, which pulls down, against y. */
export class Weight implements Force {
  readonly pairs: readonly number[] = [];
  /** N at each point. */
  readonly loads: Float64Array;

  constructor(sheet: ClothSheet, times = 1) {
    const perArea = weightPerArea(sheet.cloth);
    this.loads = pointAreas(sheet, true).map((area) => times * area * perArea);
  }

  bind(): void {}

  energy(x: Float64Array): number {
    let sum = 0;
    for (let i = 0; i < this.loads.length; i++) sum += (this.loads[i] as number) * (x[3 * i + 1] as number);
    return sum;
  }

  add(_x: Float64Array, gradient: Float64Array): void {
    for (let i = 0; i < this.loads.length; i++)
      gradient[3 * i + 1] = (gradient[3 * i + 1] as number) + (this.loads[i] as number);
  }
}
