import type { Body } from '../body/body.ts';
import type { Result } from '../issue.ts';
import type { Garment } from './garment.ts';
import type { Choice, Styling } from './styling.ts';

/**
 * A garment's draft: the choices it leaves open and one pure function from body and styling to pieces. The
 * styling it is given has been resolved against its choices: every name present, every value in range.
 */
export interface Draft<Resolved = Styling> {
  readonly name: string;
  readonly title: string;
  readonly choices: readonly Choice[];
  draw(body: Body, styling: Resolved): Result<Garment>;
}
