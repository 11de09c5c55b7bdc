import { cutWords, evaluate, type Issue, onlyTrue } from '../../../drafts/index.ts';
import { Unusable } from '../../input/unusable.ts';
import type { DraftRequest, MadeGarment } from '../messages.ts';
import type { Drafting } from '../own-draft/drafting.ts';
import { checkRows } from './check-rows.ts';
import { wasMade } from './last-made.ts';
import { draftParts, quickParts } from './parts.ts';
import { readerUnits } from './reader-units.ts';
import { wrongPieces } from './wrong-pieces.ts';

/** What comes of a draft for a body that can be read. */
interface Evaluated {
  readonly issues: readonly Issue[];
  /** None where nothing could be drawn. */
  readonly made?: MadeGarment;
}

/**
 * Drafts and checks a garment, as `bodkin draft` does with the same measurements and choices. The sheet is written, and walked
 * again, where that is asked for: it takes three times as long as all the rest. `begun` is the draft that is to draw.
 */
export async function evaluated(asked: DraftRequest, begun: Promise<Drafting>): Promise<Evaluated> {
  const { body, choices, parts } = asked;
  const units = readerUnits(body);
  const drafting = await begun.catch(refused);
  if ('issues' in drafting) return drafting;
  const { draft, done } = drafting;
  const made = await done(() => evaluate(draft, body, choices)).catch(refused);
  if (!('ok' in made) || !made.ok) return { issues: made.issues };
  const evaluation = made.value;
  const { parts: wanted, report, holds } = await draftParts(evaluation, draft.choices, units, parts);
  wasMade((more) => quickParts(evaluation, draft.choices, units, more), asked.parts);
  // While something moves there is no time to look for what would do.
  const { issues } = holds ? await done(() => onlyTrue(draft, evaluation, report, holds)) : report;
  return {
    issues,
    made: {
      ok: report.ok,
      proven: holds !== undefined,
      garment: report.garment,
      title: draft.title,
      body: evaluation.body.name,
      units,
      styling: evaluation.styling,
      pieces: evaluation.garment.pieces.map(({ number, name, cut }) => ({
        number,
        name,
        cut: cut.map(cutWords).join('; '),
      })),
      checks: checkRows(report, evaluation.garment, units),
      wrong: wrongPieces({ ...report, issues }, evaluation.garment, units),
      parts: wanted,
    },
  };
}

/** What stands in the way where code that draws cannot be asked; a fault of the program is thrown on. */
function refused(error: unknown): { readonly issues: readonly Issue[] } {
  if (error instanceof Unusable) return { issues: error.issues };
  throw error;
}
