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
interface Place {
  readonly key: string;
  readonly given: Promise<OwnDraft>;
  readonly give: (own: OwnDraft) => void;
  readonly refuse: (why: Unusable) => void;
  /** Whether it has been handed over. */
  came: boolean;
}

let place: Place | undefined;

/** Room for code of a key, in the place of the one before. */
function newPlace(key: string): Place {
  place?.refuse(superseded());
  let [give, refuse]: [Place['give'], Place['refuse']] = [() => {}, () => {}];
  const given = new Promise<OwnDraft>((resolve, reject) => {
    give = resolve;
    refuse = reject;
  });
  // It may be refused before anybody waits for it.
  given.catch(() => {});
  place = { key, given, give, refuse, came: false };
  return place;
}

/** The code of that key, once it has been handed over. Throws `Unusable` where it cannot be run, and where it is not the newest. */
export const ownDraftOf = (key: string): Promise<OwnDraft> =>
  (place?.key === key ? place : newPlace(key)).given;

/** Takes over the way to code, and tells what it says of itself. Handed over once more it is begun anew. */
export async function ownDraftCame(
  { key, port, problem }: OwnDraftRequest,
  tell: (answer: OwnDraftAnswer) => void,
): Promise<void> {
  const own = place?.key === key && !place.came ? place : newPlace(key);
  own.came = true;
  if (problem || !port) return own.refuse(new Unusable(problem ? [problem] : []));
  const elsewhere = new Elsewhere(port, (ended) => tell({ kind: 'own draft', key, ended }));
  try {
    const garment = await elsewhere.described();
    own.give({ garment, elsewhere });
    tell({ kind: 'own draft', key, garment });
  } catch (error) {
    if (!(error instanceof Unusable)) throw error;
    own.refuse(error);
  }
}
