import type { MeasurementName } from '../body.ts';
import { type Blunders, withWide } from './blunders.ts';
import type { HeldLimit } from './held-limits.ts';
import { leftOpen } from './left-open.ts';
import { type MostLikely, mostLikely, type Question } from './most-likely.ts';
import { type AsRead, type Chance, chanceOfFurther, wayToLikeliest } from './no-further.ts';

/**
 * So likely the least moves of what is taken for misread may leave her further off, moved by itself; judgement. They presume that
 * the others are right, which the least moves of all do not.
 */
const furtherAlone = 0.15;

/**
 * The sizes of what is taken for misread, moved by itself. Nothing where even the least moves of it are too likely to leave her
 * further off than what was written, or the limits cannot hold so.
 */
export function movedAlone(
  question: Question,
  blunders: Blunders,
  broken: readonly HeldLimit[],
): MostLikely['sizes'] | undefined {
  if (blunders.misread.length === 0) return undefined;
  const ends = endsOf(question, blunders.misread, blunders);
  if (!ends) return undefined;
  const further = chanceOfFurther(ends.least, ends.read, ends.chances, broken);
  return further < furtherAlone ? onTheWay(ends, broken) : undefined;
}

/**
 * The sizes of all that may move, as near to the likeliest as it is all but sure to lead no further from her. Nothing where the
 * limits cannot hold.
 */
export function movedTogether(
  question: Question,
  moving: readonly MeasurementName[],
  blunders: Blunders,
  broken: readonly HeldLimit[],
): MostLikely['sizes'] | undefined {
  const ends = endsOf(question, moving, blunders);
  return ends && onTheWay(ends, broken);
}

/** The least moves that keep the limits, the likeliest, and what she may be. */
interface Ends {
  readonly least: readonly number[];
  readonly likeliest: readonly number[];
  readonly read: AsRead;
  readonly chances: readonly Chance[];
}

/** Between what some readings may be moved; nothing where the limits cannot hold so. */
function endsOf(
  question: Question,
  names: readonly MeasurementName[],
  { misread, accounts }: Blunders,
): Ends | undefined {
  const { readings } = question;
  const withBlunders = (wide: readonly MeasurementName[]): Question => ({
    ...question,
    readings: withWide(readings, wide),
  });
  const likeliest = mostLikely(withBlunders(misread), names);
  const least = mostLikely({ ...question, women: undefined }, names);
  if (!likeliest || !least) return undefined;
  const values = names.map((name) => readings.get(name)?.value ?? 0);
  const movesTo = ({ sizes }: MostLikely): readonly number[] =>
    names.map((name, i) => (sizes.get(name) ?? 0) - (values[i] ?? 0));
  return {
    least: movesTo(least),
    likeliest: movesTo(likeliest),
    read: { names, values, errors: names.map((name) => readings.get(name)?.error ?? 1) },
    chances: accounts.map(({ chance, blunders }) => ({ chance, open: leftOpen(withBlunders(blunders)) })),
  };
}

/** The sizes as far on the way from the least moves to the likeliest as is all but sure to lead no further from her. */
function onTheWay(
  { least, likeliest, read, chances }: Ends,
  broken: readonly HeldLimit[],
): MostLikely['sizes'] {
  const way = wayToLikeliest(least, likeliest, read, chances, broken);
  return new Map(
    read.names.map((name, i) => {
      const [one, other] = [least[i] ?? 0, likeliest[i] ?? 0];
      return [name, (read.values[i] ?? 0) + one + way * (other - one)];
    }),
  );
}
