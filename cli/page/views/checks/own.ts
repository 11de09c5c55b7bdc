import type { DrawnPlace } from '../../messages.ts';
import type { OwnState } from '../../own-state.ts';

/** The figure whose place is shown on the drawing. */
export interface Checking {
  readonly figure: string | undefined;
  readonly places: readonly DrawnPlace[];
}

export type CheckingAction = { readonly does: 'show place' } & Checking;

export const checking: OwnState<Checking, CheckingAction> = {
  empty: { figure: undefined, places: [] },
  reduce: (_, { figure, places }) => ({ figure, places }),
};
