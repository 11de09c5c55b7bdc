import {
  type Body,
  fixed,
  lengthFigure,
  type MeasurementName,
  measurementNames,
  readBody,
  type Unit,
} from '../../../drafts/index.ts';
import type { BodyFields } from '../body-form.ts';

/** A measurement that contradicts others, and what the most likely body behind them all has instead. */
export interface MovedMeasurement {
  readonly name: MeasurementName;
  /** Lengths as they are typed, in her unit. */
  readonly written: string;
  readonly taken: string;
  /** By how much, and which way. */
  readonly moved: string;
  /** How often the usual error of a tape there that is. */
  readonly errors: string;
  /** Whether it looks misread, or is first to be looked at if one is, alone or with another, or is no more suspect than others. */
  readonly suspicion: 'misread' | 'first to blame' | 'one of two' | 'none';
  /** What may have been misread in its stead. */
  readonly orElse: readonly MeasurementName[];
}

/** As fine as a tape in inches is read. */
const parts = 16;

/** What would be moved of measurements that contradict each other; nothing where none does, or all of them are sure. */
export function reconciledOf(data: BodyFields, units: Unit): readonly MovedMeasurement[] {
  const read = readBody({ ...data, reconcile: true });
  if (!read.ok) return [];
  return measurementNames.flatMap((name) => movedOf(name, read.value, units));
}

function movedOf(name: MeasurementName, { size, known }: Body, units: Unit): readonly MovedMeasurement[] {
  const from = known[name];
  if (from.from !== 'reconciled') return [];
  const text = (value: number): string =>
    name === 'shoulderSlope'
      ? String(Number(fixed((value * 180) / Math.PI, 1)))
      : lengthFigure(value, units, parts);
  const by = size[name] - from.written;
  const { suspicion, orElse, usualError } = from;
  return [
    {
      ...{ name, written: text(from.written), taken: text(size[name]), suspicion, orElse },
      moved: `${text(Math.abs(by))} ${name === 'shoulderSlope' ? '°' : units} ${by < 0 ? 'less' : 'more'}`,
      errors: fixed(Math.abs(by) / usualError, 1),
    },
  ];
}
