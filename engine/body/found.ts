import type { MeasurementName, Provenance } from './body.ts';
import type { Moved } from './reconcile/reconcile.ts';

/** A number for a measurement, mm or radians, and where it came from. */
export interface Found {
  readonly value: number;
  readonly known: Provenance;
}

/** The measurements that have a number so far. */
export type FoundSizes = Readonly<Partial<Record<MeasurementName, Found>>>;

/** What no body can be drafted without; everything else can be estimated from these. */
export const essentialNames = ['bustGirth', 'waistGirth', 'hipGirth', 'backNeckPointToWaist'] as const;

export type Essential = Readonly<Record<(typeof essentialNames)[number], Found>>;

export const measured = (value: number): Found => ({ value, known: { from: 'measured' } });

/** Measured, and moved since. */
export const reconciledTo = ({ value, ...known }: Omit<Moved, 'name'>): Found => ({
  value,
  known: { from: 'reconciled', ...known },
});

export const derived = (value: number, basis: string): Found => ({
  value,
  known: { from: 'derived', basis },
});

/** The spread is one standard deviation of the likely error. */
export const estimated = (value: number, basis: string, spread: number): Found => ({
  value,
  known: { from: 'estimated', basis, spread },
});

/** "stature, bust girth and hip girth". */
export const listed = (words: readonly string[]): string =>
  words.length > 1 ? `${words.slice(0, -1).join(', ')} and ${words.at(-1)}` : (words[0] ?? 'nothing');
