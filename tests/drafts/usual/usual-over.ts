import { garments } from '../../../drafts/garments.ts';
import { type Front, usualWith } from '../../../drafts/usual.ts';
import { readBody } from '../../../engine/body/read.ts';
import type { Usual } from '../../../engine/constraints/first-guess.ts';
import type { Sketch } from '../../../engine/constraints/sketch.ts';
import { solve } from '../../../engine/constraints/solve.ts';
import { distance } from '../../../engine/geometry/point.ts';
import { resolveStyling } from '../../../engine/pattern/styling-values.ts';
import { plausibleBodies } from '../../plausible-bodies.ts';

/** What is drawn to find out, by the front it has: garments with the choices made. */
const drawn: Readonly<Record<Front, readonly { readonly garment: string; readonly styling: object }[]>> = {
  gathered: [{ garment: 'dress', styling: {} }],
  plain: [
    { garment: 'trial', styling: {} },
    { garment: 'dress', styling: { shoulder: 'whole', front: 'plain', sleeve: 'plain' } },
  ],
  armhole: [
    { garment: 'dress', styling: { shoulder: 'whole', front: 'plain', princess: 'armhole' } },
    {
      garment: 'dress',
      styling: { shoulder: 'whole', front: 'plain', princess: 'armhole', sleeve: 'plain' },
    },
  ],
  trial: [{ garment: 'trial', styling: { sleeve: 'plain' } }],
};

/** Medians over plausible bodies of how far the unknowns end from where the drafts put them. */
export function usualOver(front: Front, count = 60): Readonly<Record<string, number>> {
  const found = new Map<string, number[]>();
  const note = (name: string, value: number): void => {
    found.set(name, [...(found.get(name) ?? []), value]);
  };
  for (const { garment, styling } of drawn[front]) {
    const draft = garments.find(({ name }) => name === garment);
    const chosen = draft && resolveStyling(draft.choices, styling);
    if (!chosen?.ok) continue;
    for (const data of plausibleBodies(count)) {
      const body = readBody(data);
      if (!body.ok) continue;
      draft?.draw(body.value, chosen.value, (sketch) => {
        const solution = solve(sketch);
        if (solution.status === 'solved') noteOffsets(sketch, solution, usualWith(front), note);
        return solution;
      });
    }
  }
  const medians = [...found].map(([name, values]): [string, number] => [name, median(values)]);
  return Object.fromEntries(
    medians.filter(([, value]) => value !== 0).toSorted(([a], [b]) => (a < b ? -1 : 1)),
  );
}

/** Notes how far the unknowns of a sketch end from where the draft put them, before they were moved to the usual place. */
function noteOffsets(
  { points, scalars, curves }: Sketch,
  solution: ReturnType<typeof solve>,
  known: Usual,
  note: (name: string, value: number) => void,
): void {
  for (const [name, { at, free }] of points) {
    const end = solution.points[name];
    if (!end) continue;
    if (free === 'both' || free === 'x') note(`${name} x`, end.x - at.x + (known.x.get(name) ?? 0));
    if (free === 'both' || free === 'y') note(`${name} y`, end.y - at.y + (known.y.get(name) ?? 0));
  }
  const chords = new Map<string, number>();
  for (const curve of curves.values()) {
    const [from, to] = [solution.points[curve.from], solution.points[curve.to]];
    if (curve.kind === 'cubic' && from && to)
      chords.set(curve.startLength, distance(from, to)).set(curve.endLength, distance(from, to));
  }
  for (const [name, { at, unit, free }] of scalars) {
    const end = solution.scalars[name];
    if (end === undefined || !free) continue;
    const chord = chords.get(name);
    if (chord !== undefined) note(name, end / chord);
    else note(name, (end - at) * (unit === 'rad' ? 180 / Math.PI : 1) + (known.scalars.get(name) ?? 0));
  }
}

const median = (values: readonly number[]): number =>
  Number((values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0).toPrecision(3));
