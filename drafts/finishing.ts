import { type SeamFinish, seamFinishes } from '../engine/pattern/finishes.ts';
import type { Choice, StylingOf } from '../engine/pattern/styling.ts';

/** How the raw edges are finished that nothing covers. */
export const seamFinish = {
  kind: 'word',
  name: 'seamFinish',
  default: 'overcast',
  words: ['overcast', 'pinked', 'bound'],
  help: 'how raw edges that no lining covers are kept from fraying',
} as const satisfies Choice;

/** What a garment says of its raw edges: how she wants them finished, and whether a lining covers those of the bodice. */
export interface FinishStyling {
  readonly seamFinish?: StylingOf<readonly [typeof seamFinish]>['seamFinish'];
  readonly inside?: 'lined' | 'faced';
}

/** The finish of a seam that is pressed open, and of one that is pressed to one side. */
export interface Finishing {
  readonly open: SeamFinish;
  readonly together: SeamFinish;
}

const enclosed: Finishing = { open: 'enclosed', together: 'enclosed' };

/** Edges left as they were cut, as on a trial bodice, which leaves nothing to choose. */
const raw: Finishing = { open: 'raw', together: 'raw' };

/** Where nothing covers the edges. */
export const exposed = ({ seamFinish: edges }: FinishStyling): Finishing =>
  edges ? { open: edges, together: `${edges} together` } : raw;

/** In a bodice: a lining covers the edges, facings do not. */
export const insideBodice = (styling: FinishStyling): Finishing =>
  styling.inside === 'lined' ? enclosed : exposed(styling);

/** What to do for a finish, within a sentence. */
export const orderOf = (finish: SeamFinish): string => seamFinishes[finish].order;

/** The same as a sentence of its own, or the beginning of one. */
export const orderFirst = (finish: SeamFinish): string => {
  const order = orderOf(finish);
  return order.charAt(0).toUpperCase() + order.slice(1);
};
