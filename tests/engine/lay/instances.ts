import { readFileSync } from 'node:fs';
import type { LayProblem } from '../../../engine/lay/problem.ts';

interface Instance {
  readonly strip_height: number;
  readonly items: readonly {
    readonly id: number;
    readonly demand: number;
    readonly allowed_orientations: readonly number[];
    readonly shape: { readonly data: readonly (readonly [number, number])[] };
  }[];
}

/** The file of a published strip-packing instance; its source stands in it. */
export const instanceFile = (name: 'shirts' | 'trousers'): string =>
  new URL(`./instances/${name}.json`, import.meta.url).pathname;

/** A published strip-packing instance of garment pieces. */
export function shapesOf(name: 'shirts' | 'trousers'): LayProblem {
  const { strip_height, items }: Instance = JSON.parse(readFileSync(instanceFile(name), 'utf8'));
  return {
    width: strip_height,
    shapes: items.map(({ id, demand, allowed_orientations, shape }) => ({
      name: String(id),
      count: demand,
      ways: allowed_orientations.map((turn) => ({ turn, mirrored: false })),
      onFold: false,
      outline: shape.data.slice(0, -1).map(([x, y]) => ({ x, y })),
    })),
  };
}
