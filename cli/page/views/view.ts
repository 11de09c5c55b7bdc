import type { PageRequest } from '../messages.ts';
import type { PageAction } from '../page-action.ts';
import type { PageState } from '../state.ts';

/** What every view is a function of: the state, and where to say what she does. */
export interface ViewProps {
  readonly state: PageState;
  readonly send: (action: PageAction) => void;
}

/** Of views that open or write files too. */
export interface FileViewProps extends ViewProps {
  readonly ask: (request: PageRequest) => void;
  readonly open: (file: File) => Promise<void>;
}
