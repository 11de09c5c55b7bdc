import type { Body, MeasurementName, Sizes } from '../body.ts';
import type { JointDistribution, Reading, Readings } from '../population/joint.ts';
import { type Blunders, blundersAmong } from './blunders.ts';
import { brokenLimits, type HeldLimit, heldLimits } from './held-limits.ts';
import { mostLikely, type Question } from './most-likely.ts';
import { movedAlone, movedTogether } from './moves.ts';
import { usualError } from './usual-error.ts';

/** One measurement that is taken to be other than it was written. Lengths in mm. */
export interface Moved {
  readonly name: MeasurementName;
  readonly written: number;
  readonly value: number;
  /** How far off one reading of it usually is. */
  readonly usualError: number;
  readonly suspicion: Suspicion;
  /** What might have been misread in its stead, about as likely. */
  readonly orElse: readonly MeasurementName[];
}

/**
 * What is thought of a reading that was moved: it was misread; if one of all was misread, it is this one, or it or one
 * other; or it is no more suspect than others.
 */
export type Suspicion = 'misread' | 'first to blame' | 'one of two' | 'none';

/** What stands between written measurements, and how it was resolved. */
export type Reconciled =
  | { readonly kind: 'consistent' }
  | { readonly kind: 'reconciled'; readonly moved: readonly Moved[] }
  /** The limits cannot hold: those who are in them and not sure cannot be moved so far together. */
  | { readonly kind: 'sure of too much'; readonly between: readonly MeasurementName[] };

/** What a set of measurements is reconciled by. Lengths in mm. */
export interface ToReconcile {
  readonly taken: Sizes;
  readonly size: Body['size'];
  readonly sure: readonly MeasurementName[];
  readonly women: JointDistribution | undefined;
  /** To what a moved measurement is rounded. */
  readonly step: number;
}

/**
 * The most likely body behind measurements that contradict each other. Only what has a part in a limit that does not
 * hold moves, and nothing that is sure; what contradicts nothing comes back as it was. Where one reading is
 * more likely a blunder than not, it is named as misread and moves by itself, if that leads no further from her.
 */
export function reconciled({ taken, size, sure, women, step }: ToReconcile): Reconciled {
  const limits = heldLimits(taken, size);
  const broken = brokenLimits(limits, taken);
  if (broken.length === 0) return { kind: 'consistent' };
  const between = namesIn(broken);
  const readings = readingsOf(taken);
  const question: Question = { readings, women, limits, step };
  const moving = movable(question, between, sure);
  if (!moving) return { kind: 'sure of too much', between };

  const blunders = blundersAmong(question, moving);
  const { misread, first, orElse } = blunders;
  const found = movedAlone(question, blunders, broken) ?? movedTogether(question, moving, blunders, broken);
  if (!found) return { kind: 'sure of too much', between };
  const moved = [...found].flatMap(([name, likely]): readonly Moved[] => {
    const written = taken[name] ?? 0;
    const value = Math.round(likely / step) * step;
    if (Math.abs(value - written) < step / 2) return [];
    const suspicion = suspicionOf(name, blunders);
    const others = suspicion === 'one of two' ? first.filter((other) => other !== name) : orElse;
    const isNamed = name === misread[0] || first.includes(name);
    const move = { name, written, value, usualError: usualError[name] };
    return [{ ...move, suspicion, orElse: isNamed ? others : [] }];
  });
  return { kind: 'reconciled', moved };
}

/** Whether some of a body's measurements contradict each other, as they were taken. */
export function isContradictory({ size, known }: Pick<Body, 'size' | 'known'>): boolean {
  const taken = Object.fromEntries(
    Object.entries(size).filter(([name]) => known[name as MeasurementName].from === 'measured'),
  );
  return brokenLimits(heldLimits(taken, size), taken).length > 0;
}

const namesIn = (limits: readonly HeldLimit[]): readonly MeasurementName[] => [
  ...new Set(limits.flatMap(({ terms }) => terms.map(([name]) => name))),
];

const readingsOf = (taken: Sizes): Readings =>
  new Map(
    Object.entries(taken).map(([name, value]): readonly [MeasurementName, Reading] => [
      name as MeasurementName,
      { value, error: usualError[name as MeasurementName] },
    ]),
  );

/**
 * What may move so that all limits hold: what stands in a broken one, and where that is not enough, because a limit
 * still whole is in the way, what stands in such limits too. Nothing where not even that is enough.
 */
function movable(
  question: Question,
  between: readonly MeasurementName[],
  sure: readonly MeasurementName[],
): readonly MeasurementName[] | undefined {
  let reach = between;
  for (;;) {
    const moving = reach.filter((name) => !sure.includes(name));
    if (moving.length > 0 && mostLikely(question, moving)) return moving;
    const wider = namesIn(
      question.limits.filter(({ terms }) => terms.some(([name]) => reach.includes(name))),
    );
    const next = [...new Set([...reach, ...wider])];
    if (next.length === reach.length) return undefined;
    reach = next;
  }
}

function suspicionOf(name: MeasurementName, { misread, first }: Blunders): Suspicion {
  if (misread.includes(name)) return 'misread';
  if (!first.includes(name)) return 'none';
  return first.length > 1 ? 'one of two' : 'first to blame';
}
