import type { DraftRequest, PageAnswer, PageRequest } from './messages.ts';

/** What a drafter needs of a worker. */
export interface DraftingWorker {
  readonly postMessage: (request: PageRequest) => void;
}

/** Hands drafts to the worker one at a time. */
export interface Drafter {
  readonly want: (request: DraftRequest) => void;
  /** To be told each answer, so that the next draft can begin. */
  readonly hear: (answer: PageAnswer) => void;
}

/**
 * A drafter that never queues: while one draft is made only the newest of those wanted is remembered, and each that
 * came in between is dropped unmade.
 */
export function newestFirst(worker: DraftingWorker): Drafter {
  let busy = false;
  let next: DraftRequest | undefined;
  const begin = (request: DraftRequest): void => {
    busy = true;
    next = undefined;
    worker.postMessage(request);
  };
  return {
    want: (request) => {
      if (busy) next = request;
      else begin(request);
    },
    hear: ({ kind }) => {
      if (kind !== 'drafted') return;
      busy = false;
      if (next) begin(next);
    },
  };
}
