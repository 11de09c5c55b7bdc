import { type Body, type MeasurementName, measurementNames } from '../body/body.ts';
import { cupDifference } from '../body/cup.ts';
import { unitScale } from '../body/ranges.ts';
import { readBody } from '../body/read.ts';
import type { Issue, Result } from '../issue.ts';
import type { Unit } from '../text/units.ts';
import type { ChartSize } from './chart.ts';

/** What is held while the cup changes. */
export const cupsAtNames = ['bust', 'underBust'] as const;

export type CupsAt = (typeof cupsAtNames)[number];

/**
 * What grows with the breast and not with the frame: it is moved, from the chart's own cup to another, by as much as
 * the estimates for the two cups differ.
 */
const withTheCup: ReadonlySet<MeasurementName> = new Set([
  'upperChestGirth',
  'armscyeGirth',
  'acrossFrontWidth',
  'bustPointWidth',
  'neckShoulderPointToBustPoint',
  'neckShoulderPointToWaist',
]);

/**
 * A size of a chart in another cup than its own: bust girth less under-bust girth becomes the middle of the letter's cup
 * (EN 13402), the one that `at` names stays, and so does the frame. It is written in inches where the chart is, and so spoken
 * of in inches, else in mm. Fails where the size itself cannot be read.
 */
export function inCup(size: ChartSize, letter: string, at: CupsAt): Result<ChartSize> {
  const read = readBody(size.body);
  const atSize = (issues: readonly Issue[]): Result<ChartSize> => ({
    ok: false,
    issues: issues.map((issue) => ({ ...issue, path: `size ${size.size}: ${issue.path}` })),
  });
  if (!read.ok) return atSize(read.issues);
  const own = read.value;
  const units = size.body.units === 'in' ? 'in' : 'mm';
  const difference = cupDifference(letter) ?? 0;
  const { bustGirth, underBustGirth } = own.size;
  const girths =
    at === 'bust'
      ? { bustGirth, underBustGirth: bustGirth - difference }
      : { bustGirth: underBustGirth + difference, underBustGirth };
  const isKept = (name: MeasurementName): boolean =>
    !withTheCup.has(name) && (at === 'underBust' || size.given.includes(name));
  const frame = written(measurementsOf(own, isKept), units);
  const [before, after] = [{ bustGirth, underBustGirth }, girths].map((breast) =>
    readBody({
      ...frame,
      ...written(breast, units),
      units,
      sure: ['bustGirth', 'underBustGirth', ...Object.keys(frame)],
    }),
  );
  if (!before?.ok || !after?.ok)
    return atSize([before, after].flatMap((one) => (one && !one.ok ? one.issues : [])));
  const moved = size.given
    .filter((name) => withTheCup.has(name))
    .map((name) => [name, own.size[name] + after.value.size[name] - before.value.size[name]] as const);
  const { name: _, units: __, cup: ___, sure: ____, ...others } = size.body;
  const kept = Object.entries(others).filter(([field]) => !measurementNames.some((name) => name === field));
  const name = `${size.size} ${letter}`;
  return {
    ok: true,
    value: {
      ...size,
      name,
      cup: letter,
      given: [...new Set([...size.given, 'underBustGirth' as const])],
      body: {
        ...Object.fromEntries(kept),
        ...frame,
        ...written(Object.fromEntries(moved), units),
        ...written(girths, units),
        name,
        units,
        // They come of the chart and of EN 13402, not of a pen.
        sure: [...new Set([...size.given, 'bustGirth', 'underBustGirth'])],
      },
    },
    issues: [],
  };
}

type Measured = Readonly<Partial<Record<MeasurementName, number>>>;

/** Measurements (mm, radians) as a file in this unit says them. */
const written = (measured: Measured, units: Unit): Measured =>
  Object.fromEntries(
    measurementNames.flatMap((name) => {
      const value = measured[name];
      return value === undefined ? [] : [[name, value / unitScale(name, units)]];
    }),
  );

const measurementsOf = ({ size }: Body, wanted: (name: MeasurementName) => boolean): Measured =>
  Object.fromEntries(measurementNames.filter(wanted).map((name) => [name, size[name]]));
