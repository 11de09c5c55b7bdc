import type { Choice, MeasurementName } from '../../drafts/index.ts';

/** A garment that can be chosen, and what it leaves open. */
export interface GarmentChoices {
  readonly name: string;
  readonly title: string;
  readonly choices: readonly Choice[];
  readonly shapedBy: readonly MeasurementName[];
}
