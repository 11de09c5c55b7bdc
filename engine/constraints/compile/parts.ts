import { ARM, type Element, type Equations, type Unit } from './equations.ts';
import type { Slots } from './slots.ts';

/** Unknowns that hang together through relations and wishes, and nothing else does: solved on their own. */
export interface Part {
  /** The slots of its unknowns, in order. */
  readonly slots: readonly number[];
  /** Millimetres at arm's length for one unit of each unknown. */
  readonly arms: readonly number[];
  readonly relations: readonly Placed[];
  readonly bounds: readonly Bound[];
  readonly wishes: readonly Placed[];
}

/** Equations placed among a part's unknowns. */
export interface Placed {
  readonly equations: Equations;
  readonly elements: readonly PlacedElement[];
}

/** An element with the columns of its slots: -1 where a slot is not free. */
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
  readonly unit: Unit;
}

/** The parts of a sketch, in the order of their first unknown. */
export function partsOf(
  slots: Slots,
  relations: readonly Equations[],
  wishes: readonly Equations[],
): readonly Part[] {
  const root = joined(slots, [...relations, ...wishes]);
  const members = new Map<number, number[]>();
  const columnOf = new Int32Array(root.length).fill(-1);
  for (let slot = 0; slot < root.length; slot++) {
    if (slots.free[slot] !== 1) continue;
    const own = root[slot] as number;
    const part = members.get(own) ?? [];
    members.set(own, part);
    columnOf[slot] = part.length;
    part.push(slot);
  }
  const home = (equations: Equations): number => {
    const free = slotsOf(equations).find((slot) => slots.free[slot] === 1);
    return free === undefined ? -1 : (root[free] as number);
  };
  const placedIn = (all: readonly Equations[], own: number): readonly Placed[] =>
    all
      .filter((equations) => home(equations) === own)
      .map((equations) => ({
        equations,
        elements: equations.elements.map((element) => ({
          element,
          columns: element.slots.map((slot) => columnOf[slot] as number),
        })),
      }));
  return Array.from(members, ([own, part]) => ({
    slots: part,
    arms: part.map((slot) => (slots.angle[slot] === 1 ? ARM : 1)),
    relations: placedIn(relations, own),
    bounds: part.flatMap((slot, column) => boundsOf(slots, slot, column)),
    wishes: placedIn(wishes, own),
  }));
}

function boundsOf(slots: Slots, slot: number, column: number): readonly Bound[] {
  const unit = slots.angle[slot] === 1 ? 'rad' : 'mm';
  const sides = [
    { limit: slots.min[slot] as number, side: 1 },
    { limit: slots.max[slot] as number, side: -1 },
  ] as const;
  return sides.filter(({ limit }) => Number.isFinite(limit)).map((side) => ({ ...side, column, slot, unit }));
}

/** For each free slot the first slot of its part: the union-find of Galler & Fischer (1964), paths halved. */
function joined(slots: Slots, all: readonly Equations[]): Int32Array {
  const parent = Int32Array.from(slots.guess, (_, slot) => slot);
  const find = (slot: number): number => {
    let at = slot;
    while (parent[at] !== at) {
      parent[at] = parent[parent[at] as number] as number;
      at = parent[at] as number;
    }
    return at;
  };
  for (const equations of all) {
    let first = -1;
    for (const slot of slotsOf(equations)) {
      if (slots.free[slot] !== 1) continue;
      const other = find(slot);
      if (first === -1) first = other;
      else {
        parent[Math.max(first, other)] = Math.min(first, other);
        first = Math.min(first, other);
      }
    }
  }
  return parent.map((_, slot) => find(slot));
}

/** Every slot that some equations depend on. */
export const slotsOf = ({ elements }: Equations): readonly number[] => elements.flatMap(({ slots }) => slots);
