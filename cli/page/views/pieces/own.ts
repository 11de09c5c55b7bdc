import type { OwnState } from '../../own-state.ts';
import { type LookedAt, whole, within } from '../drawing/looked-at.ts';

/** The kinds of line that can be left out of the drawing, as they are chosen. */
export const layers = ['allowance', 'notches', 'inside lines', 'grain', 'names'] as const;

export type ShownLayer = (typeof layers)[number];

export interface TouchedEdge {
  readonly piece: string;
  readonly edge: string;
  /** Which of the seams it is sewn in; an edge may be in more than one. */
  readonly seam: number;
}

/** How the drawing is looked at. */
export interface Looked {
  /** What is seen of all pieces on one paper. */
  readonly sheet: LookedAt;
  /** The piece that is shown alone, by its name, and what is seen of it. */
  readonly piece: string | undefined;
  readonly alone: LookedAt;
  readonly hidden: readonly ShownLayer[];
  readonly touched: TouchedEdge | undefined;
  /** How far its partner has been walked along it, 0 to 1; nothing where it is not walked. */
  readonly walked: number | undefined;
}

export type Looking =
  | { readonly does: 'show piece'; readonly piece: string | undefined }
  | { readonly does: 'look at sheet' | 'look at piece'; readonly look: LookedAt }
  | { readonly does: 'show layer'; readonly layer: ShownLayer; readonly shown: boolean }
  | { readonly does: 'touch'; readonly touched: TouchedEdge | undefined }
  | { readonly does: 'walk'; readonly walked: number | undefined };

export const looked: OwnState<Looked, Looking> = {
  empty: {
    sheet: whole,
    piece: undefined,
    alone: whole,
    hidden: [],
    touched: undefined,
    walked: undefined,
  },
  reduce: (own, action) => {
    switch (action.does) {
      case 'show piece':
        return { ...own, piece: action.piece, alone: whole, touched: undefined, walked: undefined };
      case 'look at sheet':
        return { ...own, sheet: within(action.look) };
      case 'look at piece':
        return { ...own, alone: within(action.look) };
      case 'show layer': {
        const others = own.hidden.filter((layer) => layer !== action.layer);
        return { ...own, hidden: action.shown ? others : [...others, action.layer] };
      }
      case 'touch':
        return { ...own, touched: action.touched, walked: undefined };
      case 'walk': {
        const { touched, walked } = action.walked === undefined ? own : { ...own, ...action };
        const begins = action.walked !== undefined && own.walked === undefined && touched !== undefined;
        const share = action.walked === undefined ? undefined : Math.min(1, Math.max(0, walked ?? 0));
        // It is walked on the piece itself, alone.
        return { ...own, walked: share, ...(begins ? { piece: touched.piece, alone: whole } : {}) };
      }
    }
  },
};
