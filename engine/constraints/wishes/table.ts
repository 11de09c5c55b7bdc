import { checkKind } from '../compile/check-kind.ts';
import type { Equations } from '../compile/equations.ts';
import type { Slots } from '../compile/slots.ts';
import type { Wish } from '../relations.ts';
import { fair, lowBending } from './curve-shape.ts';
import { near } from './near.ts';
import type { WishOf } from './wish-of.ts';

/** How each kind of wish is made ready for computing. */
const TABLE: { readonly [K in Wish['kind']]: (wish: WishOf<K>, slots: Slots) => Equations } = {
  near,
  'low bending': lowBending,
  fair,
};

/** The equations of a wish. Throws a `DraftMistake`, with its name, for a kind or a name that is not there. */
export function wishEquations<K extends Wish['kind']>(wish: WishOf<K>, slots: Slots): Equations {
  checkKind('wish', wish, TABLE);
  return TABLE[wish.kind as K](wish, slots);
}
