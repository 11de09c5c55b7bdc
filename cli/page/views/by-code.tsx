import { isUpToDate } from '../state.ts';
import type { ViewProps } from './view.ts';

/** Said in every view where it is no draft of the program that draws, with the way back. */
export function ByCode({ state, send }: ViewProps) {
  if (!state.byCode) return null;
  const { answer, view } = state;
  const stands = isUpToDate(state) && answer && !answer.made;
  return (
    <p class="notice by-code">
      {stands ? 'What you changed in the code cannot be drawn for her: ' : 'All of this is drawn by '}
      {view === 'code' ? 'the code below' : <a href="#code">the code as you changed it</a>}
      {stands ? '. ' : ', not by the program’s own draft. '}
      <button type="button" onClick={() => send({ does: 'draw by the program' })}>
        Back to the program’s own
      </button>
    </p>
  );
}
