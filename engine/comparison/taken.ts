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
  readonly from: Provenance['from'];
}

/** A change of the fitting, in words, and how much of it, mm. */
export interface Pinned {
  readonly change: string;
  readonly mm: number;
}

/** What a body says of itself. A change of the fitting that is said twice counts twice. */
export function takenFrom({ size, known, fitting }: Body): MadeFrom {
  const pinned = new Map<string, number>();
  for (const change of fitting) {
    const words = changeWords(change);
    pinned.set(words, (pinned.get(words) ?? 0) + change.mm);
  }
  return {
    measurements: measurementNames.map((name) => ({
      name,
      ...figure(name, size[name]),
      from: known[name].from,
    })),
    fitting: Array.from(pinned, ([change, mm]) => ({ change, mm })),
  };
}

const figure = (name: MeasurementName, value: number) =>
  name === 'shoulderSlope'
    ? ({ value: (value * 180) / Math.PI, unit: 'degrees' } as const)
    : ({ value, unit: 'mm' } as const);
