import { type Draft, garments, type TurnedRules, withRulesTurned } from '../../../drafts/index.ts';
import type { AskedDraft } from '../asked-draft.ts';
import type { Drafting } from './drafting.ts';

/** Begins with a draft, with rules turned where some are. Throws `Unusable` where it is code that cannot be run. */
export async function draftingOf(asked: AskedDraft, turned: TurnedRules = {}): Promise<Drafting> {
  if (asked.code === undefined)
    return {
      draft: garmentCalled(asked.garment),
      done: async (act) => withRulesTurned(turned, act),
      ahead: async () => {},
      own: undefined,
    };
  // What asks it is loaded when somebody has changed code, which most never do.
  const { draftingElsewhere } = await import('./drafting-elsewhere.ts');
  return draftingElsewhere(asked.code, turned);
}

/** The garment of that name; the dress where there is none. */
const garmentCalled = (name: string): Draft =>
  Object.values(garments).find((draft) => draft.name === name) ?? garments.dress;
