import type { Body, MeasurementName, Sizes } from '../body.ts';
import type { JointDistribution, Reading, Readings } from '../population/joint.ts';
import { brokenLimits, type HeldLimit, heldLimits } from './held-limits.ts';
import { mostLikely, type Question } from './most-likely.ts';
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
 * What is thought of a reading that was moved: it was misread; if one of all was misread, it is this one; or it is no
 * more suspect than others.
 */
export type Suspicion = 'misread' | 'first to blame' | 'none';

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

/** One reading in so many is a blunder, and then its error is so many times the usual; judgement. */
const blunders = { share: 0.05, errors: 5 };

/**
 * What it costs to call a reading a blunder, as twice a logarithm of odds, where each reading's error is one of two
 * normal ones, the usual and a wide one (J. W. Tukey, A survey of sampling from contaminated distributions, 1960; from
 * memory).
 */
const blunderCost = 2 * Math.log(((1 - blunders.share) / blunders.share) * blunders.errors);

/** A second explanation within this of the best, on the same scale, is worth naming; odds of about one to four. */
const nearlyAsLikely = 3;

/** Where more than so many others might be to blame as well, none is. */
const mostRivals = 1;

/** More than so many blunders in one set are no longer told apart. */
const mostBlunders = 2;

/**
 * The most likely body behind measurements that contradict each other. Only what has a part in a limit that does not
 * hold moves, and nothing that is sure; what contradicts nothing comes back as it was. Where one reading alone explains
 * the contradiction much better than many small errors, it is named as misread and moves by itself.
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

  const misread = misreadOf(question, moving);
  const { wide, first, orElse } = misread;
  const widened = { ...question, readings: withWide(readings, wide) };
  const alone = wide.length > 0 ? mostLikely(widened, wide) : undefined;
  const found = alone ?? mostLikely(widened, moving);
  if (!found) return { kind: 'sure of too much', between };
  const moved = [...found.sizes].flatMap(([name, likely]): readonly Moved[] => {
    const written = taken[name] ?? 0;
    const value = Math.round(likely / step) * step;
    const suspicion = suspicionOf(name, misread);
    const move = { name, written, value, usualError: usualError[name] };
    return Math.abs(value - written) < step / 2
      ? []
      : [{ ...move, suspicion, orElse: suspicion === 'none' || name !== first ? [] : orElse }];
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

const withWide = (readings: Readings, wide: readonly MeasurementName[]): Readings =>
  new Map(
    [...readings].map(([name, { value, error }]) => [
      name,
      { value, error: wide.includes(name) ? blunders.errors * error : error },
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

/** Which readings are taken for blunders. */
interface Misread {
  readonly wide: readonly MeasurementName[];
  /** The likeliest blunder, whether it is taken for one or not, and what might be one in its stead. */
  readonly first: MeasurementName | undefined;
  readonly orElse: readonly MeasurementName[];
}

function suspicionOf(name: MeasurementName, { wide, first, orElse }: Misread): Suspicion {
  if (wide.includes(name)) return 'misread';
  return wide.length === 0 && name === first && orElse.length <= mostRivals ? 'first to blame' : 'none';
}

/** Which readings are better taken for blunders, one after the other. */
function misreadOf(question: Question, moving: readonly MeasurementName[]): Misread {
  let wide: readonly MeasurementName[] = [];
  let first: MeasurementName | undefined;
  let orElse: readonly MeasurementName[] = [];
  let least = mostLikely(question, moving)?.cost ?? Infinity;
  while (wide.length < mostBlunders) {
    const tried = moving
      .filter((name) => !wide.includes(name))
      .map((name) => {
        const readings = withWide(question.readings, [...wide, name]);
        const found = mostLikely({ ...question, readings }, moving);
        return { name, cost: (found?.cost ?? Infinity) + (wide.length + 1) * blunderCost };
      })
      .toSorted((a, b) => a.cost - b.cost);
    const [best, ...others] = tried;
    if (!best) break;
    if (wide.length === 0) {
      first = best.name;
      orElse = others.filter(({ cost }) => cost < best.cost + nearlyAsLikely).map(({ name }) => name);
    }
    if (best.cost >= least) break;
    wide = [...wide, best.name];
    least = best.cost;
  }
  return { wide, first, orElse };
}
