import type { OwnState } from '../../own-state.ts';

/** How the drawing is looked at. */
export interface Looked {
  /** The piece that is shown alone, by its file. */
  readonly piece: string | undefined;
  readonly zoom: number;
}

export type Looking =
  | { readonly does: 'show piece'; readonly piece: string | undefined }
  | { readonly does: 'zoom'; readonly zoom: number };

/** How far the drawing can be enlarged. */
export const largestZoom = 16;

export const looked: OwnState<Looked, Looking> = {
  empty: { piece: undefined, zoom: 1 },
  reduce: (own, action) => {
    switch (action.does) {
      case 'show piece':
        return { piece: action.piece, zoom: 1 };
      case 'zoom':
        return { ...own, zoom: Math.min(largestZoom, Math.max(1, action.zoom)) };
    }
  },
};
