import type { ViewProps } from './view.ts';

/** The way on from a view that has nothing to show yet, because nothing is drafted. */
export const ToMeasure = ({ send }: Pick<ViewProps, 'send'>) => (
  <p class="row">
    <button type="button" onClick={() => send({ does: 'view', view: 'measure' })}>
      Measure her, or try an invented body
    </button>
  </p>
);
