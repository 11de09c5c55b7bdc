import { Option } from 'commander';
import { type Unit, unitLabel, unitNames } from '../../engine/text/units.ts';
import type { Session } from '../session.ts';

/** Who reads what is printed: in which unit lengths are shown, and how many columns the terminal has. */
export interface Reader {
  readonly units: Unit;
  readonly columns: number;
}

/** `--units UNIT`. */
export const unitsOption = (): Option =>
  new Option(
    '--units <unit>',
    'show lengths in this unit; otherwise in inches where the measurements are in inches, else in mm',
  ).choices(unitNames);

/** The unit that measurements say they are written in, where they do; unchecked otherwise. */
export function unitsWritten(data: unknown): Unit | undefined {
  const units = typeof data === 'object' && data !== null && 'units' in data ? data.units : undefined;
  return unitNames.find((unit) => unit === units);
}

/** The unit in which lengths are shown where nobody asks for another: inches where the measurements are in inches, else mm. */
export const unitsShown = (data: unknown): Unit => (unitsWritten(data) === 'in' ? 'in' : 'mm');

/** The reader of what comes of measurements as a file holds them: the unit she asked for, else inches if hers are, else mm. */
export const readerOf = ({ columns }: Session, asked: Unit | undefined, data?: unknown): Reader => ({
  units: asked ?? unitsShown(data),
  columns,
});

/** Said once above tables, instead of behind each figure. */
export const lengthsLine = ({ units }: Reader): string => `lengths in ${unitLabel[units]}\n`;

/** Decimals of a size in a table (`lengthCell`): a tenth of a cm as on a tape, and no more of a mm. */
export const sizeDecimals: Readonly<Record<Unit, number>> = { mm: 1, cm: 0, in: 1 };
