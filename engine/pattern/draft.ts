import type { Body } from '../body/body.ts';
import type { Result } from '../issue.ts';
import type { Garment } from './garment.ts';
import type { Choice, Styling } from './styling.ts';

/** A garment's draft: the choices it leaves open and one pure function from body and styling to pieces. */
export interface Draft {
  readonly name: string;
  readonly title: string;
  readonly choices: readonly Choice[];
  readonly draw: (body: Body, styling: Styling) => Result<Garment>;
}
