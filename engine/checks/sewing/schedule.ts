import type { EdgeRef } from '../../pattern/seam.ts';
import type { Condition, SewingStep, State } from '../../pattern/sewing.ts';

/** When everything happens: the places (from 0) of the steps that sew a seam, work an edge, or reach a state. */
export interface Schedule {
  readonly steps: readonly SewingStep[];
  readonly sewn: ReadonlyMap<string, readonly number[]>;
  readonly pressed: ReadonlyMap<string, readonly number[]>;
  readonly turned: ReadonlyMap<string, readonly number[]>;
  readonly reached: ReadonlyMap<string, readonly number[]>;
}

/** What a state is called in a schedule. */
export const stateKey = (piece: string, is: Condition, at = ''): string => `${piece}\n${at}\n${is}`;

/** What an edge is called in a schedule. */
export const edgeKey = ({ piece, edge }: EdgeRef): string => `${piece}\n${edge}`;

/** The schedule of a list of steps. */
export function scheduleOf(steps: readonly SewingStep[]): Schedule {
  const sewn = new Map<string, number[]>();
  const pressed = new Map<string, number[]>();
  const turned = new Map<string, number[]>();
  const reached = new Map<string, number[]>();
  for (const [place, step] of steps.entries()) {
    for (const seam of step.sews ?? []) note(sewn, seam, place);
    for (const seam of step.presses ?? []) note(pressed, seam, place);
    for (const edge of step.turns ?? []) note(turned, edgeKey(edge), place);
    for (const state of step.brings ?? []) note(reached, keyOf(state), place);
  }
  return { steps, sewn, pressed, turned, reached };
}

/** Whether a state is reached in a step before the one at `place`. */
export const reachedBefore = (
  { reached }: Schedule,
  place: number,
  piece: string,
  is: Condition,
  at?: string,
): boolean => (reached.get(stateKey(piece, is, at))?.[0] ?? Infinity) < place;

/** The same for a state as written. */
export const keyOf = ({ piece, is, at }: State): string => stateKey(piece, is, at);

/** A step as a message calls it. */
export const stepNamed = (place: number, { title }: SewingStep): string => `step ${place + 1}, “${title}”`;

function note(places: Map<string, number[]>, key: string, place: number): void {
  const known = places.get(key);
  if (known) known.push(place);
  else places.set(key, [place]);
}
