import type { Body, MeasurementName } from '../body/body.ts';
import type { Solver } from '../constraints/solve.ts';
import type { Issue, Result, SourcePlace } from '../issue.ts';
import type { Garment } from './garment.ts';
import type { Choice, Styling } from './styling.ts';

/**
 * A garment's draft: the choices it leaves open and one pure function from body and styling to pieces. The
 * styling it is given has been resolved against its choices: every name present, every value in range. Sketches are
 * solved by `solve` unless another solver is given, such as one that follows a garment already solved.
 */
export interface Draft<Resolved = Styling> {
  readonly name: string;
  readonly title: string;
  readonly choices: readonly Choice[];
  /** The measurements that change something about it, in one styling or another; the others it has no use for. */
  readonly shapedBy: readonly MeasurementName[];
  /** Choices that no body can be drafted with, where the draft knows any: `draw` refuses them too. */
  clashes?(styling: Resolved): readonly Issue[];
  draw(body: Body, styling: Resolved, solver?: Solver): Result<Garment>;
  /** The line of its source where one of these words is written; only on a draft from a file of one's own. */
  readonly placeOf?: (words: readonly string[]) => SourcePlace | undefined;
}
