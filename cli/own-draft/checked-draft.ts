import { perhapsAwaited } from '../../drafts/check-parts.ts';
import { defineDraft } from '../../drafts/define-draft.ts';
import { draftFields } from '../../drafts/draft-fields.ts';
import { garmentFaults } from '../../engine/checks/garment-faults.ts';
import { DraftMistake, isDraftMistake } from '../../engine/draft-mistake.ts';
import type { Issue, Result } from '../../engine/issue.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import { Unusable, unusable } from '../input/unusable.ts';
import type { DraftSource } from './source-places.ts';

/**
 * The draft that a module exports, checked as far as it can be unread; what it throws later is told with its line. Throws
 * `Unusable` where it exports none.
 */
export function checkedDraft(
  found: { readonly default?: unknown },
  file: string,
  source: DraftSource,
): Draft {
  const draft = defaultOf(found);
  if (!isMeantForDraft(draft)) {
    const [none] = unusable(
      'no-draft',
      file,
      `${file} exports no draft: write “export default defineDraft({ name, title, choices, shapedBy, draw })”.`,
    ).issues;
    const place = source.exported([]);
    throw new Unusable(none ? [{ ...none, ...(place && { source: place }) }] : []);
  }
  try {
    defineDraft(draft);
  } catch (error) {
    const issue = source.mistake(error);
    const words = isDraftMistake(error) ? error.words : [];
    const isOwnField = words.every((word) => draftFields.some((field) => field === word));
    const place = isOwnField ? source.exported(words) : undefined;
    throw new Unusable([{ ...issue, ...(place && { source: place }) }]);
  }
  return placed(draft, source);
}

/** A draft that answers with an issue where it would throw, or hands back what is no garment. */
const placed = (draft: Draft, source: DraftSource): Draft => ({
  ...draft,
  placeOf: source.placeOf,
  draw: (...given) => {
    try {
      return asGarment(draft.draw(...given), source);
    } catch (error) {
      const issue = source.mistake(error);
      const place = issue.source ?? source.placeOf(['draw']);
      return { ok: false, issues: [{ ...issue, ...(place && { source: place }) }] };
    }
  },
});

/** What a draft answers, or what is not as a garment should be in it. */
function asGarment(drawn: Result<Garment>, source: DraftSource): Result<Garment> {
  if (drawn?.ok === false && Array.isArray(drawn.issues)) return drawn;
  if (drawn?.ok !== true)
    throw new DraftMistake(`draw should return what drawGarment does.${perhapsAwaited(drawn)}`, ['draw']);
  const checked = checkedGarment(drawn.value, drawn.issues);
  if (checked.ok) return drawn;
  const issues = checked.issues.map((issue) => {
    const place = source.placeOf(issue.path.split('/')) ?? source.placeOf(['draw']);
    return place ? { ...issue, source: place } : issue;
  });
  return { ok: false, issues };
}

/** What no compiler has looked at as a garment, or what it lacks of one. */
export function checkedGarment(made: unknown, issues: readonly Issue[]): Result<Garment> {
  const faults = garmentFaults(made);
  return faults.length === 0 ? { ok: true, value: made as Garment, issues } : { ok: false, issues: faults };
}

/** A module's default export, once more where the module was taken for one of the older kind. */
function defaultOf(found: { readonly default?: unknown }): unknown {
  const own = found.default;
  return typeof own === 'object' && own !== null && 'default' in own ? own.default : own;
}

/** Whether something has anything of a draft; what it lacks of it is told by name. */
const isMeantForDraft = (value: unknown): value is Draft =>
  typeof value === 'object' && value !== null && draftFields.some((field) => field in value);
