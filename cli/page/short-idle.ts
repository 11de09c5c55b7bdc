/** So long what works while there is nothing else to do may go on without a pause, ms. */
const most = 25;

const idle: typeof globalThis.requestIdleCallback | undefined = globalThis.requestIdleCallback;

/**
 * In the place of the browser's own throughout the page (`build.js`), which gives up to 50 ms at once: the editor takes them all to read a
 * long text, and what it does with it comes on top. Nothing where the browser has none.
 */
export const requestIdleCallback =
  idle &&
  ((act: IdleRequestCallback, options?: IdleRequestOptions): number =>
    idle(
      (deadline) =>
        act({
          didTimeout: deadline.didTimeout,
          timeRemaining: () => Math.min(most, deadline.timeRemaining()),
        }),
      options,
    ));
