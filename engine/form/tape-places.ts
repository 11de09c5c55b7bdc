import { IN_SPACE } from '../geometry/tolerance.ts';
import type { TapeName } from './close.ts';
import { tapeNames } from './close.ts';
import type { LaidTape, Place } from './form.ts';
import type { Path } from './taut.ts';

/** Tapes as they are shown: both halves of those that go round. */
export const tapesOf = (paths: Readonly<Record<TapeName, Path>>): readonly LaidTape[] =>
  tapeNames.map((measurement) => {
    const { points, length, round } = paths[measurement];
    const half = Array.from(
      { length: points.length / 3 },
      (_, i): Place => [points[3 * i] as number, points[3 * i + 1] as number, points[3 * i + 2] as number],
    );
    const other = half
      .filter(([x]) => x > IN_SPACE)
      .map(([x, y, z]): Place => [-x, y, z])
      .toReversed();
    return { measurement, closed: round, points: round ? [...half, ...other] : half, length };
  });
