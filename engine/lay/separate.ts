import type { Random } from '../numeric/random.ts';
import type { Remembered } from './copies.ts';
import type { Layout } from './layout.ts';
import { PlaceSeeker } from './seek-place.ts';

/** How a try to separate ended: with no overlap left, or with the least found. */
export interface Separation {
  readonly done: boolean;
  readonly least: number;
  readonly places: Remembered;
}

/** How long to try: passes without a gain, and how often in a row that may happen. */
export interface Patience {
  readonly passes: number;
  readonly strikes: number;
}

/** A gain below this share is none. */
const worthwhile = 0.98;

/** By how much the weight of a pair grows a pass, least and most, and what a pair that has parted keeps. */
const growth = { least: 1.2, most: 2, fading: 0.95 };

/**
 * Moves overlapping copies one by one, in an order of chance, each to where it overlaps least, and makes what still overlaps
 * dearer after each pass, until nothing overlaps or patience ends. A round is a pass: it yields after each.
 */
export function* separate(
  layout: Layout,
  random: Random,
  patience: Patience,
): Generator<void, Separation, void> {
  const seeker = new PlaceSeeker(layout, random);
  layout.weights.fill(1);
  weighBulk(layout);
  layout.measureAll();
  let least = layout.total();
  let places = layout.remember();
  let strikes = 0;
  while (least > 0 && strikes < patience.strikes) {
    const before = least;
    let idle = 0;
    while (idle < patience.passes) {
      pass(layout, seeker, random);
      const total = layout.total();
      growWeights(layout);
      idle = total < worthwhile * least ? 0 : idle + 1;
      if (total < least) {
        least = total;
        places = layout.remember();
      }
      yield;
      if (total === 0) return { done: true, least, places };
    }
    strikes = least < worthwhile * before ? 0 : strikes + 1;
    layout.recall(places);
  }
  return { done: least === 0, least, places };
}

function pass(layout: Layout, seeker: PlaceSeeker, random: Random): void {
  const waiting: number[] = [];
  for (let i = 0; i < layout.count; i++) if (layout.overlaps(i)) waiting.push(i);
  for (let k = waiting.length - 1; k > 0; k--) {
    const other = Math.floor(random() * (k + 1));
    [waiting[k], waiting[other]] = [waiting[other] as number, waiting[k] as number];
  }
  for (const i of waiting) if (layout.overlaps(i)) seeker.move(i);
}

/** Weights start at what a unit of depth counts between two copies. */
function weighBulk({ weights, copies: { bulk }, count }: Layout): void {
  for (let i = 0; i < count; i++)
    for (let j = 0; j < count; j++) weights[i * count + j] = (bulk[i] as number) * (bulk[j] as number);
}

function growWeights({ depths, weights, copies: { bulk }, count }: Layout): void {
  let deepest = 0;
  for (let i = 0; i < count; i++)
    for (let k = i * count + i + 1; k < (i + 1) * count; k++)
      if ((depths[k] as number) > deepest) deepest = depths[k] as number;
  const more = deepest > 0 ? (growth.most - growth.least) / deepest : 0;
  for (let i = 0; i < count; i++)
    for (let j = i + 1; j < count; j++) {
      const k = i * count + j;
      const [depth, weight] = [depths[k] as number, weights[k] as number];
      const base = (bulk[i] as number) * (bulk[j] as number);
      if (depth === 0 && weight === base) continue;
      const grown =
        depth > 0 ? weight * (growth.least + more * depth) : Math.max(base, weight * growth.fading);
      weights[k] = grown;
      weights[j * count + i] = grown;
    }
}
