import type { Frame } from './frame/frame.ts';
import type { FrameLevels } from './frame/levels.ts';
import { COLUMNS, writeSection } from './section.ts';

/** Half sections one above the other, each of `COLUMNS` points from centre front to centre back. */
export interface Rings {
  readonly places: Float64Array;
  /** x, y, z of the left half, ring after ring. */
  readonly points: Float64Array;
  /** Which ring lies at each level. */
  readonly index: Readonly<Record<keyof FrameLevels, number>>;
}

/** Between two levels so many steps, from the base up: fine where the form bends. */
const steps: readonly (readonly [keyof FrameLevels, number])[] = [
  ['hip', 3],
  ['waist', 18],
  ['underBust', 9],
  ['bust', 10],
  ['underarm', 7],
  ['shoulder', 15],
  ['neck', 14],
  ['top', 8],
];

/** Bust and underarm may come to lie on one level, or the other way round; the rings must still rise. */
function places(levels: FrameLevels): { readonly places: Float64Array; readonly index: Rings['index'] } {
  const order = steps.toSorted((a, b) => levels[a[0]] - levels[b[0]]);
  const found: number[] = [levels.base];
  const index: Partial<Record<keyof FrameLevels, number>> = { base: 0 };
  let from = levels.base;
  for (const [name, count] of order) {
    const to = levels[name];
    for (let i = 1; i <= count; i++) found.push(from + ((to - from) * i) / count);
    index[name] = found.length - 1;
    from = to;
  }
  return { places: Float64Array.from(found), index: index as Rings['index'] };
}

/** All sections of a frame. */
export function ringsOf(frame: Frame): Rings {
  const { places: at, index } = places(frame.levels);
  const points = new Float64Array(3 * COLUMNS * at.length);
  for (let i = 0; i < at.length; i++) writeSection(frame, at[i] as number, points, 3 * COLUMNS * i);
  return { places: at, points, index };
}

/** The sections that tapes are laid on, and no others; what is left out stays empty. */
export function tapeRings(frame: Frame): Rings {
  const { places: at, index } = places(frame.levels);
  const points = new Float64Array(3 * COLUMNS * at.length);
  const write = (i: number): void => writeSection(frame, at[i] as number, points, 3 * COLUMNS * i);
  write(index.hip);
  for (let i = index.waist; i <= index.neck; i++) write(i);
  return { places: at, points, index };
}
