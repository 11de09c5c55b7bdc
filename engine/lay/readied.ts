import { type NoFitTable, noFitTable } from './no-fit-table.ts';
import { type Posture, posturesOf } from './postures.ts';
import type { LayShape } from './problem.ts';

/** What is worked out of shapes before a search, whatever the strip: it serves for every width. */
export interface Readied {
  /** The postures of each shape. */
  readonly postures: readonly (readonly Posture[])[];
  /** The table of all postures, shape by shape. */
  readonly table: NoFitTable;
}

/** Readies shapes for a search. */
export function readied(shapes: readonly LayShape[]): Readied {
  const postures = shapes.map(posturesOf);
  return { postures, table: noFitTable(postures.flat()) };
}

/** Readies shapes for a strip of some width, by the ways in which they fit it. */
export function readiedFor(width: number, shapes: readonly LayShape[]): Readied {
  const postures = shapes.map((shape) => fitting(posturesOf(shape), width));
  return { postures, table: noFitTable(postures.flat()) };
}

/** The same for a strip of this width: without the ways in which a shape is too broad for it, where it has others. */
export function onStrip(ready: Readied, width: number): Readied {
  const postures = ready.postures.map((own) => fitting(own, width));
  const all = postures.every((own, i) => own.length === ready.postures[i]?.length);
  return all ? ready : { postures, table: noFitTable(postures.flat()) };
}

function fitting(postures: readonly Posture[], width: number): readonly Posture[] {
  const found = postures.filter(({ halfHeight }) => 2 * halfHeight <= width);
  return found.length > 0 ? found : postures;
}
