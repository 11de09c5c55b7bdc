import { type Body, type MeasurementName, measurementNames } from '../body/body.ts';
import { withSize } from '../body/with-size.ts';
import { follow } from '../constraints/sensitivity.ts';
import type { Solution } from '../constraints/solution.ts';
import { solve } from '../constraints/solve.ts';
import type { Result } from '../issue.ts';
import type { Draft } from '../pattern/draft.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Styling } from '../pattern/styling.ts';
import { type MeasuredPlace, placesOf } from './places.ts';

/**
 * How far a measurement is moved either way to take a derivative, mm. Larger: what is not straight would count, and
 * limits that are only near. Smaller: the accuracy of lengths, 1e-6 mm, would.
 */
const DIFFERENCE = 0.001;

/** How much a place grows (mm) for each mm of a measurement. */
export type Slope = Omit<MeasuredPlace, 'mm'> & { readonly perMm: number };

/** What one measurement does to a garment. */
export interface Sensitivity {
  readonly measurement: MeasurementName;
  /** All places of the garment, in its order. */
  readonly slopes: readonly Slope[];
}

/**
 * How every girth, seam, level, edge and notion of a garment answers to each measurement of a completed body, changed alone:
 * what was estimated from it stays as it was. The shoulder slope counts by how far it lowers the shoulder point
 * (mm). Derivatives, good to 1e-3: the garment is solved once and then followed, not solved again, to either side of
 * every measurement, so a rule that changes there counts by the mean of its two sides.
 *
 * Fails as the draft does. A measurement that cannot be moved either way without the draft refusing has no slopes.
 */
export function sensitivities(draft: Draft, body: Body, styling: Styling): Result<readonly Sensitivity[]> {
  const solutions: Solution[] = [];
  const drawn = draft.draw(body, styling, (sketch) => {
    const solution = solve(sketch);
    solutions.push(solution);
    return solution;
  });
  if (!drawn.ok) return drawn;
  const here: Nearby = { at: 0, places: placesOf(drawn.value) };
  const value = measurementNames.map((measurement): Sensitivity => {
    const [less, more] = [-DIFFERENCE, DIFFERENCE].map((by): Nearby => {
      const size = body.size[measurement] + by * perMm(body, measurement);
      const moved = drawNear(draft, withSize(body, measurement, size), styling, solutions);
      return moved.ok ? { at: by, places: placesOf(moved.value) } : here;
    });
    return { measurement, slopes: less && more && less.at < more.at ? slopesBetween(less, more) : [] };
  });
  return { ok: true, value, issues: drawn.issues };
}

/** A measurement's own unit for each mm: 1, but for an angle what lowers the shoulder point by one. */
export const perMm = ({ size }: Body, measurement: MeasurementName): number =>
  measurement === 'shoulderSlope' ? 1 / size.shoulderLength : 1;

/** A garment's places with a measurement moved by so much (mm). */
interface Nearby {
  readonly at: number;
  readonly places: readonly MeasuredPlace[];
}

/** The garment for a body near one whose sketches have these solutions, in the order in which it solves them. */
function drawNear(
  draft: Draft,
  body: Body,
  styling: Styling,
  solutions: readonly Solution[],
): Result<Garment> {
  let next = 0;
  return draft.draw(body, styling, (sketch) => {
    const from = solutions[next++];
    return from ? follow(sketch, from) : solve(sketch);
  });
}

/** The slopes of the places that both sides have. */
function slopesBetween(less: Nearby, more: Nearby): readonly Slope[] {
  const before = new Map(less.places.map((place) => [keyOf(place), place.mm]));
  return more.places.flatMap(({ mm, ...place }) => {
    const was = before.get(keyOf(place));
    return was === undefined ? [] : [{ ...place, perMm: (mm - was) / (more.at - less.at) }];
  });
}

const keyOf = ({ kind, name, on }: Omit<MeasuredPlace, 'mm'>): string => `${kind}\n${name}\n${on}`;
