import type { Equations } from '../compile/equations.ts';
import type { Slots } from '../compile/slots.ts';
import { weightedSumElement } from '../compile/weighted-sum.ts';
import { rootOfWeight, type WishOf } from './wish-of.ts';

/** A weighted sum of coordinates and scalars, less the value it should come near. */
export const near = (wish: WishOf<'near'>, slots: Slots): Equations => ({
  name: wish.name,
  goal: 'least',
  unit: 'mm',
  scale: 1,
  rows: 1,
  elements: [weightedSumElement(wish, slots, rootOfWeight(wish))],
});
