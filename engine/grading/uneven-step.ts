import type { Step } from '../pattern/garment.ts';
import type { QuantityUnit } from '../pattern/quantity.ts';
import type { GradedSize } from './laid-size.ts';

/** A step of the construction whose own step from size to size changes, mm: a rule's limit, as a rule. */
export interface UnevenStep {
  readonly kind: 'construction';
  readonly step: string;
  readonly change: number;
}

/** An angle of the construction that grows by as much each time, radians: a corner far from where it turns moves on an arc. */
export interface EvenTurn {
  readonly kind: 'turn';
  readonly step: string;
  readonly by: number;
}

/** Whether a step computes; a length measured on the drawing is a bare number. */
export const isComputed = ({ formula }: Step): boolean => formula?.includes(' ') ?? false;

/**
 * Tells the steps that may speak of a piece: those whose heading has a word of its name, and those whose heading names no
 * piece of the garment at all, such as the levels.
 */
export function speaksOf(piece: string, [size]: readonly GradedSize[]): (step: Step) => boolean {
  const own = new Set(wordsOf(piece));
  const others = new Set([...(size?.pieces.keys() ?? [])].flatMap(wordsOf));
  return ({ heading = '' }) => {
    const words = wordsOf(heading);
    return words.some((word) => own.has(word)) || !words.some((word) => others.has(word));
  };
}

const wordsOf = (name: string): readonly string[] => name.toLowerCase().match(/[a-z]+/g) ?? [];

/** The first step of the construction with a length whose own step from size to size changes by so much, mm. */
export function unevenStep(
  three: readonly GradedSize[],
  least: number,
  counts: (step: Step) => boolean,
): UnevenStep | undefined {
  const [before, middle, after] = three.map((size) => valuesOf(size, 'mm', counts));
  for (const [step, value] of middle ?? []) {
    const [a, c] = [before?.get(step), after?.get(step)];
    if (a === undefined || c === undefined) continue;
    const change = c - 2 * value + a;
    if (Math.abs(change) >= least) return { kind: 'construction', step, change };
  }
  return undefined;
}

/**
 * An angle of the construction that grows by as much into the middle size as out of it, and by which the corner of the piece
 * that lies farthest from its anchor moves on an arc so bent that its step changes by `least`, mm: by the radius times the
 * square of the turn.
 */
export function evenTurn(
  three: readonly GradedSize[],
  piece: string,
  least: number,
  counts: (step: Step) => boolean,
): EvenTurn | undefined {
  const [before, middle, after] = three.map((size) => valuesOf(size, 'rad', counts));
  const places = [...(three[1]?.pieces.get(piece)?.points.values() ?? [])];
  const reach = Math.max(0, ...places.map(({ at }) => Math.hypot(at.x, at.y)));
  for (const [step, value] of middle ?? []) {
    const [a, c] = [before?.get(step), after?.get(step)];
    if (a === undefined || c === undefined) continue;
    const by = (c - a) / 2;
    if (reach * by ** 2 >= least && Math.abs(c - 2 * value + a) < EVENLY * Math.abs(by))
      return { kind: 'turn', step, by };
  }
  return undefined;
}

/** A turn whose step changes by less than this share of it is even. */
const EVENLY = 0.1;

/** What steps come to in a size, by title. */
const valuesOf = (
  { made }: GradedSize,
  of: QuantityUnit,
  counts: (step: Step) => boolean,
): ReadonlyMap<string, number> =>
  new Map(
    made.garment.steps
      .filter(counts)
      .flatMap(({ title, unit, value }) =>
        unit === of && value !== undefined ? [[title, value] as const] : [],
      ),
  );
