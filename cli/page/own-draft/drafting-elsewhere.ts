import type { Draft, Garment, Result, TurnedRules } from '../../../drafts/index.ts';
import type { Drafting } from './drafting.ts';
import { ownDraftOf } from './own-drafts.ts';

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

/** Begins with code that is run elsewhere. Throws `Unusable` where it cannot be run. */
export async function draftingElsewhere(code: string, turned: TurnedRules): Promise<Drafting> {
  const own = await ownDraftOf(code);
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
