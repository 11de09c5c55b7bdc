import type { Place } from './form.ts';
import type { Rings } from './rings.ts';
import { COLUMNS, SIDE } from './section.ts';
import { add, emptyCut, type SectionCut } from './taut.ts';

/** A point of a half section. */
export const ringPoint = ({ points }: Rings, ring: number, column: number): Place => {
  const i = 3 * (ring * COLUMNS + column);
  return [points[i] as number, points[i + 1] as number, points[i + 2] as number];
};

/** The half section of the plane y = height + pitch * (z - from), column by column, between two rings. */
export function planeCut(
  rings: Rings,
  [first, last]: readonly [number, number],
  height: number,
  pitch = 0,
  from = 0,
): SectionCut {
  const cut = emptyCut();
  const along = Math.hypot(1, pitch);
  const { points } = rings;
  const row = 3 * COLUMNS;
  for (let j = 0; j < COLUMNS; j++) {
    let a = first * row + 3 * j;
    let da = (points[a + 1] as number) - height - pitch * ((points[a + 2] as number) - from);
    for (let i = first + 1; i <= last; i++) {
      const b = a + row;
      const db = (points[b + 1] as number) - height - pitch * ((points[b + 2] as number) - from);
      if (da <= 0 && db > 0) {
        const t = da / (da - db);
        const part = (k: number): number =>
          (1 - t) * (points[a + k] as number) + t * (points[b + k] as number);
        const [x, y, z] = [part(0), part(1), part(2)];
        add(cut, x, z * along, x, y, z);
        break;
      }
      a = b;
      da = db;
    }
  }
  return cut;
}

/** Where a ring's front half meets the plane that holds the z axis and the line x = from + slope * y. */
export function frontMeets(rings: Rings, ring: number, from: number, slope: number): Place | undefined {
  const { points } = rings;
  let a = 3 * ring * COLUMNS;
  let da = (points[a] as number) - from - slope * (points[a + 1] as number);
  for (let j = 1; j <= SIDE; j++) {
    const b = a + 3;
    const db = (points[b] as number) - from - slope * (points[b + 1] as number);
    if (da <= 0 && db > 0) {
      const t = da / (da - db);
      const part = (k: number): number => (1 - t) * (points[a + k] as number) + t * (points[b + k] as number);
      return [part(0), part(1), part(2)];
    }
    a = b;
    da = db;
  }
  return undefined;
}
