import type { Step } from './garment.ts';
import type { Ground } from './quantity.ts';

/** A number of a draft, and what it rests on, down to what was measured, chosen, pinned or ruled. */
export interface Reason {
  readonly ground: Ground;
  /** The step it was found in; none for what was not found. */
  readonly step?: Step;
  /** What the step was found from; nothing where that has been told further up. */
  readonly from: readonly Reason[];
  readonly told: boolean;
}

/**
 * The steps whose title is asked for: those that bear it, capitals apart, or else those that have it in them. A garment
 * that differs on both sides has the same step twice.
 */
export function stepsCalled(steps: readonly Step[], title: string): readonly Step[] {
  const wanted = title.trim().toLowerCase();
  const exact = steps.filter((step) => step.title.toLowerCase() === wanted);
  return exact.length > 0 || wanted === ''
    ? exact
    : steps.filter((step) => step.title.toLowerCase().includes(wanted));
}

/** What a step rests on. Each step is told once, where it is first met. */
export function reasonsOf(step: Step, steps: readonly Step[]): Reason {
  const byNumber = new Map(steps.map((each) => [each.number, each]));
  const told = new Set<number>();
  const reason = (ground: Ground): Reason => {
    const found = ground.origin.kind === 'step' ? byNumber.get(ground.origin.number) : undefined;
    if (!found) return { ground, from: [], told: false };
    if (told.has(found.number)) return { ground, step: found, from: [], told: true };
    told.add(found.number);
    return { ground, step: found, from: found.from.map(reason), told: false };
  };
  const { number, title, value, unit } = step;
  return reason({
    name: title,
    origin: { kind: 'step', number },
    ...(value === undefined || unit === undefined ? {} : { value, unit }),
  });
}
