import { type Body, type MeasurementName, measurementNames, type Provenance } from '../body/body.ts';
import { changeWords } from '../body/fitting.ts';

/** What a draft was made from: her measurements, and what was pinned at the fitting. */
export interface MadeFrom {
  readonly measurements: readonly TakenMeasurement[];
  readonly fitting: readonly Pinned[];
}

export interface TakenMeasurement {
  readonly name: string;
  readonly value: number;
  readonly unit: 'mm' | 'degrees';
  /** A sheet does not say it. */
  readonly from?: Provenance['from'];
}

/** A change of the fitting, in words, and how much of it, mm. */
export interface Pinned {
  readonly change: string;
  readonly mm: number;
}

/** What a body says of itself. */
export const takenFrom = ({ size, known, fitting }: Body) => ({
  measurements: measured(size).map((each) => ({ ...each, from: known[each.name].from })),
  fitting: pinnedIn(fitting),
});

/** What a sheet says of whom it was drafted for. */
export const saidOnSheet = ({ size, fitting }: Pick<Body, 'size' | 'fitting'>): MadeFrom => ({
  measurements: measured(size),
  fitting: pinnedIn(fitting),
});

const measured = (size: Body['size']) =>
  measurementNames.map((name) => ({ name, ...figure(name, size[name]) }));

/** A change that is said twice counts twice. */
function pinnedIn(fitting: Body['fitting']): readonly Pinned[] {
  const pinned = new Map<string, number>();
  for (const change of fitting) {
    const words = changeWords(change);
    pinned.set(words, (pinned.get(words) ?? 0) + change.mm);
  }
  return Array.from(pinned, ([change, mm]) => ({ change, mm }));
}

const figure = (name: MeasurementName, value: number) =>
  name === 'shoulderSlope'
    ? ({ value: (value * 180) / Math.PI, unit: 'degrees' } as const)
    : ({ value, unit: 'mm' } as const);
