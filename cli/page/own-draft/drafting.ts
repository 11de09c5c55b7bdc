import {
  type Draft,
  type Garment,
  garments,
  type Result,
  type TurnedRules,
  withRulesTurned,
} from '../../../drafts/index.ts';
import type { AskedDraft } from '../asked-draft.ts';
import { type OwnDraft, ownDraftOf } from './own-drafts.ts';

/**
 * The draft that was asked for, and how to do something with it. The program's own is drawn here and now; code that somebody
 * wrote is drawn elsewhere, so that what wants a drawing is done again once that is there.
 */
export interface Drafting {
  readonly draft: Draft;
  /** Does something pure with the draft. */
  readonly done: <Value>(act: () => Value) => Promise<Value>;
  /** Draws ahead all that something would want, telling how far it is; nothing where it is drawn here and now. */
  readonly ahead: (act: () => void, reached: (done: number, of: number) => void) => Promise<void>;
  /** Code that is run elsewhere, where it is that. */
  readonly own: OwnDraft | undefined;
}

/** Begins with a draft, with rules turned where some are. Throws `Unusable` where it is code that cannot be run. */
export async function draftingOf(asked: AskedDraft, turned: TurnedRules = {}): Promise<Drafting> {
  if (asked.code === undefined)
    return {
      draft: garmentCalled(asked.garment),
      done: async (act) => withRulesTurned(turned, act),
      ahead: async () => {},
      own: undefined,
    };
  return drawnElsewhere(await ownDraftOf(asked.code), turned);
}

/** The garment of that name; the dress where there is none. */
const garmentCalled = (name: string): Draft =>
  Object.values(garments).find((draft) => draft.name === name) ?? garments.dress;

/** A drawing that is wanted, and by what it is known. */
interface Wanted {
  readonly key: string;
  readonly body: Parameters<Draft['draw']>[0];
  readonly styling: Parameters<Draft['draw']>[1];
}

/** Thrown where a drawing is wanted that has not come yet. */
class Undrawn extends Error {
  readonly wanted: Wanted;

  constructor(wanted: Wanted) {
    super('This is drawn elsewhere.');
    this.wanted = wanted;
  }
}

/** So many drawings are wanted one after the other at the most. */
const most = 200;

function drawnElsewhere(own: OwnDraft, turned: TurnedRules): Drafting {
  const drawings = new Map<string, Result<Garment>>();
  // Where something is drawn ahead: what it would want.
  let gathered: Map<string, Wanted> | undefined;
  const draft: Draft = {
    ...own.garment,
    // That its lines are not looked for here; but what the checks break over is its own fault.
    placeOf: () => undefined,
    draw: (body, styling) => {
      const key = JSON.stringify([body, styling]);
      const known = drawings.get(key);
      if (known) return known;
      const wanted = { key, body, styling };
      if (!gathered) throw new Undrawn(wanted);
      gathered.set(key, wanted);
      return { ok: false, issues: [] };
    },
  };
  const draw = async ({ key, body, styling }: Wanted): Promise<void> => {
    drawings.set(key, await own.elsewhere.drawn({ body, styling, turned }));
  };
  return {
    draft,
    own,
    done: async (act) => {
      for (let drawn = 0; ; drawn++)
        try {
          return act();
        } catch (error) {
          if (!(error instanceof Undrawn) || drawn === most) throw error;
          await draw(error.wanted);
        }
    },
    ahead: async (act, reached) => {
      gathered = new Map();
      act();
      const all = [...gathered.values()];
      gathered = undefined;
      for (const [done, wanted] of all.entries()) {
        await draw(wanted);
        reached(done + 1, all.length);
      }
    },
  };
}
