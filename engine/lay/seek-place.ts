import type { Random } from '../numeric/random.ts';
import { somePosture } from './copies.ts';
import type { Layout } from './layout.ts';

/** Places tried all over the strip, and near the copy's own. */
const anywhere = 20;
const nearby = 15;

/** How many of the best are improved. */
const finalists = 3;

interface TriedPlace {
  posture: number;
  x: number;
  y: number;
  cost: number;
}

/** Seeks a place for one copy where it overlaps less, weights counted. */
export class PlaceSeeker {
  private readonly layout: Layout;
  private readonly random: Random;
  private readonly best: TriedPlace[] = [];

  constructor(layout: Layout, random: Random) {
    this.layout = layout;
    this.random = random;
    for (let i = 0; i <= finalists; i++) this.best.push({ posture: 0, x: 0, y: 0, cost: Infinity });
  }

  /** Moves copy i to the best place found; it stays where it is when none is better. */
  move(i: number): void {
    const { layout, random, best } = this;
    const own = layout.posture[i] as number;
    const [x, y] = [layout.x[i] as number, layout.y[i] as number];
    const before = layout.cost(i, own, x, y, Infinity);
    if (before === 0) return;
    for (const place of best) place.cost = Infinity;
    this.enter(own, x, y, before);
    for (let k = 0; k < anywhere; k++) {
      const posture = somePosture(layout.copies, i, random);
      const halfWidth = layout.copies.halfWidth[posture] as number;
      const halfHeight = layout.copies.halfHeight[posture] as number;
      this.tryPlace(
        i,
        posture,
        halfWidth + random() * (layout.length - 2 * halfWidth),
        halfHeight + random() * (layout.width - 2 * halfHeight),
      );
    }
    for (let k = 0; k < nearby; k++) {
      const posture = somePosture(layout.copies, i, random);
      const dx = (random() - 0.5) * 2 * (layout.copies.halfWidth[own] as number);
      const dy = (random() - 0.5) * 2 * (layout.copies.halfHeight[own] as number);
      this.tryPlace(i, posture, x + dx, y + dy);
    }
    const size =
      Math.min(layout.copies.halfWidth[own] as number, layout.copies.halfHeight[own] as number) * 2;
    for (let k = 0; k < finalists; k++) {
      const place = best[k];
      if (place && place.cost < Infinity) this.descend(i, place, size * 0.25, size * 0.02);
    }
    let chosen = best[0] as TriedPlace;
    for (let k = 1; k < finalists; k++)
      if ((best[k] as TriedPlace).cost < chosen.cost) chosen = best[k] as TriedPlace;
    this.descend(i, chosen, size * 0.01, size * 0.0005);
    if (chosen.cost < before) layout.put(i, chosen.posture, chosen.x, chosen.y);
  }

  private tryPlace(i: number, posture: number, wantedX: number, wantedY: number): void {
    const { layout } = this;
    const half = layout.copies.halfWidth[posture] as number;
    if (2 * half > layout.length) return;
    const x = layout.seats.along(posture, layout.length, wantedX);
    const y = layout.seats.across(i, posture, wantedY);
    const worst = (this.best[finalists - 1] as TriedPlace).cost;
    const cost = layout.cost(i, posture, x, y, worst);
    if (cost < worst) this.enter(posture, x, y, cost);
  }

  /** Takes a place among the best. */
  private enter(posture: number, x: number, y: number, cost: number): void {
    const { best } = this;
    let k = finalists - 1;
    const entered = best[k] as TriedPlace;
    while (k > 0 && (best[k - 1] as TriedPlace).cost > cost) {
      best[k] = best[k - 1] as TriedPlace;
      k -= 1;
    }
    entered.posture = posture;
    entered.x = x;
    entered.y = y;
    entered.cost = cost;
    best[k] = entered;
  }

  /** Walks a place downhill: along, across or aslant by turns of chance, with steps that shrink where nothing is gained. */
  private descend(i: number, place: TriedPlace, start: number, least: number): void {
    const { layout, random } = this;
    const { posture } = place;
    let step = start;
    while (step > least && place.cost > 0) {
      const axis = random() * 4;
      const sx = layout.seats.stride(axis < 1 ? 0 : axis < 2 ? step : Math.SQRT1_2 * step);
      const sy = layout.seats.strideAcross(
        axis < 1 ? step : axis < 2 ? 0 : axis < 3 ? Math.SQRT1_2 * step : -Math.SQRT1_2 * step,
      );
      const { x, y, cost } = place;
      for (let way = -1; way <= 1; way += 2) {
        const nx = layout.seats.along(posture, layout.length, x + way * sx);
        const ny = layout.seats.across(i, posture, y + way * sy);
        const found = layout.cost(i, posture, nx, ny, place.cost);
        if (found < place.cost) {
          place.x = nx;
          place.y = ny;
          place.cost = found;
        }
      }
      step *= place.cost < cost ? 1.1 : 0.5;
    }
  }
}
