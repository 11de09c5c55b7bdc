import { Unusable } from '../../input/unusable.ts';
import type { GarmentChoices } from '../garment-choices.ts';
import { Elsewhere, superseded } from './elsewhere.ts';
import type { OwnDraftAnswer, OwnDraftRequest } from './messages.ts';

/** Code that draws in the place of the program's own draft. */
export interface OwnDraft {
  readonly garment: GarmentChoices;
  readonly elsewhere: Elsewhere;
}

/** The newest that was asked for or handed over. */
interface DraftPlace {
  readonly key: string;
  readonly given: Promise<OwnDraft>;
  readonly give: (own: OwnDraft) => void;
  /** Nobody draws by it any more: whoever waits for it, or for an answer of it, is told why. */
  readonly end: (why: Unusable) => void;
  /** Whether it has been handed over. */
  came: boolean;
  /** Where it runs, once it is handed over. */
  elsewhere: Elsewhere | undefined;
}

let place: DraftPlace | undefined;

/** Room for code of a key, in the place of the one before. */
function newPlace(key: string): DraftPlace {
  place?.end(superseded());
  let [give, refuse]: [DraftPlace['give'], (why: Unusable) => void] = [() => {}, () => {}];
  const given = new Promise<OwnDraft>((resolve, reject) => {
    give = resolve;
    refuse = reject;
  });
  // It may be refused before anybody waits for it.
  given.catch(() => {});
  const made: DraftPlace = {
    ...{ key, given, give, came: false, elsewhere: undefined },
    end: (why) => {
      refuse(why);
      made.elsewhere?.end(why);
    },
  };
  place = made;
  return made;
}

/** The code of that key, once it has been handed over. Throws `Unusable` where it cannot be run, and where it is not the newest. */
export const ownDraftOf = (key: string): Promise<OwnDraft> =>
  (place?.key === key ? place : newPlace(key)).given;

/**
 * Takes over the way to code, and tells what it says of itself. Handed over once more it is begun anew. Where it is drawn by no
 * more, whoever waits for it is told at once: the frame in which it ran is closed, and would never answer.
 */
export async function ownDraftCame(
  { key, is }: OwnDraftRequest,
  tell: (answer: OwnDraftAnswer) => void,
): Promise<void> {
  if (is.how === 'over') {
    if (place?.key !== key) return;
    place.end(superseded());
    place = undefined;
    return;
  }
  if (is.how === 'stopped') {
    const why = new Unusable([is.problem]);
    if (place?.key === key) place.end(why);
    const stopped = newPlace(key);
    stopped.came = true;
    return stopped.end(why);
  }
  const own = place?.key === key && !place.came ? place : newPlace(key);
  own.came = true;
  const elsewhere = new Elsewhere(is.port, (ended) => tell({ kind: 'own draft', key, ended }));
  own.elsewhere = elsewhere;
  try {
    const garment = await elsewhere.described();
    own.give({ garment, elsewhere });
    tell({ kind: 'own draft', key, garment });
  } catch (error) {
    if (!(error instanceof Unusable)) throw error;
    own.end(error);
  }
}
