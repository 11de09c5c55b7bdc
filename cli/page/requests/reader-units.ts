import { unitNames } from '../../../drafts/index.ts';
import type { BodyFields } from '../body-form.ts';

/** Lengths are shown in inches to whoever measures in inches, else in mm, as the command line has it. */
export type ReaderUnits = 'mm' | 'in';

export const readerUnits = ({ units }: BodyFields): ReaderUnits =>
  unitNames.find((unit) => unit === units) === 'in' ? 'in' : 'mm';
