import type { MeasurementName, Provenance } from './body.ts';
import type { Moved } from './reconcile/reconcile.ts';

/** A number for a measurement, mm or radians, and where it came from. */
export interface FoundSize {
  readonly value: number;
  readonly known: Provenance;
}

/** The measurements that have a number so far. */
export type FoundSizes = Readonly<Partial<Record<MeasurementName, FoundSize>>>;

/** What no body can be drafted without; everything else can be estimated from these. */
export const essentialNames = ['bustGirth', 'waistGirth', 'hipGirth', 'backNeckPointToWaist'] as const;

export type Essential = Readonly<Record<(typeof essentialNames)[number], FoundSize>>;

export const measured = (value: number): FoundSize => ({ value, known: { from: 'measured' } });

/** Measured, and moved since. */
export const reconciledTo = ({ value, ...known }: Omit<Moved, 'name'>): FoundSize => ({
  value,
  known: { from: 'reconciled', ...known },
});

export const derived = (value: number, basis: string): FoundSize => ({
  value,
  known: { from: 'derived', basis },
});

/** The spread is one standard deviation of the likely error. */
export const estimated = (value: number, basis: string, spread: number): FoundSize => ({
  value,
  known: { from: 'estimated', basis, spread },
});
