import { flatMapped } from '../../flat-mapped.ts';
import { ARM, type Element, type Equations } from './equations.ts';
import type { Slots } from './slots.ts';

/** Unknowns that hang together through relations and wishes, and nothing else does: solved on their own. */
export interface SketchPart {
  /** The slots of its unknowns, those that depend on each other near each other. */
  readonly slots: readonly number[];
  /** Millimetres at arm's length for one unit of each unknown. */
  readonly arms: readonly number[];
  readonly relations: readonly PlacedEquations[];
  readonly bounds: readonly Bound[];
  readonly wishes: readonly PlacedEquations[];
}

/** Equations placed among a part's unknowns. */
export interface PlacedEquations {
  readonly equations: Equations;
  readonly elements: readonly PlacedElement[];
}

/** An element with the columns of its slots, -1 where a slot is not free. */
export interface PlacedElement {
  readonly element: Element;
  readonly columns: readonly number[];
}

/** One side of the bounds of an unknown: `side` times (its value less the limit) may not be negative. */
export interface Bound {
  readonly column: number;
  readonly slot: number;
  readonly limit: number;
  readonly side: 1 | -1;
}

/** The parts of a sketch, in the order of their first unknown. */
export function partsOf(
  slots: Slots,
  relations: readonly Equations[],
  wishes: readonly Equations[],
): readonly SketchPart[] {
  const root = joined(slots, [...relations, ...wishes]);
  const columnOf = new Int32Array(root.length).fill(-1);
  const slotsOfPart = new Map<number, number[]>();
  for (const slot of neighbourly(root.length, [...wishes, ...relations])) {
    if (slots.free[slot] !== 1) continue;
    const part = slotsOfPart.get(root[slot] as number) ?? [];
    if (part.length === 0) slotsOfPart.set(root[slot] as number, part);
    columnOf[slot] = part.length;
    part.push(slot);
  }
  const relationsOf = sorted(relations, slots, root, columnOf);
  const wishesOf = sorted(wishes, slots, root, columnOf);
  const inOrder = [...slotsOfPart].sort(([a], [b]) => a - b);
  return inOrder.map(([first, part]) => ({
    slots: part,
    arms: part.map((slot) => (slots.angle[slot] === 1 ? ARM : 1)),
    relations: relationsOf.get(first) ?? [],
    bounds: flatMapped(part, (slot, column) => boundsOf(slots, slot, column)),
    wishes: wishesOf.get(first) ?? [],
  }));
}

/**
 * All slots, those that stand in one equation near each other: as the equations name them, the last first. The rows of
 * a matrix then begin with zeros, which its factor keeps and skips. In the largest part of a dress the squared lengths
 * of the rows without them add up to 72,000 as the sketch numbers its slots, and to 27,000 like this (to 9,000 by the
 * degree of each, as Cuthill & McKee do, 1969: too little time is left to gain for the code that takes).
 */
function neighbourly(count: number, all: readonly Equations[]): readonly number[] {
  const isNamed = new Uint8Array(count);
  const named: number[] = [];
  const name = (slot: number): void => {
    if (isNamed[slot] === 1) return;
    isNamed[slot] = 1;
    named.push(slot);
  };
  for (const { elements } of all) for (const { slots } of elements) for (const slot of slots) name(slot);
  for (let slot = 0; slot < count; slot++) name(slot);
  return named.reverse();
}

/** Equations by the first slot of the part they belong to; those of fixed slots only belong to none. */
function sorted(
  all: readonly Equations[],
  slots: Slots,
  root: Int32Array,
  columnOf: Int32Array,
): ReadonlyMap<number, readonly PlacedEquations[]> {
  const groups = new Map<number, PlacedEquations[]>();
  for (const equations of all) {
    const free = freeSlot(equations, slots);
    if (free === undefined) continue;
    const group = groups.get(root[free] as number) ?? [];
    if (group.length === 0) groups.set(root[free] as number, group);
    group.push({ equations, elements: equations.elements.map((element) => placedAt(element, columnOf)) });
  }
  return groups;
}

const placedAt = (element: Element, columnOf: Int32Array): PlacedElement => ({
  element,
  columns: element.slots.map((slot) => columnOf[slot] as number),
});

function boundsOf({ min, max }: Slots, slot: number, column: number): readonly Bound[] {
  const bounds: Bound[] = [];
  const [least, greatest] = [min[slot] as number, max[slot] as number];
  if (least > -Infinity) bounds.push({ column, slot, limit: least, side: 1 });
  if (greatest < Infinity) bounds.push({ column, slot, limit: greatest, side: -1 });
  return bounds;
}

/** For each free slot the first slot of its part: union-find, paths halved (Galler & Fischer, 1964; Tarjan, 1975). */
function joined(slots: Slots, all: readonly Equations[]): Int32Array {
  const parent = new Int32Array(slots.guess.length);
  for (let slot = 0; slot < parent.length; slot++) parent[slot] = slot;
  for (const { elements } of all) {
    let first = -1;
    for (const element of elements) {
      for (const slot of element.slots) {
        if (slots.free[slot] !== 1) continue;
        const other = rootOf(parent, slot);
        if (first === -1) first = other;
        parent[Math.max(first, other)] = Math.min(first, other);
        first = Math.min(first, other);
      }
    }
  }
  for (let slot = 0; slot < parent.length; slot++) parent[slot] = rootOf(parent, slot);
  return parent;
}

function rootOf(parent: Int32Array, slot: number): number {
  let at = slot;
  while (parent[at] !== at) {
    parent[at] = parent[parent[at] as number] as number;
    at = parent[at] as number;
  }
  return at;
}

function freeSlot({ elements }: Equations, { free }: Slots): number | undefined {
  for (const { slots } of elements) for (const slot of slots) if (free[slot] === 1) return slot;
  return undefined;
}

/** Whether some equations are about fixed things only. */
export const isSettled = (equations: Equations, slots: Slots): boolean =>
  freeSlot(equations, slots) === undefined;
