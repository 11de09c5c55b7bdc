import type { Solution } from '../constraints/solution.ts';
import type { PlacedLine, PlacedPoint } from './garment.ts';

/** What a step puts on paper. */
export interface StepInk {
  readonly points: PlacedPoint[];
  readonly lines: PlacedLine[];
}

/** Something that a step draws once the sketch is solved, by its name there. */
type Awaited = { readonly entry: StepInk; readonly on: string; readonly name: string } & (
  | { readonly kind: 'curve' }
  | { readonly kind: 'point'; readonly words: string }
);

type Drawing = Pick<Solution, 'curves' | 'points'>;

/** Lines and points that steps draw once their sketches are solved. */
export interface AwaitedInk {
  readonly add: (each: Awaited) => void;
  /** Gives what was awaited so far, as far as a solution has it. */
  readonly solved: (solution: Drawing) => void;
  /** Draws what was given. Solutions are looked through only then: few read the steps of a draft. */
  readonly draw: () => void;
}

/** Nothing awaited yet. */
export function awaitedInk(): AwaitedInk {
  let awaited: readonly Awaited[] = [];
  let added: Awaited[] = [];
  let given: { readonly solution: Drawing; readonly before: readonly Awaited[] }[] = [];
  return {
    add: (each) => {
      added.push(each);
    },
    solved: (solution) => {
      given.push({ solution, before: added });
      added = [];
    },
    draw: () => {
      for (const { solution, before } of given)
        awaited = [...awaited, ...before].filter((each) => !drawn(each, solution));
      given = [];
    },
  };
}

/** Draws what was awaited, where the solution has it; whether it has. */
function drawn(each: Awaited, { curves, points }: Drawing): boolean {
  const { entry, on, name } = each;
  if (each.kind === 'curve') {
    const curve = curves[name];
    if (curve) entry.lines.push({ on, name, curves: [curve] });
    return curve !== undefined;
  }
  const at = points[name];
  if (at) entry.points.push({ on, name: each.words, at });
  return at !== undefined;
}
